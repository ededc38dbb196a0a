// Heights at which the drafting sheet gives measurements.

import { DRAFTING_SHEET, LEVEL_TITLES } from '../../../document';
import type { BlockName, Draft, DraftedWedge, LevelName, UpperEnd } from '../../../engine';
import type { SheetLengths } from './sheetLengths';

export interface DraftingHeight {
  readonly name: string;
  /** Distance below the shoulder level, mm. */
  readonly y: number;
  readonly level: LevelName | null;
  /** Id of the wedge that ends in neckline, shoulder or armhole there. */
  readonly endOf?: string | undefined;
}

const TEXTS = DRAFTING_SHEET.lines;

/** Name of the line on which a wedge of a shouldered block ends, by where it does. */
const upperEndName = ({ edge, part, at }: UpperEnd, block: BlockName, lengths: SheetLengths): string =>
  edge === 'shoulder' && part === 0.5
    ? TEXTS.midShoulder[block]
    : TEXTS.endIn({ edge, height: lengths.text(at.point.y) });

/** The line at a height; null where there is none. */
export const lineAt = (heights: readonly DraftingHeight[], at: number): DraftingHeight | null =>
  heights.find(({ y }) => Math.abs(y - at) < ONE_LINE_MM) ?? null;

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
    { ...TEXTS.top, y: span.top },
    { ...TEXTS.hem, y: span.hem },
  ]) {
    const same = lines.findIndex((line) => Math.abs(line.y - y) < ONE_LINE_MM);
    const found = lines[same];
    if (found) lines[same] = { ...found, name: TEXTS.both({ title: found.name, name }) };
    else lines.push({ name: title, y, level: null });
  }
  const bust = levels.find(({ name }) => name === 'bust')?.y ?? upper;
  const all = blocks ? [blocks.front, blocks.back] : [];
  for (const { name: block, wedges, sideSeam, upper: edges } of all)
    for (const line of [
      ...(edges?.ends ?? []).map((end) => ({
        name: upperEndName(end, block, lengths),
        y: end.at.point.y,
        endOf: end.wedge,
      })),
      ...wedges.flatMap((wedge) => {
        // A dart has no leg above the edge that it opens in.
        const end = edges?.ends.find(({ wedge: id, isDart }) => isDart && id === wedge.id)?.at.point.y;
        return turnsOf(wedge, bust, lengths).filter(({ y }) => end === undefined || y >= end);
      }),
      // Above the bust line the side line is rounded off as the legs are.
      ...sideSeam.ys
        .filter((y) => y < bust)
        .map((y) => ({ name: TEXTS.guide({ height: lengths.text(y) }), y })),
    ])
      if (line.y > upper && line.y < lower && lines.every(({ y }) => Math.abs(line.y - y) >= ONE_LINE_MM))
        lines.push({ ...line, level: null });
  return lines.sort((a, b) => a.y - b.y);
}

/** Heights at which a wedge turns or ends between two levels; above the bust line it is rounded off, below it for the cup. */
function turnsOf(
  { outerLeg, extent }: DraftedWedge,
  bust: number,
  lengths: SheetLengths,
): Omit<DraftingHeight, 'level'>[] {
  const isPoint = (y: number): boolean => y === extent.upper || y === extent.lower;
  return outerLeg.ys.flatMap((y) => {
    if (isPoint(y)) return [{ name: TEXTS.dartPoint({ height: lengths.text(y) }), y }];
    if (y < bust) return [{ name: TEXTS.guide({ height: lengths.text(y) }), y }];
    return [{ name: TEXTS.fullerCup, y }];
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
      return { name: TEXTS.guide({ height: lengths.text(y) }), y, level: null };
    });
    return [...between, line];
  });
}
