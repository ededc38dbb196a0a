// Each ready style that does not hang from shoulders comes to rest in one place, from wherever it starts.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, draftWhole, sewGarment } from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor, DISTURBED, energyOf, farthestApart, wear } from '../../support/bodies/wornBodies';
import { DRAWN, howMany } from '../../support/howMany';

/** Three mm would be seen; one rest differs from another by 4 mm and more. */
const APART_MM = 0.5;

const styles = [...NAMED_STYLES].filter(
  ([, { style }]) => !style.shoulders || style.shoulders.bandAbove !== undefined,
);
/** She is one of those on whom a bridal bodice that starts 20 mm higher alone comes to rest 34 mm from its place. */
const measurements = { ...(drawBodies(20, 1988)[9] ?? MEAN_BODY), acrossShoulder: 374 };
const body = bodyFor(measurements);

describe('a ready style', () => {
  it.each(styles)(
    'comes to rest in one place: %s',
    (_, { style }) => {
      const usual = wear(measurements, style, body).draped;
      expect(usual.rest.atRest).toBe(true);
      expect(usual.rest.factors).toBeLessThanOrEqual(80);
      for (const disturb of [...DISTURBED.values()].slice(0, howMany({ few: 2, all: DISTURBED.size }))) {
        const other = wear(measurements, style, body, { disturb }).draped;
        expect(other.rest.atRest).toBe(true);
        expect(farthestApart(other, usual)).toBeLessThan(APART_MM);
      }
    },
    DRAWN.timeout,
  );

  it('says where it can also lie in another way, and lies in that of less energy', () => {
    const style = NAMED_STYLES.get('bridal-bodice')?.style;
    if (!style) throw new Error('no such style');
    const { draped } = wear(measurements, style, body);
    expect(draped.other?.apart).toBeGreaterThan(20);
    // Pulled back where the other way lies, the hem of the centre back.
    const way = sewGarment(draftWhole(measurements, style), measurements, style).halves[0]?.other;
    expect(way).toMatchObject({ part: 'back' });
    const out = (places: Float64Array): void => {
      for (let v = 0; v < places.length; v += 3) {
        const [x = 0, y = 0] = places.subarray(v, v + 2);
        if (y < 0) places[v + 1] = y - 60 * Math.max(0, 1 - Math.abs(x) / 60);
      }
    };
    const places = draped.places.slice();
    out(places);
    const away = wear(measurements, style, body, { from: { mesh: draped.mesh, places } }).draped;
    expect(away.rest.atRest).toBe(true);
    expect(farthestApart(away, draped)).toBeGreaterThan(20);
    expect(energyOf(away)).toBeGreaterThan(energyOf(draped));
    expect(wear(MEAN_BODY, DEFAULT_STYLE, bodyFor(MEAN_BODY)).draped.other).toBeNull();
  });
});
