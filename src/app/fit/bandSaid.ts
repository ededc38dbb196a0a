// What is not drawn among the panels closed up: the off-shoulder band, and how its edge stands against theirs.

import { FIT, formatLength, type Unit } from '../../document';
import { type BandWalkRow, bandWalk, type Draft } from '../../engine';
import { differencePhrase } from '../components/differenceWritten';

/** More than this, the finest difference that is written, is eased in, and said so. mm */
const EVEN_MM = 0.4;

/** A sentence for each half with a band of its own; empty where there is none. */
export const sayBands = (draft: Draft, unit: Unit): string[] => bandWalk(draft).map((row) => said(row, unit));

function said({ side, bands, panels }: BandWalkRow, unit: Unit): string {
  const length = formatLength(bands, unit, { withUnit: true });
  const apart = bands - panels;
  const difference = differencePhrase(apart, unit);
  const { notDrawn, even, longer, shorter } = FIT.band;
  const beside =
    Math.abs(apart) <= EVEN_MM ? even({ length }) : (apart > 0 ? longer : shorter)({ length, difference });
  return `${notDrawn[side ?? 'both']} ${beside}`;
}
