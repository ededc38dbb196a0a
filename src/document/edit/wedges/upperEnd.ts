// Where a wedge ends on a shouldered block, as a pure step from one style to the next.

import type { Opening, Style } from '../../../engine';
import { changeWedge } from './wedgeLists';

/** Lets a wedge end in an edge, at the part of the way along it that it had, or midway; null leaves it to the draft. */
export function setUpperEdge(style: Style, id: string, edge: Opening | null): Style {
  return changeWedge(style, id, ({ endsAt, ...wedge }) =>
    edge === null ? wedge : { ...wedge, endsAt: { ...endsAt, edge, part: endsAt?.part ?? 0.5 } },
  );
}

/** Opens a bust dart in the side seam so far below the armhole, mm. */
export const setSideBelow = (style: Style, id: string, below: number): Style =>
  changeWedge(style, id, (wedge) =>
    wedge.endsAt ? { ...wedge, endsAt: { ...wedge.endsAt, below } } : wedge,
  );

/** Moves the end of a wedge along its edge, 0 towards the centre to 1 towards the underarm; one without an edge stays as it is. */
export function setUpperPart(style: Style, id: string, part: number): Style {
  return changeWedge(style, id, (wedge) =>
    wedge.endsAt ? { ...wedge, endsAt: { ...wedge.endsAt, part } } : wedge,
  );
}
