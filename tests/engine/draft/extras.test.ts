import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft, type Piece, type Style } from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/drawBodies';
import { alongTo, areaSeen, lengthOf, ringOf } from '../../support/outline';

const ALL: Style = {
  ...DEFAULT_STYLE,
  extras: { modesty: { overlap: 50 }, facing: { width: 45 }, straps: { length: 400, width: 25 } },
};

const extraOf = (id: string, style: Style): Piece => {
  const piece = draft(MEAN_BODY, style).extras.find((each) => each.id === id);
  if (!piece) throw new Error(`no ${id}`);
  return piece;
};

const sidesOf = (piece: Piece): number[] => piece.edges.map(({ points }) => lengthOf(points));

describe('pieces beside the panels', () => {
  it('are none where none is asked for, and those of the laced centre where it is laced', () => {
    const ids = (style: Style) => draft(MEAN_BODY, style).extras.map(({ id }) => id);
    expect(ids(DEFAULT_STYLE)).toEqual([]);
    expect(ids(ALL)).toEqual(['back-modesty', 'back-facing', 'strap']);
    const closed = (front: 'seam' | 'lacing', back: 'zip' | 'lacing'): Style => ({
      ...ALL,
      wedges: ALL.wedges.filter(({ station }) => station > -1),
      closure: { front, back, lacingGap: 40 },
    });
    expect(ids(closed('seam', 'zip'))).toEqual(['strap']);
    expect(ids(closed('lacing', 'zip'))).toEqual(['front-modesty', 'front-facing', 'strap']);
  });

  it('measure what was asked: gap and two overlaps, facing width, strap doubled; as long as the laced edge', () => {
    const back = draft(MEAN_BODY, ALL).pieces.find(({ id }) => id === 'back-1');
    const laced = lengthOf(back?.edges[0]?.points ?? []);
    const near = (piece: Piece, width: number, length: number) => {
      const [a, b, c, d] = sidesOf(piece) as [number, number, number, number];
      for (const [is, wanted] of [
        [a, length],
        [b, width],
        [c, length],
        [d, width],
      ] as const)
        expect(is).toBeCloseTo(wanted, 9);
      expect(Math.abs(areaSeen(ringOf(piece)))).toBeCloseTo(width * length, 6);
    };
    // lacing gap of the default style, 2 in, and the overlap of 50 mm on either side
    near(extraOf('back-modesty', ALL), 50.8 + 100, laced);
    near(extraOf('back-facing', ALL), 45, laced);
    near(extraOf('strap', ALL), 50, 400);
    expect(draft(MEAN_BODY, ALL).extras.map(({ cut }) => cut)).toEqual([
      { count: 1, onFold: false },
      { count: 2, onFold: false },
      { count: 2, onFold: false },
    ]);
  });

  it('carry the balance marks of the laced edge as far from its upper end', () => {
    const back = draft(MEAN_BODY, ALL).pieces.find(({ id }) => id === 'back-1') as Piece;
    const facing = extraOf('back-facing', ALL);
    const along = (piece: Piece, at: number) =>
      piece.marks
        .filter(({ edge }) => edge === at)
        .map(({ level, at: point }) => {
          const points = piece.edges[at]?.points ?? [];
          const down = (points[0]?.y ?? 0) < (points.at(-1)?.y ?? 0) ? points : [...points].reverse();
          return [level, Math.round(alongTo(down, point).along * 1e6)];
        });
    expect(along(facing, 0).length).toBeGreaterThan(1);
    expect(along(facing, 0)).toEqual(along(back, 0));
    expect(along(facing, 2)).toEqual(along(back, 0));
  });

  it('are no part of the proof, and change nothing of the panels', () => {
    const [plain, withAll] = [draft(MEAN_BODY, DEFAULT_STYLE), draft(MEAN_BODY, ALL)];
    expect({ ...withAll, extras: [] }).toEqual(plain);
  });

  it('that cannot be cut are refused at their field', () => {
    const made = draft(MEAN_BODY, {
      ...ALL,
      extras: { modesty: { overlap: -1 }, facing: { width: Number.NaN }, straps: { length: 20, width: 25 } },
    });
    expect(made.issues.map(({ code, at }) => [code, at.field])).toEqual([
      ['styleOutOfRange', 'extras.modesty.overlap'],
      ['styleOutOfRange', 'extras.facing.width'],
      ['styleOutOfRange', 'extras.straps.length'],
    ]);
    expect(made.extras).toEqual([]);
  });

  it('are closed, turn the same way as panels and lie within their cut line, on 200 drawn bodies', () => {
    for (const body of drawBodies(200, 12)) {
      const { extras, pieces } = draft(body, ALL);
      const way = Math.sign(areaSeen(ringOf(pieces[0] as Piece)));
      expect(extras).toHaveLength(3);
      for (const piece of extras) {
        expect(Math.sign(areaSeen(ringOf(piece)))).toBe(way);
        for (const [i, { points }] of piece.edges.entries())
          expect(points.at(-1)).toEqual(piece.edges[(i + 1) % 4]?.points[0]);
        expect(Math.abs(areaSeen(piece.cutLine))).toBeGreaterThan(Math.abs(areaSeen(ringOf(piece))));
      }
    }
  });
});
