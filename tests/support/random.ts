// Seeded numbers, so that a case that fails can be made again from the seed in its test's name.

/** Numbers from 0 up to 1, the same row for the same seed. */
export type Random = () => number;

/** The "mulberry32" generator: 32 bits of state, public domain (Tommy Ettinger, 2017). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export const uniform = (random: Random, least: number, most: number): number =>
  least + (most - least) * random();

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)] as T;
}

export const chance = (random: Random, share: number): boolean => random() < share;

/** A standard normal number (Box and Muller 1958). */
export function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
