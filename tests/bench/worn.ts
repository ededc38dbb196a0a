// How drafts fit as worn, and how surely they come to rest: `npm run bench -- worn`, with a number behind it for more women and names
// of styles for these alone. Each style is drafted as it is, and as before two of the rules of drafting; each garment is started from
// disturbed places, meshed more finely, cut too small and too large, drafted with unlike sides and with darts.

import { NAMED_STYLES } from '../../src/document';
import {
  type BodySides,
  draft,
  draftWhole,
  type Measurements,
  type Style,
  sewGarment,
} from '../../src/engine';
import type { WornBody } from '../../src/engine/worn/body/wornBody';
import type { FitFigures } from '../../src/engine/worn/measure/figures';
import { goresOnSphere, ordersOf } from '../engine/worn/knownShapes';
import { drawBodies } from '../support/bodies/drawBodies';
import { bodyFor, DISTURBED, energyOf, farthestApart, wear } from '../support/bodies/wornBodies';
import { bustByShare, springByWeight } from './rulesOff';

const WOMEN = 6;
const SEED = 1988;
/** The survey has no width of shoulders, and off-shoulder styles need one. mm */
const ACROSS_SHOULDER_MM = 385;
/** Rests farther apart are two, mm. */
const APART_MM = 0.5;
/** Women whose garments are also meshed finely. */
const MESHED_FINELY = 2;
/** A body that differs left to right. */
const SIDES: BodySides = { leftShare: { waist: 0.52, hip: 0.51 }, rightLower: {} };

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / (values.length || 1);

const standOff = ({ regions }: FitFigures, band: string, part: string): number =>
  regions.find((region) => region.band === band && region.part === part)?.standOff ?? 0;

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

const GORES = [16, 24, 32, 48, 64];

/** @param names of the ready styles to look at; all that can be judged where there are none */
export function benchWorn(
  say: (line: string) => unknown,
  count = WOMEN,
  names: readonly string[] = [],
): void {
  const drawn = drawBodies(count, SEED);
  const womenIn = ({ shoulders }: Style): Woman[] =>
    drawn
      .map((body) => (shoulders ? { ...body, acrossShoulder: ACROSS_SHOULDER_MM } : body))
      .map((measurements) => ({ measurements, body: bodyFor(measurements) }));
  say(`garments as worn by ${count} drawn women, seed ${SEED}; mm, and % of stretch`);
  for (const [name, { style }] of NAMED_STYLES) {
    // The body has no arms: what hangs from shoulders is not judged.
    if (style.shoulders && style.shoulders.bandAbove === undefined) continue;
    if (names.length > 0 && !names.includes(name)) continue;
    const women = womenIn(style);
    const worn = wornBy(women, () => style);
    say(`${name}: ${summary(worn)}`);
    say(`${name}, the bust by a fixed share: ${summary(wornBy(women, () => bustByShare(style)))}`);
    say(
      `${name}, spring by weight: ${summary(wornBy(women, ({ measurements }) => springByWeight(style, measurements)))}`,
    );
    closely(name, style, worn, say);
    disturbed(name, style, worn, say);
    say(
      `${name}, sides unlike: ${sewnAnew(women, style, SIDES)}; with darts: ${sewnAnew(women, withDarts(style))}`,
    );
  }
  const strains = GORES.map((n) => goresOnSphere(n).strain);
  say(
    `gores on a sphere: strain ${strains.map((each) => `${(100 * each).toFixed(4)} %`).join(', ')} for ${GORES.join(', ')}; orders ${ordersOf(
      GORES,
      strains,
    )
      .map((order) => order.toFixed(2))
      .join(', ')}`,
  );
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
  const others = worn.flatMap(({ draped }) => draped.other?.apart ?? []);
  return (
    `off ${of((f) => f.standOff)} (under the bust in front ${of((f) => standOff(f, 'bustToUnderBust', 'front'))}), ` +
    `stretch ${of((f) => f.stretch)}, girth ${of((f) => f.girth)}, gape ${of((f) => f.gape)} (top in front ${of((f) => gapeOf(f, 'top', 'front'))}, behind ${of((f) => gapeOf(f, 'top', 'back'))}, hem in front ${of((f) => gapeOf(f, 'hem', 'front'))}), ` +
    `rise ${of((f) => f.rise)}, bust point ${of((f) => f.apex ?? 0)}, J ${of((f) => f.score)}; ` +
    `at rest ${worn.filter(({ draped }) => draped.rest.atRest).length} of ${worn.length}, factors ${mean(factors).toFixed(1)}, at most ${Math.max(...factors)}; ` +
    `two rests ${others.length}${others.length > 0 ? `, ${Math.max(...others).toFixed(1)} mm apart at most` : ''}`
  );
}

