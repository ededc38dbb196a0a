// Rings laid over each other and made one, by a general-purpose clipper. It is taken from the package's own modules: its
// front door brings offsetting and triangulation along, a tenth of all that the page loads first.

import { ClipType, FillRule, type PathsD } from 'clipper2-ts/dist/Core.js';
import { ClipperD } from 'clipper2-ts/dist/Engine.js';
import type { Point } from './point';

/** Decimals of a millimetre the clipper keeps. */
const PRECISION = 5;

/**
 * The outlines of what the closed `rings` cover, mm; holes come as rings of negative area. `covered` counts a place as
 * covered where the rings wind about it at all, or only where they wind about it forwards.
 */
export function unionPolygons(rings: Point[][], covered: 'wound' | 'wound-forwards'): Point[][] {
  const clipper = new ClipperD(PRECISION);
  const merged: PathsD = [];
  clipper.addSubjectPaths(rings);
  clipper.execute(ClipType.Union, covered === 'wound' ? FillRule.NonZero : FillRule.Positive, merged);
  return merged.map((path) => path.map(({ x, y }) => ({ x, y })));
}
