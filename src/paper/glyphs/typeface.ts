// Reads outlines and advance widths of glyphs from a font. Tables as in ISO/IEC 14496-22.

import { type FontTables, fontTables } from './fontTables';

/**
 * An advance width and an outline in thousandths of the size, x to the right, y up from the baseline. The outline is a list of
 * steps: 0 x y moves, 1 x y draws a line, 2 x1 y1 x y a quadratic curve; each contour ends where it began. Plain data, so that a
 * worker can be given it.
 */
export interface Glyph {
  readonly advance: number;
  readonly outline: readonly number[];
}

/** How many numbers a step of an outline has, by its first number. */
export const lengthOf = (kind: number | undefined): number => (kind === 2 ? 5 : 3);

export interface Typeface {
  /** The glyph of a character; null where the typeface has none. */
  glyph(codePoint: number): Glyph | null;
}

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly on: boolean;
}

export async function readTypeface(file: Uint8Array): Promise<Typeface> {
  const tables = await fontTables(file);
  const table = (name: string): DataView => {
    const found = tables.get(name);
    if (!found) throw new Error(`the font has no ${name}`);
    return found;
  };
  const perEm = table('head').getUint16(18);
  const [outlines, advances] = [table('glyf'), table('hmtx')];
  const advanceCount = table('hhea').getUint16(34);
  const indexOf = glyphIndex(tables);
  const scale = 1000 / perEm;

  const offsetOf = glyphOffsets(table('head'), table('loca'));

  const contoursOf = (glyphId: number, depth = 0): Corner[][] => {
    const [start, end] = [offsetOf(glyphId), offsetOf(glyphId + 1)];
    if (start === end || depth > 6) return [];
    const view = new DataView(outlines.buffer, outlines.byteOffset + start, end - start);
    return view.getInt16(0) >= 0 ? simple(view) : composite(view, (part) => contoursOf(part, depth + 1));
  };

  return {
    glyph(codePoint) {
      const glyphId = indexOf(codePoint);
      if (glyphId === 0) return null;
      const advance = advances.getUint16(Math.min(glyphId, advanceCount - 1) * 4) * scale;
      return { advance, outline: contoursOf(glyphId).flatMap((contour) => drawn(contour, scale)) };
    },
  };
}

/** Makes a function that gives the offset of a glyph's outline in bytes; the outline ends at the offset of the next one. */
export function glyphOffsets(head: DataView, loca: DataView): (glyphId: number) => number {
  const long = head.getInt16(50) === 1;
  return (glyphId) => (long ? loca.getUint32(glyphId * 4) : loca.getUint16(glyphId * 2) * 2);
}

/** Makes a function that gives the glyph number of a character from a cmap table of format 4 or 12; 0 where the font has none. */
export function glyphIndex(tables: FontTables): (codePoint: number) => number {
  const cmap = tables.get('cmap');
  if (!cmap) return () => 0;
  let [small, large]: [DataView | null, DataView | null] = [null, null];
  for (let i = 0; i < cmap.getUint16(2); i += 1) {
    const at = cmap.getUint32(4 + i * 8 + 4);
    const view = new DataView(cmap.buffer, cmap.byteOffset + at);
    if (view.getUint16(0) === 4) small ??= view;
    if (view.getUint16(0) === 12) large ??= view;
  }
  return (codePoint) => (large ? inGroups(large, codePoint) : small ? inSegments(small, codePoint) : 0);
}

function inGroups(view: DataView, codePoint: number): number {
  const count = view.getUint32(12);
  for (let i = 0; i < count; i += 1) {
    const at = 16 + i * 12;
    const start = view.getUint32(at);
    if (codePoint >= start && codePoint <= view.getUint32(at + 4))
      return view.getUint32(at + 8) + codePoint - start;
  }
  return 0;
}

function inSegments(view: DataView, codePoint: number): number {
  const twice = view.getUint16(6);
  for (let i = 0; i < twice; i += 2) {
    if (codePoint > view.getUint16(14 + i)) continue;
    const start = view.getUint16(16 + twice + i);
    if (codePoint < start) return 0;
    const delta = view.getUint16(16 + 2 * twice + i);
    const offsetAt = 16 + 3 * twice + i;
    const offset = view.getUint16(offsetAt);
    if (offset === 0) return (codePoint + delta) & 0xffff;
    const glyphId = view.getUint16(offsetAt + offset + (codePoint - start) * 2);
    return glyphId === 0 ? 0 : (glyphId + delta) & 0xffff;
  }
  return 0;
}

