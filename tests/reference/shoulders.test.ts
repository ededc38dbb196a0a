// A shouldered draft against the figures of a metric textbook of pattern cutting, as quoted: at a bust of 88 cm a chest width of
// 32.4 cm and a shoulder dart of 7 cm; with every 4 cm of bust they grow by 1.2 cm and by 0.6 cm.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { type Draft, draft, type Measurements, type Piece, type Point, type Style } from '../../src/engine';
import { MEAN_BODY } from '../support/bodies/drawBodies';

const PRINCESS = (NAMED_STYLES.get('princess-bodice') as { style: Style }).style;

/** Steps of 4 cm of bust from 88 cm. */
const GRADES = [-1, 0, 1, 2, 3] as const;

const chestAt = (grade: number): number => 324 + 12 * grade;
const dartAt = (grade: number): number => 70 + 6 * grade;

/** The back's neck point lies so far above the nape, mm. */
const RISE = 20;

/** The mean body with a bust of 88 cm and a few sizes of it, other girths in proportion. */
function bodyAt(grade: number, more: Partial<Measurements> = {}): Measurements {
  const bust = 880 + 40 * grade;
  const scale = bust / MEAN_BODY.bust;
  return {
    ...MEAN_BODY,
    bust,
    overBust: (MEAN_BODY.overBust ?? 0) * scale,
    underBust: MEAN_BODY.underBust * scale,
    waist: MEAN_BODY.waist * scale,
    hip: MEAN_BODY.hip * scale,
    acrossShoulder: 372 + 8 * grade,
    ...more,
  };
}

const pointsOf = (pieces: readonly Piece[], id: string, role: string): Point[] =>
  pieces
    .find((piece) => piece.id === id)
    ?.edges.filter((edge) => edge.role === role)
    .flatMap(({ points }) => points) ?? [];

/** What the front's wedge takes at a height, off the finished edges, mm. */
function takenAt({ pieces }: Draft, y: number): number {
  const xOn = (points: readonly Point[]): number => {
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [points[i - 1] as Point, points[i] as Point];
      if (a.y > y !== b.y > y) return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
    }
    return Number.NaN;
  };
  const edge = (id: string, at: 'inner' | 'outer'): readonly Point[] =>
    pieces.find((piece) => piece.id === id)?.edges.find((each) => each.at === at)?.points ?? [];
  return xOn(edge('front-2', 'inner')) - xOn(edge('front-1', 'outer'));
}

/** Chest width where the armhole lies farthest in, wedges sewn up, mm. */
function chestOf(made: Draft): number {
  const inward = pointsOf(made.pieces, 'front-2', 'armhole').reduce((least, point) =>
    point.x < least.x ? point : least,
  );
  return 2 * (inward.x - takenAt(made, inward.y));
}

/** From leg to leg at the shoulder, mm. */
function dartOf({ pieces }: Draft): number {
  const inner = pointsOf(pieces, 'front-1', 'shoulder').reduce((most, point) =>
    point.x > most.x ? point : most,
  );
  const outer = pointsOf(pieces, 'front-2', 'shoulder').reduce((least, point) =>
    point.x < least.x ? point : least,
  );
  return Math.hypot(outer.x - inner.x, outer.y - inner.y);
}

/** The angle by which the front narrows above the bust when the side has its part, rad; the two lines are 2 in apart or more. */
function coneOf(levels: Draft['levels'], { balance }: Style): number {
  const [above, bust] = [levels[0], levels[1]];
  if (above?.name !== 'overBust' || !bust) return Number.NaN;
  const round = bust.net.front + bust.net.back - above.net.front - above.net.back;
  const narrower = bust.net.front - above.net.front - (balance.sideShare * round) / 2;
  return 2 * Math.atan(narrower / 2 / (bust.y - above.y));
}

const errorsOf = ({ issues }: Draft): string[] =>
  issues.filter(({ severity }) => severity === 'error').map(({ code }) => code);

describe('the textbook’s chest width', () => {
  it.each([-1, 0, 1])('comes of the usual part of the bust, %i sizes from 88 cm', (grade) => {
    const made = draft(bodyAt(grade), PRINCESS);
    expect(errorsOf(made)).toEqual([]);
    expect(Math.abs(chestOf(made) - chestAt(grade))).toBeLessThan(4);
  });

  it.each(GRADES)('is drawn where it was measured, %i sizes from 88 cm', (grade) => {
    const made = draft(bodyAt(grade, { chestWidth: chestAt(grade) }), PRINCESS);
    expect(errorsOf(made)).toEqual([]);
    expect(Math.abs(chestOf(made) - chestAt(grade))).toBeLessThan(1);
  });
});

describe('the textbook’s shoulder dart', () => {
  const withDart = (mm: number): Style => ({ ...PRINCESS, shoulders: { intake: { front: mm } } });

  it.each(GRADES)('is drawn as asked, %i sizes from 88 cm', (grade) => {
    const made = draft(bodyAt(grade), withDart(dartAt(grade)));
    expect(errorsOf(made)).toEqual([]);
    expect(Math.abs(dartOf(made) - dartAt(grade))).toBeLessThan(4);
  });

  it.each(GRADES)('comes of front length less back length, %i sizes from 88 cm', (grade) => {
    const body = bodyAt(grade);
    // The rule by hand: the dart's angle is that of the difference laid in the side seam at the bust line, and at least half that
    // by which the front narrows from the bust line to the over-bust line.
    const { levels } = draft(body, PRINCESS);
    const bustLevel = levels.find(({ name }) => name === 'bust');
    const side = (bustLevel?.net.front ?? Number.NaN) - (body.bustPointWidth ?? 0) / 2;
    const made = (longer: number): Draft =>
      draft({ ...body, backNeckToWaist: (body.neckToWaist ?? 0) - RISE - longer }, PRINCESS);
    // What the front must be longer for the textbook's dart, where the bust point lies some 225 mm from mid-shoulder.
    const wanted = (dartAt(grade) * side) / 225;
    for (const longer of [0.5 * wanted, wanted, 1.2 * wanted]) {
      const end = made(longer).blocks?.front.upper?.ends[0]?.at.point as Point;
      const bust = { x: (body.bustPointWidth ?? 0) / 2, y: body.neckToBust ?? 0 };
      const leg = Math.hypot(end.x - bust.x, end.y - bust.y);
      const byHand = leg * Math.max(longer / side, coneOf(levels, PRINCESS) / 2);
      expect(Math.abs(dartOf(made(longer)) - byHand) / byHand, `${longer}`).toBeLessThan(0.07);
    }
    expect(dartOf(made(1.2 * wanted))).toBeGreaterThan(dartAt(grade));
    expect(dartOf(made(0.5 * wanted))).toBeLessThan(dartAt(grade));
  });
});
