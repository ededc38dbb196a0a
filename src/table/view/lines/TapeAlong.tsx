// A tape to the drawing's scale along the table's right edge, counted from the height the levels are counted from.

import { memo } from 'react';
import { MM_PER, type Unit } from '../../../document';

interface TapeAlongProps {
  /** The part of the table in view, canvas mm. */
  readonly right: number;
  readonly top: number;
  readonly height: number;
  /** One px in canvas mm. */
  readonly px: number;
  readonly unit: Unit;
}

const WIDTH_PX = 22;
/** Numbers stand no nearer to each other than this. px */
const NUMBER_PX = 34;

/** Parts of the unit at which there is a tick, from the smallest. */
const PARTS = { in: [0.25, 0.5, 1], cm: [0.5, 1, 5] } as const;
/** Counts of the unit between two numbers, from the nearest. */
const COUNTS = { in: [1, 2, 6, 12], cm: [1, 5, 10, 20] } as const;

export const TapeAlong = memo(function TapeAlong({ right, top, height, px, unit }: TapeAlongProps) {
  const mm = MM_PER[unit];
  const left = right - WIDTH_PX * px;
  const [fine, , whole] = PARTS[unit];
  const part = PARTS[unit].find((each) => each * mm >= 4 * px) ?? whole;
  const count = COUNTS[unit].find((each) => each * mm >= NUMBER_PX * px) ?? COUNTS[unit][3];
  const from = Math.max(0, Math.ceil(top / mm / part));
  const ticks = Array.from(
    { length: Math.max(0, Math.floor((top + height) / mm / part) - from + 1) },
    (_, i) => (from + i) * part,
  );
  const long = (at: number): number => (at % whole === 0 ? 9 : at % (2 * fine) === 0 ? 6 : 4);
  const numbers = ticks.filter((at) => at % count === 0 && at > 0);
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of an SVG takes no focus
    <g className="tape-along" aria-hidden="true">
      <rect x={left} y={top} width={WIDTH_PX * px} height={height} />
      <path d={ticks.map((at) => `M${left} ${at * mm}h${long(at) * px}`).join('')} />
      {numbers.map((at) => (
        <text key={at} x={right - 3 * px} y={at * mm + 4 * px} fontSize={11 * px}>
          {at}
        </text>
      ))}
    </g>
  );
});
