// A lay plan to scale.

import { useMemo, useRef } from 'react';
import { LAY, pieceLabel } from '../../../document';
import { type LayPlan, labelAt, laidWidth } from '../../../paper';
import { useSize } from '../../components/useSize';

/** The smallest letters of a name, px. */
const LEAST_PX = 12;
/** A letter is about so wide, as a part of its size. */
const LETTER = 0.55;

export function LayDrawing({ plan }: { plan: LayPlan }) {
  const drawing = useRef<SVGSVGElement>(null);
  const [length, width] = [Math.max(1, plan.lengthMm), laidWidth(plan.cloth)];
  const size = useSize(drawing);
  const outlines = useMemo(
    () =>
      plan.placed.map(({ piece, outline }) => ({
        name: pieceLabel(piece),
        isFront: piece.block === 'front',
        path: `M${outline.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`,
        label: labelAt(outline),
      })),
    [plan],
  );
  const pxPerMm = Math.min(size.width / length, size.height / width);
  return (
    <svg
      ref={drawing}
      className="plan-drawing lay-drawing"
      role="img"
      aria-label={LAY.drawing({ panels: plan.placed.length })}
      viewBox={`-2 -2 ${length + 4} ${width + 4}`}
    >
      <rect className="lay-cloth" x={0} y={0} width={length} height={width} />
      {outlines.map(({ name, isFront, path, label: { at, roomMm } }, i) => {
        const sizeMm = pxPerMm > 0 ? LEAST_PX / pxPerMm : 0;
        const fits = sizeMm > 0 && name.length * LETTER * sizeMm < roomMm;
        return (
          // The outlines of one cloth keep their order.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <g key={i} className={isFront ? 'lay-front' : 'lay-back'}>
            <title>{name}</title>
            <path d={path} />
            {fits ? (
              <text x={at.x} y={at.y + sizeMm / 3} fontSize={sizeMm} textAnchor="middle">
                {name}
              </text>
            ) : null}
          </g>
        );
      })}
    </svg>
  );
}
