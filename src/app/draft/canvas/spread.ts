// Rows of a ledger moved apart so that none covers another.

/**
 * Tops of rows, px: each with its middle line at `lines[i]`, moved down no farther than the row above needs, and up again so
 * far that the last one ends within `height`.
 *
 * @param lines heights of the lines the rows belong to, in order
 * @param heights of the rows
 * @param middle from a row's top to the line it stands on
 */
export function spread(
  lines: readonly number[],
  heights: readonly number[],
  middle: number,
  height: number,
): number[] {
  const tops: number[] = [];
  let foot = 0;
  lines.forEach((line, i) => {
    const top = Math.max(line - middle, foot);
    tops.push(top);
    foot = top + (heights[i] ?? 0);
  });
  let limit = height;
  for (let i = tops.length - 1; i >= 0; i -= 1) {
    limit -= heights[i] ?? 0;
    tops[i] = Math.min(tops[i] ?? 0, limit);
    limit = tops[i] ?? 0;
  }
  return tops;
}
