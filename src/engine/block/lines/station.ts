// Where a wedge stands, as a number that moves with the body: −1 centre line, 0 bust-point line, +1 side seam.

import type { Wedge } from '../../style/wedgeFields';
import type { LevelName } from '../../terms/names';

/** x in mm of a station on a block `width` mm wide whose bust-point line stands at `bustLine`. */
export function stationX(station: number, bustLine: number, width: number): number {
  return station < 0 ? bustLine * (1 + station) : bustLine + station * (width - bustLine);
}

/**
 * x in mm, from the centre edge, of a wedge's axis at a level: where it was put by hand, else at its station.
 *
 * @param width of the flat block at the level, mm
 * @param open half of what the centre leaves open, mm
 */
export function axisX(
  { station, stationAt, fromCentre }: Pick<Wedge, 'station' | 'stationAt' | 'fromCentre'>,
  level: LevelName,
  bustLine: number,
  width: number,
  open: number,
): number {
  const put = fromCentre?.[level];
  if (put === undefined) return stationX(stationAt[level] ?? station, bustLine, width);
  return Math.min(width, Math.max(0, put - open));
}

/** A wedge on the centre line lies wholly on one side of it. */
export const onCentre = ({ station }: { readonly station: number }): boolean => station <= -1;

/** The station, from −1 to 1, of a place `x` on the block; the inverse of {@link stationX}. */
export function stationOf(x: number, bustLine: number, width: number): number {
  const station = x < bustLine ? x / bustLine - 1 : (x - bustLine) / (width - bustLine);
  return Math.min(1, Math.max(-1, station));
}

/** Above the bust the body narrows from the bust point up, so a wedge counts the less the farther it stands from there. */
export const weightAt = (level: LevelName, { weight, station }: Wedge): number =>
  level === 'overBust' ? weight * Math.max(LEAST_WEIGHT_SHARE, 1 - Math.abs(station)) : weight;

/** What is left of the weight of a wedge at the centre line or at the side. Our own bound, no source. */
const LEAST_WEIGHT_SHARE = 0.15;
