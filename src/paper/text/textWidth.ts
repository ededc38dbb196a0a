// How wide a text comes out on the page, known without making a page.

import { MM_PER_INCH } from '../../engine';
import { type TextRun, textRuns } from './fractions';

/** Millimetres in a point of 1/72 in, the unit of ISO 32000-1, 8.3.2.3. */
export const MM_PER_POINT = MM_PER_INCH / 72;

/**
 * Advance widths of Helvetica and Helvetica-Bold from blank (32) to tilde (126), thousandths of the size:
 * Adobe Core 14 AFM files, version 1.05 and 1.06.
 */
const REGULAR = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
const BOLD = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278,
  556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584,
  556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556,
  333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
];
/** Signs that are no letter with a mark, both weights (the wider one where they differ). */
const SIGNS: Readonly<Record<string, number>> = {
  '½': 834,
  '¼': 834,
  '¾': 834,
  '–': 556,
  '…': 1000,
  '‘': 278,
  '’': 278,
  '“': 500,
  '”': 500,
  '·': 278,
  '×': 584,
  '°': 400,
  '€': 556,
  ß: 611,
  æ: 889,
  ø: 611,
  Ø: 778,
  œ: 944,
  ð: 611,
  Ð: 722,
  þ: 611,
  Þ: 667,
  '•': 350,
  '±': 584,
  '«': 556,
  '»': 556,
  '£': 556,
  '§': 556,
  '¡': 333,
  '¿': 611,
};
/** Anything else: no sign is wider. */
const WIDEST = 1000;
/** Letters of alphabets beyond the page's own font: what they are set into, and set narrower where they need more. */
const OTHER_LETTER = { regular: 640, bold: 700 };
const OTHER_CAPITAL = { regular: 760, bold: 860 };
const IDEOGRAPHIC =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}]$/u;
/** ì, í, î and ï are wider than i. */
const MARKED_LEAST = 278;

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
export const FRACTION_APART = 0.12;

/** Width in mm of a part of a text; the stroke of a fraction is as narrow as its figures are small. */
export function runWidth(run: TextRun, sizePt: number, bold: boolean): number {
  const [letters, part] =
    run.kind === 'words' ? [run.text, 1] : [`${run.over}/${run.under}`, FRACTION_FIGURES];
  let thousandths = 0;
  for (const character of letters) thousandths += advance(character, bold);
  const apart = run.kind === 'fraction' && run.apart ? FRACTION_APART : 0;
  return ((thousandths / 1000) * part + apart) * sizePt * MM_PER_POINT;
}

function advance(character: string, bold: boolean): number {
  if (/^[\p{M}\p{Cf}]$/u.test(character)) return 0;
  const sign = SIGNS[character];
  if (sign !== undefined) return sign;
  const base = character.normalize('NFD');
  const width = (bold ? BOLD : REGULAR)[base.charCodeAt(0) - 32];
  if (width !== undefined) return base.length > 1 ? Math.max(MARKED_LEAST, width) : width;
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
