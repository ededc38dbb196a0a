// An edge of a piece beside the panels, sewn to no panel.

import type { Point } from '../geometry/point';
import type { Edge } from '../pieces/piece';

export const freeEdge = (role: Edge['role'], allowance: number, points: readonly Point[]): Edge => ({
  role,
  isSideSeam: false,
  mate: null,
  allowance,
  points,
});
