// Names in any script, drawn from the fonts that come with the program.

import { describe, expect, it } from 'vitest';
import { fontFiles } from '../../../src/cli/output/fontFiles';
import { draftingSheetPdf, onePagePdf, patternPdf, projectorPdf, withGlyphs } from '../../../src/paper';
import { glyphsFor } from '../../../src/paper/glyphs/glyphs';
import { lineRuns } from '../../../src/paper/glyphs/lineRuns';
import { openShaper } from '../../../src/paper/glyphs/openShaper';
import { quickPattern } from '../demoPattern';
import { readPattern } from '../readPattern';
import { NAMES } from './names';

const shaperFor = async (text: string) => openShaper((await glyphsFor([text], fontFiles)) ?? never(text));

const never = (text: string): never => {
  throw new Error(`${text} needs no font`);
};

/** A text set in regular letters of 12 pt. */
const setIn = async (text: string) => (await shaperFor(text)).set(text, false, 12);

/** The closed lines of an outline, each by the span of its places. */
const boxesOf = ({ outline }: Awaited<ReturnType<typeof setIn>>) => {
  const found: { xs: number[]; ys: number[] }[] = [];
  for (const { type, values } of outline) {
    if (type === 'M') found.push({ xs: [], ys: [] });
    for (const [i, value] of values.entries())
      (i % 2 === 0 ? found.at(-1)?.xs : found.at(-1)?.ys)?.push(value);
  }
  return found.map(({ xs, ys }) => ({
    left: Math.min(...xs),
    right: Math.max(...xs),
    low: Math.min(...ys),
    high: Math.max(...ys),
  }));
};

describe('a line as it is seen', () => {
  // Unicode Standard Annex 9: runs from left to right, those from right to left marked.
  it.each([
    ['Wren Abernathy', ['Wren Abernathy']],
    ['שרה כהן', ['<שרה כהן']],
    ['שרה 12 כהן', ['< כהן', '12', '<שרה ']],
    ['שרה 2.5', ['2.5', '<שרה ']],
    ['2.5 שרה', ['<שרה', '< ', '2.5']],
    ['محمد 38/40', ['38/40', '<محمد ']],
    ['מרים 38/40', ['38/40', '<מרים ']],
    ['Wren שרה כהן, A4', ['Wren ', '<שרה כהן', ', ', 'A4']],
  ])('orders %s', (text, wanted) => {
    const seen = lineRuns(text, () => 0).map((run) => `${run.rightToLeft ? '<' : ''}${run.text}`);
    expect(seen.join('|')).toBe(wanted.join('|'));
  });

  it('keeps the parts of a line from left to right', () => {
    const seen = lineRuns('שרה · A4', () => 0).map(({ text }) => text);
    expect(seen).toEqual(['שרה', ' · ', 'A4']);
  });

  it('parts letters by their fonts, each with the marks over it', () => {
    const seen = lineRuns('Zoë王芳', (letter) => (/\p{Script=Han}/u.test(letter) ? 1 : 0));
    expect(seen).toEqual([
      { text: 'Zoë', rightToLeft: false, font: 0 },
      { text: '王芳', rightToLeft: false, font: 1 },
    ]);
  });
});

