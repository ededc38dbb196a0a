// An off-shoulder band is sewn to the panels' top edge: its lower edge has a seam's allowance and a mark for each of their seams.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Piece, type Style, USUAL_SHOULDERS } from '../../../src/engine';
import { MEAN_BODY } from '../../support/drawBodies';

const BODY = { ...MEAN_BODY, acrossShoulder: 380 };
const BANDED: Style = {
  ...DEFAULT_STYLE,
  allowances: { seam: 11, side: 22, top: 3, hem: 4, centre: 17 },
  shoulders: { ...USUAL_SHOULDERS, bandAbove: 40 },
};
const bandOf = (style: Style, block: 'front' | 'back'): Piece =>
  draft(BODY, style).extras.find(({ id }) => id === `${block}-band`) as Piece;

describe('an off-shoulder band', () => {
  it.each(['front', 'back'] as const)('has the allowance of what each edge is, %s', (block) => {
    expect(bandOf(BANDED, block).edges.map(({ role, allowance }) => [role, allowance])).toEqual([
      ['centre', 17],
      ['seam', 11],
      ['armhole', 3],
      ['shoulder', 11],
      ['top', 3],
    ]);
  });

  it('is marked where the same seams meet it, whether the side panel is in one or parted', () => {
    for (const block of ['front', 'back'] as const) {
      const across = (style: Style) => bandOf(style, block).marks.map(({ at }) => Math.round(at.x));
      const apart = across(BANDED);
      expect(apart.length).toBe(2);
      expect(across({ ...BANDED, joinedSide: true }).sort()).toEqual([...apart].sort());
    }
  });
});
