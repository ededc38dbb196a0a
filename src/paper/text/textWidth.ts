// Measures texts and breaks them into lines, without a page.

import { MM_PER_INCH } from '../../engine';
import { FACE_WIDTHS } from './faceWidths';
import { type TextRun, textRuns } from './fractions';

/** Millimetres in a point of 1/72 in, the unit of ISO 32000-1, 8.3.2.3. */
export const MM_PER_POINT = MM_PER_INCH / 72;

/** Width of any other sign, in thousandths of the size; no sign is wider. */
const WIDEST = 1000;
/** Widths for letters that the page's face lacks. They are drawn as outlines, narrowed to this where they are wider. */
const OTHER_LETTER = { regular: 640, bold: 700 };
const OTHER_CAPITAL = { regular: 760, bold: 860 };
const IDEOGRAPHIC =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}]$/u;

/**
 * Width of a text as it is printed, mm. It is exact for the letters of the page's face and an upper bound for all others, which
 * are narrowed to fit it.
 */
export function textWidth(text: string, sizePt: number, bold: boolean): number {
  return textRuns(text).reduce((sum, run) => sum + runWidth(run, sizePt, bold), 0);
}

/**
 * Size of the figures of a built fraction, as a factor of the text's size: a little larger than in the face's own ½, for reading
 * at arm's length.
 */
export const FRACTION_FIGURES = 0.65;

/** Gap between a whole number and its fraction, as a factor of the size. */
export const FRACTION_GAP = 0.12;

/** Width of a part of a text, mm. The stroke of a fraction is narrowed by the same factor as its figures. */
export function runWidth(run: TextRun, sizePt: number, bold: boolean): number {
  const [characters, part] =
    run.kind === 'text' ? [run.text, 1] : [`${run.over}/${run.under}`, FRACTION_FIGURES];
  let thousandths = 0;
  for (const character of characters) thousandths += advance(character, bold);
  const gap = run.kind === 'fraction' && run.isApart ? FRACTION_GAP : 0;
  return ((thousandths / 1000) * part + gap) * sizePt * MM_PER_POINT;
}

function advance(character: string, bold: boolean): number {
  const widths = FACE_WIDTHS[bold ? 'bold' : 'regular'];
  // Most texts are plain, and are measured many times over.
  const plain = character <= '~' ? widths.get(character) : undefined;
  if (plain !== undefined) return plain;
  if (/^[\p{M}\p{Cf}]$/u.test(character)) return 0;
  const width = widths.get(character) ?? widths.get(character.normalize('NFD').charAt(0));
  if (width !== undefined) return width;
  if (!/^\p{L}$/u.test(character) || IDEOGRAPHIC.test(character)) return WIDEST;
  return (/^\p{Lu}$/u.test(character) ? OTHER_CAPITAL : OTHER_LETTER)[bold ? 'bold' : 'regular'];
}

/** A text that is wider than `mostMm`, cut off with an ellipsis; any other as it is. */
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

/** Breaks a text at blanks into lines no wider than `mostMm`. A single word that is wider is broken inside. */
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
