// What stands on one half block in the size of the screen: drill holes, the names of its panels, their widths at a level, and its bust
// point.

import { memo } from 'react';
import type { BlockName, Draft, LevelName, Piece, Point } from '../../engine';
import { type CanvasLayout, onCanvas } from '../layout/layOut';
import { type PanelOnBlock, panelsOnBlock } from '../layout/panelsOnBlock';

/** Width of a letter for its size, in the mean of a name. */
const LETTER = 0.62;

export interface BlockMarksProps {
  readonly name: BlockName;
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  /** The name of a panel. */
  readonly nameOf: (piece: Piece) => string;
  /** Height of small text, canvas mm. */
  readonly textMm: number;
  /** The selected level, below whose line the widths of the panels are written. */
  readonly level: LevelName;
  /** A length as it is written there. */
  readonly written: (mm: number) => string;
}

export const BlockMarks = memo(function BlockMarks(props: BlockMarksProps) {
  const { name, draft, layout, nameOf, textMm, level, written } = props;
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const place = (point: Point): Point => onCanvas(layout, name, point);
  const panels = panelsOnBlock(draft, name);
  const px = textMm / 12;
  const bustPoint = place({ x: blocks[name].bustLine, y: bustHeight(draft) });
  return (
    <>
      {panels.flatMap(({ piece, drills }) =>
        drills.map(place).map((at, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a drill hole keeps its place among its panel's, and moves under a pull
          <circle key={`${piece.id} ${i}`} className="drill" cx={at.x} cy={at.y} r={2.6 * px} />
        )),
      )}
      {panels.map(({ piece, inner, outer }) => {
        const y = span.top + (span.hem - span.top) * 0.12;
        const [a, b] = [inner, outer].map((row) => row.find((point) => point.y >= y) ?? piece.grain[0]);
        if (!a || !b) return null;
        const middle = place({ x: (a.x + b.x) / 2, y });
        const words = nameOf(piece);
        // Word by word where the name in one line would run into the next panel's.
        const lines = words.length * LETTER * textMm <= Math.abs(b.x - a.x) ? [words] : words.split(' ');
        return (
          <text key={piece.id} className="panel-name" y={middle.y} fontSize={textMm}>
            {lines.map((line, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line of the name is written anew where it stands
              <tspan key={i} x={middle.x} dy={i === 0 ? 0 : '1.1em'}>
                {line}
              </tspan>
            ))}
          </text>
        );
      })}
      {widthsAt(draft, panels, level).map(({ piece, x, y, width }) =>
        width > 2.6 * textMm ? (
          <text
            key={piece.id}
            className="panel-width"
            {...place({ x, y: y + 1.35 * textMm })}
            fontSize={textMm}
          >
            {written(width)}
          </text>
        ) : null,
      )}
      <line className="bust-point" {...cross(bustPoint, textMm / 3, 0)} />
      <line className="bust-point" {...cross(bustPoint, 0, textMm / 3)} />
    </>
  );
});

interface WidthAt {
  readonly piece: Piece;
  /** The middle of the panel on the level line. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The panels of a block that reach a level, with their widths there, mm. */
function widthsAt({ proof }: Draft, panels: readonly PanelOnBlock[], level: LevelName): WidthAt[] {
  const row = proof.ledger.find((each) => each.level === level);
  if (!row) return [];
  return panels.flatMap(({ piece, inner, outer, isJoined }) => {
    const width = row.widths[piece.id];
    const [from, to] = [inner, outer].map((line) => line.find(({ y }) => y >= row.y)?.x);
    if (width === undefined || from === undefined || to === undefined || isJoined) return [];
    return [{ piece, x: (from + to) / 2, y: row.y, width }];
  });
}

const bustHeight = (draft: Draft): number => draft.levels.find((level) => level.name === 'bust')?.y ?? 0;

const cross = (at: Point, dx: number, dy: number) => ({
  x1: at.x - dx,
  y1: at.y - dy,
  x2: at.x + dx,
  y2: at.y + dy,
});