describe('letters', () => {
  it('are not read where the page’s own font has them all', async () => {
    const none = {
      read: () => Promise.reject(new Error('read')),
      others: () => Promise.reject(new Error('read')),
      isDrawn: () => false,
    };
    expect(await glyphsFor(['Zoë Ångström', '24 November 2026', '½ in'], none)).toBeNull();
    await expect(glyphsFor(['Łęcka'], none)).rejects.toThrow('read');
  });

  it.each(NAMES)('are found for %s, none missing', async (name) => {
    expect((await glyphsFor([name], fontFiles))?.missing).toEqual([]);
    const shaper = await shaperFor(name);
    for (const bold of [false, true]) {
      const { outline, advance } = shaper.set(name, bold, 12);
      expect(outline.length).toBeGreaterThan(10);
      expect(advance).toBeGreaterThan(100 * [...name.replace(/\P{L}/gu, '')].length);
    }
  });

  // Presentation forms: The Unicode Standard, code charts FB50 and FE70. The font has the same glyphs for both spellings.
  it.each([
    ['ليلى', '\ufedf\ufef4\ufee0\ufef0'],
    ['سلام', '\ufeb3\ufefc\ufee1'],
    ['محمد', '\ufee3\ufea4\ufee4\ufeaa'],
    ['دار', '\ufea9\ufe8d\ufead'],
    ['گل', '\ufb94\ufede'],
    ['می‌رود', '\ufee3\ufbfd\u200c\ufead\ufeed\ufea9'],
  ])('take the shapes they have beside each other in %s', async (text, forms) => {
    const [is, should] = [await setIn(text), await setIn(forms)];
    expect(is.outline.length).toBeGreaterThan(20);
    expect(is).toEqual(should);
  });

  it('that no font has are named, and stand as boxes', async () => {
    const glyphs = await glyphsFor(['Ольга བོ'], fontFiles);
    expect(glyphs?.missing).toEqual(['བ', 'ོ']);
    expect((await setIn('བ')).outline.length).toBeGreaterThan(4);
  });

  it('that the device draws are not missing, and one that it does not is', async () => {
    const drawn = { ...fontFiles, others: async () => [], isDrawn: (each: string) => each === '王' };
    expect((await glyphsFor(['王芳', '👩‍🔬'], drawn))?.missing).toEqual(['芳', '👩', '🔬']);
  });

  it('read only the parts of the large faces that they need', async () => {
    expect(await fontFiles.others([])).toHaveLength(0);
    expect(await fontFiles.others(['王'])).toHaveLength(1);
    expect(await fontFiles.others(['김', 'ส', 'ม'])).toHaveLength(2);
    expect(await fontFiles.others(['བ'])).toHaveLength(0);
  });

  it('bear marks over and under their middle, clear of them', async () => {
    const glyph = boxesOf(await setIn('ẹ')).reduce((a, b) => (a.high > b.high ? a : b));
    const mark = boxesOf(await setIn('ẹ̄')).reduce((a, b) => (a.high > b.high ? a : b));
    expect(Math.abs(glyph.left + glyph.right - mark.left - mark.right) / 2).toBeLessThan(60);
    expect(mark.low).toBeGreaterThan(glyph.high);
  });

  it('stack a tone mark over a vowel in Thai, both over their consonant', async () => {
    const highest = async (text: string) => Math.max(...boxesOf(await setIn(text)).map(({ high }) => high));
    const [consonant, vowel, tone] = [await highest('ก'), await highest('กี'), await highest('กี่')];
    expect(vowel).toBeGreaterThan(consonant + 50);
    expect(tone).toBeGreaterThan(vowel + 50);
    const { advance } = await setIn('กี่');
    expect(advance).toBeCloseTo((await setIn('ก')).advance, 6);
  });
});

describe('a pattern for a name beyond the page’s own font', () => {
  it('draws it, names it in the file’s title, and asks no question', async () => {
    const asked = quickPattern();
    const name = 'Ольга Щукина';
    const input = await withGlyphs({ ...asked, client: { ...asked.client, name } }, fontFiles);
    const bytes = await patternPdf(input);
    const { pages, title } = await readPattern(bytes);
    const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(said).not.toContain('?');
    expect(said).toContain('Winter ball bodice');
    expect(title).toBe('Ольга Щукина, Winter ball bodice');
    expect(bytes.length).toBeLessThan(300_000);
    expect(said).toContain(name);
  });

  // U+010D, U+4E0D and U+0D2F hold the byte of a carriage return, which a string in brackets would lose; U+1F9F5 takes two units.
  it.each([
    'Čeněk Dvořák',
    '不二 (子)',
    'യാമി',
    '김민준',
    'สมหญิง',
    'שרה כהן',
    'Zoë \\ Ångström)',
    'Thread 🧵',
    '…',
  ])('has %s in the properties of every file, whatever the letters', async (name) => {
    const asked = quickPattern();
    const input = { ...asked, client: { ...asked.client, name } };
    for (const bytes of [
      await patternPdf(input),
      await onePagePdf(input, { widthMm: 914.4, heightMm: null, marginMm: 10 }),
      await projectorPdf(input, { widthMm: 914.4, lineMm: 1 }),
      await draftingSheetPdf(input, input.paper),
    ]) {
      const { title, pages } = await readPattern(bytes as Uint8Array);
      expect(title).toContain(`${name}, Winter ball bodice`);
      expect(pages.length).toBeGreaterThan(0);
    }
  });

  it('says so where its letters could not be had', async () => {
    const asked = quickPattern();
    const { pages } = await readPattern(
      await patternPdf({ ...asked, client: { ...asked.client, name: 'Ольга' } }),
    );
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain(
      'letters of a name could not be loaded',
    );
  });

  it('says so where no font has a letter of it', async () => {
    const asked = quickPattern();
    const input = await withGlyphs({ ...asked, client: { ...asked.client, name: 'བོད' } }, fontFiles);
    const { pages } = await readPattern(await patternPdf(input));
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('stand as empty boxes');
  });
});
