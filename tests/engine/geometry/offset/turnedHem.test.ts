import { describe, expect, it } from 'vitest';
import {
  type AllowedEdge,
  type CutLine,
  cutLineAround,
  cutLineTurnedUp,
} from '../../../../src/engine/geometry/offset/cutLine';
import { hemShortfall } from '../../../../src/engine/geometry/offset/hemShortfall';
import type { Point } from '../../../../src/engine/geometry/point';
import { areaSeen, selfMeeting } from '../../../support/judges/outline';

const at = (x: number, y: number): Point => ({ x, y });

/** A panel 100 high: inner edge, hem from `a` to `b`, outer edge, top. */
function panel(
  a: Point,
  b: Point,
  allowances: readonly [inner: number, hem: number, outer: number],
  hem: readonly Point[] = [a, b],
): AllowedEdge[] {
  const [inner, below, outer] = allowances;
  return [
    { points: [at(0, 0), a], allowance: inner },
    { points: hem, allowance: below, turnedUp: { start: true, end: true } },
    { points: [b, at(80, 0)], allowance: outer },
    { points: [at(80, 0), at(0, 0)], allowance: 0 },
  ];
}

/** A seam that ends at (0, 100): chords of a way, in degrees from the fold, and a length, from there up. */
const upFrom = (chords: readonly (readonly [degrees: number, mm: number])[]): Point[] =>
  chords.reduce<Point[]>(
    ([foot = at(0, 100), ...rest], [degrees, mm]) => {
      const way = (degrees * Math.PI) / 180;
      return [at(foot.x + mm * Math.cos(way), foot.y - mm * Math.sin(way)), foot, ...rest];
    },
    [at(0, 100)],
  );

/** Half a circle's bend or less, in chords 8° or so from one another, so that no point of it is a corner. */
const bend = (from: number, to: number, mm: number): [number, number][] => {
  const steps = Math.ceil(Math.abs(to - from) / 8);
  return Array.from({ length: steps + 1 }, (_, i) => [from + ((to - from) * i) / steps, mm]);
};

/** A panel 280 wide at the hem with an inner edge of its own. */
const withInner = (points: readonly Point[], inner: number, hem: number): AllowedEdge[] => [
  { points, allowance: inner },
  { points: [at(0, 100), at(280, 100)], allowance: hem, turnedUp: { start: true, end: true } },
  { points: [at(280, 100), at(280, 0)], allowance: 0 },
  { points: [at(280, 0), points[0] as Point], allowance: 0 },
];

const places = ({ line }: CutLine): string[] =>
  (line ?? []).map(({ x, y }) => `${near(x)} ${near(y)}`).sort();
const near = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

