// Divides a line into runs that are set in one font and one direction, from left to right as they are seen.

import bidiFactory from 'bidi-js';
import { BETWEEN_PARTS } from '../text/readingOrder';

export interface LineRun {
  readonly text: string;
  readonly rightToLeft: boolean;
  /** Index of the first font that has the run's letters; null where none has. */
  readonly font: number | null;
}

const bidi = bidiFactory();
const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Unicode Standard Annex 9. `fontOf` tells the font of a letter with its marks. */
export const lineRuns = (line: string, fontOf: (letter: string) => number | null): LineRun[] =>
  line.split(BETWEEN_PARTS).flatMap((part, i) => {
    const runs = partRuns(part, fontOf);
    return i === 0 ? runs : [{ text: BETWEEN_PARTS, rightToLeft: false, font: fontOf('·') }, ...runs];
  });

function partRuns(part: string, fontOf: (letter: string) => number | null): LineRun[] {
  if (part === '') return [];
  const { levels } = bidi.getEmbeddingLevels(part);
  const runs: { text: string; level: number; font: number | null; script: string }[] = [];
  for (const { segment, index } of letters.segment(part)) {
    const level = levels[index] ?? 0;
    const last = runs.at(-1);
    // A blank is written with what stands before it, and so is a sign of no script.
    const font = /^\s$/u.test(segment) && last ? last.font : fontOf(segment);
    const script = scriptOf(segment) ?? last?.script ?? 'other';
    if (last && last.level === level && last.font === font && last.script === script) last.text += segment;
    else runs.push({ text: segment, level, font, script });
  }
  return inVisualOrder(runs).map(({ text, level, font }) => ({ text, rightToLeft: level % 2 === 1, font }));
}

/** Scripts that letters of one font must be parted by, because they are shaped by rules of their own; null for a sign of none. */
const scriptOf = (letter: string): string | null =>
  /^\p{Script=Arabic}/u.test(letter)
    ? 'Arabic'
    : /^\p{Script=Hebrew}/u.test(letter)
      ? 'Hebrew'
      : /^\p{L}/u.test(letter)
        ? 'other'
        : null;

/** Rule L2: from the highest level down, every sequence of runs at that level or higher is turned round. */
function inVisualOrder<Run extends { readonly level: number }>(runs: readonly Run[]): Run[] {
  const shown = [...runs];
  for (let level = Math.max(...runs.map((run) => run.level)); level > 0; level -= 1)
    for (let from = 0; from < shown.length; from += 1) {
      let to = from;
      while ((shown[to]?.level ?? -1) >= level) to += 1;
      if (to > from) shown.splice(from, to - from, ...shown.slice(from, to).reverse());
      from = to;
    }
  return shown;
}
