// Outlines on a strip of a given width, as short as is found: a roll, a projector's picture, a drawing.

import { arrange } from './arrange';
import { nest, type PackingArea } from './nest';
import { type Order, ordersOf } from './orders';
import { boxOfPlaces, movedPlaces, type PackedWays, type Place, placesOf, profilesOf } from './places';
import type { Profile } from './profile';

export interface RollPlan {
  /** The box around all outlines has its top left corner at 0, 0. */
  readonly places: readonly Place[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Rows of outlines, unless outlines laid into each other's hollows take less of the strip; turned only where they take less
 * again. An outline that is wider than the strip makes the plan wider.
 */
export function onRoll(ways: readonly PackedWays[], mostWidthMm: number): RollPlan {
  const rings = ways.map(([{ ring }]) => ring);
  const inRows = [false, true].map((byHeight) =>
    arrange(rings, mostWidthMm, byHeight).offsets.map((offset) => ({ turned: false, offset })),
  );
  const upright = ways.map(([up]): PackedWays => [up]);
  const plans = [...inRows, ...nested(upright, mostWidthMm), ...nested(ways, mostWidthMm)];
  return plans
    .map((places) => planOf(ways, places))
    .reduce((best, plan) => (plan.heightMm < best.heightMm - WORTH_MM ? plan : best));
}

/** Panels are not moved about for less. mm */
const WORTH_MM = 1;

/** More outlines than this lie in rows: among so many the search for hollows takes too long. */
const MOST_OUTLINES = 30;

function nested(ways: readonly PackedWays[], widthMm: number): Place[][] {
  if (ways.length > MOST_OUTLINES) return [];
  const profiles = profilesOf(ways);
  const { drafted, widest, tallest } = ordersOf(profiles);
  return [drafted, tallest, widest].flatMap((order: Order) => {
    const outlines = order.map((i) => profiles[i] as [Profile, Profile?]);
    const spots = nest(outlines, rollArea(widthMm, outlines), Infinity);
    return spots ? [placesOf(spots, order, ways)] : [];
  });
}

/** What counts is how far down the strip is used. */
function rollArea(widthMm: number, outlines: readonly (readonly [Profile, Profile?])[]): PackingArea {
  const most = outlines.reduce((sum, [{ heightMm }]) => sum + heightMm, 0);
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

function planOf(ways: readonly PackedWays[], places: readonly Place[]): RollPlan {
  const box = boxOfPlaces(ways, places) ?? { left: 0, top: 0, right: 0, bottom: 0 };
  return {
    places: movedPlaces(places, { x: -box.left, y: -box.top }),
    widthMm: box.right - box.left,
    heightMm: box.bottom - box.top,
  };
}
