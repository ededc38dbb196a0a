// A drawing of the body, from the front or from behind, with the path of the tape for the measurement in hand.

import type { MeasurementName } from '../../engine';

/** Half outline from neck to knee, mirrored for the other half; drawn for this form, in its own units. */
const HALF =
  'M100 18C92 18 87 26 87 36C87 46 91 52 92 58C92 66 88 70 78 74C64 79 52 82 46 90C41 98 40 112 38 128C36 146 33 166 30 190L37 192C42 170 47 150 52 132C53 146 54 152 55 160C57 176 64 186 65 204C65 220 57 236 53 254C50 270 51 290 55 316L100 316L100 18Z';

interface TapePath {
  readonly d: string;
  readonly isGirth: boolean;
}

const round = (y: number, half: number): TapePath => ({
  d: `M${100 - half} ${y}C${100 - half / 2} ${y + 9} ${100 + half / 2} ${y + 9} ${100 + half} ${y}`,
  isGirth: true,
});
/** Across the front only, with a mark at each side. */
const across = (y: number, half: number): TapePath => ({
  d: `M${100 - half} ${y - 5}v10M${100 - half} ${y}C${100 - half / 2} ${y + 9} ${100 + half / 2} ${y + 9} ${100 + half} ${y}M${100 + half} ${y - 5}v10`,
  isGirth: false,
});
const down = (from: number, to: number, x = 86): TapePath => ({
  d: `M${x} ${from}L${x} ${to}`,
  isGirth: false,
});

const TAPE: Readonly<Record<MeasurementName, TapePath>> = {
  overBust: round(112, 47),
  bust: round(134, 48),
  underBust: round(156, 45),
  waist: round(202, 35),
  highHip: round(228, 41),
  hip: round(256, 47),
  neckToBust: { d: 'M84 70L78 136', isGirth: false },
  neckToUnderBust: { d: 'M84 70L78 136L78 158', isGirth: false },
  neckToWaist: { d: 'M84 70L78 136L80 204', isGirth: false },
  neckToHip: { d: 'M84 70L78 136L80 204L78 258', isGirth: false },
  waistToHighHip: { d: 'M65 203L59 229', isGirth: false },
  bustPointWidth: { d: 'M78 136L122 136', isGirth: false },
  acrossShoulder: { d: 'M50 86C70 78 130 78 150 86', isGirth: false },
  neckWidth: { d: 'M84 68L116 68', isGirth: false },
  backNeckToWaist: down(62, 204, 100),
  underarmToWaist: { d: 'M53 118L64 202', isGirth: false },
  frontBustArc: across(134, 46),
  frontWaistArc: across(202, 33),
  frontHipArc: across(256, 45),
  shoulderLength: { d: 'M84 70L50 86', isGirth: false },
  shoulderDrop: { d: 'M84 70H50M50 70V86', isGirth: false },
  chestWidth: { d: 'M56 100C76 104 124 104 144 100', isGirth: false },
  backWidth: { d: 'M54 102C76 98 124 98 146 102', isGirth: false },
  upperArm: { d: 'M36 126C40 131 47 132 52 128', isGirth: true },
  waistToLap: { d: 'M100 206L100 262', isGirth: false },
};

/** Bust points and fullness; from behind shoulder blades, spine and seat. */
const DETAIL = {
  front: 'M62 134C64 150 90 152 94 138M138 134C136 150 110 152 106 138M78 134v.1M122 134v.1',
  behind: 'M70 108C70 124 76 134 88 136M130 108C130 124 124 134 112 136M100 74V216M100 262V296',
} as const;

const BEHIND: ReadonlySet<MeasurementName> = new Set([
  'acrossShoulder',
  'neckWidth',
  'backNeckToWaist',
  'backWidth',
]);

/** Whether the tape lies on the back, which is then what is drawn. */
export const isBehind = (measurement: MeasurementName | null): boolean =>
  measurement !== null && BEHIND.has(measurement);

export function BodyFigure({ measurement }: { measurement: MeasurementName | null }) {
  const lengths = measurement ? TAPE[measurement] : null;
  return (
    <svg className="body-figure" viewBox="20 8 160 312" aria-hidden="true">
      <path className="body" d={HALF} />
      <path className="body" d={HALF} transform="matrix(-1 0 0 1 200 0)" />
      <path className="body-detail" d={isBehind(measurement) ? DETAIL.behind : DETAIL.front} />
      {lengths ? <path className={lengths.isGirth ? 'tape round' : 'tape'} d={lengths.d} /> : null}
    </svg>
  );
}
