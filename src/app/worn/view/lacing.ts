// Eyelets evenly apart along each laced edge, and the lacing that crosses between them.

type Place = readonly number[];

const EYELETS_APART_MM = 25;
const INSIDE_EDGE_MM = 8;

/** Lacing across each pair of laced edges, crossing from eyelet to eyelet: six numbers a stroke. */
export function lacingOf(edges: readonly (readonly Place[])[]): number[] {
  const half = edges.length / 2;
  return edges.slice(0, half).flatMap((left, i) => {
    const [l, r] = [eyeletsOf(left), eyeletsOf(edges[half + i] ?? left)];
    const first = [...(l[0] ?? []), ...(r[0] ?? [])];
    return l
      .slice(1)
      .flatMap((eyelet, k) => [
        ...[...(l[k] ?? eyelet), ...(r[k + 1] ?? eyelet)],
        ...[...(r[k] ?? eyelet), ...eyelet],
      ])
      .concat(first);
  });
}

/** Points evenly apart along an edge, a little away from it. */
export function eyeletsOf(edge: readonly Place[]): number[][] {
  const lengths = [0];
  for (const [i, place] of edge.slice(1).entries())
    lengths.push(
      (lengths[i] ?? 0) + Math.hypot(...[0, 1, 2].map((j) => (place[j] ?? 0) - (edge[i]?.[j] ?? 0))),
    );
  const whole = lengths.at(-1) ?? 0;
  const count = Math.max(2, Math.round(whole / EYELETS_APART_MM));
  let k = 0;
  return Array.from({ length: count }, (_, i) => {
    const at = ((i + 0.5) / count) * whole;
    while (k < edge.length - 2 && (lengths[k + 1] ?? 0) < at) k += 1;
    const span = (lengths[k + 1] ?? 0) - (lengths[k] ?? 0);
    const part = span > 0 ? (at - (lengths[k] ?? 0)) / span : 0;
    const [x = 0, y = 0, z = 0] = [0, 1, 2].map(
      (j) => (edge[k]?.[j] ?? 0) * (1 - part) + (edge[k + 1]?.[j] ?? 0) * part,
    );
    return [x + Math.sign(x) * INSIDE_EDGE_MM, y, z];
  });
}
