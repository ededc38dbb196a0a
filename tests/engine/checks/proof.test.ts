// The proof must say what a stranger would measure on the outlines, no better and no worse.

import { describe, expect, it } from 'vitest';
import {
  balancedWedge,
  DEFAULT_STYLE,
  draft,
  draftWhole,
  type EdgeReference,
  inches,
  type Piece,
  type Style,
  type Wedge,
  withPoints,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { howMany } from '../../support/howMany';
import { alongTo, legSpan, lengthOf, ringOf, widthAcross } from '../../support/judges/outline';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';
import { SET_LINES } from '../../support/styles/setLines';
import { withDarts } from '../../support/styles/withDarts';

/** A wedge of the default style as a dart from the hem to its point, but for those on the centre line. */
const openAtHem = (wedge: Wedge): Wedge => withPoints(wedge, { upper: { from: 'bust', below: 40 } });

const random = randomFrom(31);
const drafts = drawBodies(howMany({ few: 30, all: 150 }), 31).map((body) => draft(body, randomStyle(random)));

describe('the girth ledger', () => {
  it('measures as code of its own does, and is null exactly where some panel is not crossed from leg to leg', () => {
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
    expect(rows).toBeGreaterThan((drafts.length * 4) / 3);
  });

  it('is null outside the garment', () => {
    const waistOnly = draft(MEAN_BODY, { ...DEFAULT_STYLE, topAbove: -110, hemBelow: 60 }).proof.ledger;
    expect(waistOnly.filter(({ sewnGirth }) => sewnGirth !== null).map(({ level }) => level)).toEqual([
      'underBust',
      'waist',
    ]);
  });

  it('is null where the level runs out through the mouth of a dart', () => {
    const open: Wedge = withPoints(
      {
        ...balancedWedge('open', 'back', 0.4, 1),
        sizing: 'manual',
        intake: { overBust: 20, bust: 8 },
        // It leans, so that one of its legs reaches the level before the other.
        stationAt: { overBust: 0.6 },
      },
      { lower: { from: 'bust', below: 20 } },
    );
    const wedges = [...DEFAULT_STYLE.wedges.filter(({ block }) => block === 'front'), open];
    const { centreBack, ...others } = DEFAULT_STYLE.topShape;
    let through = 0;
    for (let topAbove = -60; topAbove <= 20; topAbove += 0.5) {
      const style: Style = {
        ...SET_LINES,
        wedges,
        topAbove,
        topShape: { ...others, centreBack: { ...centreBack, beyond: 80 } },
      };
      const { pieces, proof, levels } = draft(MEAN_BODY, style);
      const y = levels.find(({ name }) => name === 'overBust')?.y ?? Number.NaN;
      const legs = pieces.flatMap(({ darts }) => darts.flatMap(({ inner, outer }) => [inner, outer]));
      const reached = legs.filter(([end]) => end !== undefined && end.y < y).length;
      const row = proof.ledger.find(({ level }) => level === 'overBust');
      expect(legs).toHaveLength(2);
      if (row?.sewnGirth != null) expect(row.sewnGirth, `${topAbove}`).toBeCloseTo(row.targetGirth, 1);
      if (reached !== 1) continue;
      through += 1;
      expect(row?.sewnGirth, `${topAbove}`).toBeNull();
    }
    expect(through).toBeGreaterThan(3);
  });

  describe('at a level edge', () => {
    const lengthAlong = (pieces: readonly Piece[], role: 'top' | 'hem'): number =>
      pieces
        .flatMap(({ edges }) => edges.filter((edge) => edge.role === role))
        .reduce((sum, { points }) => sum + lengthOf(points), 0);
    const toWaist: Style = { ...SET_LINES, hemBelow: 0 };
    // Nothing takes the fullness above the bust there, so the cloth stays as wide.
    const dartsAtHem: Style = {
      ...toWaist,
      ease: { ...toWaist.ease, overBust: inches(1.5) },
      frontShare: { ...toWaist.frontShare, overBust: 0.53 },
      wedges: toWaist.wedges.map(openAtHem),
    };
    const bodies = drawBodies(howMany({ few: 12, all: 60 }), 33).map((body) => ({
      ...body,
      overBust: body.bust - inches(1.5),
    }));

    it.each([
      ['laced', toWaist],
      ['with darts open at the hem', dartsAtHem],
    ] satisfies [string, Style][])('measures hem and top edge: %s', (_, style) => {
      for (const body of bodies) {
        const { pieces, proof } = draft(body, style);
        for (const { level, sewnGirth, alongEdge, targetGirth } of proof.ledger) {
          const role = level === 'waist' ? 'hem' : level === 'overBust' ? 'top' : null;
          expect(alongEdge === null).toBe(role === null);
          if (role === null || alongEdge === null) continue;
          // A line that lies on the edge to the last digit is measured across the cloth as well.
          if (sewnGirth !== null) expect(sewnGirth).toBeCloseTo(targetGirth, 6);
          expect(alongEdge).toBeCloseTo(2 * lengthAlong(pieces, role), 9);
          // Our own bounds: an edge trued over leaning seams is not the level line, and above the bust the seams lean as a cone does.
          expect(Math.abs(alongEdge - targetGirth)).toBeLessThan(role === 'hem' ? 1 : 4);
        }
      }
    });

    it('is the mean of both halves where they differ', () => {
      for (const body of bodies) {
        const sides = { leftShare: { waist: 0.52, bust: 0.51 }, rightLower: { waist: 8 } };
        const { pieces, proof } = draftWhole(body, toWaist, sides);
        const waist = proof.ledger.find(({ level }) => level === 'waist');
        expect(waist?.alongEdge).toBeCloseTo(lengthAlong(pieces, 'hem'), 9);
        expect(Math.abs((waist?.alongEdge ?? Number.NaN) - (waist?.targetGirth ?? 0))).toBeLessThan(1);
      }
    });

    it('is not told of an edge that is shaped, nor of one a little way off', () => {
      const dipped = { ...toWaist.hemShape, centreFront: { beyond: 20, kind: 'smooth' as const } };
      for (const style of [
        { ...toWaist, hemShape: dipped },
        { ...toWaist, hemBelow: 1.5 },
        { ...toWaist, hemBelow: -1.5 },
      ]) {
        const waist = draft(MEAN_BODY, style).proof.ledger.find(({ level }) => level === 'waist');
        expect(waist?.alongEdge).toBeNull();
      }
    });
  });

  it('tells where the girth went: wedges and side add up to half of what bust and level differ by', () => {
    const { ledger } = draft(MEAN_BODY, DEFAULT_STYLE).proof;
    const bust = ledger.find(({ level }) => level === 'bust');
    for (const row of ledger) {
      const taken = [
        ...Object.values(row.taken.wedges),
        row.taken.sideSeam.front,
        row.taken.sideSeam.back,
      ].reduce((sum, each) => sum + each, 0);
      expect(taken).toBeCloseTo(((bust?.targetGirth ?? Number.NaN) - row.targetGirth) / 2, 9);
    }
  });
});

describe('the seam walk', () => {
  const edgeOf = (pieces: readonly Piece[], reference: EdgeReference) =>
    pieces.find(({ id }) => id === reference.piece.id)?.edges[reference.edge]?.points ?? [];

  it('has a row for every seam, with the lengths of its edges', () => {
    for (const { pieces, proof } of drafts) {
      const mated = pieces
        .flatMap(({ edges }) => edges)
        .filter(({ mate }) => mate && pieces.some(({ id }) => id === mate.piece.id));
      expect(proof.seams).toHaveLength(mated.length / 2);
      for (const row of proof.seams) {
        expect(row.lengthA).toBeCloseTo(lengthOf(edgeOf(pieces, row.a)), 9);
        expect(row.lengthB).toBeCloseTo(lengthOf(edgeOf(pieces, row.b)), 9);
      }
    }
  });
});

describe('the drift of balance marks', () => {
  it('is the farthest that a mark of either mate lies from its level line, the tape run along the seam', () => {
    let most = 0;
    for (const body of drawBodies(20, 34)) {
      const { pieces, proof, levels } = draft(body, DEFAULT_STYLE);
      for (const { a, b, markDrift, seam } of proof.seams) {
        if (seam.kind === 'shoulder') continue;
        const drifts = [a, b].flatMap(({ piece: { id }, edge }) => {
          const piece = pieces.find((each) => each.id === id);
          const points = piece?.edges[edge]?.points ?? [];
          return (piece?.marks ?? [])
            .filter((mark) => mark.edge === edge)
            .map(({ level, at }) => {
              const line = levels.find(({ name }) => name === level)?.y ?? Number.NaN;
              const i = points.findIndex(
                (p, k) => k > 0 && points[k - 1] && p.y < line !== (points[k - 1]?.y ?? 0) < line,
              );
              const [p, q] = [points[i - 1], points[i]];
              if (!p || !q) return Number.NaN;
              const crossed = { x: p.x + ((q.x - p.x) * (line - p.y)) / (q.y - p.y), y: line };
              return Math.abs(alongTo(points, at).along - alongTo(points, crossed).along);
            });
        });
        expect(Math.max(0, ...drifts)).toBeCloseTo(markDrift, 1);
        most = Math.max(most, markDrift);
      }
    }
    expect(most).toBeGreaterThan(0.5);
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
      expect(proof.closedDarts.map(({ seam }) => [seam.piece.id, seam.wedge])).toEqual(
        closed.map(({ piece, dart }) => [piece, dart.wedge]),
      );
      for (const [i, row] of proof.closedDarts.entries()) {
        expect(row.lengthInner).toBeCloseTo(lengthOf(closed[i]?.dart.inner ?? []), 9);
        expect(row.lengthOuter).toBeCloseTo(lengthOf(closed[i]?.dart.outer ?? []), 9);
        expect(row.lengthInner).toBeGreaterThan(30);
      }
      const ids = [...proof.seams, ...proof.closedDarts].map(({ seam }) => seam.id);
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
        withPoints(balancedWedge('eye', 'front', 0.5, 2), ends),
      ],
    };
    const { pieces, proof } = draftWhole(MEAN_BODY, style, { leftShare: { waist: 0.52 }, rightLower: {} });
    expect(proof.closedDarts.map(({ seam }) => seam.id)).toEqual([
      'left-front-2/dart:eye',
      'right-front-2/dart:eye',
    ]);
    for (const row of proof.closedDarts) {
      const dart = pieces
        .find(({ id }) => id === row.seam.piece.id)
        ?.darts.find(({ wedge }) => wedge === row.seam.wedge);
      expect(row.lengthInner).toBeCloseTo(lengthOf(dart?.inner ?? []), 9);
      expect(row.lengthOuter).toBeCloseTo(lengthOf(dart?.outer ?? []), 9);
    }
  });
});

