// The union and the difference of polygons, by a general-purpose clipping library. Its own modules are imported one by one: the
// package's main entry adds offsetting and triangulation, a tenth of all that the page loads first.

import { ClipType, FillRule, type PathsD } from 'clipper2-ts/dist/Core.js';
import { ClipperD } from 'clipper2-ts/dist/Engine.js';
import type { Point } from '../point';

/** Decimals of a millimetre that the library keeps. */
const PRECISION = 5;

/**
 * The outlines of the area that closed rings cover; outer outlines have a positive signed area (see `signedArea`) and holes a
 * negative one. Coordinates are rounded to 1e-5 mm.
 *
 * @param rings closed, their ends not repeated, mm
 * @param fillRule which places count as covered: `nonzero`, those with a winding number other than 0; `positive`, those with one
 *   above 0
 */
export function unionPolygons(rings: Point[][], fillRule: 'nonzero' | 'positive'): Point[][] {
  return clip(rings, [], ClipType.Union, fillRule === 'nonzero' ? FillRule.NonZero : FillRule.Positive);
}

/** The outlines of the area that closed rings cover and others do not, in the same form as those of a union. */
export const subtractPolygons = (rings: Point[][], others: Point[][]): Point[][] =>
  clip(rings, others, ClipType.Difference, FillRule.NonZero);

function clip(rings: Point[][], others: Point[][], type: ClipType, fillRule: FillRule): Point[][] {
  const clipper = new ClipperD(PRECISION);
  const outlines: PathsD = [];
  clipper.addSubjectPaths(rings);
  if (others.length > 0) clipper.addClipPaths(others);
  clipper.execute(type, fillRule, outlines);
  return outlines.map((path) => path.map(({ x, y }) => ({ x, y })));
}
