// How fast a draft is made, printed and not judged: every ready style, the most wedges there may be, and many alterations.

import { performance } from 'node:perf_hooks';
import { NAMED_STYLES } from '../../src/document';
import { type Alteration, DEFAULT_STYLE, type Measurements, type Style, type Wedge } from '../../src/engine';
import { at, landmark, seamOf, taken } from '../support/styles/alterations';
import { builtEngine } from './builtEngine';

/** Drafts made before any is timed: until then one in a hundred still waits for its code to be made fast. */
const WARM = 1000;

/** Six wedges on either block, the most there may be. */
const RICHEST: Style = {
  ...DEFAULT_STYLE,
  balance: { sideShare: 0.22, cap: 12 },
  wedges: (['front', 'back'] as const).flatMap((block) =>
    [-0.7, -0.4, 0, 0.3, 0.55, 0.8].map(
      (station, i): Wedge => ({
        id: `${block}-${i}`,
        kind: 'through',
        block,
        station,
        stationAt: {},
        sizing: 'balanced',
        intake: {},
        weight: 1,
      }),
    ),
  ),
};

/** Alterations of every kind that leave each draft one that can be cut. */
const TWENTY: readonly Alteration[] = Array.from({ length: 20 }, (_, i): Alteration => {
  const seams = [
    seamOf('front-1', 'front-2'),
    seamOf('front-2', 'front-3'),
    seamOf('front-3', 'back-3'),
  ] as const;
  if (i % 5 === 4)
    return {
      kind: 'length',
      between: ['bust', 'waist'],
      side: 'both',
      at: [
        { place: landmark('centreBack'), by: 0.2 * i },
        { place: landmark('side'), by: 0 },
      ],
    };
  if (i % 5 === 3) return { kind: 'edge', edge: 'top', side: 'both', at: [{ place: seams[1], by: 0.1 * i }] };
  const level = (['waist', 'bust', 'hip'] as const)[Math.floor(i / 5) % 3] ?? 'waist';
  return taken(seams[i % 3] ?? seams[0], [at(level, 0.3, 0.2)]);
});

/** Times a full draft of each style on each body. */
export async function benchDrafts(
  bodies: readonly Measurements[],
  say: (line: string) => boolean,
): Promise<void> {
  const { draft } = await builtEngine();
  const run = (name: string, style: Style, alterations: readonly Alteration[] = []): void => {
    for (const body of bodies.slice(0, WARM)) draft(body, style, alterations);
    let pieces = 0;
    const start = performance.now();
    const times = bodies.map((body) => {
      const before = performance.now();
      pieces += draft(body, style, alterations).pieces.length;
      return performance.now() - before;
    });
    const seconds = (performance.now() - start) / 1000;
    times.sort((a, b) => a - b);
    const share = (part: number): string => (times[Math.floor(part * (times.length - 1))] ?? 0).toFixed(2);
    say(
      `${name}: median ${share(0.5)} ms, p99 ${share(0.99)} ms, worst ${share(1)} ms; ${Math.round(bodies.length / seconds)} clients and ${Math.round(pieces / seconds)} pieces a second`,
    );
  };
  for (const [name, { style }] of NAMED_STYLES) run(name, style);
  run('six wedges a block', RICHEST);
  run('default with twenty alterations', DEFAULT_STYLE, TWENTY);
}

/** Bodies drafted in a row, and rounds: a round drafts each without alterations and with them. */
const [ROW, ROUNDS] = [40, 200];

/** Times drafts with twenty alterations against drafts without, in turns, so that what else the machine does slows both alike. */
export async function benchAltered(
  bodies: readonly Measurements[],
  say: (line: string) => boolean,
): Promise<void> {
  const { draft } = await builtEngine();
  const row = bodies.slice(0, ROW);
  const timed = (alterations: readonly Alteration[]): number => {
    const before = performance.now();
    for (const body of row) draft(body, DEFAULT_STYLE, alterations);
    return performance.now() - before;
  };
  const [plain, altered, ratios]: [number[], number[], number[]] = [[], [], []];
  for (let i = -WARM / ROW; i < ROUNDS; i += 1) {
    const first = timed(i % 2 === 0 ? [] : TWENTY);
    const second = timed(i % 2 === 0 ? TWENTY : []);
    if (i < 0) continue;
    const [without, withThem] = i % 2 === 0 ? [first, second] : [second, first];
    plain.push(without);
    altered.push(withThem);
    ratios.push(withThem / without);
  }
  const middle = (values: number[]): number =>
    values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  const ms = (values: number[]): string => (middle(values) / ROW).toFixed(3);
  say(
    `twenty alterations: ${middle(ratios).toFixed(3)} times a draft without (${ms(altered)} against ${ms(plain)} ms), medians of ${ROUNDS} rounds in turns`,
  );
}
