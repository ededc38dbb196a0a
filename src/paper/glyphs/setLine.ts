// Sets a line of text in outlines: glyphs in visual order, marks over and under their letters.

import type { Glyphs } from './glyphs';
import { isOverThai, isThaiSign } from './thai';
import { type Glyph, lengthOf } from './typeface';
import { visualOrder } from './visualOrder';

/** Outlines in thousandths of the size from the start of the line, in the form of {@link Glyph}. */
export interface SetLine {
  readonly outlines: readonly (readonly number[])[];
  readonly advance: number;
}

/** Least gap between a letter and a mark, in thousandths of the size. */
const GAP = 45;

const BOX: Glyph = {
  advance: 600,
  outline: [
    ...[0, 60, 0, 1, 540, 0, 1, 540, 700, 1, 60, 700, 1, 60, 0],
    ...[0, 110, 50, 1, 110, 650, 1, 490, 650, 1, 490, 50, 1, 110, 50],
  ],
};

export function setLine(text: string, glyphs: Glyphs, bold: boolean): SetLine {
  const typeface = bold ? glyphs.bold : glyphs.regular;
  const outlines: number[][] = [];
  let advance = 0;
  let base: Standing | null = null as Standing | null;
  for (const character of visualOrder(text)) {
    const glyph = typeface[character] ?? (/^[\p{Z}\p{C}]$/u.test(character) ? SPACE : BOX);
    const isMark = /^\p{M}$/u.test(character);
    const own = extentOf(glyph.outline);
    if (base && own && isThaiSign(character)) {
      const { dx, dy } = thaiPlace(character, own, base, advance);
      outlines.push(shifted(glyph.outline, dx, dy));
      base = { ...base, signTop: Math.max(base.signTop, own.top + dy) };
      continue;
    }
    if (isMark && base && own) {
      const dx = (base.left + base.right - own.left - own.right) / 2;
      const above = own.bottom + own.top > 300;
      const clear = above ? base.top + GAP - own.bottom : base.bottom - GAP - own.top;
      const dy = above ? Math.max(0, clear) : Math.min(0, clear);
      outlines.push(shifted(glyph.outline, dx, dy));
      base = above
        ? { ...base, top: Math.max(base.top, own.top + dy) }
        : { ...base, bottom: Math.min(base.bottom, own.bottom + dy) };
      continue;
    }
    outlines.push(shifted(glyph.outline, advance, 0));
    base = own && standing(own, glyph.outline, advance);
    advance += glyph.advance;
  }
  return { outlines: outlines.filter(({ length }) => length > 0), advance };
}

const SPACE: Glyph = { advance: 300, outline: [] };

/** The extent of a letter on the line, and of the signs placed over it. */
interface Standing extends Extent {
  /** Left end of a stroke that rises above {@link RISE}; null where there is none. */
  readonly rise: number | null;
  /** Upper end of the signs placed over it so far. */
  readonly signTop: number;
}

/** Strokes that end higher than this obstruct a sign over the letter. */
const RISE = 600;

function standing(own: Extent, outline: readonly number[], advance: number): Standing {
  const rising = pointsOf(outline).filter(({ y }) => y > RISE);
  return {
    ...own,
    left: own.left + advance,
    right: own.right + advance,
    rise: rising.length > 0 ? advance + Math.min(...rising.map(({ x }) => x)) : null,
    signTop: -Infinity,
  };
}

/**
 * Offset of a Thai sign. The face draws signs where they suit most consonants; they are moved beside a rising stroke, over another
 * sign and under a descender.
 */
function thaiPlace(
  sign: string,
  own: Extent,
  base: Standing,
  advance: number,
): { readonly dx: number; readonly dy: number } {
  if (!isOverThai(sign)) return { dx: advance, dy: Math.min(0, base.bottom - GAP - own.top) };
  const beside = base.rise === null ? 0 : Math.min(0, base.rise - GAP - advance - own.right);
  return { dx: advance + beside, dy: Math.max(0, base.signTop + GAP - own.bottom) };
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The box around all points of an outline, control points included; null for an empty one. */
function extentOf(outline: readonly number[]): Extent | null {
  const points = pointsOf(outline);
  if (points.length === 0) return null;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...ys),
    top: Math.max(...ys),
  };
}

function pointsOf(outline: readonly number[]): { readonly x: number; readonly y: number }[] {
  const points: { x: number; y: number }[] = [];
  for (let i = 0; i < outline.length; i += lengthOf(outline[i]))
    for (let j = i + 1; j < i + lengthOf(outline[i]); j += 2)
      points.push({ x: outline[j] ?? 0, y: outline[j + 1] ?? 0 });
  return points;
}

function shifted(outline: readonly number[], dx: number, dy: number): number[] {
  const steps = [...outline];
  for (let i = 0; i < steps.length; i += lengthOf(steps[i]))
    for (let j = i + 1; j < i + lengthOf(steps[i]); j += 2) {
      steps[j] = (steps[j] ?? 0) + dx;
      steps[j + 1] = (steps[j + 1] ?? 0) + dy;
    }
  return steps;
}
