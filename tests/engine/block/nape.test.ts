// A back longer than the front: both blocks hang from one shoulder level, so the nape cannot lie above it, and that is said.

import { describe, expect, it } from 'vitest';
import { issueSentence, NAMED_STYLES } from '../../../src/document';
import { type Draft, draft, draftWhole, inches, type Measurements, type Style } from '../../../src/engine';
import { MEAN_BODY } from '../../support/drawBodies';
import { withShoulders } from '../../support/sizedBodies';

const styleOf = (name: string): Style => (NAMED_STYLES.get(name) as { style: Style }).style;
const PRINCESS = styleOf('princess-bodice');
const BODY: Measurements = { ...withShoulders(MEAN_BODY), neckToWaist: inches(16.5) };

const longAs = (back: number | null): Draft => draft({ ...BODY, backNeckToWaist: back }, PRINCESS);

/** From the end of the neckline at centre back down to the waist, off the finished points. */
function backLengthOf(made: Draft): number {
  const back = made.pieces.filter(({ block }) => block === 'back').flatMap(({ edges }) => edges);
  const centre = back.flatMap(({ points }) => points).sort((a, b) => a.x - b.x)[0]?.x ?? Number.NaN;
  const top = Math.min(
    ...back.flatMap(({ points }) => points.filter(({ x }) => x < centre + 0.01).map(({ y }) => y)),
  );
  return (made.span?.waist ?? Number.NaN) - top;
}

const heldIn = ({ issues }: Draft) => issues.filter(({ code }) => code === 'napeHeld');

describe('the back neck to waist', () => {
  it.each([15, 15.5, 16])('of %s in is drafted as long as that, with no word', (long) => {
    const made = longAs(inches(long));
    expect(backLengthOf(made)).toBeCloseTo(inches(long), 1);
    expect(heldIn(made)).toEqual([]);
  });

  it.each([16.5, 17, 18])(
    'of %s in is longer than neck to waist leaves room for, and the draft says how long it made it',
    (long) => {
      const made = longAs(inches(long));
      const [held] = heldIn(made);
      if (!held) throw new Error('nothing was said');
      expect(held.severity).toBe('warn');
      expect(held.values.asked).toBe(inches(long));
      expect(backLengthOf(made)).toBeCloseTo(held.values.drafted ?? 0, 1);
      expect(issueSentence(held, { unit: 'in', style: PRINCESS })).toMatch(
        /^Back neck to waist is 1[678](½)? in, but .* 16½ in above the waist.* drafted 16⁵⁄₁₆ in long/,
      );
    },
  );

  it('says nothing where it was not measured, and nothing of a garment that does not reach it', () => {
    expect(heldIn(longAs(null))).toEqual([]);
    for (const name of ['default', 'off-shoulder-bridal'])
      expect(heldIn(draft({ ...BODY, backNeckToWaist: inches(18) }, styleOf(name))), name).toEqual([]);
  });

  it('says it once where left and right are drafted apart', () => {
    const made = draftWhole(
      { ...BODY, backNeckToWaist: inches(18) },
      { ...PRINCESS, rightWedges: PRINCESS.wedges },
      null,
    );
    expect(heldIn(made)).toHaveLength(1);
  });
});
