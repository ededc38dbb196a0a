import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../src/document';
import { DEFAULT_STYLE, draft, type Style } from '../../src/engine';
import {
  draftingSheetHtml,
  makingList,
  makingSections,
  patternDxf,
  patternSvg,
  planPanels,
  usualMaking,
} from '../../src/paper';

const style: Style = {
  ...DEFAULT_STYLE,
  extras: { modesty: { overlap: 50.8 }, facing: { width: 50.8 }, straps: { length: 400, width: 25.4 } },
};
const input = {
  draft: draft(DEMO_CLIENT.measurements, style),
  client: DEMO_CLIENT,
  savedDraft: { name: 'With straps', style, acknowledgedReduction: null },
  date: '2026-11-25',
  making: usualMaking('in'),
};

describe('pieces beside the panels, on paper', () => {
  it('lie on the plan after the panels, and in drawing and cutter file under their names', () => {
    const placed = planPanels(input, 900).panels.map(({ piece }) => piece.id);
    expect(placed.slice(-3)).toEqual(['back-modesty', 'back-facing', 'strap']);
    const svg = patternSvg(input);
    for (const label of ['Back modesty panel', 'Back facing', 'Strap'])
      expect(svg).toContain(`<title>${label}</title>`);
    const dxf = patternDxf(input);
    for (const label of ['Back modesty panel', 'Back facing', 'Strap'])
      expect(dxf).toContain(`Piece Name: ${label}\r\n`);
  });

  it('stand in the making list: modesty panel of every layer, facings and straps once', () => {
    const making = { ...usualMaking('in'), fashion: 1, strength: 2, lining: 1 };
    const [cut] = makingSections(makingList(input.draft, style, making), making, 'in');
    const counted = Object.fromEntries((cut?.lines ?? []).map(({ item, count }) => [item, count]));
    expect(counted).toMatchObject({ 'Back modesty panel': 4, 'Back facing': 2, Strap: 2, 'Back 1': 8 });
  });

  it('are ruled by their measures on the drafting sheet, and traced where they follow the panels', () => {
    const html = draftingSheetHtml(input);
    expect(html).toContain('Beside the panels');
    // gap 2 in and two overlaps of 2 in; the laced edge lies 2 in inside; straps of 1 in, doubled
    const cells = (label: string): string[] =>
      [
        ...(new RegExp(`<tr>(?:(?!<tr>).)*?${label}</t[dh]>(.*?)</tr>`, 's').exec(html)?.[1] ?? '').matchAll(
          /<td[^>]*>(.*?)<\/td>/gs,
        ),
      ].map(([, text]) => text ?? '');
    const [, , long, inside] = cells('Back modesty panel');
    expect(cells('Back modesty panel').slice(0, 2)).toEqual(['1', '6']);
    expect(inside).toBe('2');
    expect(cells('Back facing').slice(0, 3)).toEqual(['2', '2', long]);
    expect(cells('Strap').slice(0, 2)).toEqual(['2', '2']);
    expect(html).toContain('trace the laced edge from its panel');
  });
});
