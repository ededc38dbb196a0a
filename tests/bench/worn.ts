// How drafts fit as worn, and how surely they come to rest: `npm run bench -- worn`, with a number
// behind it for more women. Each style is drafted as it is, and as before two of the rules of drafting.

import { NAMED_STYLES } from '../../src/document';
import { draft, type Measurements, type Style } from '../../src/engine';
import type { WornBody } from '../../src/engine/worn/body/wornBody';
import type { FitFigures } from '../../src/engine/worn/measure/figures';
import { drawBodies } from '../support/drawBodies';
import { bodyFor, wear } from '../support/wornBodies';
import { bustByShare, springByWeight } from './rulesOff';

const WOMEN = 6;
const SEED = 1988;
/** How far apart two starts of one garment may come to rest, mm. */
const STARTS = [{ up: 20 }, { up: -20 }, { off: 15 }];
/** Women whose garments are also started otherwise and meshed finely. */
const LOOKED_AT_CLOSELY = 2;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / (values.length || 1);

const standOff = ({ regions }: FitFigures, band: string, part: string): number =>
  regions.find((region) => region.band === band && region.part === part)?.standOff ?? 0;

const farthest = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, x, i) => Math.max(most, Math.abs(x - (b[i] ?? 0))), 0);

/** A garment 4 % smaller or larger than the body it is worn on. */
const scaled = <Body extends object>(body: Body, part: number): Body => ({
  ...body,
  ...Object.fromEntries(
    (['overBust', 'bust', 'underBust', 'waist', 'hip'] as const).map((name) => [
      name,
      part * ((body as Record<string, number | null>)[name] ?? 0),
    ]),
  ),
});

export function benchWorn(say: (line: string) => unknown, count = WOMEN): void {
  const women = drawBodies(count, SEED).map((measurements) => ({
    measurements,
    body: bodyFor(measurements),
  }));
  say(`garments as worn by ${count} drawn women, seed ${SEED}; mm, and % of stretch`);
  for (const [name, { style }] of NAMED_STYLES) {
    if (style.shoulders) continue;
    const worn = wornBy(women, () => style);
    say(`${name}: ${summary(worn)}`);
    say(`${name}, the bust by a fixed share: ${summary(wornBy(women, () => bustByShare(style)))}`);
    say(
      `${name}, spring by weight: ${summary(wornBy(women, ({ measurements }) => springByWeight(style, measurements)))}`,
    );
    closely(name, style, worn.slice(0, LOOKED_AT_CLOSELY), say);
  }
}

interface Woman {
  readonly measurements: Measurements;
  readonly body: WornBody;
}

type Wearing = Woman & ReturnType<typeof wear>;

/** A style on all women for whom it can be sewn. */
const wornBy = (women: readonly Woman[], styleFor: (woman: Woman) => Style): Wearing[] =>
  women.flatMap((woman) => {
    const { measurements, body } = woman;
    const style = styleFor(woman);
    const canBeSewn = draft(measurements, style).issues.every(({ severity }) => severity !== 'error');
    return canBeSewn ? [{ ...woman, ...wear(measurements, style, body) }] : [];
  });

function summary(worn: readonly Wearing[]): string {
  const figures = worn.map((each) => each.figures);
  const of = (pick: (each: FitFigures) => number): string => mean(figures.map(pick)).toFixed(2);
  const factors = worn.map(({ draped }) => draped.rest.factors);
  return (
    `off ${of((f) => f.standOff)} (under the bust in front ${of((f) => standOff(f, 'bustToUnderBust', 'front'))}), ` +
    `stretch ${of((f) => f.stretch)}, gape ${of((f) => f.gape)} (hem in front ${of((f) => gapeOf(f, 'hem', 'front'))}), ` +
    `rise ${of((f) => f.rise)}, bust point ${of((f) => f.apex ?? 0)}, J ${of((f) => f.score)}; ` +
    `at rest ${worn.filter(({ draped }) => draped.rest.atRest).length} of ${worn.length}, factors at most ${Math.max(...factors)}`
  );
}

const gapeOf = ({ edges }: FitFigures, edge: string, part: string): number =>
  edges.find((each) => each.edge === edge && each.part === part)?.gape ?? 0;

function closely(name: string, style: Style, worn: readonly Wearing[], say: (line: string) => unknown): void {
  const apart: number[] = [];
  const finer: number[] = [];
  const worse: number[] = [];
  for (const { measurements, body, draped, figures } of worn) {
    for (const start of STARTS)
      apart.push(farthest(wear(measurements, style, body, { start }).draped.places, draped.places));
    finer.push(Math.abs(wear(measurements, style, body, { width: 4.5 }).figures.standOff - figures.standOff));
    for (const part of [0.96, 1.04])
      worse.push(wear(scaled(measurements, part), style, body).figures.score - figures.score);
  }
  say(
    `${name}: starts come to rest within ${Math.max(...apart).toFixed(2)} mm; stand-off at 4.5 mm differs by ${Math.max(...finer).toFixed(2)} mm; ` +
      `4 % smaller or larger adds at least ${Math.min(...worse).toFixed(2)} to J`,
  );
}
