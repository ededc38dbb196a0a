// Subsets a TrueType font to given characters, so that it is small enough for every file. Tables as in ISO/IEC 14496-22.

import { type FontTables, glyphIndex, glyphOffsets } from './fontTables';

interface FontSubset {
  /** In any order; the font must have a glyph for each. */
  readonly characters: readonly string[];
  /** Units per em of the subset: more than the font's own makes its letters smaller. */
  readonly perEm: number;
  /** PostScript name of the subset, ASCII. */
  readonly name: string;
}

/**
 * The bytes of the font with these glyphs only, without hints and without positioning. Check sums are 0; the PDF library sets
 * them.
 *
 * @throws Error where a table or a glyph is missing; the fonts are shipped with the program
 */
export function subsetFont(tables: FontTables, { characters, perEm, name }: FontSubset): Uint8Array {
  const table = (tag: string): DataView => {
    const found = tables.get(tag);
    if (!found) throw new Error(`the font has no ${tag}`);
    return found;
  };
  const indexOf = glyphIndex(tables);
  const codes = [...new Set(characters.map((each) => each.codePointAt(0) ?? 0))].sort((a, b) => a - b);
  const glyphIds = [0, ...codes.map(indexOf)];
  if (glyphIds.includes(0, 1)) throw new Error('the font lacks a wanted letter');

  const offsetOf = glyphOffsets(table('head'), table('loca'));
  const outlines: Uint8Array[] = [];
  // Component glyphs of composite ones are appended to the list while it is walked.
  for (let i = 0; i < glyphIds.length; i += 1) {
    const glyphId = glyphIds[i] as number;
    const [start, end] = [offsetOf(glyphId), offsetOf(glyphId + 1)];
    const outline = bytesOf(table('glyf')).slice(start, end);
    outlines.push(outline.length === 0 ? outline : withoutHints(outline, renumbered));
  }
  function renumbered(glyphId: number): number {
    const known = glyphIds.indexOf(glyphId);
    return known >= 0 ? known : glyphIds.push(glyphId) - 1;
  }

  const count = glyphIds.length;
  const offsets = new DataView(new ArrayBuffer((count + 1) * 4));
  let offset = 0;
  for (const [i, { length }] of outlines.entries()) {
    offsets.setUint32(i * 4, offset);
    offset += padded(length);
  }
  offsets.setUint32(count * 4, offset);

  const advances = new DataView(new ArrayBuffer(count * 4));
  const whole = table('hhea').getUint16(34);
  for (const [i, glyphId] of glyphIds.entries()) {
    advances.setUint16(i * 4, table('hmtx').getUint16(Math.min(glyphId, whole - 1) * 4));
    const bearing = glyphId < whole ? glyphId * 4 + 2 : whole * 4 + (glyphId - whole) * 2;
    advances.setInt16(i * 4 + 2, table('hmtx').getInt16(bearing));
  }

  const changed = (tag: string, change: (view: DataView) => void, length?: number): Uint8Array => {
    const copy = bytesOf(table(tag)).slice(0, length);
    change(new DataView(copy.buffer));
    return copy;
  };
  return fontFile([
    ['OS/2', bytesOf(table('OS/2'))],
    ['cmap', characterMap(codes)],
    ['glyf', concatenated(outlines)],
    [
      'head',
      changed('head', (head) => {
        head.setUint16(18, perEm);
        head.setInt16(50, 1);
      }),
    ],
    ['hhea', changed('hhea', (hhea) => hhea.setUint16(34, count))],
    ['hmtx', bytesOf(advances)],
    ['loca', bytesOf(offsets)],
    ['maxp', changed('maxp', (maxp) => maxp.setUint16(4, count))],
    ['name', nameTable(name)],
    // Format 3: glyphs have no names.
    ['post', changed('post', (post) => post.setUint32(0, 0x00030000), 32)],
  ]);
}

