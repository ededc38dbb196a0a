// What the colours mean: each band with its limits.

import { type Unit, WORN } from '../../document';
import { type Shading, scaleOf } from './view/shades';

/** Room for the unit beside the bands. */
const UNIT_ROOM = 26;

interface WornLegendProps {
  readonly shading: Shading;
  readonly unit: Unit;
  /** Without the sentence, which then only names the picture. */
  readonly brief?: boolean;
}

export function WornLegend({ shading, unit, brief = false }: WornLegendProps) {
  if (shading === 'cloth') return null;
  const { limits, colours } = scaleOf(shading, unit);
  const sentence = shading === 'standOff' ? WORN.legend.standOff({ unit }) : WORN.legend[shading];
  const percent = (part: number): number => Math.round(255 * part);
  return (
    <figure className="worn-legend">
      <svg viewBox={`0 0 ${colours.length * 40 + UNIT_ROOM} 30`} role="img" aria-label={sentence}>
        {colours.map((colour, i) => (
          <rect
            key={limits[i]}
            x={i * 40}
            y={0}
            width={40}
            height={14}
            fill={`rgb(${colour.map(percent).join(' ')})`}
          />
        ))}
        {limits.slice(1, -1).map((limit, i) => (
          <g key={limit}>
            <line x1={(i + 1) * 40} x2={(i + 1) * 40} y1={0} y2={17} />
            <text x={(i + 1) * 40} y={28}>
              {shading === 'standOff'
                ? WORN.legend.length({ mm: limit, unit })
                : WORN.legend.number({ value: limit })}
            </text>
          </g>
        ))}
        <text className="worn-unit" x={colours.length * 40 + 5} y={11}>
          {shading === 'standOff' ? WORN.legend.unit.standOff[unit] : WORN.legend.unit[shading]}
        </text>
      </svg>
      {brief ? null : <figcaption className="hint">{sentence}</figcaption>}
    </figure>
  );
}
