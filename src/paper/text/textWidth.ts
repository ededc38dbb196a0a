// How wide a text comes out on the page, known without making a page.

import { MM_PER_INCH } from '../../engine';
import { FACE_WIDTHS } from './faceWidths';
import { type TextRun, textRuns } from './fractions';

/** Millimetres in a point of 1/72 in, the unit of ISO 32000-1, 8.3.2.3. */
export const MM_PER_POINT = MM_PER_INCH / 72;

/** Anything else: no sign is wider. */
const WIDEST = 1000;
/** Letters of alphabets beyond the page's own font: what they are set into, and set narrower where they need more. */
const OTHER_LETTER = { regular: 640, bold: 700 };
const OTHER_CAPITAL = { regular: 760, bold: 860 };
const IDEOGRAPHIC =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}]$/u;

/**
 * Width in mm of a text as it is set: exact in the page's own font, and never less than what is printed; in other letters the
 * width they are set into.
 */
export function textWidth(text: string, sizePt: number, bold: boolean): number {
  return textRuns(text).reduce((sum, run) => sum + runWidth(run, sizePt, bold), 0);
}

/** Size of the figures of a built fraction in parts of the text's: a little larger than those of the font's own ½, for reading at arm's length. */
export const FRACTION_FIGURES = 0.65;

/** Between a whole number and its fraction, in parts of the size. */
export const FRACTION_GAP = 0.12;

/** Width in mm of a part of a text; the stroke of a fraction is as narrow as its figures are small. */
export function runWidth(run: TextRun, sizePt: number, bold: boolean): number {
  const [characters, part] =
    run.kind === 'text' ? [run.text, 1] : [`${run.over}/${run.under}`, FRACTION_FIGURES];
  let thousandths = 0;
  for (const character of characters) thousandths += advance(character, bold);
  const gap = run.kind === 'fraction' && run.isApart ? FRACTION_GAP : 0;
  return ((thousandths / 1000) * part + gap) * sizePt * MM_PER_POINT;
}

function advance(character: string, bold: boolean): number {
  if (/^[\p{M}\p{Cf}]$/u.test(character)) return 0;
  const widths = FACE_WIDTHS[bold ? 'bold' : 'regular'];
  const width = widths.get(character) ?? widths.get(character.normalize('NFD').charAt(0));
  if (width !== undefined) return width;
  if (!/^\p{L}$/u.test(character) || IDEOGRAPHIC.test(character)) return WIDEST;
  return (/^\p{Lu}$/u.test(character) ? OTHER_CAPITAL : OTHER_LETTER)[bold ? 'bold' : 'regular'];
}

/** A text cut off with an ellipsis where it is wider than `mostMm`. */
export function shortened(text: string, sizePt: number, bold: boolean, mostMm: number): string {
  const most = (mostMm / (sizePt * MM_PER_POINT)) * 1000;
  let [width, kept] = [0, 0];
  for (const character of text) {
    width += advance(character, bold);
    if (width > most) return `${text.slice(0, kept).trimEnd()}…`;
    if (width + advance('…', bold) <= most) kept += character.length;
  }
  return text;
}

/** A text in lines no wider than `mostMm`, broken at blanks; a word that is wider alone is broken inside. */
export function wrapped(text: string, sizePt: number, bold: boolean, mostMm: number): string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (candidate: string): boolean => textWidth(candidate, sizePt, bold) <= mostMm;
  for (const word of text.split(' ')) {
    if (fits(line === '' ? word : `${line} ${word}`)) {
      line = line === '' ? word : `${line} ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && !fits(line + letter)) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  return line === '' ? lines : [...lines, line];
}
