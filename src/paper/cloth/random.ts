// Random numbers from a seed, so that the same plan comes of the same seed.

/** Numbers from 0 to just below 1, evenly spread: Marsaglia's xorshift of 32 bits (Journal of Statistical Software 8, 2003). */
export function randomFrom(seed: number): () => number {
  let state = Math.imul((seed >>> 0) + 1, 0x9e3779b1) | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
