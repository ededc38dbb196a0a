import { describe, expect, it } from 'vitest';
import {
  type AllowedEdge,
  type CutLine,
  cutLineAround,
  cutLineTurnedUp,
} from '../../../src/engine/geometry/cutLine';
import { hemShort } from '../../../src/engine/geometry/hemShort';
import type { Point } from '../../../src/engine/geometry/point';
import { areaSeen, selfMeeting } from '../../support/outline';

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
    expect(hemShort(box, [at(0, 100), at(80, 100)], 20, null)).toBeCloseTo(0, 9);
    expect(hemShort(box, [at(0, 60), at(80, 60)], 200, null)).toBeCloseTo(0, 9);
  });

  it('is what is missing down there', () => {
    expect(hemShort(box, [at(0, 100), at(80, 100)], 26, null)).toBeCloseTo(6, 9);
    expect(hemShort(box, [at(0, 100), at(80, 100)], 500, null)).toBeCloseTo(80, 9);
  });

  it('does not end at a fold of the piece', () => {
    const slant = [at(0, 60), at(20, 70), at(80, 100)];
    const short = hemShort(box, slant, 40, null);
    expect(short).toBeGreaterThan(0);
    expect(hemShort([at(0, 0), at(0, 300), at(80, 300), at(80, 0)], slant, 40, [at(0, 0), at(0, 60)])).toBe(
      0,
    );
  });
});
