// Ready styles on drawn bodies: none is refused, as nobody can be told to move wedges that the draft sized itself.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { draft, type Measurements } from '../../src/engine';
import { drawBodies, MEAN_BODY } from '../support/bodies/drawBodies';
import { withShoulders } from '../support/bodies/sizedBodies';
import { TELLING_BODIES } from '../support/bodies/tellingBodies';
import { howMany } from '../support/howMany';
import { tipsAtArmhole } from '../support/judges/cutter';

const BODIES: readonly Measurements[] = drawBodies(howMany({ few: 12, all: 150 }), 2112).map((body) => ({
  ...body,
  acrossShoulder: 366,
  backNeckToWaist: body.neckToWaist - 12,
}));

/** Bust 44 in over ribs of 31 1/2 in. */
const FULL_OVER_SLIM_RIBS: Measurements = {
  ...MEAN_BODY,
  ...{ overBust: 960, bust: 1118, underBust: 800, waist: 700, hip: 1010 },
  ...{ neckToBust: 295, neckToUnderBust: 375, neckToWaist: 430, neckToHip: 640 },
  ...{ bustPointWidth: 215, acrossShoulder: 374, underarmToWaist: 168 },
};

describe('a ready style', () => {
  it.each([...NAMED_STYLES])('is drafted for every body: %s', (_, { style }) => {
    const refused = [...BODIES, FULL_OVER_SLIM_RIBS].flatMap((body, i) =>
      draft(body, style)
        .issues.filter(({ severity }) => severity === 'error')
        .map(({ code }) => `${i}: ${code}`),
    );
    expect(refused).toEqual([]);
  });
});

describe('a corset that is measured from the under-bust', () => {
  const women = drawBodies(howMany({ few: 60, all: 1200 }), 1988).filter(
    ({ neckToUnderBust, neckToWaist }) => (neckToWaist ?? 0) - (neckToUnderBust ?? 0) < 15,
  );

  it.each(['under-bust', 'cincher'])(
    'goes round the waist where that lies at the under-bust or above: %s',
    (name) => {
      const style = NAMED_STYLES.get(name)?.style;
      if (!style) throw new Error(`there is no style ${name}`);
      expect(women.length).toBeGreaterThan(4);
      for (const body of women) {
        const { pieces, proof } = draft(body, style);
        expect(proof.ledger.map(({ level }) => level)).toContain('waist');
        const tops = pieces.flatMap(({ edges }) =>
          edges.filter(({ role }) => role === 'top').flatMap(({ points }) => points.map(({ y }) => y)),
        );
        // So much at least is above the waist line, where it can hold.
        expect((body.neckToWaist ?? 0) - Math.max(...tops)).toBeGreaterThan(12);
        // Half an inch above half way, and up to 7 mm more at a trued seam, is at the bust line where that is so near the waist.
        if ((body.neckToWaist ?? 0) - (body.neckToBust ?? 0) > 40)
          expect(Math.min(...tops)).toBeGreaterThan(body.neckToBust ?? Number.NaN);
      }
    },
  );
});

describe('an edge of a ready style', () => {
  it.each([...NAMED_STYLES])('has no two points in one place: %s', (_, { style }) => {
    const runs = [...BODIES.slice(0, 6), FULL_OVER_SLIM_RIBS].flatMap((body) =>
      draft(body, style).pieces.flatMap(({ edges }) => edges.map(({ points }) => points)),
    );
    expect(runs.length).toBeGreaterThan(40);
    const steps = runs.flatMap((points) =>
      points.slice(1).map(({ x, y }, i) => Math.hypot(x - (points[i]?.x ?? x), y - (points[i]?.y ?? y))),
    );
    expect(Math.min(...steps)).toBeGreaterThan(1e-6);
  });
});

describe('what a cutter would redraw', () => {
  const WOMEN = drawBodies(60, 77).map(withShoulders);

  it.each(['princess-bodice', 'basque-bodice', 'under-bust', 'cincher', 'armhole-bridal', 'darted-bodice'])(
    'is told to one woman in sixty at most: %s',
    (name) => {
      const style = NAMED_STYLES.get(name)?.style;
      if (!style) throw new Error(`there is no style ${name}`);
      const said = WOMEN.map((body) => new Set(draft(body, style).issues.map(({ code }) => code)));
      for (const code of ['panelsUnlike', 'seamTooUneven', 'seamBendsTightly', 'underarmBeak'] as const)
        expect(said.filter((codes) => codes.has(code)).length, code).toBeLessThanOrEqual(1);
    },
  );

  it('is no tip at the armhole under 30 degrees, and of the front’s panel at the side none under 36', () => {
    const style = NAMED_STYLES.get('armhole-bridal')?.style;
    if (!style) throw new Error('there is no such style');
    const women = drawBodies(howMany({ few: 60, all: 300 }), 77).map(withShoulders);
    for (const body of [...women, ...TELLING_BODIES.map(([, measurements]) => measurements)]) {
      const tips = tipsAtArmhole(draft(body, style));
      expect(tips).toHaveLength(6);
      for (const { piece, angle } of tips)
        expect(angle, piece).toBeGreaterThan(piece === 'front-3' ? 36 : 30);
    }
  });

  it.each(['under-bust', 'cincher', 'bridal-bodice', 'armhole-bridal'])(
    'is not left to the side seam under a full cup over slim ribs: %s',
    (name) => {
      const style = NAMED_STYLES.get(name)?.style;
      if (!style) throw new Error(`there is no style ${name}`);
      const said = draft(FULL_OVER_SLIM_RIBS, style).issues.map(
        ({ code, at }) => `${code} ${at.seam?.kind ?? ''}`,
      );
      for (const each of ['intakeNotPlaced ', 'seamTooUneven sideSeam']) expect(said).not.toContain(each);
    },
  );
});
