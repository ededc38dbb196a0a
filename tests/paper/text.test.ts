// Letters on the printed page: nothing garbled, and widths that are true.

import { jsPDF } from 'jspdf';
import { describe, expect, it } from 'vitest';
import { shortened, textWidth, wrapped } from '../../src/paper/text/textWidth';
import { writable } from '../../src/paper/text/writable';
import { readPattern } from './readPattern';

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
  // What is printed, as pdf.js measures it with its own copy of the Adobe font metrics.
  it.each([
    'Front 1',
    'Wren Abernathy',
    'Side seam, to Back 3 · 1½ in',
    'Zoë Ångström',
    'cut off here, lay on A1',
    'WAVE illi',
    'naïve',
  ])('is the printed width of %j', async (text) => {
    const pdf = new jsPDF({ unit: 'mm', format: 'a4' });
    pdf.setFontSize(12);
    pdf.setFont('helvetica', 'normal');
    pdf.text(text, 10, 20);
    pdf.setFont('helvetica', 'bold');
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
