// Plans of drawn bodies' drafts on random cloths: exact by an independent polygon library.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft } from '../../src/engine';
import { cutOnce } from '../../src/paper/layPlan/copies';
import { startLay } from '../../src/paper/layPlan/startLay';
import { drawBodies } from '../support/bodies/drawBodies';
import { DRAWN, howMany } from '../support/howMany';
import { faultsOf } from '../support/judges/judgeLay';
import { chance, randomFrom, uniform } from '../support/random';
import { randomStyle } from '../support/styles/randomStyle';

const SEED = 23;
const PLANS = howMany({ few: 8, all: 300 });

describe(`plans of ${PLANS} drafts on as many cloths, seed ${SEED}`, () => {
  it('have no overlap, keep gap, grain, nap and fold, and lie on the cloth', DRAWN, () => {
    const random = randomFrom(SEED);
    for (const [n, body] of drawBodies(PLANS, SEED).entries()) {
      const style = chance(random, 0.3) ? DEFAULT_STYLE : randomStyle(random);
      const { pieces, extras } = draft(body, style);
      const cloth = {
        widthMm: uniform(random, 700, 1600),
        folded: chance(random, 0.4),
        nap: chance(random, 0.4),
        grainDegrees: chance(random, 0.2) ? 2 : 0,
        gapMm: chance(random, 0.5) ? uniform(random, 0, 15) : 0,
        shrinkAlong: chance(random, 0.2) ? 0.04 : 0,
        shrinkAcross: chance(random, 0.2) ? 0.02 : 0,
      };
      const start = startLay(
        [...pieces, ...extras].map((piece) => ({
          ...cutOnce(piece),
          layers: n % 4 === 0 ? 2 : 1,
          bias: piece.kind === 'strap' || (n % 5 === 0 && piece.kind === 'facing'),
        })),
        cloth,
        n,
      );
      if (!start.ok) {
        expect(start.faults.length, `plan ${n}`).toBeGreaterThan(0);
        continue;
      }
      expect(faultsOf(start.work.best()), `start of plan ${n}`).toEqual([]);
      for (let step = 0; step < 12; step += 1) start.work.step();
      expect(faultsOf(start.work.best()), `plan ${n}`).toEqual([]);
    }
  });
});