describe('a hem turned up', () => {
  it('that bends under seams that bend is cut alike on both sides of a panel that is', () => {
    const bend = [at(0, 0), at(4, 70), at(5, 80), at(4.5, 90), at(2.5, 100)];
    const seen = ({ x, y }: Point): Point => at(80 - x, y);
    const hem = [at(2.5, 100), at(40, 103), at(77.5, 100)];
    const cut = cutLineTurnedUp([
      { points: bend, allowance: 3 },
      { points: hem, allowance: 25, turnedUp: { start: true, end: true } },
      { points: [...bend].reverse().map(seen), allowance: 3 },
      { points: [at(80, 0), at(0, 0)], allowance: 0 },
    ]);
    expect(cut.turnsUp).toBe(true);
    expect(places({ ...cut, line: (cut.line ?? []).map(seen) })).toEqual(places(cut));
  });

  it('with a corner of its own has an ordinary one there', () => {
    const cut = cutLineTurnedUp(
      panel(at(0, 100), at(80, 100), [10, 20, 10], [at(0, 100), at(40, 130), at(80, 100)]),
    );
    expect(cut.turnsUp).toBe(true);
    expect(places(cut)).toContain('40 155');
  });

  it('square to its seams is cut like any other', () => {
    const square = panel(at(0, 100), at(80, 100), [10, 25, 15]);
    const { line, turnsUp } = cutLineTurnedUp(square);
    expect(turnsUp).toBe(true);
    expect(areaSeen(line ?? [])).toBeCloseTo(areaSeen(cutLineAround(square) ?? []), 9);
    expect(areaSeen(line ?? [])).toBeCloseTo(105 * 125, 9);
  });

  it('under seams that lean has the mirror image of their cut lines below its fold', () => {
    // Both seams lean out by 3 in 4: moved out by 8 and 12 they cross the fold 10 and 15 farther out, and lean in below it.
    const flared = cutLineTurnedUp(panel(at(-75, 100), at(155, 100), [8, 24, 12]));
    expect(flared.turnsUp).toBe(true);
    for (const [x, y] of [
      [-75 - 10, 100],
      [-75 - 10 + 18, 124],
      [155 + 15 - 18, 124],
      [155 + 15, 100],
    ])
      expect(places(flared)).toContain(`${x} ${y}`);
    // Leaning in, they lean out below it: the hem's cut line is lengthened to meet them.
    const tapered = cutLineTurnedUp(panel(at(30, 40), at(50, 40), [8, 24, 12]));
    for (const [x, y] of [
      [30 - 10, 40],
      [30 - 10 - 18, 64],
      [50 + 15 + 18, 64],
      [50 + 15, 40],
    ])
      expect(places(tapered)).toContain(`${x} ${y}`);
  });

  it('slanting between upright seams is mirrored about the slant', () => {
    // A fold that falls 3 in 4: an upright line seen in it leans by twice its angle, 24 in 25 across.
    const { line, turnsUp } = cutLineTurnedUp(panel(at(0, 100), at(80, 160), [10, 20, 0]));
    expect(turnsUp).toBe(true);
    const onFold = at(-10, 92.5);
    // 20 below the fold, which is 16 down and 12 towards the centre of it, along the image of the upright line.
    const long = 20 / 0.8;
    const end = at(onFold.x - (24 / 25) * long, onFold.y + (7 / 25) * long);
    expect(places({ line, turnsUp })).toContain(`${near(onFold.x)} ${near(onFold.y)}`);
    expect(places({ line, turnsUp })).toContain(`${near(end.x)} ${near(end.y)}`);
  });

  it('takes the bends of a seam down with it', () => {
    const bend = [at(0, 0), at(4, 70), at(5, 80), at(4.5, 90), at(2.5, 100)];
    const bent = panel(at(2.5, 100), at(80, 100), [0, 25, 0]).map((edge, i) =>
      i === 0 ? { ...edge, points: bend } : edge,
    );
    const cut = cutLineTurnedUp(bent);
    expect(cut.turnsUp).toBe(true);
    for (const place of ['2.5 100', '4.5 110', '5 120', '4.5 125']) expect(places(cut)).toContain(place);
  });

  it('under a seam without allowance is turned up where it rises to it, as under any other', () => {
    const rising = [at(0, 160), at(8, 154), at(80, 100)];
    const { line, turnsUp } = cutLineTurnedUp(panel(at(0, 160), at(80, 100), [0, 20, 0], rising));
    expect(turnsUp).toBe(true);
    // 20 below a fold that rises 3 in 4, along the image of the upright seam: 24 in 25 outwards, 25 long.
    expect(places({ line, turnsUp })).toContain('24 167');
  });

  it('that falls away from a fold of the piece has its full depth there: cloth goes on in the other half', () => {
    const falling = [at(0, 100), at(8, 106), at(80, 160)];
    const folded = panel(at(0, 100), at(80, 160), [0, 20, 0], falling).map((edge, i) =>
      i === 1 ? { ...edge, turnedUp: { start: false, end: true } } : edge,
    );
    const { line, turnsUp } = cutLineTurnedUp(folded);
    expect(turnsUp).toBe(true);
    expect(places({ line, turnsUp })).toContain('0 125');
  });

  it.each([
    [32, true],
    [33.5, true],
    [34, false],
    [38, false],
  ])(
    'that bends beside its corners is turned up unless it lacks a tenth of its depth there: %s deep',
    (deep, isTurned) => {
      // Rising 1 in 5 over the first 8 mm, it has the images of upright seams lean in by 5 in 12. Below (12, 98.4), the middle of
      // the first level chord, an image passes 1.6 + 12 · 12 / 5 = 30.4 mm down: of 33.5 mm 9.3 % is missing, of 34 mm 10.6 %.
      const hem = [at(0, 100), at(8, 98.4), at(16, 98.4), at(64, 98.4), at(72, 98.4), at(80, 100)];
      const edges = panel(at(0, 100), at(80, 100), [0, deep, 0], hem).map((edge, i) =>
        i === 2 ? { ...edge, points: [at(80, 100), at(80, 0)] } : edge,
      );
      expect(cutLineTurnedUp(edges).turnsUp).toBe(isTurned);
    },
  );

  it('on a fold of the piece runs straight on there', () => {
    const folded = panel(at(0, 100), at(80, 160), [0, 20, 0]).map((edge, i) =>
      i === 1 ? { ...edge, turnedUp: { start: false, end: true } } : edge,
    );
    const { line, turnsUp } = cutLineTurnedUp(folded);
    expect(turnsUp).toBe(true);
    expect(Math.min(...(line ?? []).map(({ x }) => x))).toBeCloseTo(0, 9);
    expect(places({ line, turnsUp })).toContain('0 125');
  });

  it.each([
    ['images that meet before they are deep enough', panel(at(-75, 100), at(155, 100), [0, 160, 0])],
    ['a seam shorter than the hem is deep', panel(at(0, 30), at(80, 30), [10, 40, 10])],
    ['a seam that runs nearly along the fold', panel(at(-600, 100), at(155, 100), [10, 20, 10])],
    [
      // Mirrored in folds that rise by 1 in 5, upright seams lean in by 5 in 12: 50 mm from either they meet, 120 below the
      // corners. There the hem, 6 mm higher, is 128 deep only at 122: its edge would be gone.
      'images that meet each other before the hem’s cut line',
      panel(at(0, 100), at(100, 100), [0, 128, 0], [at(0, 100), at(30, 94), at(70, 94), at(100, 100)]).map(
        (edge, i) =>
          [
            { ...edge, points: [at(0, -200), at(0, 100)] },
            edge,
            { ...edge, points: [at(100, 100), at(100, -200)] },
            { ...edge, points: [at(100, -200), at(0, -200)] },
          ][i] as AllowedEdge,
      ),
    ],
    [
      // The seam ends 1 in 6 off the fold's way, so its cut line comes out nearly six allowances from the corner.
      'a seam that swings out along the fold at its foot, though it is upright as far up as the hem is deep',
      withInner(upFrom([...bend(10, 90, 4), [90, 50]]), 5, 40),
    ],
    [
      // Upright at the fold, nearly level 8 mm above it: the image would be a tongue of 80 mm beside a hem 12 mm deep.
      'a seam that runs nearly level within the depth of the hem',
      withInner(upFrom([[90, 2], ...bend(90, 177, 1), [177, 140]]), 2, 12),
    ],
    [
      'a hem that bends away from its tangent within the allowance',
      panel(at(0, 100), at(80, 100), [0, 40, 0], [at(0, 100), at(8, 92), at(72, 92), at(80, 100)]),
    ],
  ])('that cannot be, by %s, has the corners of one that is not', (_, edges) => {
    const { line, turnsUp } = cutLineTurnedUp(edges);
    expect(turnsUp).toBe(false);
    expect(line).toEqual(cutLineAround(edges));
    expect(selfMeeting(line ?? [])).toBeNull();
  });
});

describe('the cloth a turned hem lacks', () => {
  const box = [at(0, 0), at(0, 120), at(80, 120), at(80, 0)];

  it('is none where it reaches as far down as it is deep, or as the cloth above goes', () => {
    expect(hemShortfall(box, [at(0, 100), at(80, 100)], 20, null)).toBeCloseTo(0, 9);
    expect(hemShortfall(box, [at(0, 60), at(80, 60)], 200, null)).toBeCloseTo(0, 9);
  });

  it('is what is missing down there', () => {
    expect(hemShortfall(box, [at(0, 100), at(80, 100)], 26, null)).toBeCloseTo(6, 9);
    expect(hemShortfall(box, [at(0, 100), at(80, 100)], 500, null)).toBeCloseTo(80, 9);
  });

  it('does not end at a fold of the piece', () => {
    const slant = [at(0, 60), at(20, 70), at(80, 100)];
    const short = hemShortfall(box, slant, 40, null);
    expect(short).toBeGreaterThan(0);
    expect(
      hemShortfall([at(0, 0), at(0, 300), at(80, 300), at(80, 0)], slant, 40, [at(0, 0), at(0, 60)]),
    ).toBe(0);
  });
});
