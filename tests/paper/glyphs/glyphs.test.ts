// Names in any script, drawn from the fonts that come with the program.

import { describe, expect, it } from 'vitest';
import { fontFiles } from '../../../src/cli/output/fontFiles';
import { draftingSheetPdf, onePagePdf, patternPdf, projectorPdf, withGlyphs } from '../../../src/paper';
import { glyphsFor } from '../../../src/paper/glyphs/glyphs';
import { setLine } from '../../../src/paper/glyphs/setLine';
import { lengthOf } from '../../../src/paper/glyphs/typeface';
import { visualOrder } from '../../../src/paper/glyphs/visualOrder';
import { demoPattern } from '../demoPattern';
import { readPattern } from '../readPattern';

const codes = (text: string): string => [...text].map((each) => each.codePointAt(0)?.toString(16)).join(' ');

describe('a line as it is seen', () => {
  // Presentation forms: The Unicode Standard, code charts FB50 and FE70.
  it.each([
    ['سلام', 'fee1 fefc feb3'],
    ['لا', 'fefb'],
    ['محمد', 'feaa fee4 fea4 fee3'],
    ['دار', 'fead fe8d fea9'],
    ['گل', 'fede fb94'],
    ['می‌رود', 'fea9 feed fead fbfd fee3'],
  ])('joins %s', (text, wanted) => {
    expect(codes(visualOrder(text))).toBe(wanted);
  });

  it.each([
    ['Wren Abernathy', 'Wren Abernathy'],
    ['שרה כהן', 'ןהכ הרש'],
    ['שרה 12 כהן', 'ןהכ 12 הרש'],
    ['שרה · A4', 'הרש · A4'],
    ['שרה, A4 Mai 2026', 'A4 Mai 2026 ,הרש'],
    ['שרה, 2026', '2026 ,הרש'],
    ['Wren שרה כהן, A4', 'Wren ןהכ הרש, A4'],
    ['שׁרה', 'הרשׁ'],
  ])('turns %s', (text, wanted) => {
    expect(visualOrder(text)).toBe(wanted);
  });
});

describe('letters', () => {
  it('are not read where the page’s own font has them all', async () => {
    const none = {
      read: () => Promise.reject(new Error('read')),
      parts: () => Promise.reject(new Error('read')),
    };
    expect(await glyphsFor(['Zoë Ångström', '24 November 2026', '½ in'], none)).toBeNull();
    await expect(glyphsFor(['Łęcka'], none)).rejects.toThrow('read');
  });

  it.each([
    'Ẹ̀bùn Ọláyínká, Nguyễn Thị Hường, Łęcka, İpek, ŋ̀gɛ́',
    'Ольга Щукина, Їжакевич',
    'Αθηνά Ψαρρού',
    'فاطمة الزهراء محمد',
    'شیرین پژمان',
    'שרה כהן',
    '王芳 陳美麗',
    'さくら サクラ',
    '김민준 박서연',
    'สมหญิง แก้วกำเนิด ปิ่นฟ้า',
  ])('are found for %s, none missing', async (name) => {
    const glyphs = await glyphsFor([name], fontFiles);
    expect(glyphs?.missing).toEqual([]);
    for (const bold of [false, true]) {
      const { outlines, advance } = setLine(name, glyphs as NonNullable<typeof glyphs>, bold);
      const visible = [...visualOrder(name)].filter((each) => !/\s/.test(each));
      const standing = visible.filter((each) => !/^\p{M}$/u.test(each));
      expect(outlines).toHaveLength(visible.length);
      expect(advance).toBeGreaterThan(250 * standing.length * 0.7);
    }
  });

  it('that no font has are named, and stand as boxes', async () => {
    const glyphs = await glyphsFor(['Ольга བོ'], fontFiles);
    expect(glyphs?.missing).toEqual(['བ', 'ོ']);
    expect(setLine('བོ', glyphs as NonNullable<typeof glyphs>, false).outlines).toHaveLength(2);
  });

  it('read only the parts of the large faces that they need', async () => {
    const read: string[] = [];
    const watched = (name: string): Promise<Uint8Array> => {
      read.push(name);
      return fontFiles.read(name);
    };
    await glyphsFor(['王'], { ...fontFiles, read: watched });
    expect(read).toHaveLength(3);
    read.length = 0;
    await glyphsFor(['김 สม'], { ...fontFiles, read: watched });
    expect(read.filter((name) => name.startsWith('noto')).sort()).toEqual([
      expect.stringMatching(/^noto-sans-kr-\d+-400-normal\.woff$/),
      'noto-sans-thai-thai-400-normal.woff',
    ]);
  });

  it('bear marks over and under their middle, clear of them', async () => {
    const glyphs = (await glyphsFor(['ẹ́'], fontFiles)) as NonNullable<Awaited<ReturnType<typeof glyphsFor>>>;
    const [glyph, mark] = setLine('ẹ́', glyphs, false).outlines.map((outline) => {
      const [xs, ys]: [number[], number[]] = [[], []];
      for (let i = 0; i < outline.length; i += lengthOf(outline[i]))
        for (let j = i + 1; j < i + lengthOf(outline[i]); j += 2) {
          xs.push(outline[j] as number);
          ys.push(outline[j + 1] as number);
        }
      return { middle: (Math.min(...xs) + Math.max(...xs)) / 2, low: Math.min(...ys), high: Math.max(...ys) };
    });
    expect(Math.abs((glyph?.middle ?? 0) - (mark?.middle ?? 1e3))).toBeLessThan(1);
    expect(mark?.low).toBeGreaterThan(glyph?.high ?? 1e3);
  });
});

