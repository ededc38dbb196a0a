// One half block on the table: its panels, the cloth the wedges take out, and the axes.

import { memo } from 'react';
import { type Block, type Draft, type DraftedWedge, type Piece, type Point, pointsDown } from '../../engine';
import { onTable, type TableLayout } from '../layout';
import { closedPath, pathDown, pathThrough } from './paths';

interface BlockDrawingProps {
  readonly block: Block;
  readonly draft: Draft;
  readonly layout: TableLayout;
  readonly selected: string | null;
  /** Names for the panels, by piece id. */
  readonly nameOf: (piece: Piece) => string;
  /** Height of small text, table mm. */
  readonly textMm: number;
}

export const BlockDrawing = memo(function BlockDrawing(props: BlockDrawingProps) {
  const { block, draft, layout, selected, nameOf, textMm } = props;
  const { span } = draft;
  if (!span) return null;
  const place = (point: Point): Point => onTable(layout, block.side, point);
  const pieces = draft.pieces.filter((piece) => piece.block === block.side);
  return (
    <g className={`block block-${block.side}`}>
      {pieces.map((piece) => (
        <path
          key={piece.id}
          className="panel"
          data-piece={piece.id}
          d={closedPath(piece.edges.flatMap((edge) => edge.points.slice(0, -1)).map(place))}
        />
      ))}
      {block.wedges.map((wedge) => (
        <g
          key={wedge.id}
          className={wedge.id === selected ? 'wedge selected' : 'wedge'}
          data-wedge={wedge.id}
        >
          <WedgeCloth wedge={wedge} block={block} pieces={pieces} span={span} place={place} />
          {wedge.onCentre ? null : (
            <path className="axis" d={pathDown(wedge.axis, span.top, span.hem, place)} />
          )}
        </g>
      ))}
      {pieces.map((piece) => {
        const y = span.top + (span.hem - span.top) * 0.12;
        const [inner, outer] = [piece.edges[0], piece.edges[2]];
        const a = inner?.points.find((point) => point.y >= y) ?? piece.grain[0];
        const b = outer?.points.findLast((point) => point.y >= y) ?? piece.grain[0];
        const middle = place({ x: (a.x + b.x) / 2, y });
        return (
          <text key={piece.id} className="panel-name" x={middle.x} y={middle.y} fontSize={textMm}>
            {nameOf(piece)}
          </text>
        );
      })}
      <line
        className="bust-point"
        {...cross(place({ x: block.bustLine, y: bustHeight(draft) }), textMm / 3, 0)}
      />
      <line
        className="bust-point"
        {...cross(place({ x: block.bustLine, y: bustHeight(draft) }), 0, textMm / 3)}
      />
      {pieces.flatMap((piece) =>
        piece.edges
          .filter((edge) => edge.role === 'top' || edge.role === 'hem' || edge.role === 'centre')
          .map((edge) => (
            <path
              key={`${piece.id} ${edge.role}`}
              className="edge-line"
              d={pathThrough(edge.points.map(place))}
            />
          )),
      )}
      <path className="side-seam" d={sideSeam(block, pieces, span, place)} />
    </g>
  );
});

interface WedgeClothProps {
  readonly wedge: DraftedWedge;
  readonly block: Block;
  readonly pieces: readonly Piece[];
  readonly span: Span;
  readonly place: (point: Point) => Point;
}

type Span = NonNullable<Draft['span']>;

/** The cloth between the two legs, and the legs: as trued, or as drafted where a panel beside them was not made. */
function WedgeCloth({ wedge, block, pieces, span, place }: WedgeClothProps) {
  const cuts = block.wedges.filter((each) => !each.onCentre);
  const number = cuts.indexOf(wedge) + 1;
  const [before, after] = [number, number + 1].map((n) => pieces.find((piece) => piece.number === n));
  const inner = wedge.onCentre ? null : before?.edges.find((edge) => edge.mate?.piece === after?.id);
  const outer = wedge.onCentre
    ? pieces.find((piece) => piece.number === 1)?.edges.find((edge) => edge.role === 'centre')
    : after?.edges.find((edge) => edge.mate?.piece === before?.id);
  const innerPoints = downwards(inner?.points ?? pointsDown(wedge.innerLeg, span.top, span.hem));
  const outerPoints = downwards(outer?.points ?? pointsDown(wedge.outerLeg, span.top, span.hem));
  return (
    <>
      <path className="taken" d={closedPath([...innerPoints, ...[...outerPoints].reverse()].map(place))} />
      <path className="leg" d={pathThrough(innerPoints.map(place))} />
      <path className="leg" d={pathThrough(outerPoints.map(place))} />
    </>
  );
}

const downwards = (points: readonly Point[]): readonly Point[] =>
  (points[0]?.y ?? 0) <= (points.at(-1)?.y ?? 0) ? points : [...points].reverse();

function sideSeam(
  block: Block,
  pieces: readonly Piece[],
  span: Span,
  place: (point: Point) => Point,
): string {
  const trued = pieces.flatMap((piece) => piece.edges).find((edge) => edge.side);
  return trued ? pathThrough(trued.points.map(place)) : pathDown(block.sideSeam, span.top, span.hem, place);
}

const bustHeight = (draft: Draft): number => draft.levels.find((level) => level.name === 'bust')?.y ?? 0;

const cross = (at: Point, dx: number, dy: number) => ({
  x1: at.x - dx,
  y1: at.y - dy,
  x2: at.x + dx,
  y2: at.y + dy,
});
