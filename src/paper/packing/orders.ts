// Orders in which outlines are laid down.

import type { Profile } from './profile';

export type Order = readonly number[];

/** Indices of outlines as drafted, by width and by height, the largest first; equal ones keep the drafted order. */
export function ordersOf(profiles: readonly (readonly Profile[])[]): {
  readonly drafted: Order;
  readonly widest: Order;
  readonly tallest: Order;
} {
  const drafted = profiles.map((_, i) => i);
  const by = (sizeOf: (profile: Profile) => number): Order => {
    const sizes = profiles.map(([upright]) => (upright ? sizeOf(upright) : 0));
    return [...drafted].sort((a, b) => (sizes[b] as number) - (sizes[a] as number) || a - b);
  };
  return {
    drafted,
    widest: by(({ widthMm }) => widthMm),
    tallest: by(({ heightMm }) => heightMm),
  };
}