const bytesOf = ({ buffer, byteOffset, byteLength }: DataView): Uint8Array =>
  new Uint8Array(buffer, byteOffset, byteLength);

const padded = (length: number): number => Math.ceil(length / 4) * 4;

function concatenated(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + padded(length), 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += padded(part.length);
  }
  return whole;
}

const WORDS = 0x1;
const SCALE = 0x8;
const MORE = 0x20;
const TWO_SCALES = 0x40;
const FOUR_SCALES = 0x80;
const HINTS = 0x100;

/** A glyph without its hints; its components are referred to by their new numbers. */
function withoutHints(outline: Uint8Array, renumbered: (glyphId: number) => number): Uint8Array {
  const view = new DataView(outline.buffer);
  const contours = view.getInt16(0);
  if (contours >= 0) {
    const at = 10 + 2 * contours;
    const points = outline.subarray(at + 2 + view.getUint16(at));
    const bare = new Uint8Array(at + 2 + points.length);
    bare.set(outline.subarray(0, at));
    bare.set(points, at + 2);
    return bare;
  }
  let at = 10;
  for (let more = true; more; ) {
    const flags = view.getUint16(at);
    view.setUint16(at, flags & ~HINTS);
    view.setUint16(at + 2, renumbered(view.getUint16(at + 2)));
    const scales = flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0;
    at += 4 + (flags & WORDS ? 4 : 2) + scales;
    more = (flags & MORE) !== 0;
  }
  return outline.slice(0, at);
}

/** A cmap table of format 4 for characters in order, whose glyphs are numbered from 1. */
function characterMap(codes: readonly number[]): Uint8Array {
  const segments: { first: number; last: number; delta: number }[] = [];
  for (const [i, code] of codes.entries()) {
    const segment = segments.at(-1);
    if (segment?.last === code - 1) segment.last = code;
    else segments.push({ first: code, last: code, delta: i + 1 - code });
  }
  segments.push({ first: 0xffff, last: 0xffff, delta: 1 });
  const count = segments.length;
  const reach = 2 ** Math.floor(Math.log2(count));
  const words = [
    // One subtable, for Windows and Unicode, at offset 12.
    ...[0, 1, 3, 1, 0, 12],
    ...[4, 16 + 8 * count, 0, 2 * count, 2 * reach, Math.log2(reach), 2 * (count - reach)],
    ...segments.map(({ last }) => last),
    0,
    ...segments.map(({ first }) => first),
    ...segments.map(({ delta }) => delta),
    ...segments.map(() => 0),
  ];
  return bytesOf(wordsOf(words));
}

function wordsOf(words: readonly number[]): DataView {
  const view = new DataView(new ArrayBuffer(2 * words.length));
  for (const [i, word] of words.entries()) view.setUint16(2 * i, word & 0xffff);
  return view;
}

/** A name table with the same family, full and PostScript name. */
function nameTable(name: string): Uint8Array {
  const records = [1, 4, 6].flatMap((kind) => [1, 0, 0, kind, name.length, 0]);
  const head = bytesOf(wordsOf([0, 3, 6 + 3 * 12, ...records]));
  const characters = Uint8Array.from(name, (letter) => letter.charCodeAt(0));
  return Uint8Array.from([...head, ...characters]);
}

function fontFile(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  const count = tables.length;
  const reach = 2 ** Math.floor(Math.log2(count));
  const words = [1, 0, count, 16 * reach, Math.log2(reach), 16 * (count - reach)];
  let offset = 12 + 16 * count;
  for (const [tag, { length }] of tables) {
    const [a = 0, b = 0, c = 0, d = 0] = [...tag].map((letter) => letter.charCodeAt(0));
    words.push((a << 8) | b, (c << 8) | d, 0, 0, offset >> 16, offset, length >> 16, length);
    offset += padded(length);
  }
  return concatenated([bytesOf(wordsOf(words)), ...tables.map(([, bytes]) => bytes)]);
}
