// Each ready style that does not hang from shoulders comes to rest in one place, from wherever it starts.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor, wear } from '../../support/bodies/wornBodies';

/** Three mm would be seen; one rest differs from another by 4 mm and more. */
const APART_MM = 0.5;

const styles = [...NAMED_STYLES].filter(
  ([, { style }]) => !style.shoulders || style.shoulders.bandAbove !== undefined,
);
/** She is one of those on whom a bridal bodice that starts 20 mm higher alone comes to rest 34 mm from its place. */
const measurements = { ...(drawBodies(20, 1988)[9] ?? MEAN_BODY), acrossShoulder: 374 };
const body = bodyFor(measurements);

const farthest = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, x, i) => Math.max(most, Math.abs(x - (b[i] as number))), 0);

describe('a ready style', () => {
  it.each(styles)('comes to rest in one place: %s', (_, { style }) => {
    const usual = wear(measurements, style, body).draped;
    expect(usual.rest.atRest).toBe(true);
    for (const start of [{ up: 20 }, { up: -20 }, { off: 15 }]) {
      const other = wear(measurements, style, body, { start }).draped;
      expect(other.rest.atRest).toBe(true);
      expect(farthest(other.places, usual.places)).toBeLessThan(APART_MM);
    }
  });
});
