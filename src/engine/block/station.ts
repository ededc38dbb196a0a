// Where a wedge stands, as a number that moves with the body: −1 centre line, 0 bust-point line, +1 side seam.

/** x in mm of a station on a block `width` mm wide whose bust-point line stands at `bustLine`. */
export function stationX(station: number, bustLine: number, width: number): number {
  return station < 0 ? bustLine * (1 + station) : bustLine + station * (width - bustLine);
}

/** A wedge on the centre line lies wholly on one side of it. */
export const onCentre = ({ station }: { readonly station: number }): boolean => station <= -1;

/** The station, from −1 to 1, of a place `x` on the block; the inverse of {@link stationX}. */
export function stationOf(x: number, bustLine: number, width: number): number {
  const station = x < bustLine ? x / bustLine - 1 : (x - bustLine) / (width - bustLine);
  return Math.min(1, Math.max(-1, station));
}
