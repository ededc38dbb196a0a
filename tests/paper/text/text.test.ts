// Letters on the printed page: nothing garbled, and widths that are true.

import { jsPDF } from 'jspdf';
import { describe, expect, it } from 'vitest';
import { embedFace, takeFace } from '../../../src/paper/pdf/file/embedFace';
import { pdfCanvas } from '../../../src/paper/pdf/file/pdfCanvas';
import { textRuns } from '../../../src/paper/text/fractions';
import { shortened, textWidth, wrapped } from '../../../src/paper/text/textWidth';
import { isExact, settable, WRITABLE, writable } from '../../../src/paper/text/writable';
import { WITH_FACE } from '../demoPattern';
import { readPattern } from '../readPattern';

/** A file with the page's face in it. */
function faced(): jsPDF {
  const pdf = new jsPDF({ unit: 'mm', format: 'a4' });
  embedFace(pdf, WITH_FACE.face);
  return pdf;
}

describe('writable', () => {
  it.each([
    ['Wren Abernathy', 'Wren Abernathy', false],
    ['Zoë Ångström', 'Zoë Ångström', false],
    ['Łęcka, Dvořák, Đorđe', 'Lecka, Dvorák, Dorde', false],
    ['A\u0000b\n\tc\u202e', 'A b c', false],
    ['½ in, 1½ in, 1⅝ in, ⅛ in', '½ in, 1½ in, 1 5/8 in, 1/8 in', false],
    ['3¹¹⁄₁₆ in', '3 11/16 in', false],
    ['−2 in', '–2 in', false],
    ['Ольга', '?????', true],
    ['ﬁne', 'fine', false],
    ['', '', false],
  ])('writes %j as %j', (text, written, lost) => {
    expect(writable(text)).toEqual({ text: written, lost });
  });
});

describe('textWidth', () => {
  // What is printed, as pdf.js measures it by the embedded face.
  it.each([
    'Front 1',
    'Wren Abernathy',
    'Side seam, to Back 3 · 1½ in',
    'Zoë Ångström',
    'cut off here, lay on A1',
    'WAVE illi',
    'naïve',
  ])('is the printed width of %j', async (text) => {
    const pdf = faced();
    pdf.setFontSize(12);
    takeFace(pdf, false);
    pdf.text(text, 10, 20);
    takeFace(pdf, true);
    pdf.text(text, 10, 40);
    const { pages } = await readPattern(new Uint8Array(pdf.output('arraybuffer')));
    for (const [row, bold] of [
      [20, false],
      [40, true],
    ] as const) {
      const parts = (pages[0]?.texts ?? []).filter(({ at }) => Math.abs(at.y - row) < 0.1);
      const end = Math.max(...parts.map(({ at, widthMm }) => at.x + widthMm));
      expect(parts.map((part) => part.text).join('')).toBe(text);
      expect(textWidth(text, 12, bold)).toBeCloseTo(end - 10, 2);
    }
  });

  it.each([false, true])('is the printed width of every letter, bold: %s', async (bold) => {
    const letters = WRITABLE.filter((letter) => /^[\P{Z}]$/u.test(letter) && letter !== '\u00ad');
    const pdf = faced();
    pdf.setFontSize(12);
    takeFace(pdf, bold);
    for (const [i, letter] of letters.entries())
      pdf.text(letter, 10 + 9 * (i % 20), 10 + 9 * Math.floor(i / 20));
    const { pages } = await readPattern(new Uint8Array(pdf.output('arraybuffer')));
    const printed = pages[0]?.texts ?? [];
    // pdf.js gives the sign µ back as the letter μ.
    expect(printed.map(({ text }) => text)).toEqual(letters.map((letter) => (letter === 'µ' ? 'μ' : letter)));
    for (const [i, { widthMm }] of printed.entries()) {
      const letter = letters[i] as string;
      expect(Math.abs(textWidth(letter, 12, bold) - widthMm), letter).toBeLessThan(1e-6);
    }
  });
});

