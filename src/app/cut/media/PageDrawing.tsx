// The drawing of the panels on one page, or in the picture of a projector.

import { useRef } from 'react';
import { CUT } from '../../../document';
import type { PlacedPanel } from '../../../paper';
import { PanelStrokes } from './PanelStrokes';
import { usePxPerMm } from './usePxPerMm';

interface PageDrawingProps {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly panels: readonly PlacedPanel[];
  /** Calibration squares, where the page has them. */
  readonly squares?: readonly { readonly left: number; readonly top: number; readonly sideMm: number }[];
  /** Side of a square of the projector's grid, mm; undefined on paper, which has no grid and a light ground. */
  readonly gridMm?: number;
  /** Width of the lines, mm; undefined where the styles set it. */
  readonly lineMm?: number;
}

export function PageDrawing({ widthMm, heightMm, panels, squares = [], gridMm, lineMm }: PageDrawingProps) {
  /** Distances of the grid lines from the start of a side, mm. */
  const gridLines = (length: number): number[] =>
    gridMm ? Array.from({ length: Math.ceil(length / gridMm) - 1 }, (_, i) => (i + 1) * gridMm) : [];
  const drawing = useRef<SVGSVGElement>(null);
  const pxPerMm = usePxPerMm(drawing, widthMm + 12, heightMm + 12);
  const label = gridMm ? CUT.plan.panelsOnPicture : CUT.plan.panelsOnPage;
  return (
    <svg
      ref={drawing}
      className={gridMm ? 'plan-drawing projected' : 'plan-drawing'}
      role="img"
      aria-label={label({ panels: panels.length })}
      viewBox={`-6 -6 ${widthMm + 12} ${heightMm + 12}`}
      strokeWidth={lineMm}
    >
      <rect className="window" width={widthMm} height={heightMm} />
      {gridMm ? (
        <path
          className="grid"
          d={[
            ...gridLines(widthMm).map((x) => `M${x} 0V${heightMm}`),
            ...gridLines(heightMm).map((y) => `M0 ${y}H${widthMm}`),
          ].join('')}
        />
      ) : null}
      {squares.map(({ left, top, sideMm }) => (
        <rect key={left} className="square" x={left} y={top} width={sideMm} height={sideMm} />
      ))}
      {panels.map((panel) => (
        <PanelStrokes key={panel.piece.id} panel={panel} pxPerMm={pxPerMm} />
      ))}
    </svg>
  );
}
