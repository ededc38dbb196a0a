// How fast a draft is made, printed and not judged: `npm run bench`; and the screen, the paper or a batch of clients:
// `npm run bench -- screen`, `-- paper`, `-- batch`; and how drafts fit as worn, `-- worn`; and how densely cloth
// is laid, `-- lay FILE…`.

import { performance } from 'node:perf_hooks';
import { type Alteration, DEFAULT_STYLE, draft, type Style, type Wedge } from '../../src/engine';
import { at, landmark, seamOf, taken } from '../support/alterations';
import { drawBodies } from '../support/drawBodies';

const RUNS = 3000;
const SEED = 1988;
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

const bodies = drawBodies(RUNS, SEED);
const say = (line: string): boolean => process.stdout.write(`${line}\n`);

function run(name: string, style: Style, alterations: readonly Alteration[] = []): void {
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
    `${name}: median ${share(0.5)} ms, p99 ${share(0.99)} ms, worst ${share(1)} ms; ${Math.round(pieces / seconds)} pieces a second`,
  );
}

if (process.argv.includes('screen')) {
  const { benchScreen } = await import('./screen');
  await benchScreen((line) => say(line));
} else if (process.argv.includes('paper')) {
  const { benchPaper } = await import('./paper');
  await benchPaper(say);
} else if (process.argv.includes('monkey')) {
  const { benchMonkey } = await import('./monkey');
  await benchMonkey((line) => say(line));
} else if (process.argv.includes('kept')) {
  const { benchKept } = await import('./kept');
  await benchKept((line) => say(line));
} else if (process.argv.includes('worn')) {
  const { benchWorn } = await import('./worn');
  const count = Number(process.argv.at(-1));
  benchWorn(say, count > 0 ? count : undefined);
} else if (process.argv.includes('lay')) {
  const { benchLay } = await import('./lay');
  benchLay(process.argv.slice(process.argv.indexOf('lay') + 1), say);
} else if (process.argv.includes('batch')) {
  const { benchBatch } = await import('./batch');
  await benchBatch(bodies, say);
} else {
  say(`${RUNS} full drafts on drawn bodies, seed ${SEED}`);
  run('default style', DEFAULT_STYLE);
  run('six wedges a block', RICHEST);
  run('default style with twenty alterations', DEFAULT_STYLE, TWENTY);
}
