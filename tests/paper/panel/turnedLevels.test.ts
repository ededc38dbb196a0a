// Level lines of a front whose bust dart was turned into the side seam.

import { describe, expect, it } from 'vitest';
import { type Alteration, draft, draftWhole, type Piece, type Point } from '../../../src/engine';
import { levelLines } from '../../../src/paper/panel/levelLines';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { lengthOf } from '../../support/judges/outline';
import { bustPointOf } from '../../support/judges/sideDart';
import { inSideSeam } from '../../support/styles/sideDart';

const BODY = withShoulders(MEAN_BODY);

const frontOf = (pieces: readonly Piece[]): Piece => pieces.find(({ block }) => block === 'front') as Piece;
const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

const bustLines = (drafted: ReturnType<typeof draft>, piece: Piece): (readonly Point[])[] => {
  const { lines } = levelLines(drafted, piece, 'waistAndBust');
  const y = drafted.levels.find(({ name }) => name === 'bust')?.y ?? Number.NaN;
  return lines
    .filter(({ kind, points }) => kind === 'level' && points.some((point) => Math.abs(point.y - y) < 40))
    .map(({ points }) => points);
};

describe('the bust line of a front with a dart in the side seam', () => {
  it.each([20, 50.8, 80])(
    'leads to the balance mark of the bust on the side seam, %f mm below the armhole',
    (below) => {
      const style = inSideSeam(below);
      const made = draft(BODY, style);
      const front = frontOf(made.pieces);
      const lines = bustLines(made, front);
      const mark = front.marks.find(
        ({ level, edge }) => level === 'bust' && edge !== null && front.edges[edge]?.sidePart !== undefined,
      );
      // Where the dart lies at the bust line itself its mark is left out.
      if (!mark) return;
      const nearest = Math.min(
        ...lines.flatMap((points) =>
          points.slice(1).map((b, i) => {
            const a = points[i] as Point;
            // On a fold a line has no way to go to the cut line.
            const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2 || 1;
            const t = ((mark.at.x - a.x) * (b.x - a.x) + (mark.at.y - a.y) * (b.y - a.y)) / square;
            return apart(mark.at, { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
          }),
        ),
      );
      expect(nearest).toBeLessThan(0.8);
    },
  );

  it('is as long in its parts as the front is wide at the bust', () => {
    const style = inSideSeam(80);
    const made = draft(BODY, style);
    const front = frontOf(made.pieces);
    const net = made.levels.find(({ name }) => name === 'bust')?.net.front ?? Number.NaN;
    const apex = bustPointOf(BODY, style);
    const mark = front.marks.find(
      ({ level, edge }) => level === 'bust' && edge !== null && front.edges[edge]?.sidePart === 'aboveDart',
    );
    expect(apex.x + apart(apex, mark?.at as Point)).toBeCloseTo(net, 1);
  });

  it('goes with a length that is altered, through the marks that moved', () => {
    const style = inSideSeam(80);
    const shorter: Alteration = {
      kind: 'length',
      side: 'both',
      between: ['overBust', 'bust'],
      at: [{ place: { kind: 'landmark', name: 'side' }, by: 10 }],
    };
    const made = draftWhole(BODY, style, null, [shorter]);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    const front = frontOf(made.pieces);
    const mark = front.marks.find(
      ({ level, edge }) => level === 'bust' && edge !== null && front.edges[edge]?.sidePart === 'aboveDart',
    );
    const { lines } = levelLines(made, front, 'waistAndBust');
    const ends = lines.filter(({ kind }) => kind === 'level').flatMap(({ points }) => points);
    expect(Math.min(...ends.map((point) => apart(point, mark?.at as Point)))).toBeLessThan(0.8);
  });

  it('is drawn on the right half as on the left, mirrored', () => {
    const style = inSideSeam(80);
    const whole = draftWhole(BODY, { ...style, rightWedges: inSideSeam(81).wedges });
    const fronts = whole.pieces.filter(({ block }) => block === 'front');
    const lengths = fronts.map((piece) =>
      levelLines(whole, piece, 'waistAndBust')
        .lines.filter(({ kind }) => kind === 'level')
        .reduce((sum, { points }) => sum + lengthOf(points), 0),
    );
    expect(lengths).toHaveLength(2);
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThan(3);
    expect(lengths[0]).toBeGreaterThan(250);
  });
});
