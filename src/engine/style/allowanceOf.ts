// The seam allowance of what lies between the seams of a piece.

import type { Allowances } from './style';

/** An edge by its role, or a neckline, which is the top edge of what has shoulders. */
type FreeEdge = 'top' | 'neckline' | 'hem' | 'shoulder' | 'armhole';

/** mm. Neckline and armhole have the top edge's where the style gives them none of their own. */
export function allowanceOf(edge: FreeEdge, allowances: Allowances): number {
  switch (edge) {
    case 'hem':
      return allowances.hem;
    case 'shoulder':
      return allowances.seam;
    case 'top':
      return allowances.top;
    default:
      return allowances[edge] ?? allowances.top;
  }
}
