// The fittings of one draft for another of the same client: each seam is found again by where it stands on the body.

import { describe, expect, it } from 'vitest';
import { addWedge, carryOver, DEMO_BOOK, type Fitting, openClient } from '../../../src/document';
import { DEFAULT_STYLE, draftWhole, type Style } from '../../../src/engine';
import { at, landmark, seamOf, taken } from '../../support/styles/alterations';

const standing = (style: Style) => ({ style, draft: draftWhole(openClient(DEMO_BOOK).measurements, style) });

const fitted = (...alterations: Fitting['alterations'][number][]): readonly Fitting[] => [
  { date: '2026-11-26', note: 'hollow of the back', on: true, alterations },
];

const ON_SECOND = { ...taken(seamOf('front-2', 'front-3'), [at('waist', 6.35)]), on: false };
const HEM = {
  kind: 'edge',
  edge: 'hem',
  side: 'both',
  at: [
    { place: landmark('centreBack'), by: 3 },
    { place: seamOf('back-1', 'back-2'), by: 5 },
  ],
  on: true,
} as const;

describe('fittings carried over', () => {
  it('are the same for a draft of the same style', () => {
    const fittings = fitted(ON_SECOND, HEM);
    expect(carryOver(fittings, standing(DEFAULT_STYLE), standing(DEFAULT_STYLE))).toEqual(fittings);
  });

  it('name the panels beside the same place where the other style has more of them', () => {
    const more = addWedge(addWedge(DEFAULT_STYLE, 'left', 'front', -0.6), 'left', 'back', -0.9);
    const [carried] = carryOver(fitted(ON_SECOND, HEM), standing(DEFAULT_STYLE), standing(more));
    expect(carried?.note).toBe('hollow of the back');
    expect(carried?.alterations).toEqual([
      { ...ON_SECOND, seam: seamOf('front-3', 'front-4') },
      { ...HEM, at: [HEM.at[0], { place: seamOf('back-2', 'back-3'), by: 5 }] },
    ]);
  });

  it('stay as they are where one of the drafts was not made', () => {
    const fittings = fitted(ON_SECOND);
    const { measurements } = openClient(DEMO_BOOK);
    const nothing = {
      style: DEFAULT_STYLE,
      draft: draftWhole({ ...measurements, waist: null }, DEFAULT_STYLE),
    };
    expect(carryOver(fittings, standing(DEFAULT_STYLE), nothing)).toBe(fittings);
  });
});
