// How fast a draft is made, printed and not judged: `npm run bench`; and the screen, the paper or a batch of clients:
// `npm run bench -- screen`, `-- paper`, `-- batch`; many alterations against none, `-- altered`; how drafts fit as worn,
// `-- worn`; and how densely cloth is laid, `-- lay FILE…`.

import { drawBodies } from '../support/bodies/drawBodies';

const RUNS = 3000;
const SEED = 1988;

/** The survey has no width of shoulders, and shouldered styles need one. mm */
const ACROSS_SHOULDER_MM = 385;

const bodies = drawBodies(RUNS, SEED).map((body) => ({ ...body, acrossShoulder: ACROSS_SHOULDER_MM }));
const say = (line: string): boolean => process.stdout.write(`${line}\n`);

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
  const asked = process.argv.slice(process.argv.indexOf('worn') + 1);
  const count = Number(asked.find((each) => Number(each) > 0));
  benchWorn(
    say,
    count > 0 ? count : undefined,
    asked.filter((each) => Number.isNaN(Number(each))),
  );
} else if (process.argv.includes('lay')) {
  const { benchLay } = await import('./lay');
  benchLay(process.argv.slice(process.argv.indexOf('lay') + 1), say);
} else if (process.argv.includes('batch')) {
  const { benchBatch } = await import('./batch');
  await benchBatch(bodies, say);
} else if (process.argv.includes('altered')) {
  const { benchAltered } = await import('./drafts');
  await benchAltered(bodies, say);
} else {
  say(`${RUNS} full drafts on drawn bodies, seed ${SEED}`);
  const { benchDrafts } = await import('./drafts');
  await benchDrafts(bodies, say);
}
