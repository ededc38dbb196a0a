// Turned hems on drawn bodies: folded along the hem at its ends, the cut line below it lies on the cut line above.

import { describe, expect, it } from 'vitest';
import { HEM_EDGES, NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, type Draft, draft, type Piece, type Point, type Style } from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { cutLineFaults } from '../../support/judges/cutLineFaults';
import { chainDistance, distanceTo } from '../../support/judges/outline';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';

/** Flatness of the points and rounding. mm */
const CLOSE_MM = 0.02;

const STYLED = howMany({ few: 2, all: 6 });
const PLAIN = howMany({ few: 6, all: 20 });
const RANDOM = howMany({ few: 40, all: 150 });

const DEPTHS = [12.7, 25.4, 40];

const turned = (style: Style, hem: number): Style => ({
  ...style,
  turnedHem: true,
  allowances: { ...style.allowances, hem },
});

const isShort = (piece: Piece, { issues }: Draft): boolean =>
  issues.some(({ code, at }) => code === 'hemTurnsShort' && at.piece?.id === piece.id);

/** An end of a hem: the corner, and how deep below the fold there, and how far along it into the piece, a point lies. */
interface HemEnd {
  readonly piece: Piece;
  readonly at: Point;
  readonly along: Point;
  readonly out: Point;
  /** Which way round the cut line the hem lies. */
  readonly way: 1 | -1;
}

function hemEnds(piece: Piece): HemEnd[] {
  const hems = piece.edges.filter(({ role }) => role === 'hem').map(({ points }) => points);
  const [first, last] = [hems[0] as readonly Point[], hems.at(-1) as readonly Point[]];
  const end = (at: Point, next: Point, way: 1 | -1): HemEnd => {
    const length = Math.hypot(next.x - at.x, next.y - at.y);
    const along = { x: (next.x - at.x) / length, y: (next.y - at.y) / length };
    return { piece, at, along, out: { x: -way * along.y, y: way * along.x }, way };
  };
  return [
    ...(piece.cut.onFold ? [] : [end(first[0] as Point, first[1] as Point, 1)]),
    end(last.at(-1) as Point, last.at(-2) as Point, -1),
  ];
}

const depthAt = ({ at, out }: HemEnd, p: Point): number => (p.x - at.x) * out.x + (p.y - at.y) * out.y;
const inwards = ({ at, along }: HemEnd, p: Point): number => (p.x - at.x) * along.x + (p.y - at.y) * along.y;

/** The points of the cut line from the fold down to where it is as deep as the hem's, seen in the fold; none where it has none there. */
function seenInFold(end: HemEnd): Point[] {
  const { piece, out, way } = end;
  const ring = piece.cutLine;
  const hem = piece.edges.filter(({ role }) => role === 'hem');
  const depth = hem[0]?.allowance ?? 0;
  const place = ring
    .map((point, i) => ({ point, i }))
    .filter(({ point }) => Math.abs(depthAt(end, point)) < 1e-4 && inwards(end, point) < 1e-4)
    .sort((a, b) => inwards(end, b.point) - inwards(end, a.point))[0]?.i;
  if (place === undefined) return [];
  const seen: Point[] = [];
  for (let step = 1; step < ring.length / 2; step += 1) {
    const p = ring[(place + way * step + ring.length) % ring.length] as Point;
    const by = 2 * depthAt(end, p);
    seen.push({ x: p.x - by * out.x, y: p.y - by * out.y });
    if (hem.every(({ points }) => chainDistance(points, p) > depth - 0.03)) return seen;
  }
  return [];
}

describe('a turned hem on drawn bodies', () => {
  const styles: [string, Style][] = [
    ...HEM_EDGES.map(({ name, shape }): [string, Style] => [
      `a hem, ${name}`,
      { ...DEFAULT_STYLE, hemShape: shape },
    ]),
    ...HEM_EDGES.map(({ name, shape }): [string, Style] => [
      `a hem at the waist, ${name}`,
      { ...DEFAULT_STYLE, hemBelow: 0, hemShape: shape },
    ]),
    ...[...NAMED_STYLES].map(([name, { style }]): [string, Style] => [`the style ${name}`, style]),
  ];

  it.each(styles)('of %s, turned up, lies on its seam allowances', DRAWN, (_, style) => {
    let ends = 0;
    let short = 0;
    let worst = 0;
    for (const hem of DEPTHS)
      for (const body of drawBodies(STYLED, 31)) {
        const made = draft(body, turned(style, hem));
        for (const piece of made.pieces) {
          if (isShort(piece, made)) {
            short += 1;
            continue;
          }
          expect(cutLineFaults(piece, CLOSE_MM)).toEqual([]);
          for (const end of hemEnds(piece)) {
            const seen = seenInFold(end);
            expect(seen.length).toBeGreaterThan(0);
            for (const point of seen) worst = Math.max(worst, distanceTo(piece.cutLine, point));
            ends += 1;
          }
        }
      }
    expect(ends).toBeGreaterThan((25 / 3) * STYLED);
    expect(worst).toBeLessThan(0.1);
    // What cannot be turned up is told of with its piece: seldom more than one in a hundred.
    expect(short).toBeLessThanOrEqual(ends / 100);
  });

  it('leaves sew lines, marks and proof as they are, and turns no hem that has no allowance', DRAWN, () => {
    for (const body of drawBodies(PLAIN, 32)) {
      const [bound, up] = [draft(body, DEFAULT_STYLE), draft(body, { ...DEFAULT_STYLE, turnedHem: true })];
      expect(up.pieces.map((piece) => ({ ...piece, cutLine: [] }))).toEqual(
        bound.pieces.map((piece) => ({ ...piece, cutLine: [] })),
      );
      expect(up.pieces).not.toEqual(bound.pieces);
      expect(up.proof).toEqual(bound.proof);
      const allowances = { ...DEFAULT_STYLE.allowances, hem: 0 };
      const none = draft(body, { ...DEFAULT_STYLE, allowances, turnedHem: true });
      expect(none.pieces).toEqual(draft(body, { ...DEFAULT_STYLE, allowances }).pieces);
      expect(none.issues.filter(({ code }) => code === 'hemNeedsAllowance')).toMatchObject([
        { severity: 'warn', at: { field: 'allowances.hem' } },
      ]);
    }
  });

  it('of any style is turned soundly, or said not to be and cut as if it were bound', DRAWN, () => {
    const random = randomFrom(33);
    let [short, pieces] = [0, 0];
    for (const body of drawBodies(RANDOM, 33)) {
      const style = turned(randomStyle(random), 10 + 30 * random());
      const [made, bound] = [draft(body, style), draft(body, { ...style, turnedHem: false })];
      for (const [i, piece] of made.pieces.entries()) {
        if (made.issues.some(({ code, at }) => code === 'cutLineUnsure' && at.piece?.id === piece.id))
          continue;
        expect(cutLineFaults(piece, CLOSE_MM)).toEqual([]);
        pieces += 1;
        if (!isShort(piece, made)) continue;
        short += 1;
        expect(piece.cutLine).toEqual(bound.pieces[i]?.cutLine);
      }
    }
    expect(pieces).toBeGreaterThan((8 / 3) * RANDOM);
    expect(short).toBeGreaterThan(0);
    expect(short).toBeLessThan(pieces / 8);
  });
});
