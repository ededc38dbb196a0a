// A closed ring whose chords are sorted into bands of height, so that a question about one place meets few of them.

import { at } from '../lists';
import type { Point } from '../point';
import { heightSpan } from '../polyline';

/** A chord of a ring; `index` is that of its start. */
export interface RingChord {
  readonly index: number;
  readonly from: Point;
  readonly to: Point;
}

export interface BandedRing {
  /** Its end is not repeated. */
  readonly ring: readonly Point[];
  /** From the least height down: the chords that reach into each band, which are as high as one another. */
  readonly bands: readonly (readonly RingChord[])[];
  /** Height at which the first band begins, mm. */
  readonly least: number;
  /** Height of each band, mm; infinite where there is one band only. */
  readonly bandHeight: number;
}

/** With so many chords to a band, most chords lie in one band or two. */
const CHORDS_TO_A_BAND = 4;

/** Sorts the chords of a closed ring into bands. */
export function bandedRing(ring: readonly Point[]): BandedRing {
  const { least, most } = heightSpan(ring);
  const count = Math.ceil(ring.length / CHORDS_TO_A_BAND);
  const height = (most - least) / count;
  const isBanded = height > 0 && Number.isFinite(height);
  const bands: RingChord[][] = Array.from({ length: isBanded ? count : 1 }, () => []);
  const banded = { ring, bands, least, bandHeight: isBanded ? height : Number.POSITIVE_INFINITY };
  for (let index = 0; index < ring.length; index += 1) {
    const from = at(ring, index);
    const to = at(ring, (index + 1) % ring.length);
    const chord = { index, from, to };
    const end = bandAt(banded, Math.max(from.y, to.y));
    for (let band = bandAt(banded, Math.min(from.y, to.y)); band <= end; band += 1) bands[band]?.push(chord);
  }
  return banded;
}

/** The index of the band in which a height lies; the first or the last one where it lies beyond all, the first where it is no number. */
export function bandAt({ bands, least, bandHeight }: BandedRing, y: number): number {
  return Math.min(bands.length - 1, Math.max(0, Math.floor((y - least) / bandHeight) || 0));
}