describe('Thai', () => {
  const boxOf = (outline: readonly number[]) => {
    const [xs, ys]: [number[], number[]] = [[], []];
    for (let i = 0; i < outline.length; i += lengthOf(outline[i]))
      for (let j = i + 1; j < i + lengthOf(outline[i]); j += 2) {
        xs.push(outline[j] as number);
        ys.push(outline[j + 1] as number);
      }
    return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
  };
  const setIn = async (text: string) => {
    const glyphs = (await glyphsFor([text], fontFiles)) as NonNullable<Awaited<ReturnType<typeof glyphsFor>>>;
    return setLine(text, glyphs, false).outlines.map(boxOf) as [
      ReturnType<typeof boxOf>,
      ReturnType<typeof boxOf>,
      ReturnType<typeof boxOf>,
    ];
  };

  it('parts the vowel am, its ring under the tone mark', () => {
    // The Unicode Standard, ch. 16.1: น้ำ is displayed as น, ring, tone mark, า.
    expect(codes(visualOrder('น้ำ'))).toBe('e19 e4d e49 e32');
    expect(codes(visualOrder('กำ'))).toBe('e01 e4d e32');
  });

  it('stacks a tone mark over a vowel, both over their consonant', async () => {
    const [glyph, vowel, tone] = await setIn('กี่');
    expect(vowel.low).toBeGreaterThan(glyph.high);
    expect(tone.low).toBeGreaterThan(vowel.high);
    for (const sign of [vowel, tone]) {
      expect(sign.right).toBeLessThan(glyph.right + 60);
      expect(sign.right).toBeGreaterThan((glyph.left + glyph.right) / 2);
    }
  });

  it('keeps signs beside a rising stroke and under a tail', async () => {
    const [tall, over] = await setIn('ปี');
    expect(over.low).toBeLessThan(tall.high);
    expect(over.right).toBeLessThan(tall.right);
    const [tailed, under] = await setIn('ญุ');
    expect(under.high).toBeLessThan(tailed.low);
  });
});

describe('a pattern for a name beyond the page’s own font', () => {
  it('draws it, names it in the file’s title, and asks no question', async () => {
    const asked = demoPattern();
    const name = 'Ольга Щукина';
    const input = await withGlyphs({ ...asked, client: { ...asked.client, name } }, fontFiles);
    const { pages, title } = await readPattern(await patternPdf(input));
    const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(said).not.toContain('?');
    expect(said).toContain('Winter ball bodice');
    expect(title).toBe('Ольга Щукина, Winter ball bodice');
    expect((await patternPdf(input)).length).toBeLessThan(300_000);
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
    const asked = demoPattern();
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
    const asked = demoPattern();
    const { pages } = await readPattern(
      await patternPdf({ ...asked, client: { ...asked.client, name: 'Ольга' } }),
    );
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain(
      'letters of a name could not be loaded',
    );
  });

  it('says so where no font has a letter of it', async () => {
    const asked = demoPattern();
    const input = await withGlyphs({ ...asked, client: { ...asked.client, name: 'བོད' } }, fontFiles);
    const { pages } = await readPattern(await patternPdf(input));
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('stand as empty boxes');
  });
});
