// The proof must say what a stranger would measure on the outlines, no better and no worse.

import { describe, expect, it } from 'vitest';
import { balancedWedge, DEFAULT_STYLE, draft, draftWhole, type Piece, type Style } from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/drawBodies';
import { legSpan, lengthOf, ringOf, widthAcross } from '../../support/outline';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/randomStyle';
import { withDarts } from '../../support/withDarts';

const random = randomFrom(31);
const drafts = drawBodies(150, 31).map((body) => draft(body, randomStyle(random)));

describe('the girth ledger', () => {
  it('measures as a stranger does, and is null exactly where some panel is not crossed from leg to leg', () => {
    let rows = 0;
    for (const { pieces, proof } of drafts)
      for (const row of proof.ledger) {
        const inside =
          pieces.length > 0 &&
          pieces.every((piece) => row.y > legSpan(piece).from && row.y < legSpan(piece).to);
        const outside = pieces.some((piece) => row.y < legSpan(piece).from || row.y > legSpan(piece).to);
        if (inside && row.sewnGirth !== null) {
          rows += 1;
          expect(row.sewnGirth).toBeCloseTo(
            2 * pieces.reduce((sum, piece) => sum + (widthAcross(ringOf(piece), row.y) as number), 0),
            9,
          );
        }
        if (outside) expect(row.sewnGirth).toBeNull();
      }
    expect(rows).toBeGreaterThan(200);
  });

  it('is null outside the garment', () => {
    const waistOnly = draft(MEAN_BODY, { ...DEFAULT_STYLE, topAbove: -110, hemBelow: 60 }).proof.ledger;
    expect(waistOnly.filter(({ sewnGirth }) => sewnGirth !== null).map(({ level }) => level)).toEqual([
      'underBust',
      'waist',
    ]);
  });

  it('tells where the girth went: wedges and side add up to half of what bust and level differ by', () => {
    const { ledger } = draft(MEAN_BODY, DEFAULT_STYLE).proof;
    const bust = ledger.find(({ level }) => level === 'bust');
    for (const row of ledger) {
      const taken = [...Object.values(row.taken.wedges), row.taken.side.front, row.taken.side.back].reduce(
        (sum, each) => sum + each,
        0,
      );
      expect(taken).toBeCloseTo(((bust?.targetGirth ?? Number.NaN) - row.targetGirth) / 2, 9);
    }
  });
});

describe('the seam walk', () => {
  const edgeOf = (pieces: readonly Piece[], reference: { piece: string; edge: number }) =>
    pieces.find(({ id }) => id === reference.piece)?.edges[reference.edge]?.points ?? [];

  it('has a row for every seam, with the lengths of its edges', () => {
    for (const { pieces, proof } of drafts) {
      const mated = pieces
        .flatMap(({ edges }) => edges)
        .filter(({ mate }) => mate && pieces.some(({ id }) => id === mate.piece));
      expect(proof.seams).toHaveLength(mated.length / 2);
      for (const row of proof.seams) {
        expect(row.lengthA).toBeCloseTo(lengthOf(edgeOf(pieces, row.a)), 9);
        expect(row.lengthB).toBeCloseTo(lengthOf(edgeOf(pieces, row.b)), 9);
      }
    }
  });
});

describe('the walk of closed darts', () => {
  const byChance = randomFrom(32);
  const darted = drawBodies(200, 32).map((body) =>
    draft(body, withDarts(randomStyle(byChance), byChance, false)),
  );

  it('has a row for every dart closed at both ends, with the lengths of its stitching lines', () => {
    let rows = 0;
    for (const { pieces, proof } of darted) {
      const closed = pieces.flatMap(({ id, darts }) =>
        darts.filter(({ open }) => !open).map((dart) => ({ piece: id, dart })),
      );
      expect(proof.closedDarts.map(({ piece, wedge }) => [piece, wedge])).toEqual(
        closed.map(({ piece, dart }) => [piece, dart.wedge]),
      );
      for (const [i, row] of proof.closedDarts.entries()) {
        expect(row.lengthInner).toBeCloseTo(lengthOf(closed[i]?.dart.inner ?? []), 9);
        expect(row.lengthOuter).toBeCloseTo(lengthOf(closed[i]?.dart.outer ?? []), 9);
        expect(row.lengthInner).toBeGreaterThan(30);
      }
      const ids = [...proof.seams, ...proof.closedDarts].map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      rows += closed.length;
    }
    expect(rows).toBeGreaterThan(30);
  });

  it('names those of either half where the two differ', () => {
    const ends = {
      upper: { from: 'bust', below: 25 },
      lower: { from: 'waist', below: 80 },
    } as const;
    const style: Style = {
      ...DEFAULT_STYLE,
      wedges: [
        ...DEFAULT_STYLE.wedges.filter(({ station }) => station < 0.4),
        { ...balancedWedge('eye', 'front', 0.5, 2), ...ends },
      ],
    };
    const { pieces, proof } = draftWhole(MEAN_BODY, style, { leftShare: { waist: 0.52 }, rightLower: {} });
    expect(proof.closedDarts.map(({ id }) => id)).toEqual([
      'left-front-2/dart:eye',
      'right-front-2/dart:eye',
    ]);
    for (const row of proof.closedDarts) {
      const dart = pieces.find(({ id }) => id === row.piece)?.darts.find(({ wedge }) => wedge === row.wedge);
      expect(row.lengthInner).toBeCloseTo(lengthOf(dart?.inner ?? []), 9);
      expect(row.lengthOuter).toBeCloseTo(lengthOf(dart?.outer ?? []), 9);
    }
  });
});

describe('the edge run', () => {
  it('has a top and a hem for every seam and centre edge, all as asked', () => {
    const whole = drafts.filter(
      (made) => made.pieces.length > 0 && !made.issues.some(({ code }) => code === 'panelCrossed'),
    );
    for (const { pieces, proof } of whole) {
      expect(proof.edges).toHaveLength(2 * (proof.seams.length + 2));
      for (const { angle, asked, at } of proof.edges) {
        expect(Math.abs(((angle - asked) * 180) / Math.PI)).toBeLessThanOrEqual(0.5);
        expect(
          pieces.find(({ id }) => id === at.piece)?.edges.some(({ points }) => points.includes(at.point)),
        ).toBe(true);
      }
    }
  });
});
