// The handles of a bust dart that opens in the side seam: where it opens, and how far its point ends short of the bust point.

import { setDartPoint, setSideBelow, shoulderKind } from '../../document';
import { asksForSide, type Draft, distance, type Style, type Wedge, wedgeSpan } from '../../engine';
import { type CanvasLayout, directionOf, onCanvas } from '../layout/layOut';
import type { Handle } from './handle';

/** Whether a wedge of a style that has shoulders asks to open in the side seam. */
export const isSideDart = (wedge: Wedge, style: Style): boolean =>
  asksForSide(wedge) && shoulderKind(style) === 'shoulders';

/** None where the dart could not be turned. */
export function sideDartHandles(asked: Wedge, { turnedDart }: Draft, layout: CanvasLayout): Handle[] {
  if (turnedDart?.wedge !== asked.id || asked.lower?.from !== 'bust') return [];
  const { lower, upper, point, below, bustPoint } = turnedDart;
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
      most: Math.min(most, turnedDart.most.below),
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
      most: turnedDart.most.short,
      gain: { x: directionOf(asked.block), y: 0 },
      set: (before, mm) => setDartPoint(before, asked.id, 'lower', { from: 'bust', below: -mm }),
    },
  ];
}
