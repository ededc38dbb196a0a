// A turned hem on paper: whoever cuts or draws is told why the ends of the hem lean.

import { describe, expect, it } from 'vitest';
import { TURNED_HEM } from '../../src/document';
import { DEFAULT_STYLE, type Style } from '../../src/engine';
import { patternSvg } from '../../src/paper';
import { draftingSheet } from '../../src/paper/draftingSheet/draftingSheet';
import { firstPageParagraphs } from '../../src/paper/pdf/firstPageParagraphs';
import { demoPattern } from './demoPattern';

const wordsOf = (style: Style): { sheet: string; page: string } => ({
  sheet: JSON.stringify(draftingSheet(demoPattern('A4', style))),
  page: JSON.stringify(firstPageParagraphs(demoPattern('A4', style), [])),
});

describe('a turned hem on paper', () => {
  const turned: Style = { ...DEFAULT_STYLE, turnedHem: true };

  it('is explained beside the allowances, on the first page and on the sheet to draw by hand', () => {
    const [bound, up] = [wordsOf(DEFAULT_STYLE), wordsOf(turned)];
    expect(up.sheet).toContain(TURNED_HEM);
    expect(up.page).toContain(TURNED_HEM);
    expect(bound.sheet).not.toContain(TURNED_HEM);
    expect(bound.page).not.toContain(TURNED_HEM);
  });

  it('is cut by the lines of its pieces', () => {
    const [bound, up] = [demoPattern('A4', DEFAULT_STYLE), demoPattern('A4', turned)];
    expect(patternSvg(up)).not.toBe(patternSvg(bound));
  });
});
