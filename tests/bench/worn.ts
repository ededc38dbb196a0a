// How drafts fit as worn, and how surely they come to rest: `npm run bench -- worn`, with a number behind it for more women.

import { NAMED_STYLES } from '../../src/document';
import { draft, type Style } from '../../src/engine';
import type { FitFigures } from '../../src/engine/worn/measure/figures';
import { drawBodies } from '../support/drawBodies';
import { bodyFor, wear } from '../support/wornBodies';

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
    const worn = women
      .filter(({ measurements }) =>
        draft(measurements, style).issues.every(({ severity }) => severity !== 'error'),
      )
      .map((woman) => ({ ...woman, ...wear(woman.measurements, style, woman.body) }));
    const figures = worn.map((each) => each.figures);
    const of = (pick: (each: FitFigures) => number): string => mean(figures.map(pick)).toFixed(2);
    const factors = worn.map(({ draped }) => draped.rest.factors);
    say(
      `${name}: off ${of((f) => f.standOff)} (under the bust in front ${of((f) => standOff(f, 'bustToUnderBust', 'front'))}), ` +
        `stretch ${of((f) => f.stretch)}, gape ${of((f) => f.gape)}, rise ${of((f) => f.rise)}, ` +
        `bust point ${of((f) => f.apex ?? 0)}, J ${of((f) => f.score)}; ` +
        `at rest ${worn.filter(({ draped }) => draped.rest.atRest).length} of ${worn.length}, factors at most ${Math.max(...factors)}`,
    );
    closely(name, style, worn.slice(0, LOOKED_AT_CLOSELY), say);
  }
}

function closely(
  name: string,
  style: Style,
  worn: readonly (ReturnType<typeof wear> & {
    readonly measurements: Parameters<typeof wear>[0];
    readonly body: Parameters<typeof wear>[2];
  })[],
  say: (line: string) => unknown,
): void {
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
