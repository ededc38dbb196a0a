// In which order outlines are laid down.

import type { Profile } from './profile';

export type Order = readonly number[];

/** The indices of outlines as drafted and by size; equal ones stay as drafted. */
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
