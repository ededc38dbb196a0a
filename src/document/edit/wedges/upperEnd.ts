// Where a wedge that runs through ends on a shouldered block, as a pure step from one style to the next.

import type { Style, UpperEdge } from '../../../engine';
import { changeWedge } from './wedgeLists';

/** Lets a wedge end in an edge, at the part of the way along it that it had, or midway; null leaves it to the draft. */
export function setUpperEdge(style: Style, id: string, edge: UpperEdge | null): Style {
  return changeWedge(style, id, ({ endsAt, ...wedge }) =>
    edge === null ? wedge : { ...wedge, endsAt: { edge, part: endsAt?.part ?? 0.5 } },
  );
}

/** Moves the end of a wedge along its edge, 0 towards the centre to 1 towards the underarm; one without an edge stays as it is. */
export function setUpperPart(style: Style, id: string, part: number): Style {
  return changeWedge(style, id, (wedge) =>
    wedge.endsAt ? { ...wedge, endsAt: { ...wedge.endsAt, part } } : wedge,
  );
}
