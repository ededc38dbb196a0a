// Heights at which the drafting sheet gives measurements.

import { LEVEL_TITLES } from '../../../document';
import type { Draft, DraftedWedge, LevelName } from '../../../engine';
import type { SheetLengths } from './sheetLengths';

export interface DraftingHeight {
  readonly name: string;
  /** Distance below the shoulder level, mm. */
  readonly y: number;
  readonly level: LevelName | null;
}

/** Name of the line on which a wedge of a shouldered block ends. */
export const MID_SHOULDER = 'Mid-shoulder';

/** Heights farther apart than this get guides between them; common practice, no source. mm */
const MOST_APART_MM = 60;

/** Heights nearer than this are one line. mm */
const ONE_LINE_MM = 1;

/** The levels that shape the garment, top line, hem line, and the turns of wedges, from the top down. */
export function linesOf({ levels, span, pieces, blocks }: Draft, lengths: SheetLengths): DraftingHeight[] {
  if (!span) return [];
  const reached = pieces.flatMap(({ edges }) => edges.flatMap(({ points }) => points.map(({ y }) => y)));
  const [upper, lower] = reached.reduce(
    ([least, most], y) => [Math.min(least, y), Math.max(most, y)] as const,
    [span.top, span.hem] as const,
  );
  const above = levels.filter(({ y }) => y <= upper + ONE_LINE_MM).at(-1)?.y ?? -Infinity;
  const below = levels.find(({ y }) => y >= lower - ONE_LINE_MM)?.y ?? Infinity;
  const lines: DraftingHeight[] = levels
    .filter(({ y }) => y >= above && y <= below)
    .map(({ name, y }) => ({ name: LEVEL_TITLES[name], y, level: name }));
  for (const { name, title, y } of [
    { name: 'top line', title: 'Top line', y: span.top },
    { name: 'hem line', title: 'Hem line', y: span.hem },
  ]) {
    const same = lines.findIndex((line) => Math.abs(line.y - y) < ONE_LINE_MM);
    const found = lines[same];
    if (found) lines[same] = { ...found, name: `${found.name}, ${name}` };
    else lines.push({ name: title, y, level: null });
  }
  const chest = levels[0]?.y ?? upper;
  for (const wedge of [...(blocks?.front.wedges ?? []), ...(blocks?.back.wedges ?? [])])
    for (const { name, y } of turnsOf(wedge, chest, lengths))
      if (y > upper && y < lower && lines.every((line) => Math.abs(line.y - y) >= ONE_LINE_MM))
        lines.push({ name, y, level: null });
  return lines.sort((a, b) => a.y - b.y);
}

/** Heights at which a wedge turns or ends between two levels; `chest` is the height of the first level. */
function turnsOf(
  { outerLeg, extent }: DraftedWedge,
  chest: number,
  lengths: SheetLengths,
): Omit<DraftingHeight, 'level'>[] {
  // Above the first level a leg is led to mid-shoulder and a little past it, so that its direction holds at the end.
  const middle = Math.max(...outerLeg.ys.filter((y) => y < chest));
  const isPoint = (y: number): boolean => y === extent.upper || y === extent.lower;
  return outerLeg.ys.flatMap((y) => {
    if (isPoint(y)) return [{ name: `Dart point at ${lengths.text(y)}`, y }];
    if (y < chest) return y === middle ? [{ name: MID_SHOULDER, y }] : [];
    return [{ name: 'Fuller cup', y }];
  });
}

/** The same with guides between lines that are far apart. */
export function heightsOf(draft: Draft, lengths: SheetLengths): DraftingHeight[] {
  const lines = linesOf(draft, lengths);
  return lines.flatMap((line, i) => {
    const before = lines[i - 1];
    if (!before) return [line];
    const parts = Math.ceil((line.y - before.y) / MOST_APART_MM);
    const between = Array.from({ length: parts - 1 }, (_, n): DraftingHeight => {
      const y = lengths.round(before.y + ((line.y - before.y) * (n + 1)) / parts);
      return { name: `Guide at ${lengths.text(y)}`, y, level: null };
    });
    return [...between, line];
  });
}
