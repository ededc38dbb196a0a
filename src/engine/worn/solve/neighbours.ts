// Which vertices some part of the energy joins.

import type { GarmentEnergy } from '../cloth/garmentEnergy';

/** The neighbours of each vertex, without itself: in triangles, hinges, bones and marks of the waist tape. */
export function neighboursOf({ membrane, stencils, channels, marks, fixed }: GarmentEnergy): number[][] {
  const sets = Array.from(fixed, () => new Set<number>());
  const link = (i: number, j: number): void => {
    if (i === j || i < 0 || j < 0) return;
    sets[i]!.add(j);
    sets[j]!.add(i);
  };
  for (const [list, size] of [
    [membrane.vertices, 3],
    [stencils.vertices, 4],
    [channels.ends, 2],
    [marks.ends, 2],
  ] as const)
    for (let k = 0; k < list.length; k += size)
      for (let a = 0; a < size; a += 1) for (let b = 0; b < a; b += 1) link(list[k + a]!, list[k + b]!);
  return sets.map((set) => [...set]);
}
