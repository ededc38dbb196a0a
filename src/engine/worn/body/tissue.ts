// How the body yields under a garment: a Winkler ground, pressure proportional to depth at each place by itself. Estimates, none
// of them measured: a factor of three either way is possible. Nothing here says what a body bears.

import { type SmoothLine, smoothLine, xAt } from '../../geometry/smoothLine';
import { type BodyLevel, zOf } from './shape';
import { breastAt, type Skin } from './skin';
import type { Surface } from './surface';
import { COLUMN_STEP, COLUMNS, SINES } from './tape';

/** Pressure per depth, N/mm² per mm: the larger, the less the body yields. */
const STIFFNESS = { waist: 3.5e-4, elsewhere: 5e-4, ribs: 1.5e-3, breast: 4e-4 } as const;

/** Pressure per depth at every place of the surface, N/mm³, in its order. */
export function tissueOf(surface: Surface, skin: Skin, levels: readonly BodyLevel[]): Float64Array {
  const [waist, hip] = [zOf(levels, 'waist'), zOf(levels, 'hip')];
  const line = stiffnessLine(waist, hip, skin.z.underBust);
  const ground = new Float64Array(surface.radii.length);
  for (let j = 0; j < surface.rows; j += 1) {
    const height = surface.lowest + j * surface.step;
    const below = waist - height;
    const stiffness = xAt(line, height);
    const crest = below > 0 ? bell(below - 0.4 * (waist - hip), 0.18 * (waist - hip)) : 0;
    for (let i = 0; i < COLUMNS; i += 1) {
      const t = i * COLUMN_STEP;
      const x = surface.radii[j * COLUMNS + i]! * SINES[i]!;
      // The spine and the hip bones are harder than what lies round them.
      const hard = stiffness * (1 + 1.5 * bell(Math.PI - t, 0.45)) * (1 + 2 * bell(t - 1.35, 0.35) * crest);
      const breast = t < 1.7 ? Math.min(1, 1.5 * breastAt(skin.breast, x, height)) : 0;
      ground[j * COLUMNS + i] = hard * (1 - breast) + STIFFNESS.breast * breast;
    }
  }
  return ground;
}

/** A bell curve of height 1, which falls to 1/e at `width` from its middle. */
const bell = (distance: number, width: number): number => Math.exp(-((distance / width) ** 2));

/** Pressure per depth over the height on the body, N/mm² per mm, apart from breast, spine and hip bones. */
function stiffnessLine(waist: number, hip: number, underBust: number): SmoothLine {
  return smoothLine(
    [hip, waist - 0.35 * (waist - hip), waist, waist + 0.45 * (underBust - waist), underBust],
    [STIFFNESS.elsewhere, STIFFNESS.elsewhere, STIFFNESS.waist, STIFFNESS.elsewhere, STIFFNESS.ribs],
  );
}
