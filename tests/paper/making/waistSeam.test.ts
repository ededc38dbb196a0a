// The waist seam of a joined skirt: the finished hem of each block at the waist, and nothing where the hem lies elsewhere.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../src/engine';
import { makingList } from '../../../src/paper/making/makingList';
import { makingSections } from '../../../src/paper/making/makingSections';
import { usualMaking } from '../../../src/paper/making/settings';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { lengthOf } from '../../support/judges/outline';

const style = NAMED_STYLES.get('bridal-bodice')?.style ?? DEFAULT_STYLE;
const USUAL = usualMaking('in');
const made = draft(MEAN_BODY, style);

describe('the waist seam of a joined skirt or trousers', () => {
  it('is as long as the finished hems of both halves, front and back, and with the gap as the waist is round', () => {
    const seam = makingList(made, style, USUAL).waistSeam;
    for (const block of ['front', 'back'] as const) {
      const hems = made.pieces
        .filter((piece) => piece.block === block)
        .map(({ edges }) => lengthOf(edges.find(({ role }) => role === 'hem')?.points ?? []));
      expect(seam?.[block].lengthMm).toBeCloseTo(2 * hems.reduce((sum, each) => sum + each, 0), 6);
      expect(seam?.[block].panels.map(({ lengthMm }) => lengthMm)).toEqual(
        hems.map((each) => expect.closeTo(each, 6)),
      );
    }
    const round = (seam?.front.lengthMm ?? 0) + (seam?.back.lengthMm ?? 0);
    // The hem runs square to each seam, so that it is a little longer than the level girth.
    const girth = made.levels.find(({ name }) => name === 'waist')?.targetGirth ?? 0;
    expect(round - girth).toBeGreaterThanOrEqual(0);
    expect(round - girth).toBeLessThan(6);
  });

  it('is a section of the making list, with each panel', () => {
    const sections = makingSections(makingList(made, style, USUAL), USUAL, 'in');
    const section = sections.find(({ kind }) => kind === 'waistSeam');
    expect(section?.lines.map(({ item }) => item)).toEqual(['Finished waist, front', 'Finished waist, back']);
    expect(section?.lines[0]?.note).toMatch(/^Front 1 \S+.* in, Front 2 .* in, Front 3 .* in$/);
  });

  it('is none where the hem lies below the waist, or is shaped', () => {
    expect(makingList(draft(MEAN_BODY, DEFAULT_STYLE), DEFAULT_STYLE, USUAL).waistSeam).toBeNull();
    const pointed = NAMED_STYLES.get('ball-bodice')?.style ?? DEFAULT_STYLE;
    expect(makingList(draft(MEAN_BODY, pointed), pointed, USUAL).waistSeam).toBeNull();
  });
});
