// A published corset draft with a gore, reproduced from its widths: "The Practical Corsetiere" (trade manual), p. 40 [seen].

import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  draft,
  inches,
  type Measurements,
  type PerLevel,
  type Piece,
  type Style,
  stationOf,
  xAt,
} from '../../src/engine';
import { MEAN_BODY } from '../support/bodies/drawBodies';
import { broken, judge } from '../support/judges/judge';
import { ringOf, widthAcross } from '../support/judges/outline';

/**
 * From the book, size 36, in inches. Its half draft lies on a line `wide` long from the construction centre back to centre
 * front. At each line of the body: where the centre back edge comes in to, where the side edges of the back part and of the
 * front part come to, and the half width that they leave in all.
 */
const BOOK = {
  wide: 24.25,
  underarm: 8.5,
  bust: { centreBack: 1.25, back: 12, front: 12.75, half: 22.25 },
  waist: { centreBack: 2, back: 11, front: 13.75, half: 19.5 },
  hip: { centreBack: 1.5, back: 12.75, front: 12, half: 23.5 },
} as const;

const LEVELS = ['bust', 'waist', 'hip'] as const;
type BookLevel = (typeof LEVELS)[number];

/**
 * Ours: the book's whole half draft is one block, the engine's front, from centre front (x = 0) to the book's centre back edge;
 * four fifths of the girth, the most a front may have. The other fifth, which the engine wants behind, is not the book's.
 */
const SHARE = 0.8;
const girth = (level: BookLevel): number => (inches(BOOK[level].half) * 2) / SHARE;

/** Ours: heights, and an over-bust line like the bust's. Without an under-bust line, because the book has none. */
const BODY: Measurements = {
  ...MEAN_BODY,
  overBust: girth('bust'),
  bust: girth('bust'),
  waist: girth('waist'),
  hip: girth('hip'),
  neckToUnderBust: MEAN_BODY.neckToBust + 5,
  neckToWaist: MEAN_BODY.neckToBust + inches(6),
  neckToHip: MEAN_BODY.neckToBust + inches(6 + 9),
  underarmToWaist: inches(BOOK.underarm),
};

const intake = (level: BookLevel): number => inches(BOOK[level].front - BOOK[level].back);

/** The wedge between the book's side edges, which overlap at the hip: a gore. It stands half way between them. */
function station(level: BookLevel): number {
  const { front, back, half } = BOOK[level];
  return stationOf(
    inches(BOOK.wide - (front + back) / 2),
    (BODY.bustPointWidth ?? 0) / 2,
    inches(half) + intake(level),
  );
}

const perLevel = (of: (level: BookLevel) => number): Partial<PerLevel> => ({
  overBust: of('bust'),
  bust: of('bust'),
  waist: of('waist'),
  hip: of('hip'),
});

const every = (value: number): PerLevel => ({
  overBust: value,
  bust: value,
  underBust: value,
  waist: value,
  highHip: value,
  hip: value,
});

const STYLE: Style = {
  ...DEFAULT_STYLE,
  ease: every(0),
  frontShare: every(SHARE),
  hemBelow: inches(10),
  closure: { ...DEFAULT_STYLE.closure, lacingGap: 0 },
  wedges: [
    {
      id: 'gore',
      kind: 'through',
      block: 'front',
      station: station('bust'),
      stationAt: perLevel(station),
      sizing: 'manual',
      intake: perLevel(intake),
      weight: 1,
    },
  ],
};

const MADE = draft(BODY, STYLE);
const heightOf = (level: BookLevel): number =>
  MADE.levels.find(({ name }) => name === level)?.y ?? Number.NaN;

const pieceOf = (id: string): Piece => MADE.pieces.find((piece) => piece.id === id) as Piece;

/** From the construction centre back, in inches: where the edge `i` of a finished panel crosses a level. */
function fromBack(piece: string, i: number, level: BookLevel): number {
  const points = pieceOf(piece).edges[i]?.points ?? [];
  const y = heightOf(level);
  const [p, q] = points.flatMap((p, k) => {
    const q = points[k + 1];
    return q && p.y <= y !== q.y <= y ? [p, q] : [];
  });
  if (!p || !q) return Number.NaN;
  return BOOK.wide - (p.x + ((q.x - p.x) * (y - p.y)) / (q.y - p.y)) / inches(1);
}

const [INNER, OUTER] = [0, 2];

describe('"The Practical Corsetiere", p. 40', () => {
  it('is drafted without a fault', () => {
    expect(MADE.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(MADE.pieces.map(({ id }) => id)).toEqual(['front-1', 'front-2', 'back-1']);
    expect(broken(judge(BODY, STYLE, MADE))).toEqual([]);
  });

  // The book's figures are sixteenths of an inch at the finest; the draft meets them to a millionth.
  it.each(LEVELS)('at the %s its edges come where the book has them', (level) => {
    const { centreBack, back, front } = BOOK[level];
    expect(fromBack('front-1', INNER, level)).toBeCloseTo(BOOK.wide, 6);
    expect(fromBack('front-1', OUTER, level)).toBeCloseTo(front, 6);
    expect(fromBack('front-2', INNER, level)).toBeCloseTo(back, 6);
    expect(fromBack('front-2', OUTER, level)).toBeCloseTo(centreBack, 6);
  });

  // Arithmetic on the book's figures: 24.25 − 12.75 = 11.50 and so on.
  it.each([
    ['bust', 11.5, 10.75],
    ['waist', 10.5, 9],
    ['hip', 12.25, 11.25],
  ] as const)('at the %s the panels are %f and %f in wide', (level, front, back) => {
    const [frontWidth, backWidth] = ['front-1', 'front-2'].map((id) =>
      widthAcross(ringOf(pieceOf(id)), heightOf(level)),
    );
    expect((frontWidth ?? Number.NaN) / inches(1)).toBeCloseTo(front, 6);
    expect((backWidth ?? Number.NaN) / inches(1)).toBeCloseTo(back, 6);
    expect(front + back).toBe(BOOK[level].half);
  });

  it('the panels lie over each other at the hip by 3/4 in, on an axis that is straight', () => {
    expect(fromBack('front-2', INNER, 'hip') - fromBack('front-1', OUTER, 'hip')).toBeCloseTo(0.75, 6);
    const axis = MADE.blocks?.front.wedges[0]?.axis;
    if (!axis) throw new Error('the gore is drafted');
    for (const level of LEVELS) expect(xAt(axis, heightOf(level)) / inches(1)).toBeCloseTo(11.875, 6);
  });
});
