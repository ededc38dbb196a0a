// The lines of one half block: its panels, its wedges with their axes, and its edges. They are the same at whatever scale the canvas
// is shown.

import { memo } from 'react';
import {
  type Block,
  type BlockName,
  type Draft,
  type DraftedWedge,
  isThrough,
  outerEdge,
  type Point,
  pointsDown,
} from '../../engine';
import { type CanvasLayout, onCanvas } from '../layout/layOut';
import { type PanelOnBlock, panelsOnBlock } from '../layout/panelsOnBlock';
import { closedPath, pathDown, pathThrough } from './lines/paths';

export interface BlockLinesProps {
  readonly name: BlockName;
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly selected: string | null;
}

export const BlockLines = memo(function BlockLines({ name, draft, layout, selected }: BlockLinesProps) {
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const block = blocks[name];
  const place = (point: Point): Point => onCanvas(layout, name, point);
  const panels = panelsOnBlock(draft, name);
  return (
    <>
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
    </>
  );
});

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
