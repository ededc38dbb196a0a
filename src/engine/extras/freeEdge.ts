// An edge of a piece beside the panels, sewn to no panel.

import type { Point } from '../geometry/point';
import type { Edge, EdgePlace } from '../pieces/piece';

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