function simple(view: DataView): Corner[][] {
  const contourCount = view.getInt16(0);
  const ends = Array.from({ length: contourCount }, (_, i) => view.getUint16(10 + i * 2));
  const count = (ends.at(-1) ?? -1) + 1;
  let at = 10 + contourCount * 2;
  at += 2 + view.getUint16(at);
  const flags: number[] = [];
  while (flags.length < count) {
    const flag = view.getUint8(at++);
    const times = flag & 8 ? view.getUint8(at++) + 1 : 1;
    for (let i = 0; i < times; i += 1) flags.push(flag);
  }
  const along = (short: number, same: number): number[] => {
    let value = 0;
    return flags.map((flag) => {
      if (flag & short) value += flag & same ? view.getUint8(at++) : -view.getUint8(at++);
      else if (!(flag & same)) {
        value += view.getInt16(at);
        at += 2;
      }
      return value;
    });
  };
  const xs = along(2, 16);
  const ys = along(4, 32);
  const corners = flags.map((flag, i): Corner => ({ x: xs[i] ?? 0, y: ys[i] ?? 0, on: (flag & 1) === 1 }));
  return ends.map((end, i) => corners.slice(i === 0 ? 0 : (ends[i - 1] ?? 0) + 1, end + 1));
}

/** The contours of a composite glyph: those of its components, moved and scaled. */
function composite(view: DataView, contoursOf: (glyphId: number) => Corner[][]): Corner[][] {
  const contours: Corner[][] = [];
  let at = 10;
  for (let more = true; more; ) {
    const flags = view.getUint16(at);
    const glyphId = view.getUint16(at + 2);
    at += 4;
    const words = (flags & 1) !== 0;
    const offset = (i: number): number => (words ? view.getInt16(at + 2 * i) : view.getInt8(at + i));
    const [dx, dy] = flags & 2 ? [offset(0), offset(1)] : [0, 0];
    at += words ? 4 : 2;
    const factor = (i: number): number => view.getInt16(at + 2 * i) / 0x4000;
    let [a, b, c, d] = [1, 0, 0, 1];
    if (flags & 8) {
      a = d = factor(0);
      at += 2;
    } else if (flags & 0x40) {
      [a, d] = [factor(0), factor(1)];
      at += 4;
    } else if (flags & 0x80) {
      [a, b, c, d] = [factor(0), factor(1), factor(2), factor(3)];
      at += 8;
    }
    for (const contour of contoursOf(glyphId))
      contours.push(contour.map(({ x, y, on }) => ({ x: a * x + c * y + dx, y: b * x + d * y + dy, on })));
    more = (flags & 0x20) !== 0;
  }
  return contours;
}

/** The steps of a contour. Between two control points the curve passes through their midpoint. */
function drawn(contour: readonly Corner[], scale: number): number[] {
  if (contour.length < 2) return [];
  const number = (value: number): number => Math.round(value * scale * 10) / 10;
  const middle = (a: Corner, b: Corner): Corner => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, on: true });
  const begin = contour.findIndex(({ on }) => on);
  const start =
    begin >= 0 ? (contour[begin] as Corner) : middle(contour[0] as Corner, contour.at(-1) as Corner);
  const rest = begin >= 0 ? [...contour.slice(begin + 1), ...contour.slice(0, begin)] : [...contour];
  const steps = [0, number(start.x), number(start.y)];
  for (let i = 0; i < rest.length; i += 1) {
    const corner = rest[i] as Corner;
    if (corner.on) steps.push(1, number(corner.x), number(corner.y));
    else {
      const after = rest[i + 1] ?? start;
      const to = after.on ? after : middle(corner, after);
      steps.push(2, number(corner.x), number(corner.y), number(to.x), number(to.y));
      if (after.on && i + 1 < rest.length) i += 1;
    }
  }
  if (rest.at(-1)?.on) steps.push(1, number(start.x), number(start.y));
  return steps;
}
