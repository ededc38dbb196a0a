// Lays outlines on a strip of a given width, as short as is found: a roll, a projector's picture or a drawing.

import { arrange } from './arrange';
import { nest, type PackingArea } from './nest';
import { type Order, ordersOf } from './orders';
import {
  boxOfOutlines,
  movedPlacements,
  type OutlineWays,
  type Placement,
  placementsOf,
  profilesOf,
} from './placements';
import type { Profile } from './profile';

export interface RollPlan {
  /** The top left corner of the box around all outlines is at 0, 0. */
  readonly placements: readonly Placement[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Outlines in rows, or nested where that takes less of the strip; turned only where that takes less again. An outline that is
 * wider than the strip makes the plan wider.
 */
export function onRoll(outlines: readonly OutlineWays[], mostWidthMm: number): RollPlan {
  const rings = outlines.map(([{ ring }]) => ring);
  const inRows = [false, true].map((byHeight) =>
    arrange(rings, mostWidthMm, byHeight).offsets.map((offset) => ({ turns: 0 as const, offset })),
  );
  const upright = outlines.map(([up]): OutlineWays => [up]);
  const plans = [...inRows, ...nested(upright, mostWidthMm), ...nested(outlines, mostWidthMm)];
  return plans
    .map((placements) => planOf(outlines, placements))
    .reduce((best, plan) => (plan.heightMm < best.heightMm - LEAST_GAIN_MM ? plan : best));
}

/** Least gain for which a later layout replaces an earlier one. mm */
const LEAST_GAIN_MM = 1;

/** More outlines than this are laid in rows, because nesting takes too long. */
const MOST_OUTLINES = 30;

function nested(outlines: readonly OutlineWays[], widthMm: number): Placement[][] {
  if (outlines.length > MOST_OUTLINES) return [];
  const profiles = profilesOf(outlines);
  const { drafted, widest, tallest } = ordersOf(profiles);
  return [drafted, tallest, widest].flatMap((order: Order) => {
    const inOrder = order.map((i) => profiles[i] as Profile[]);
    const spots = nest(inOrder, rollArea(widthMm, inOrder), Infinity);
    return spots ? [placementsOf(spots, order, outlines)] : [];
  });
}

/** The strip as an area. A place costs what it adds to the used length. */
function rollArea(widthMm: number, inOrder: readonly (readonly Profile[])[]): PackingArea {
  const most = inOrder.reduce((sum, [upright]) => sum + (upright?.heightMm ?? 0), 0);
  let used = 0;
  const foot = (y: number, { heightMm }: Profile): number => Math.max(used, y + heightMm);
  return {
    across: ({ roomMm, widthMm: own }) => [-roomMm, widthMm - own + roomMm],
    down: ({ heightMm }) => [0, most - heightMm],
    xs: ({ roomMm, widthMm: own }) => [-roomMm, widthMm - own + roomMm],
    ys: () => [0],
    cost: (profile, x, y) => foot(y, profile) - used + (y + x / 100) / 1000,
    take: ({ profile, y }) => {
      used = foot(y, profile);
    },
  };
}

function planOf(outlines: readonly OutlineWays[], placements: readonly Placement[]): RollPlan {
  const box = boxOfOutlines(outlines, placements) ?? { left: 0, top: 0, right: 0, bottom: 0 };
  return {
    placements: movedPlacements(placements, { x: -box.left, y: -box.top }),
    widthMm: box.right - box.left,
    heightMm: box.bottom - box.top,
  };
}
