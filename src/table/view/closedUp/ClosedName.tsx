// The name of a panel in the drawing of the panels closed up: in one line, or word by word where that would cross its seams.
// Lengths and font sizes are mm of the drawing.

import type { ClosedAt, Piece, PiecePart, Placement, Point } from '../../../engine';
import { crossingsAt, isInside, placePoint } from '../../../engine';

export interface PlacedPart {
  readonly piece: Piece;
  readonly part: PiecePart;
  readonly placement: Placement;
}

/** The middle of a panel at the height of its name, and the width that a name has there, mm. */
interface NamePlace {
  readonly at: Point;
  readonly width: number;
}

/** Font size of a name in one line, as in the style sheet. mm */
const LINE_MM = 7.5;
/** Width of a letter for its font size: an upper bound for the fonts of a screen. */
const LETTER = 0.68;
/** Space between a name and the seams, mm. */
const CLEAR_MM = 2;

/** Heights that three lines occupy, from the baseline of the first, mm. */
const LINES_MM = [-12, 0, 12, 24, 34];

/**
 * The place of the name of a part: near the level at which the seams are closed, since panels overlap farther from it. Null
 * where that place of the panel lies on another part.
 */
function namePlace({ piece, part, placement }: PlacedPart, at: ClosedAt): NamePlace | null {
  // In the coordinates of the drawing: the name is upright on a panel that is turned.
  const laid = (points: readonly Point[]): Point[] => points.map((point) => placePoint(placement, point));
  const outline = laid(part.rows.flatMap(({ points }) => points.slice(0, -1)));
  const ring = [...outline, ...outline.slice(0, 1)];
  const legs = piece.darts.flatMap(({ open, inner, outer }) => (open ? [] : [laid(inner), laid(outer)]));
  const { x, y } = placePoint(placement, { x: piece.grain[0].x, y: nameHeight(piece, at) });
  if (!isInside(outline, { x, y })) return null;
  const spans = LINES_MM.map((below) => y + below)
    .filter((height) => isInside(outline, { x, y: height }))
    .map((height) => [ring, ...legs].flatMap((points) => crossingsAt(points, height)));
  const left = Math.max(...spans.flat().filter((each) => each <= x));
  const right = Math.min(...spans.flat().filter((each) => each > x));
  return { at: { x: (left + right) / 2, y }, width: right - left - 2 * CLEAR_MM };
}

/** The baseline of the first line of a name, mm. */
function nameHeight({ grain: [top, foot], marks }: Piece, at: ClosedAt): number {
  const inset = (foot.y - top.y) * 0.1;
  const waist = marks.find(({ level }) => level === 'waist')?.at.y;
  if (at === 'waist' && waist !== undefined) return waist - 12;
  return at === 'hem' ? foot.y - inset - 24 : top.y + inset;
}

/** Whether all names fit in one line, and the largest font size, mm, at which their longest words fit. */
export function fitNames(
  placed: readonly PlacedPart[],
  at: ClosedAt,
  nameOf: (placed: PlacedPart) => string,
): { inALine: boolean; mostMm: number } {
  const named = placed.flatMap((each) => {
    const place = namePlace(each, at);
    return place ? [{ name: nameOf(each), width: place.width }] : [];
  });
  return {
    inALine: named.every(({ name, width }) => name.length * LETTER * LINE_MM <= width),
    mostMm: Math.min(
      ...named.map(
        ({ name, width }) => width / (LETTER * Math.max(...name.split(' ').map((word) => word.length))),
      ),
    ),
  };
}

interface ClosedNameProps {
  readonly placed: PlacedPart;
  readonly at: ClosedAt;
  readonly name: string;
}

export function ClosedName({ placed, at, name }: ClosedNameProps) {
  const place = namePlace(placed, at);
  if (!place) return null;
  const { x, y } = place.at;
  return (
    <>
      <text className="panel-name in-a-line" x={x} y={y}>
        {name}
      </text>
      <text className="panel-name word-by-word" y={y}>
        {name.split(' ').map((word, i) => (
          <tspan key={word} x={x} dy={i === 0 ? 0 : '1.1em'}>
            {word}
          </tspan>
        ))}
      </text>
    </>
  );
}
