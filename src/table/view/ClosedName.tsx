// A panel's name where it lies closed up: in one line, or word by word where that would run over its seams. Lengths in mm of
// the drawing, which are the units of its letters too.

import type { ClosedAt, Piece, PiecePart, Placement, Point } from '../../engine';
import { crossingsAt, placePoint } from '../../engine';

export interface PlacedPart {
  readonly piece: Piece;
  readonly part: PiecePart;
  readonly placement: Placement;
}

/** The middle of the panel at the height of its name, and how wide it is there. */
interface NamePlace {
  readonly at: Point;
  readonly width: number;
}

/** Letters of a name in one line, as the look has them. */
const LINE_MM = 7.5;
/** A letter is so wide for its height; of the widest faces a screen may have. */
const LETTER = 0.68;
/** Kept between a name and the seams. */
const CLEAR_MM = 2;

/** Heights that three words take up, from the first line's. */
const LINES_MM = [-12, 0, 12, 24, 34];

/**
 * Where the name of a part goes: near where the seams are held, as panels lap over each other farther off. Null where that
 * place of its panel lies on another part.
 */
function namePlace({ piece, part, placement }: PlacedPart, at: ClosedAt): NamePlace | null {
  // As it lies turned: words stand upright on a panel that leans.
  const laid = (points: readonly Point[]): Point[] => points.map((point) => placePoint(placement, point));
  const outline = laid(part.rows.flatMap(({ points }) => points.slice(0, -1)));
  const ring = [...outline, ...outline.slice(0, 1)];
  const legs = piece.darts.flatMap(({ open, inner, outer }) => (open ? [] : [laid(inner), laid(outer)]));
  const { x, y } = placePoint(placement, { x: piece.grain[0].x, y: nameHeight(piece, at) });
  if (!isWithin(ring, { x, y })) return null;
  const spans = LINES_MM.map((below) => y + below)
    .filter((height) => isWithin(ring, { x, y: height }))
    .map((height) => [ring, ...legs].flatMap((points) => crossingsAt(points, height)));
  const left = Math.max(...spans.flat().filter((each) => each <= x));
  const right = Math.min(...spans.flat().filter((each) => each > x));
  return { at: { x: (left + right) / 2, y }, width: right - left - 2 * CLEAR_MM };
}

/** The foot of a name's first line. */
function nameHeight({ grain: [top, foot], marks }: Piece, at: ClosedAt): number {
  const inset = (foot.y - top.y) * 0.1;
  const waist = marks.find(({ level }) => level === 'waist')?.at.y;
  if (at === 'waist' && waist !== undefined) return waist - 12;
  return at === 'hem' ? foot.y - inset - 24 : top.y + inset;
}

const isWithin = (ring: readonly Point[], { x, y }: Point): boolean =>
  crossingsAt(ring, y).filter((each) => each > x).length % 2 === 1;

/** Whether all names fit in one line, and how large letters may be, mm, for their longest words to fit. */
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
