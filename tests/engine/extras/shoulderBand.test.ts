// An off-shoulder band is sewn to the panels' top edge: its lower edge has a seam's allowance and a mark for each of their seams.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Piece, type Style, USUAL_SHOULDERS } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { lengthOf } from '../../support/judges/outline';

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
      // One for each panel.
      ['seam', 11],
      ['seam', 11],
      ['seam', 11],
      ['armhole', 3],
      ['shoulder', 11],
      ['top', 3],
    ]);
  });

  it('is marked where the same seams meet it, whether the side panel is in one or parted', () => {
    for (const block of ['front', 'back'] as const) {
      const across = (style: Style) =>
        bandOf(style, block)
          .marks.map(({ at }) => at.x)
          .sort((a, b) => a - b);
      const [apart, joined] = [across(BANDED), across({ ...BANDED, joinedSide: true })];
      expect([apart.length, joined.length]).toEqual([2, 2]);
      // Those of the bands with panels of their own stand by the length along the edge, the others by the way across.
      for (const [i, x] of apart.entries()) expect(Math.abs(x - (joined[i] ?? 0))).toBeLessThan(2);
    }
  });

  it('has for each panel an edge as long as its top edge, each the other’s mate, and the walk has a row of it', () => {
    const { pieces, extras, proof } = draft(BODY, BANDED);
    for (const panel of pieces) {
      const index = panel.edges.findIndex(({ role }) => role === 'top');
      const { mate, points } = panel.edges[index] as Piece['edges'][number];
      const band = extras.find(({ id }) => id === mate?.piece.id) as Piece;
      const edge = band.edges[mate?.edge ?? -1];
      expect(band.id).toBe(`${panel.block}-band`);
      expect(edge?.mate).toMatchObject({ piece: { id: panel.id }, edge: index });
      expect(Math.abs(lengthOf(points) - lengthOf(edge?.points ?? []))).toBeLessThan(0.05);
      const row = proof.seams.find(({ seam }) => seam.id === `${panel.id}/${band.id}`);
      expect(row?.lengthA).toBeCloseTo(lengthOf(points), 9);
      expect(row?.lengthB).toBeCloseTo(lengthOf(edge?.points ?? []), 9);
    }
  });
});
