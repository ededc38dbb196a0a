import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../src/document';
import { DEFAULT_STYLE, draft, type Style } from '../../src/engine';
import {
  makingList,
  makingSections,
  patternDxf,
  patternSvg,
  planPanels,
  sheetHtml,
  usualMaking,
} from '../../src/paper';

const style: Style = {
  ...DEFAULT_STYLE,
  extras: { modesty: { overlap: 50.8 }, facing: { width: 50.8 }, straps: { length: 400, width: 25.4 } },
};
const input = {
  draft: draft(DEMO_CLIENT.measurements, style),
  client: DEMO_CLIENT,
  sheet: { name: 'With straps', style, acknowledgedReduction: null },
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

  it('are ruled by their measures on the drafting sheet', () => {
    const html = sheetHtml(input);
    expect(html).toContain('Strips beside the panels');
    // gap 2 in and two overlaps of 2 in; straps of 1 in, doubled
    expect(html).toMatch(/Back modesty panel<\/t[dh]>.*?>1<.*?>6</s);
    expect(html).toMatch(/Strap<\/t[dh]>.*?>2<.*?>2</s);
  });
});