describe('a built fraction', () => {
  const readBack = async (text: string, turnRad: number) => {
    const pdf = faced();
    const placed = { text, start: { x: 60, y: 60 }, turnRad, sizePt: 12, bold: false };
    pdfCanvas(pdf).text(placed);
    pdfCanvas(pdf).text({ ...placed, text: 'after it', start: { x: 60, y: 90 }, turnRad: 0 });
    const { pages } = await readPattern(new Uint8Array(pdf.output('arraybuffer')));
    return pages[0]?.texts ?? [];
  };

  it('is parted from what stands around it, and from its whole number', () => {
    expect(textRuns('Over-bust, 3¹¹⁄₁₆ in')).toEqual([
      { kind: 'text', text: 'Over-bust, 3' },
      { kind: 'fraction', over: '11', under: '16', isApart: true },
      { kind: 'text', text: ' in' },
    ]);
    expect(textRuns('⅛')).toEqual([{ kind: 'fraction', over: '1', under: '8', isApart: false }]);
    expect(textRuns('1½ in, 11/25/2026')).toEqual([{ kind: 'text', text: '1½ in, 11/25/2026' }]);
  });

  it('has small figures, the upper raised, and ends where its width says', async () => {
    const texts = await readBack('7⁵⁄₁₆', 0);
    expect(texts.map(({ text }) => text)).toEqual(['7', '5', '/', '16', 'after it']);
    const [whole, over, stroke, under, after] = texts;
    if (!whole || !over || !stroke || !under || !after) throw new Error('five texts');
    expect(over.sizePt).toBeLessThan(0.7 * whole.sizePt);
    expect(under.sizePt).toBeCloseTo(over.sizePt, 6);
    expect(over.at.y).toBeLessThan(whole.at.y - 1);
    expect([stroke.at.y, under.at.y]).toEqual([whole.at.y, whole.at.y]);
    for (const [a, b] of [
      [whole, over],
      [over, stroke],
      [stroke, under],
    ] as const)
      expect(a.at.x + a.widthMm).toBeLessThanOrEqual(b.at.x + 0.01);
    expect(under.at.x + under.widthMm - whole.at.x).toBeCloseTo(textWidth('7⁵⁄₁₆', 12, false), 2);
    expect(after.widthMm).toBeCloseTo(textWidth('after it', 12, false), 2);
  });

  it('runs with a text that is turned', async () => {
    const level = await readBack('7⁵⁄₁₆', 0);
    const upright = await readBack('7⁵⁄₁₆', -Math.PI / 2);
    expect(level).toHaveLength(5);
    for (const [i, { at }] of level.slice(0, 4).entries()) {
      // A quarter turn against the clock about the start: along goes up the page, and what is raised goes left.
      expect(upright[i]?.at.x).toBeCloseTo(60 + (at.y - 60), 2);
      expect(upright[i]?.at.y).toBeCloseTo(60 - (at.x - 60), 2);
    }
  });

  it('is no letter that the page lacks', () => {
    expect(isExact('7⁵⁄₁₆ in')).toBe(true);
    expect(settable('7⁵⁄₁₆ in')).toBe('7⁵⁄₁₆ in');
    expect(isExact('Ольга ⅜')).toBe(false);
  });
});

describe('shortened', () => {
  it('leaves a text that fits alone and cuts off one that does not', () => {
    expect(shortened('Winter ball', 10, false, 100)).toBe('Winter ball');
    const cut = shortened('Winter ball bodice', 10, false, 20);
    expect(cut).toMatch(/^Winter.*…$/);
    expect(textWidth(cut, 10, false)).toBeLessThanOrEqual(20);
    expect(textWidth(`${cut.slice(0, -1)}mm…`, 10, false)).toBeGreaterThan(20);
  });
});

describe('wrapped', () => {
  it('breaks at blanks, and inside a word that is too wide', () => {
    const lines = wrapped(`one two three ${'x'.repeat(60)}`, 10, false, 24);
    expect(lines[0]).toBe('one two three');
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(textWidth(line, 10, false)).toBeLessThanOrEqual(24);
    expect(lines.join('').replaceAll(' ', '')).toBe(`onetwothree${'x'.repeat(60)}`);
  });
});
