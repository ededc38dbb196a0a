// A zip on the pattern: whoever sews it must know which seam opens, and on which side.

import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draftWhole, type Style, USUAL_SHOULDERS } from '../../../src/engine';
import { onePagePdf, patternPdf, patternSvg, planPanels } from '../../../src/paper';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import { zipSentences } from '../../../src/paper/remarks/zips';
import { demoPattern, quickPattern } from '../demoPattern';
import { readPattern } from '../readPattern';

const withClosure = (closure: Partial<Style['closure']>, style: Style = DEFAULT_STYLE): Style => ({
  ...style,
  closure: { ...style.closure, ...closure },
});
const SIDE = withClosure({ back: 'seam', sideZip: true });
const ROLL = { widthMm: 914.4, heightMm: null, marginMm: 10 };
const BACK = withClosure({ back: 'zip' });

const textsOf = (input: ReturnType<typeof demoPattern>): string[] =>
  planPanels(input, 1200).panels.flatMap(({ texts }) => texts.map(({ text }) => text));
const zipped = (texts: readonly string[]): string[] => texts.filter((text) => /\bzip\b/i.test(text));

describe('a zip in the side seam, on paper', () => {
  it('stands on that seam of both pieces with the side it is worn on', () => {
    expect(zipped(textsOf(demoPattern('A4', SIDE))).sort()).toEqual([
      'Side seam, to Back 3 · 1 in · zip on the left',
      'Side seam, to Front 3 · 1 in · zip on the left',
    ]);
    expect(patternSvg(demoPattern('A4', SIDE)).match(/zip on the left/g)).toHaveLength(2);
  });

  it('is named on the first page, on the one page and on the sheet to draw by hand', async () => {
    const input = quickPattern('A4', SIDE);
    const said = 'Zip in the left side seam; the right one is sewn.';
    const [first] = (await readPattern(await patternPdf(input))).pages;
    expect(first?.texts.map(({ text }) => text).join(' ')).toContain(said);
    const [one] = (await readPattern(await onePagePdf(input, ROLL))).pages;
    expect(one?.texts.map(({ text }) => text).join(' ')).toContain(said);
    const step = draftingSheet(input).steps.find(({ heading }) => /allowances/.test(heading));
    expect(step?.sentences).toContain(said);
    expect(
      step?.tables[0]?.rows.map(([, , edges]) => edges).filter((edges) => edges?.includes('zip')),
    ).toEqual([
      expect.stringContaining('side seam to Back 3: 1, zip on the left'),
      expect.stringContaining('side seam to Front 3: 1, zip on the left'),
    ]);
  });

  it('stands on the left pieces only where left and right are cut apart', () => {
    const drafted = draftWhole(DEMO_CLIENT.measurements, SIDE, {
      leftShare: { bust: 0.51, waist: 0.515 },
      rightLower: {},
    });
    const input = { ...demoPattern('A4', SIDE), draft: drafted };
    expect(zipped(textsOf(input)).sort()).toEqual([
      'Side seam, to Left back 3 · 1 in · zip',
      'Side seam, to Left front 3 · 1 in · zip',
    ]);
    const steps = draftingSheet(input).steps.filter(({ heading }) => /allowances/.test(heading));
    expect(steps.map((step) => /zip/i.test(JSON.stringify(step)))).toEqual([true, false]);
  });

  it('is not spoken of where the side panel is cut in one and has no such seam', () => {
    const joined: Style = { ...SIDE, joinedSide: true };
    expect(zipSentences(joined)).toEqual([]);
    expect(zipped(textsOf(demoPattern('A4', joined)))).toEqual([]);
  });
});

describe('a zip at the centre, on paper', () => {
  it('stands on the centre edge, and on the sheets', () => {
    expect(zipped(textsOf(demoPattern('A4', BACK)))).toEqual(['Centre back · 1 in · zip']);
    expect(zipSentences(BACK)).toEqual(['Zip at centre back.']);
    expect(JSON.stringify(draftingSheet(demoPattern('A4', BACK)))).toContain('centre back: 1, zip;');
  });

  it('is not spoken of where there is none', () => {
    const laced = demoPattern('A4', { ...DEFAULT_STYLE, shoulders: USUAL_SHOULDERS });
    expect(zipped(textsOf(laced))).toEqual([]);
    expect(JSON.stringify(draftingSheet(laced))).not.toMatch(/zip/i);
  });
});
