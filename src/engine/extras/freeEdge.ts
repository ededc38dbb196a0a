// An edge of a piece beside the panels, sewn to no panel.

import type { Point } from '../geometry/point';
import type { Edge, EdgePlace } from '../pieces/piece';

/**
 * Makes an edge that has no mate.
 *
 * @param allowance mm
 * @param points its sew line, counter-clockwise round the piece as seen on paper
 */
export const freeEdge = (
  at: EdgePlace['at'],
  role: Edge['role'],
  allowance: number,
  points: readonly Point[],
): Edge => ({
  role,
  at,
  isSideSeam: false,
  mate: null,
  allowance,
  points,
});
