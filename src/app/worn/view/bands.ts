// A triangle of the picture parted along the limits between bands, for a drawing that has one colour a polygon.

/** Right, up and towards in the picture, and the place among the bands as {@link bandPlace} has it. */
export type BandedCorner = readonly [right: number, up: number, towards: number, band: number];

interface BandedParts {
  readonly polygons: readonly { readonly band: number; readonly corners: readonly BandedCorner[] }[];
  /** Where two bands meet: two ends each. */
  readonly limits: readonly (readonly BandedCorner[])[];
}

/** The parts of a triangle by band, and the lines between them. */
export function partedInBands(triangle: readonly BandedCorner[]): BandedParts {
  const places = triangle.map(([, , , band]) => band);
  const [first, last] = [Math.floor(Math.min(...places)), Math.floor(Math.max(...places))];
  const polygons = Array.from({ length: last - first + 1 }, (_, i) => {
    const band = first + i;
    return { band, corners: kept(kept(triangle, band, 1), band + 1, -1) };
  }).filter(({ corners }) => corners.length > 2);
  const limits = polygons
    .filter(({ band }) => band > first)
    .map(({ band, corners }) => corners.filter(([, , , place]) => place === band))
    .filter((ends) => ends.length === 2);
  return { polygons, limits };
}

/** What of a convex polygon lies above a place among the bands (`way` 1) or below it (−1). */
function kept(corners: readonly BandedCorner[], at: number, way: 1 | -1): BandedCorner[] {
  return corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length] ?? corner;
    const [here, there] = [way * (corner[3] - at), way * (next[3] - at)];
    const own = here >= 0 ? [corner] : [];
    if (here * there >= 0) return own;
    const part = here / (here - there);
    const between = (k: 0 | 1 | 2): number => corner[k] + part * (next[k] - corner[k]);
    return [...own, [between(0), between(1), between(2), at] as const];
  });
}
