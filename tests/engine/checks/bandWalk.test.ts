// The off-shoulder band's one edge against the many top edges it is sewn to.

import { describe, expect, it } from 'vitest';
import {
  bandWalk,
  DEFAULT_STYLE,
  draft,
  draftWhole,
  openWidth,
  type Style,
  USUAL_SHOULDERS,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { SET_LINES } from '../../support/styles/setLines';

const BODY = withShoulders(MEAN_BODY);
const BANDED: Style = { ...SET_LINES, shoulders: { ...USUAL_SHOULDERS, bandAbove: 40 } };

describe('the walk of an off-shoulder band', () => {
  it('has nothing to walk where there is no band', () => {
    expect(bandWalk(draft(BODY, DEFAULT_STYLE))).toEqual([]);
  });

  it('finds a level band as long as the top edge round the body, half the girth less half the gap', () => {
    const [row] = bandWalk(draft(BODY, BANDED));
    // both are straight at the over-bust line, so either is what the ledger asks for there
    const half = ((BODY.overBust ?? 0) + BANDED.ease.overBust - openWidth(BANDED.closure)) / 2;
    expect(row?.side).toBeNull();
    expect(row?.bands).toBeCloseTo(half, 0);
    expect(row?.panels).toBeCloseTo(half, 0);
  });

  it('finds what a band made longer by hand is longer', () => {
    const made = draft(BODY, BANDED);
    const [was] = bandWalk(made);
    const extras = made.extras.map((band) => ({
      ...band,
      edges: band.edges.map((edge) =>
        edge.role === 'seam'
          ? { ...edge, points: edge.points.map(({ x, y }) => ({ x: 1.1 * x, y: 1.1 * y })) }
          : edge,
      ),
    }));
    const [row] = bandWalk({ ...made, extras });
    expect(row?.bands).toBeCloseTo(1.1 * (was?.bands ?? 0), 6);
    expect(row?.panels).toBe(was?.panels);
  });

  it('counts a side panel cut in one with both blocks', () => {
    const [apart] = bandWalk(draft(BODY, BANDED));
    const [joined] = bandWalk(draft(BODY, { ...BANDED, joinedSide: true }));
    expect(joined?.bands).toBeCloseTo(apart?.bands ?? 0, 1);
    expect(Math.abs((joined?.panels ?? 0) - (apart?.panels ?? 0))).toBeLessThan(1);
  });

  it('walks each half by itself where the two differ', () => {
    const rows = bandWalk(draftWhole(BODY, { ...BANDED, rightWedges: BANDED.wedges }));
    const [alike] = bandWalk(draft(BODY, BANDED));
    expect(rows.map(({ side }) => side)).toEqual(['left', 'right']);
    for (const row of rows) expect(row.bands).toBeCloseTo(alike?.bands ?? 0, 1);
  });

  it('never finds more than a maker eases in over so much, 1 % (common practice, no source)', () => {
    for (const body of drawBodies(60, 7).map(withShoulders))
      for (const row of bandWalk(draft(body, BANDED)))
        expect(Math.abs(row.bands - row.panels)).toBeLessThan(0.01 * row.panels);
  });
});
