// The handles of a bust dart that opens in the side seam: where it opens, and how far its point ends short of the bust point.

import { setDartPoint, setSideBelow, shoulderKind } from '../../document';
import { type Draft, distance, polylineLength, type Style, type Wedge, wedgeSpan } from '../../engine';
import { type CanvasLayout, directionOf, onCanvas } from '../layout/layOut';
import type { Handle } from './handle';

/** Whether a wedge is asked to open in the side seam of a style that has shoulders. */
export const opensInSide = ({ endsAt, block, kind }: Wedge, style: Style): boolean =>
  endsAt?.edge === 'side' && block === 'front' && kind === 'openAtTop' && shoulderKind(style) === 'shoulders';

/** So much of the side seam stays below the dart where it is pulled, mm. */
const LEAST_BELOW_MM = 25;

/** None where the dart could not be turned. */
export function sideDartHandles(asked: Wedge, { turnedDart, pieces }: Draft, layout: CanvasLayout): Handle[] {
  if (turnedDart?.wedge !== asked.id || asked.lower?.from !== 'bust') return [];
  const { lower, upper, point, below, bustPoint } = turnedDart;
  const side = pieces
    .find(({ id }) => id === turnedDart.piece)
    ?.edges.filter(({ sidePart }) => sidePart !== undefined)
    .reduce((sum, { points }) => sum + polylineLength(points), 0);
  const [least, most] = wedgeSpan(asked.kind, 'endsAt.below');
  const common = { wedge: asked.id, block: asked.block, level: null, which: null, node: null } as const;
  return [
    {
      ...common,
      id: `opening:${asked.id}`,
      kind: 'opening',
      at: onCanvas(layout, asked.block, { x: (lower.x + upper.x) / 2, y: (lower.y + upper.y) / 2 }),
      value: below,
      least,
      most: Math.min(most, (side ?? most) - LEAST_BELOW_MM),
      gain: { x: 0, y: 1 },
      set: (before, mm) => setSideBelow(before, asked.id, mm),
    },
    {
      ...common,
      id: `short:${asked.id}`,
      kind: 'short',
      at: onCanvas(layout, asked.block, point),
      value: distance(point, bustPoint),
      least: 0,
      most: distance(lower, bustPoint) / 2,
      gain: { x: directionOf(asked.block), y: 0 },
      set: (before, mm) => setDartPoint(before, asked.id, 'lower', { from: 'bust', below: -mm }),
    },
  ];
}