describe('edge continuity', () => {
  it('has a top and a hem for every seam and centre edge, all as asked', () => {
    const whole = drafts.filter(
      (made) => made.pieces.length > 0 && !made.issues.some(({ code }) => code === 'panelCrossed'),
    );
    for (const { pieces, proof } of whole) {
      expect(proof.edges).toHaveLength(2 * (proof.seams.length + 2));
      for (const { angle, asked, at } of proof.edges) {
        expect(Math.abs(((angle - asked) * 180) / Math.PI)).toBeLessThanOrEqual(0.5);
        expect(
          pieces.find(({ id }) => id === at.piece.id)?.edges.some(({ points }) => points.includes(at.point)),
        ).toBe(true);
      }
    }
  });
});

describe('closed darts of a side panel in one', () => {
  it('have their inner leg nearer the centre, as long as the outer one', () => {
    const ends = { upper: { from: 'bust', below: 25 }, lower: { from: 'waist', below: 60 } } as const;
    const style: Style = {
      ...DEFAULT_STYLE,
      joinedSide: true,
      wedges: [
        ...DEFAULT_STYLE.wedges,
        ...(['front', 'back'] as const).map((block) =>
          withPoints(
            {
              ...balancedWedge(`${block}-dart`, block, 0.78, 1),
              sizing: 'manual',
              intake: { underBust: 6, waist: 10 },
            },
            ends,
          ),
        ),
      ],
    };
    const darts = draft(MEAN_BODY, style).pieces.find(({ id }) => id === 'side')?.darts ?? [];
    expect(darts.map(({ wedge }) => wedge)).toEqual(['front-dart', 'back-dart']);
    for (const { inner, outer } of darts) {
      const [left, right] = [inner, outer].map((leg) =>
        leg.slice(1, -1).reduce((sum, { x }) => sum + x / (leg.length - 2), 0),
      );
      expect(left).toBeLessThan((right ?? 0) - 2);
      expect(Math.abs(lengthOf(inner) - lengthOf(outer))).toBeLessThan(0.01);
    }
    const [front, back] = darts;
    expect(front?.outer[0]?.x).toBeLessThan(back?.inner[0]?.x ?? 0);
  });
});
