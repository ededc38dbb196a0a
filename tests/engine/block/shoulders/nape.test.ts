// Front and back each hang from their own neck point, so that a back may be longer than the front.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../../src/document';
import { type Draft, draft, draftWhole, inches, type Measurements, type Style } from '../../../../src/engine';
import { MEAN_BODY } from '../../../support/bodies/drawBodies';
import { withShoulders } from '../../../support/bodies/sizedBodies';

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

/** Where neckline and shoulder of the back meet. */
function backNeckOf(made: Draft): number {
  const ends = made.pieces
    .filter(({ block }) => block === 'back')
    .flatMap(({ edges }) => edges.filter(({ role }) => role === 'shoulder').flatMap(({ points }) => points));
  return Math.min(...ends.map(({ y }) => y));
}

const RISE = 20;

describe('the back neck to waist', () => {
  it.each([15, 15.5, 16, 16.5, 17, 18])(
    'of %s in is drafted as long as that, longer than the front or not',
    (long) => {
      const made = longAs(inches(long));
      expect(backLengthOf(made)).toBeCloseTo(inches(long), 6);
      expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    },
  );

  it.each([15, 16.5, 18])('of %s in hangs from a neck point that lies the rise above the nape', (long) => {
    const { span } = longAs(inches(long));
    for (const [rise, style] of [
      [RISE, PRINCESS],
      [12, { ...PRINCESS, shoulders: { ...PRINCESS.shoulders, rise: 12 } }],
    ] as const) {
      const made = draft({ ...BODY, backNeckToWaist: inches(long) }, style);
      const nape = (span?.waist ?? Number.NaN) - backLengthOf(made);
      expect(nape - backNeckOf(made)).toBeCloseTo(rise, 6);
    }
  });

  it('is the rise below the shoulder level where it was not measured', () => {
    const made = longAs(null);
    expect(backNeckOf(made)).toBeCloseTo(0, 9);
    expect((made.span?.waist ?? Number.NaN) - backLengthOf(made)).toBeCloseTo(RISE, 6);
  });

  it('is one where left and right are drafted apart', () => {
    const made = draftWhole(
      { ...BODY, backNeckToWaist: inches(18) },
      { ...PRINCESS, rightWedges: PRINCESS.wedges.map((wedge) => ({ ...wedge, id: `right ${wedge.id}` })) },
      null,
    );
    for (const half of Object.values(made.halves ?? {})) {
      expect(backLengthOf(half)).toBeCloseTo(inches(18), 1);
      expect(backNeckOf(half)).toBeCloseTo((half.span?.waist ?? Number.NaN) - inches(18) - RISE, 1);
    }
    expect(Object.keys(made.halves ?? {})).toHaveLength(2);
  });
});
