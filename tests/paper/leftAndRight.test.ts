import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../src/document';
import { type BodySides, DEFAULT_STYLE, draft, draftWhole, type Style } from '../../src/engine';
import {
  draftingSheetHtml,
  makingList,
  makingSections,
  patternDxf,
  patternSvg,
  planPanels,
  usualMaking,
} from '../../src/paper';

const SIDES: BodySides = { leftShare: { bust: 0.51, waist: 0.515 }, rightLower: { waist: 8, hip: 10 } };
const inputOf = (made: ReturnType<typeof draft>, style: Style = DEFAULT_STYLE) => ({
  draft: made,
  client: DEMO_CLIENT,
  savedDraft: { name: 'Two sides', style, acknowledgedReduction: null },
  date: '2026-11-25',
  making: usualMaking('in'),
});
const plain = inputOf(draft(DEMO_CLIENT.measurements, DEFAULT_STYLE));
const whole = inputOf(draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE, SIDES));
const makingOf = (input: typeof whole) => makingList(input.draft, DEFAULT_STYLE, input.making);

describe('a garment whose halves differ, on paper', () => {
  it('has every panel of both halves on the plan, under its own name, to be cut once and right side up', () => {
    const placed = planPanels(whole, 900).panels;
    expect(placed.map(({ piece }) => piece.id)).toEqual(whole.draft.pieces.map(({ id }) => id));
    for (const { texts } of placed)
      expect(texts.map(({ text }) => text).join(' ')).toMatch(
        /Cut 1\sfashion, 1\sstrength, 1\slining, right side up/,
      );
    const svg = patternSvg(whole);
    expect(svg).toContain('<title>Left front 1</title>');
    expect(svg).toContain('<title>Right back 3</title>');
    expect(patternDxf(whole)).toContain('Piece Name: Right front 2\r\n');
  });

  it('takes as much of everything as one that is alike, within what the halves differ', () => {
    const [here, there] = [makingOf(whole), makingOf(plain)];
    const bones = (list: typeof here) => list.bones.reduce((sum, { count }) => sum + count, 0);
    expect(bones(here)).toBe(bones(there));
    const holes = (list: typeof here) =>
      list.eyelets.reduce((sum, { points, times }) => sum + times * points.length, 0);
    expect(Math.abs(holes(here) - holes(there))).toBeLessThanOrEqual(2);
    expect(here.eyelets.map(({ piece }) => piece.id)).toEqual(['left-back-1', 'right-back-1']);
    expect(here.eyelets[0]?.fromTop.length).toBe(here.eyelets[1]?.fromTop.length);
    expect(Math.abs(here.bindingMm.both / there.bindingMm.both - 1)).toBeLessThan(0.02);
    expect(here.tapeMm).toBeCloseTo(there.tapeMm, 1);
    expect(Math.abs(here.casingMm / there.casingMm - 1)).toBeLessThan(0.05);
  });

  it('is cut from the making list once a panel', () => {
    const making = { ...usualMaking('in'), fashion: 1, strength: 1, lining: 0 };
    const [cut, , lacing] = makingSections(makingList(whole.draft, DEFAULT_STYLE, making), making, 'in');
    expect(cut?.lines.slice(0, 2).map(({ item, count }) => [item, count])).toEqual([
      ['Left front 1', 2],
      ['Left front 2', 2],
    ]);
    expect(lacing?.lines.filter(({ item }) => item === 'Eyelets, one row')).toHaveLength(2);
  });

  it('is drafted by hand one half after the other', () => {
    const html = draftingSheetHtml(whole);
    for (const words of [
      'Left half: front: bust wedge',
      'Right half: back: the side seam',
      'The two sides differ',
    ])
      expect(html).toContain(words);
    expect(draftingSheetHtml(plain)).not.toContain('The two sides differ');
  });
});