const gapeOf = ({ edges }: FitFigures, edge: string, part: string): number =>
  edges.find((each) => each.edge === edge && each.part === part)?.gape ?? 0;

function closely(name: string, style: Style, worn: readonly Wearing[], say: (line: string) => unknown): void {
  const factors: number[] = [];
  const finer: number[] = [];
  const worse: number[] = [];
  for (const { measurements, body, figures } of worn) {
    if (finer.length < MESHED_FINELY) {
      const fine = wear(measurements, style, body, { width: 4.5 }).figures;
      finer.push(Math.abs(fine.standOff - figures.standOff));
    }
    for (const part of [0.96, 1.04]) {
      const other = wear(scaled(measurements, part), style, body);
      worse.push(other.figures.score - figures.score);
      factors.push(other.draped.rest.factors);
    }
  }
  say(
    `${name}: stand-off at 4.5 mm differs by ${Math.max(...finer).toFixed(3)} mm; ` +
      `4 % smaller or larger adds at least ${Math.min(...worse).toFixed(2)} to J, factors at most ${Math.max(...factors)}`,
  );
}

/** Whether garments come to rest where they are shown when all that the solver starts from is disturbed. */
function disturbed(
  name: string,
  style: Style,
  worn: readonly Wearing[],
  say: (line: string) => unknown,
): void {
  const near: number[] = [];
  const elsewhere: string[] = [];
  for (const [woman, { measurements, body, draped }] of worn.entries())
    for (const [how, disturb] of DISTURBED) {
      const other = wear(measurements, style, body, { disturb }).draped;
      const apart = farthestApart(other, draped);
      const more = 100 * (energyOf(other) / energyOf(draped) - 1);
      if (!other.rest.atRest) elsewhere.push(`woman ${woman} ${how} NOT AT REST`);
      else if (apart <= APART_MM) near.push(apart);
      else elsewhere.push(`woman ${woman} ${how} ${apart.toFixed(1)} mm, ${more.toFixed(2)} % more energy`);
    }
  say(
    `${name}: with disturbed starts ${near.length} of ${near.length + elsewhere.length} within ${Math.max(0, ...near).toFixed(3)} mm` +
      `${elsewhere.length > 0 ? `; ${elsewhere.join('; ')}` : ''}`,
  );
}

/** How many of a style's garments come to rest, and the most factors that a half took. */
function sewnAnew(women: readonly Woman[], style: Style, sides: BodySides | null = null): string {
  const sewn = women
    .map(({ measurements }) => ({ measurements, drafted: draftWhole(measurements, style, sides) }))
    .filter(({ drafted }) => drafted.issues.every(({ severity }) => severity !== 'error'))
    .map(({ measurements, drafted }) => sewGarment(drafted, measurements, style, sides));
  const factors = sewn.flatMap(({ halves }) => halves.map(({ draped }) => draped.rest.factors));
  const atRest = sewn.filter(({ notJudged }) => notJudged === null).length;
  return `at rest ${atRest} of ${sewn.length}, factors at most ${Math.max(0, ...factors)}`;
}

/** The outermost wedge of the front as a dart open at the hem, that of the back as a dart within its panel. */
function withDarts(style: Style): Style {
  const [front, back] = (['front', 'back'] as const).map((block) =>
    style.wedges
      .filter((wedge) => wedge.kind === 'through' && wedge.block === block && wedge.station !== -1)
      .at(-1),
  );
  const upper = { from: 'waist', below: -60 } as const;
  return {
    ...style,
    wedges: style.wedges.map((wedge) => {
      if (wedge.kind !== 'through') return wedge;
      if (wedge === front) return { ...wedge, kind: 'openAtHem', upper };
      if (wedge === back) return { ...wedge, kind: 'closed', upper, lower: { from: 'waist', below: 50 } };
      return wedge;
    }),
  };
}
