// How values are told by colour: in even bands with a line between them, so that colour is not alone.

import type { Unit } from '../../../document';
import { inches } from '../../../engine';
import type { WornPicture } from './wornPicture';

export const SHADINGS = ['standOff', 'warp', 'weft', 'cloth'] as const;
export type Shading = (typeof SHADINGS)[number];

type Rgb = readonly [red: number, green: number, blue: number];

export interface Scale {
  /** Limits of the bands in mm or %, from the least; one colour fewer than there are limits. */
  readonly limits: readonly number[];
  readonly colours: readonly Rgb[];
}

const rgb = (hex: number): Rgb => [(hex >> 16) / 255, ((hex >> 8) & 255) / 255, (hex & 255) / 255];

/** One hue from light to dark for a distance. */
const DISTANCE = [0xf2efe6, 0xd6e4e6, 0xa9cdd6, 0x71adc0, 0x3d85a3, 0x1c5a7d, 0x0b2f4f].map(rgb);
/** Two hues that part at nothing: slack and pulled. They are told apart in grey and by any colour sense by the lines' places. */
const STRAIN = [0x2c5d8a, 0x6f9cc0, 0xbcd2e2, 0xf4f0e6, 0xf0cf9e, 0xdd9148, 0xa84f12].map(rgb);

export const CLOTH_COLOUR = rgb(0xc9d4dc);
/** A dress form's linen: the body stays behind the garment. */
export const BODY_COLOUR = rgb(0xd3c8ba);

const STRAIN_LIMITS = [-3, -1.5, -0.75, -0.25, 0.25, 0.75, 1.5, 3];

/** Limits of the distance in mm, round in the unit that they are read in. */
const DISTANCE_LIMITS: Readonly<Record<Unit, readonly number[]>> = {
  cm: [0, 1, 3, 5, 8, 12, 18, 30],
  in: [0, 1 / 32, 1 / 8, 3 / 16, 5 / 16, 1 / 2, 3 / 4, 5 / 4].map(inches),
};

const STRAIN_SCALE: Scale = { limits: STRAIN_LIMITS, colours: STRAIN };
const DISTANCE_SCALES: Readonly<Record<Unit, Scale>> = {
  cm: { limits: DISTANCE_LIMITS.cm, colours: DISTANCE },
  in: { limits: DISTANCE_LIMITS.in, colours: DISTANCE },
};

/** The scale of a shading for a client of this unit: the same object each time. */
export const scaleOf = (shading: Exclude<Shading, 'cloth'>, unit: Unit): Scale =>
  shading === 'standOff' ? DISTANCE_SCALES[unit] : STRAIN_SCALE;

/**
 * The band of a value as a number that grows evenly from band to band, 0 at the lower limit of the first; values beyond all limits
 * lie in the outermost bands.
 */
export function bandPlace({ limits }: Scale, value: number): number {
  const last = limits.length - 1;
  for (let i = 0; i < last; i += 1) {
    const low = limits[i] as number;
    const high = limits[i + 1] as number;
    if (value < high) return Math.max(0, i + (value - low) / (high - low));
  }
  return last - 1e-3;
}

/** Values of a shading by vertex in mm or %; null for plain cloth. */
export function valuesOf(picture: WornPicture, shading: Shading): Float32Array | null {
  if (shading === 'cloth') return null;
  if (shading === 'standOff') return picture.standOff;
  return picture[shading].map((value) => value * 100);
}
