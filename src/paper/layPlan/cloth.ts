// A cloth that pieces are laid on, and what is asked of the lay.

import type { LayCloth } from '../../document';

/** What of a cloth the lay follows. */
export type Cloth = Omit<LayCloth, 'layers' | 'price' | 'bias' | 'others'>;

/** The whole spans that are accepted. */
export const CLOTH_SPANS = {
  widthMm: [100, 4000],
  grainDegrees: [0, 10],
  gapMm: [0, 50],
  shrinkAlong: [0, 0.2],
  shrinkAcross: [0, 0.2],
  layers: [1, 6],
} as const;

export const OPEN_CLOTH: Omit<Cloth, 'widthMm'> = {
  folded: false,
  nap: false,
  grainDegrees: 0,
  gapMm: 0,
  shrinkAlong: 0,
  shrinkAcross: 0,
};

/** The width that pieces lie on, mm. */
export const laidWidth = ({ widthMm, folded }: Pick<Cloth, 'widthMm' | 'folded'>): number =>
  folded ? widthMm / 2 : widthMm;
