// Moves labels of a figure apart that would overlap.

import type { FigureLabel } from './elements/draftingStep';

/**
 * The labels in their order, with those above each other at least `lineMm` apart from baseline to baseline and each group centred
 * where it was. Labels whose points are at least `reachMm` apart horizontally do not overlap. mm of the figure.
 */
export function labelsApart(labels: readonly FigureLabel[], lineMm: number, reachMm: number): FigureLabel[] {
  const down = labels.map((label, i) => ({ label, i })).sort((a, b) => a.label.at.y - b.label.at.y);
  const columns: (typeof down)[] = [];
  for (const each of down) {
    const column = columns.find((own) => own.every(({ label }) => isInReach(label, each.label, reachMm)));
    if (column) column.push(each);
    else columns.push([each]);
  }
  const moved = [...labels];
  for (const column of columns)
    for (const [n, y] of spread(
      column.map(({ label }) => label.at.y),
      lineMm,
    ).entries()) {
      const { label, i } = column[n] as (typeof down)[number];
      moved[i] = { ...label, at: { x: label.at.x, y } };
    }
  return moved;
}

const isInReach = (a: FigureLabel, b: FigureLabel, reachMm: number): boolean =>
  a.anchor === b.anchor && Math.abs(a.at.x - b.at.x) < reachMm;

/** Spreads sorted heights to at least `least` apart: heights that are nearer are spaced evenly about their mean. */
function spread(heights: readonly number[], least: number): number[] {
  const groups: { mean: number; count: number }[] = [];
  for (const height of heights) {
    let group = { mean: height, count: 1 };
    for (
      let above = groups.at(-1);
      above && footOf(above, least) + least > headOf(group, least);
      above = groups.at(-1)
    ) {
      groups.pop();
      const count = above.count + group.count;
      group = { mean: (above.mean * above.count + group.mean * group.count) / count, count };
    }
    groups.push(group);
  }
  return groups.flatMap((group) =>
    Array.from({ length: group.count }, (_, i) => headOf(group, least) + i * least),
  );
}

type Group = { readonly mean: number; readonly count: number };
const headOf = ({ mean, count }: Group, least: number): number => mean - ((count - 1) * least) / 2;
const footOf = ({ mean, count }: Group, least: number): number => mean + ((count - 1) * least) / 2;
