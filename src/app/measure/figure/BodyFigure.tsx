// A drawing of the body, from the front or from behind, with the tape laid for the measurement in hand and a line that leads from
// it to its reading.

import type { MeasurementName } from '../../../engine';
import { TAPE_PATHS, type TapePath } from './tapePaths';

/** Half outline from crown to knee, mirrored for the other half; drawn for this form, in its own units. */
const HALF =
  'M0 -8C-12 -8 -19 2 -19 16C-19 28 -14 36 -11 42C-10 50 -12 56 -22 61C-42 69 -60 73 -67 88C-72 99 -71 116 -70 128C-72 150 -78 170 -80 190C-83 212 -89 236 -93 258C-95 268 -97 282 -94 292L-87 290C-83 276 -80 262 -76 248C-70 228 -64 208 -60 188C-58 176 -56 160 -54 146C-53 158 -52 166 -51 174C-50 186 -43 200 -40 214C-38 226 -42 240 -50 256C-57 270 -62 290 -62 310C-62 340 -56 372 -50 404C-47 422 -46 440 -45 456';
const MIRRORED = 'scale(-1 1)';
/** Covers the middle, where the two halves meet. */
const MIDDLE = 'M-1 -7.500H1V456H-1Z';

/** Bust, collar, navel and legs; from behind shoulder blades, spine and seat. */
const DETAIL = {
  front:
    'M-42 122C-46 140 -38 154 -24 153C-14 152 -7 146 -4 136M42 122C46 140 38 154 24 153C14 152 7 146 4 136M-22 61C-14 66 14 66 22 61M0 70v6M0 320V456M0 226v4',
  behind:
    'M-40 94C-42 112 -34 126 -20 128M40 94C42 112 34 126 20 128M0 66V204M-22 61C-14 56 14 56 22 61M0 276V456M-46 318C-34 330 -12 330 0 322M46 318C34 330 12 330 0 322',
} as const;

/** The part of the drawing that is shown: the body with room at its right for the leading line, or what lies round the tape. */
const WHOLE = { x: -118, y: -14, width: 290, height: 476 } as const;
const AROUND = { width: 200, height: 284 } as const;

/** How far down the drawing the reading of a tape is written, as a part of its height. */
export const readingAt = (measurement: MeasurementName): number =>
  (readingY(TAPE_PATHS[measurement]) - WHOLE.y) / WHOLE.height;

/** What is written begins so far down and no farther, so that it has room below. */
const readingY = ({ y }: TapePath): number => Math.min(Math.max(y, 40), 190);

/** Whether the tape lies on the back. */
export const isBehind = (measurement: MeasurementName | null): boolean =>
  measurement !== null && TAPE_PATHS[measurement].behind === true;

interface BodyFigureProps {
  readonly measurement: MeasurementName | null;
  /** Only what lies round the tape is shown. */
  readonly near?: boolean;
}

export function BodyFigure({ measurement, near = false }: BodyFigureProps) {
  const tape = measurement ? TAPE_PATHS[measurement] : null;
  return (
    <svg className="body-figure" viewBox={near ? around(tape) : box(WHOLE)} aria-hidden="true">
      <g className="body">
        <path d={`${HALF}L0 456Z`} />
        <path d={`${HALF}L0 456Z`} transform={MIRRORED} />
        <path d={MIDDLE} />
      </g>
      <g className="body-line">
        <path d={HALF} />
        <path d={HALF} transform={MIRRORED} />
      </g>
      <path className="body-detail" d={isBehind(measurement) ? DETAIL.behind : DETAIL.front} />
      {tape ? <Tape tape={tape} /> : null}
      {tape && !near ? <path className="leader" d={leader(tape)} /> : null}
    </svg>
  );
}

/** A band with the marks of its inches, dashed where it passes behind the body. */
function Tape({ tape: { d, hidden } }: { tape: TapePath }) {
  return (
    <g className={hidden === undefined ? 'tape' : 'tape round'}>
      {hidden === undefined ? null : <path className="tape-hidden" d={hidden} />}
      <path className="tape-rim" d={d} />
      <path className="tape-band" d={d} />
      <path className="tape-marks" d={d} />
    </g>
  );
}

/** From the tape to the right edge, where the reading is written. */
function leader(tape: TapePath): string {
  const [from, to] = [tape.y, readingY(tape)];
  const right = WHOLE.x + WHOLE.width;
  return from === to
    ? `M${tape.end + 2} ${from}H${right}`
    : `M${tape.end + 2} ${from}H112L136 ${to}H${right}`;
}

function around(tape: TapePath | null): string {
  const top = Math.min(Math.max((tape?.y ?? 150) - AROUND.height / 2, WHOLE.y), 456 - AROUND.height);
  return box({ x: -AROUND.width / 2, y: top, ...AROUND });
}

const box = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }): string =>
  `${x} ${y} ${width} ${height}`;
