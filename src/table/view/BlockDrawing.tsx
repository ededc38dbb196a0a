// The drawing of one half block: its panels, its wedges with their axes, and its bust point.

import { memo } from 'react';
import {
  type Block,
  type BlockName,
  type Draft,
  type DraftedWedge,
  isThrough,
  type LevelName,
  outerEdge,
  type Piece,
  type Point,
  pointsDown,
} from '../../engine';
import { useRested } from '../gestures/useRested';
import { type CanvasLayout, onCanvas } from '../layout/layOut';
import { type PanelOnBlock, panelsOnBlock } from '../layout/panelsOnBlock';
import { closedPath, pathDown, pathThrough } from './lines/paths';

/** Width of a letter for its size, in the mean of a name. */
const LETTER = 0.62;

interface BlockProps {
  readonly name: BlockName;
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly selected: string | null;
  /** The name of a panel. */
  readonly nameOf: (piece: Piece) => string;
  /** Height of small text, canvas mm. */
  readonly textMm: number;
  /** The selected level, below whose line the widths of the panels are written. */
  readonly level: LevelName;
  /** A length as it is written there. */
  readonly written: (mm: number) => string;
}

interface BlockDrawingProps extends BlockProps {
  /** It may follow when the pull rests: a wedge of the other block is pulled, which moves this one by parts of a mm. */
  readonly mayLag: boolean;
}

export const BlockDrawing = memo(function BlockDrawing({ mayLag, draft, ...rest }: BlockDrawingProps) {
  return <OneBlock {...rest} draft={useRested(draft, mayLag)} />;
});

const OneBlock = memo(function OneBlock(props: BlockProps) {
  const { name: ownName, draft, layout, selected, nameOf, textMm, level, written } = props;
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const block = blocks[ownName];
  const place = (point: Point): Point => onCanvas(layout, block.name, point);
  const panels = panelsOnBlock(draft, block.name);
  const px = textMm / 12;
  return (
    <g className={`block block-${block.name}`}>
      {panels.map(({ piece, ring }) => (
        <path key={piece.id} className="panel" data-piece={piece.id} d={closedPath(ring.map(place))} />
      ))}
      {block.wedges.map((wedge) => {
        const cloth = { wedge, block, panels, span, place };
        const { to } = visibleSpan(wedge, span);
        const from = isDart(wedge) ? visibleSpan(wedge, span).from : axisTop(cloth);
        return (
          <g
            key={wedge.id}
            className={wedge.id === selected ? 'wedge selected' : 'wedge'}
            data-wedge={wedge.id}
          >
            {isDart(wedge) ? <DartCloth {...cloth} /> : <WedgeCloth {...cloth} />}
            {wedge.onCentre || from >= to || wedge.id === draft.turnedDart?.wedge ? null : (
              <path className="axis" d={pathDown(wedge.axis, from, to, place)} />
            )}
          </g>
        );
      })}
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
        const name = nameOf(piece);
        // Word by word where the name in one line would run into the next panel's.
        const lines = name.length * LETTER * textMm <= Math.abs(b.x - a.x) ? [name] : name.split(' ');
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
      <line
        className="bust-point"
        {...cross(place({ x: block.bustLine, y: bustHeight(draft) }), textMm / 3, 0)}
      />
      <line
        className="bust-point"
        {...cross(place({ x: block.bustLine, y: bustHeight(draft) }), 0, textMm / 3)}
      />
      {panels.map(({ piece, lines }) => (
        <path
          key={piece.id}
          className="edge-line"
          d={lines.map((line) => pathThrough(line.map(place))).join('')}
        />
      ))}
      <path
        className={panels.at(-1)?.isJoined ? 'side-line' : 'side-seam'}
        d={sideLine(block, panels, span, place)}
      />
    </g>
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

interface ClothProps {
  readonly wedge: DraftedWedge;
  readonly block: Block;
  readonly panels: readonly PanelOnBlock[];
  readonly span: Span;
  readonly place: (point: Point) => Point;
}

type Span = NonNullable<Draft['span']>;

const isDart = ({ extent }: DraftedWedge): boolean => !isThrough(extent);

/** The heights between which a wedge is drawn, mm. */
const visibleSpan = ({ extent }: DraftedWedge, span: Span): { from: number; to: number } => ({
  from: Math.max(extent.upper ?? span.top, span.top),
  to: Math.min(extent.lower ?? span.hem, span.hem),
});

/** The panels on the inner and the outer side of a wedge that reaches both edges; undefined where one could not be built. */
function besideWedge({ wedge, block, panels }: ClothProps): (PanelOnBlock | undefined)[] {
  const cuts = block.wedges.filter((each) => !each.onCentre && !isDart(each));
  const number = cuts.indexOf(wedge) + 1;
  return [number, number + 1].map((n) => panels.find((panel) => panel.number === n));
}

/** The height at which the axis of a wedge that reaches both edges starts, at the top edge or on the shoulder, mm. */
function axisTop(cloth: ClothProps): number {
  const [before, after] = besideWedge(cloth);
  return Math.max(before?.outer[0]?.y ?? cloth.span.top, after?.inner[0]?.y ?? cloth.span.top);
}

/** The area between the two legs, and the legs: as trued, or as drafted where a panel beside them could not be built. */
function WedgeCloth(cloth: ClothProps) {
  const { wedge, span, place } = cloth;
  const [before, after] = besideWedge(cloth);
  const inner =
    (before && after && !wedge.onCentre ? before.outer : null) ??
    pointsDown(wedge.innerLeg, span.top, span.hem);
  const outer =
    (wedge.onCentre || before ? after?.inner : null) ?? pointsDown(wedge.outerLeg, span.top, span.hem);
  return (
    <>
      <path className="taken" d={closedPath([...inner, ...[...outer].reverse()].map(place))} />
      <path className="leg" d={pathThrough(inner.map(place))} />
      <path className="leg" d={pathThrough(outer.map(place))} />
    </>
  );
}

/** The same for a dart, which ends within its panel. */
function DartCloth({ wedge, panels, span, place }: ClothProps) {
  const { from, to } = visibleSpan(wedge, span);
  const lines = panels.flatMap(({ darts }) => darts).find((dart) => dart.wedge === wedge.id);
  if (!lines && (from >= to || [...wedge.intake.values()].every((taken) => taken === 0))) return null;
  const inner = lines?.inner ?? pointsDown(wedge.innerLeg, from, to);
  const outer = lines?.outer ?? pointsDown(wedge.outerLeg, from, to);
  return (
    <>
      <path className="taken inside" d={closedPath([...inner, ...[...outer].reverse()].map(place))} />
      <path className="leg" d={pathThrough(inner.map(place))} />
      <path className="leg" d={pathThrough(outer.map(place))} />
    </>
  );
}

function sideLine(
  block: Block,
  panels: readonly PanelOnBlock[],
  span: Span,
  place: (point: Point) => Point,
): string {
  const last = panels.at(-1);
  const trued = last && (last.isJoined || outerEdge(last.piece).isSideSeam) ? last.outer : null;
  const above = last?.aboveDart ? pathThrough(last.aboveDart.map(place)) : '';
  return trued ? above + pathThrough(trued.map(place)) : pathDown(block.sideSeam, span.top, span.hem, place);
}

const bustHeight = (draft: Draft): number => draft.levels.find((level) => level.name === 'bust')?.y ?? 0;

const cross = (at: Point, dx: number, dy: number) => ({
  x1: at.x - dx,
  y1: at.y - dy,
  x2: at.x + dx,
  y2: at.y + dy,
});
