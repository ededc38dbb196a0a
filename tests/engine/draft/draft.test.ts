import { describe, expect, it } from 'vitest';
import { type Closure, DEFAULT_STYLE, draft, type Style } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

const issuesWith = (style: Partial<Style>) => draft(MEAN_BODY, { ...DEFAULT_STYLE, ...style }).issues;
const closed = (front: Closure['front']): Partial<Style> => ({
  closure: { front, back: 'lacing', lacingGap: 50.8 },
});
const straightCentre = DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-centre');

describe('the front closing', () => {
  it('a busk beside a centre wedge is refused at the wedge', () => {
    expect(issuesWith(closed('busk'))).toContainEqual(
      expect.objectContaining({
        code: 'buskNeedsStraightCentre',
        severity: 'error',
        at: { block: 'front', wedge: 'front-centre', field: 'closure.front' },
      }),
    );
    expect(
      issuesWith({ ...closed('busk'), wedges: straightCentre }).filter(
        ({ severity }) => severity === 'error',
      ),
    ).toEqual([]);
  });

  it('a fold beside a centre wedge becomes a seam and says so', () => {
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, ...closed('fold') });
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'foldBecomesSeam', severity: 'note' }),
    );
    expect(made.pieces.map(({ cut }) => cut)).toEqual(made.pieces.map(() => ({ count: 2, onFold: false })));
    expect(made.pieces[0]?.edges[0]?.allowance).toBe(DEFAULT_STYLE.allowances.centre);
  });

  it('a fold on a straight centre is cut once, without allowance or marks there', () => {
    const [first, second] = draft(MEAN_BODY, {
      ...DEFAULT_STYLE,
      ...closed('fold'),
      wedges: straightCentre,
    }).pieces;
    expect(first?.cut).toEqual({ count: 1, onFold: true });
    expect(first?.edges[0]?.allowance).toBe(0);
    expect(first?.edges[0]?.points.every(({ x }) => x === 0)).toBe(true);
    expect(first?.marks.filter(({ edge }) => edge === 0)).toEqual([]);
    expect(second?.cut).toEqual({ count: 2, onFold: false });
  });

  it('a centre wedge of no intake leaves the fold', () => {
    const flat = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.id === 'front-centre' ? { ...wedge, sizing: 'manual' as const } : wedge,
    );
    expect(
      draft(MEAN_BODY, { ...DEFAULT_STYLE, ...closed('fold'), wedges: flat }).pieces[0]?.cut.onFold,
    ).toBe(true);
  });
});

describe('pieces', () => {
  const { pieces } = draft(MEAN_BODY, DEFAULT_STYLE);

  it('are numbered from the centre, front first', () => {
    expect(pieces.map(({ id }) => id)).toEqual([
      'front-1',
      'front-2',
      'front-3',
      'back-1',
      'back-2',
      'back-3',
    ]);
    for (const { id, block, number } of pieces) expect(id).toBe(`${block}-${number}`);
  });

  it('carry the allowance of each kind of edge', () => {
    const allowances = { seam: 11, side: 22, top: 3, hem: 4, centre: 17 };
    for (const piece of draft(MEAN_BODY, { ...DEFAULT_STYLE, allowances }).pieces)
      for (const edge of piece.edges)
        expect(edge.allowance).toBe(
          edge.isSideSeam
            ? 22
            : edge.role === 'seam'
              ? 11
              : edge.role === 'centre'
                ? 17
                : edge.role === 'top'
                  ? 3
                  : 4,
        );
  });

  it('have a vertical grain line inside them', () => {
    for (const { grain, edges } of pieces) {
      expect(grain[0].x).toBe(grain[1].x);
      expect(grain[1].y - grain[0].y).toBeGreaterThan(50);
      const xs = edges.flatMap(({ points }) => points.map(({ x }) => x));
      expect(grain[0].x).toBeGreaterThan(Math.min(...xs));
      expect(grain[0].x).toBeLessThan(Math.max(...xs));
    }
  });
});

describe('the seams beside a side panel in one', () => {
  it('have the side’s allowance on both mates, so that they can be let out; the others a seam’s', () => {
    const allowances = { seam: 11, side: 22, top: 3, hem: 4, centre: 17 };
    const { pieces } = draft(MEAN_BODY, { ...DEFAULT_STYLE, joinedSide: true, allowances });
    const mates = pieces.flatMap(({ id, edges }) => edges.map((edge) => ({ id, edge })));
    let beside = 0;
    for (const { id, edge } of mates) {
      if (edge.role !== 'seam') continue;
      const atSideSeam = id === 'side' || edge.mate?.piece.id === 'side';
      beside += atSideSeam ? 1 : 0;
      expect(edge.allowance, id).toBe(atSideSeam ? 22 : 11);
    }
    expect(beside).toBe(4);
  });
});

describe('a garment', () => {
  it('too short for its seams is refused at the hem', () => {
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, hemBelow: -160 });
    expect(made.pieces).toEqual([]);
    expect(made.span).not.toBeNull();
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'garmentTooShort', severity: 'error', at: { field: 'hemBelow' } }),
    );
  });

  it('laced with a wide gap, or for bust points wide apart, still has a back that can be cut', () => {
    // Half of 120 mm between the bust points less half of 150 mm of gap would be a bust line beyond the centre edge.
    for (const [bustPointWidth, lacingGap] of [
      [120, 150],
      [300, 50],
    ] as const) {
      const closure = { ...DEFAULT_STYLE.closure, lacingGap };
      const made = draft({ ...MEAN_BODY, bustPointWidth }, { ...DEFAULT_STYLE, closure });
      expect(made.issues.filter(({ severity, at }) => severity === 'error' && at.block === 'back')).toEqual(
        [],
      );
      expect(made.pieces.filter(({ block }) => block === 'back')).toHaveLength(3);
    }
  });

  it('whose bust points stand off the block is refused', () => {
    expect(draft({ ...MEAN_BODY, bustPointWidth: 480 }, DEFAULT_STYLE).issues).toContainEqual(
      expect.objectContaining({
        code: 'bustPointOffBlock',
        severity: 'error',
        at: { block: 'front', field: 'bustPointWidth' },
      }),
    );
  });
});
