// The panels on one page, or in the light of a projector.

import type { PlacedPanel } from '../../../paper';
import { PanelInk } from './PanelStrokes';

interface PageDrawingProps {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly panels: readonly PlacedPanel[];
  /** Calibration squares, where the page has them. */
  readonly squares?: readonly { readonly left: number; readonly top: number; readonly sideMm: number }[];
  /** Side of the squares of a grid over a dark ground; none on paper. mm */
  readonly gridMm?: number;
  /** Weight of the lines where it is the maker's choice. */
  readonly lineMm?: number;
}

export function PageDrawing({ widthMm, heightMm, panels, squares = [], gridMm, lineMm }: PageDrawingProps) {
  const ticks = (length: number): number[] =>
    gridMm ? Array.from({ length: Math.ceil(length / gridMm) - 1 }, (_, i) => (i + 1) * gridMm) : [];
  return (
    <svg
      className={gridMm ? 'plan-drawing projected' : 'plan-drawing'}
      role="img"
      aria-label={`${panels.length} panels on one ${gridMm ? 'picture' : 'page'}`}
      viewBox={`-6 -6 ${widthMm + 12} ${heightMm + 12}`}
      strokeWidth={lineMm}
    >
      <rect className="window" width={widthMm} height={heightMm} />
      {gridMm ? (
        <path
          className="grid"
          d={[
            ...ticks(widthMm).map((x) => `M${x} 0V${heightMm}`),
            ...ticks(heightMm).map((y) => `M0 ${y}H${widthMm}`),
          ].join('')}
        />
      ) : null}
      {squares.map(({ left, top, sideMm }) => (
        <rect key={left} className="square" x={left} y={top} width={sideMm} height={sideMm} />
      ))}
      {panels.map((panel) => (
        <PanelInk key={panel.piece.id} panel={panel} />
      ))}
    </svg>
  );
}
