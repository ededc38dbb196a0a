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
          <path className="taken" d={takenCloth(wedge, span, place)} />
          <path className="leg" d={pathDown(wedge.innerLeg, span.top, span.hem, place)} />
          <path className="leg" d={pathDown(wedge.outerLeg, span.top, span.hem, place)} />
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
      <path className="side-seam" d={pathDown(block.sideSeam, span.top, span.hem, place)} />
    </g>
  );
});

/** The cloth between the two legs. */
function takenCloth(
  wedge: DraftedWedge,
  span: { top: number; hem: number },
  place: (point: Point) => Point,
): string {
  const inner = pointsDown(wedge.innerLeg, span.top, span.hem);
  const outer = pointsDown(wedge.outerLeg, span.top, span.hem).reverse();
  return closedPath([...inner, ...outer].map(place));
}

const bustHeight = (draft: Draft): number => draft.levels.find((level) => level.name === 'bust')?.y ?? 0;

const cross = (at: Point, dx: number, dy: number) => ({
  x1: at.x - dx,
  y1: at.y - dy,
  x2: at.x + dx,
  y2: at.y + dy,
});
