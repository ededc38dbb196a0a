import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { draft, outerEdge, type Piece, polylineLength } from '../../../src/engine';
import { roundBody } from '../../../src/table/layout/roundBody';
import { sewnAtSide } from '../../../src/table/layout/sewnAtSide';
import { BUST_DART, DARTED, inSideSeam } from '../../support/styles/sideDart';

const topOf = (piece: Piece | undefined): number =>
  Math.min(...(piece ? outerEdge(piece).points : []).map(({ y }) => y));

describe('a front with its side dart sewn up', () => {
  const made = draft(DEMO_CLIENT.measurements, inSideSeam());
  const sewn = sewnAtSide(made);

  it('has its side in one edge, as long as the back’s and ending at its height', () => {
    const [front, back] = (['front', 'back'] as const).map((block) =>
      sewn.find((piece) => piece.block === block),
    );
    expect(front?.edges.filter(({ at }) => at === 'outer')).toHaveLength(1);
    expect(polylineLength(outerEdge(front as Piece).points)).toBeCloseTo(
      polylineLength(outerEdge(back as Piece).points),
      1,
    );
    expect(Math.abs(topOf(front) - topOf(back))).toBeLessThan(2);
    expect(topOf(made.pieces.find(({ block }) => block === 'front'))).toBeGreaterThan(topOf(front) + 20);
    const armhole = front?.edges.find(({ role }) => role === 'armhole');
    expect(Math.abs((armhole?.points[0]?.y ?? 0) - topOf(front))).toBeLessThan(0.001);
  });

  it('is sketched with the dart as a line towards the side', () => {
    const { front } = roundBody(made, DARTED.closure);
    const i = sewn[0]?.darts.findIndex(({ wedge }) => wedge === BUST_DART) ?? -1;
    const line = front[0]?.darts[i] ?? [];
    expect(line.length).toBeGreaterThan(3);
    expect((line.at(-1)?.x ?? 0) - (line[0]?.x ?? 0)).toBeGreaterThan(20);
  });

  it('is the pieces themselves where no dart was turned', () => {
    const plain = draft(DEMO_CLIENT.measurements, DARTED);
    expect(sewnAtSide(plain)).toBe(plain.pieces);
  });
});
