// Random wedge sets, tops, hems, eases, gaps and allowances. Styles a maker might try keep every bound; of those
// at the very ends of what may be typed, each keeps it or is refused with a place.

import { describe, expect, it } from 'vitest';
import { type Draft, draft, type Issue } from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { DRAWN, howMany } from '../support/howMany';
import { broken, expectedPieces, judge } from '../support/judges/judge';
import { randomFrom } from '../support/random';
import { randomStyle } from '../support/styles/randomStyle';
import { withDarts } from '../support/styles/withDarts';

const SEED = 4711;
const COUNT = howMany({ few: 150, all: 2000 });
const WILD = howMany({ few: 100, all: 1000 });
const UNMADE = howMany({ few: 100, all: 500 });

const blocking = (made: Draft): Issue[] => made.issues.filter(({ severity }) => severity === 'error');

describe(`random styles on ${COUNT} and ${WILD} drawn bodies, seed ${SEED}`, () => {
  it('tame ones keep every bound, blocked or not', DRAWN, () => {
    const random = randomFrom(SEED);
    let made = 0;
    for (const [i, body] of drawBodies(COUNT, SEED).entries()) {
      const style = randomStyle(random, 'tame');
      const drafted = draft(body, style);
      made += drafted.pieces.length;
      expect(broken(judge(body, style, drafted)), `case ${i}`).toEqual([]);
    }
    expect(made).toBeGreaterThan(4 * COUNT);
  });

  it('wild ones keep every bound or are refused with a place', DRAWN, () => {
    const random = randomFrom(SEED + 1);
    for (const [i, body] of drawBodies(WILD, SEED + 1).entries()) {
      const style = randomStyle(random, 'wild');
      const drafted = draft(body, style);
      const refused = blocking(drafted).some(({ at }) => Object.keys(at).length > 0);
      if (!refused) expect(broken(judge(body, style, drafted)), `case ${i}`).toEqual([]);
      for (const piece of drafted.pieces) expect(piece.cutLine.length, `case ${i}`).toBeGreaterThan(3);
    }
  });

  it.each(['tame', 'wild'] as const)(
    '%s ones with darts and joined side panels keep every bound or are refused with a place',
    DRAWN,
    (temper) => {
      const random = randomFrom(SEED + 3);
      let whole = 0;
      for (const [i, body] of drawBodies(WILD, SEED + 3).entries()) {
        const style = withDarts(randomStyle(random, temper), random, temper === 'wild');
        const drafted = draft(body, style);
        for (const piece of drafted.pieces) expect(piece.cutLine.length, `case ${i}`).toBeGreaterThan(3);
        if (blocking(drafted).some(({ at }) => Object.keys(at).length > 0)) continue;
        whole += 1;
        expect(broken(judge(body, style, drafted)), `case ${i}`).toEqual([]);
      }
      expect(whole).toBeGreaterThan(temper === 'tame' ? WILD / 5 : WILD / 50);
    },
  );

  it('a panel that is not made is a blocking issue that names it', DRAWN, () => {
    const random = randomFrom(SEED + 2);
    let missing = 0;
    for (const [i, body] of drawBodies(UNMADE, SEED + 2).entries()) {
      const style = randomStyle(random, 'wild');
      const drafted = draft(body, style);
      if (drafted.levels.length === 0 || drafted.pieces.length === 0) {
        expect(blocking(drafted), `case ${i}`).not.toEqual([]);
        continue;
      }
      const there = drafted.pieces.map(({ id }) => id);
      for (const id of expectedPieces(style).filter((wanted) => !there.includes(wanted))) {
        missing += 1;
        expect(
          blocking(drafted).map(({ at }) => at.piece?.id),
          `case ${i}`,
        ).toContain(id);
        for (const row of drafted.proof.ledger) expect(row.sewnGirth, `case ${i} ${row.level}`).toBeNull();
      }
    }
    expect(missing).toBeGreaterThan(UNMADE / 5);
  });
});
