// The union of polygons, by a general-purpose clipping library. Its own modules are imported one by one: the package's main entry
// adds offsetting and triangulation, a tenth of all that the page loads first.

import { ClipType, FillRule, type PathsD } from 'clipper2-ts/dist/Core.js';
import { ClipperD } from 'clipper2-ts/dist/Engine.js';
import type { Point } from './point';

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
  const clipper = new ClipperD(PRECISION);
  const merged: PathsD = [];
  clipper.addSubjectPaths(rings);
  clipper.execute(ClipType.Union, fillRule === 'nonzero' ? FillRule.NonZero : FillRule.Positive, merged);
  return merged.map((path) => path.map(({ x, y }) => ({ x, y })));
}
