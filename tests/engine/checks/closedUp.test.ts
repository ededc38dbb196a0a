// Open darts closed up: the parts of a slashed panel are all of it, and meet leg to leg where the seams are held.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  balancedWedge,
  type ClosedAt,
  closeUp,
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  type Edge,
  type Piece,
  type PiecePart,
  type Point,
  partsOf,
  placePoint,
  type Style,
  withPoints,
} from '../../../src/engine';
import { identifyPiece } from '../../../src/engine/terms/identity';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { ringOf, selfMeeting } from '../../support/judges/outline';
import { inSideSeam } from '../../support/styles/sideDart';

const BODIES = drawBodies(60, 17).map(withShoulders);

const named = (name: string): Style => (NAMED_STYLES.get(name) as { style: Style }).style;

/** Darts open at the top edge on both blocks, sized by hand as they shut at the bust. */
const FROM_TOP: Style = {
  ...DEFAULT_STYLE,
  wedges: [
    ...DEFAULT_STYLE.wedges.filter(({ station }) => station < 0.4),
    ...(['front', 'back'] as const).map((block) =>
      withPoints(
        {
          ...balancedWedge(`${block}-top`, block, 0.5, 1),
          sizing: 'manual',
          intake: { overBust: 15, bust: 12, underBust: 18, waist: 25 },
        },
        { lower: { from: 'waist', below: 60 } },
      ),
    ),
  ],
};

const CASES: readonly [name: string, style: Style, at: ClosedAt, darts: number][] = [
  ['darts to the waist, at the hem', named('darted-bodice'), 'hem', 4],
  ['darts to the waist, at the waist, which is the hem', named('darted-bodice'), 'waist', 4],
  ['darts to the waist, at the top', named('darted-bodice'), 'top', 1],
  ['darts to the hem, at the hem', named('basque-bodice'), 'hem', 2],
  ['darts to the hem, at the waist', named('basque-bodice'), 'waist', 2],
  ['darts from the top edge, at the top', FROM_TOP, 'top', 2],
  ['darts from the top edge, at the waist', FROM_TOP, 'waist', 2],
  ['darts from the top edge, at the hem', FROM_TOP, 'hem', 0],
  ['closed darts', named('princess-bodice'), 'hem', 0],
  ['a dart in the side seam, at the top', inSideSeam(), 'top', 1],
];

const area = (ring: readonly Point[]): number =>
  ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Point;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);

const ring = ({ rows }: PiecePart): Point[] => rows.flatMap(({ points }) => points.slice(0, -1));

/** Where two parts that lie beside each other put the place they are held at, and the way their legs run there. */
function heldOf(made: Draft, piece: Piece, at: ClosedAt, beside: number): { at: Point; way: number }[] {
  const placements = closeUp(made.pieces, at).filter((each) => each.piece.id === piece.id);
  const parts = partsOf(piece, at);
  return [
    { border: parts[beside]?.outer, placement: placements.find(({ part }) => part === beside) },
    { border: parts[beside + 1]?.inner, placement: placements.find(({ part }) => part === beside + 1) },
  ].map(({ border, placement }) => {
    const points = border?.points ?? [];
    const mark =
      at === 'waist' && piece.marks.find(({ level, edge }) => level === 'waist' && edge === border?.edge);
    const ends = at === 'top' ? points.slice(0, 2) : [...points].reverse().slice(0, 2);
    const pair = mark ? [mark.at, points.find(({ y }) => y > mark.at.y + 0.5)] : ends;
    if (!placement) throw new Error('every part is placed');
    const [held, next] = pair.map((point) => placePoint(placement, point as Point));
    if (!held || !next) throw new Error('every leg has its points');
    return { at: held, way: Math.atan2(next.y - held.y, next.x - held.x) };
  });
}

describe.each(CASES)('%s', (_, style, at, darts) => {
  const drafts = BODIES.map((body) => draft(body, style)).filter(
    ({ issues }) => !issues.some(({ severity }) => severity === 'error'),
  );

  it('slashes every panel through, once for each dart that shuts there', () => {
    expect(drafts.length).toBeGreaterThan(50);
    for (const { pieces } of drafts) {
      let shut = 0;
      for (const piece of pieces) {
        const parts = partsOf(piece, at);
        shut += parts.length - 1;
        expect(parts.reduce((sum, part) => sum + area(ring(part)), 0)).toBeCloseTo(area(ringOf(piece)), 6);
        for (const part of parts) {
          expect(selfMeeting(ring(part))).toBeNull();
          expect(Math.sign(area(ring(part)))).toBe(Math.sign(area(ringOf(piece))));
        }
        // Each edge but those slashed through is in one part, whole.
        const whole = parts
          .flatMap(({ rows }) => rows.map(({ edge }) => edge))
          .filter((edge) => edge !== null);
        expect(whole.length).toBe(piece.edges.length + parts.length - 1);
      }
      expect(shut).toBe(darts);
    }
  });

  it('lays the parts leg to leg: held point on held point, running the same way', () => {
    for (const made of drafts)
      for (const piece of made.pieces)
        for (let i = 0; i < partsOf(piece, at).length - 1; i += 1) {
          const [one, other] = heldOf(made, piece, at, i) as [
            { at: Point; way: number },
            { at: Point; way: number },
          ];
          expect(Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y)).toBeLessThan(1e-6);
          // The next point of a leg may lie farther along a curve than its mate's.
          expect(Math.cos(one.way - other.way)).toBeGreaterThan(Math.cos((6 * Math.PI) / 180));
        }
  });
});

describe('a dart shut at the hem', () => {
  it('leaves the hem running straight on where it was shut', () => {
    const made = draft(withShoulders(MEAN_BODY), named('darted-bodice'));
    const placements = closeUp(made.pieces, 'hem');
    let crossed = 0;
    for (const piece of made.pieces) {
      const parts = partsOf(piece, 'hem');
      const hemOf = (i: number): Point[] => {
        const placement = placements.find((each) => each.piece.id === piece.id && each.part === i);
        const row = parts[i]?.rows.find(({ edge }) => edge !== null && piece.edges[edge]?.role === 'hem');
        return placement && row ? row.points.map((point) => placePoint(placement, point)) : [];
      };
      for (let i = 1; i < parts.length; i += 1) {
        const [before, after] = [hemOf(i - 1), hemOf(i)];
        const [a, b, c] = [before.at(-2), after[0], after[1]] as [Point, Point, Point];
        const turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
        expect(Math.abs((Math.atan2(Math.sin(turn), Math.cos(turn)) * 180) / Math.PI)).toBeLessThan(0.5);
        crossed += 1;
      }
    }
    expect(crossed).toBe(4);
  });
});

describe('two differing halves', () => {
  it('have their panels slashed alike, part by part', () => {
    const made = draftWhole(withShoulders(MEAN_BODY), named('darted-bodice'), {
      leftShare: { bust: 0.51 },
      rightLower: {},
    });
    for (const side of ['left', 'right'] as const)
      for (const piece of made.halves?.[side].pieces ?? []) {
        const whole = made.pieces.find(({ id }) => id === `${side}-${piece.id}`) as Piece;
        const [own, turned] = [partsOf(piece, 'hem'), partsOf(whole, 'hem')];
        expect(turned).toHaveLength(own.length);
        for (const [i, part] of own.entries())
          expect(Math.abs(area(ring(turned[i] as PiecePart)))).toBeCloseTo(Math.abs(area(ring(part))), 6);
      }
  });
});

describe('a panel that was not made', () => {
  it('leaves the next one 25 mm beside the one before, unturned', () => {
    const left = draft(MEAN_BODY, DEFAULT_STYLE).pieces.filter(({ id }) => id !== 'front-2');
    const placements = closeUp(left, 'waist');
    const across = (id: string): number[] => {
      const placement = placements.find(({ piece }) => piece.id === id);
      const piece = left.find((each) => each.id === id);
      if (!placement || !piece) throw new Error(`no ${id}`);
      return ringOf(piece).map((point) => placePoint(placement, point).x);
    };
    expect(Math.min(...across('front-3')) - Math.max(...across('front-1'))).toBeCloseTo(25, 9);
    expect(placements.find(({ piece }) => piece.id === 'front-3')?.turnRad).toBe(0);
  });
});

describe('a dart that does not cross the waist', () => {
  it.each([
    ['open at the hem, below it', { upper: { from: 'waist', below: 25 } }, 'hem'],
    ['open at the top, above it', { lower: { from: 'waist', below: -25 } }, 'top'],
  ] as const)('%s, stays open where the panels are held at the waist', (_, ends, at) => {
    const intake = { overBust: 12, bust: 8, underBust: 8, highHip: 12, hip: 20 };
    const style: Style = {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === 'back-side' ? withPoints({ ...wedge, sizing: 'manual', intake }, ends) : wedge,
      ),
    };
    const shut = (where: ClosedAt): number =>
      draft(MEAN_BODY, style).pieces.reduce((sum, piece) => sum + partsOf(piece, where).length - 1, 0);
    expect([shut(at), shut('waist')]).toEqual([1, 0]);
  });
});

describe('a slash that meets a node of the edge across', () => {
  it('takes that point once into each part', () => {
    const bridal = named('bridal-bodice');
    const style: Style = {
      ...bridal,
      wedges: bridal.wedges.map((wedge) =>
        wedge.station === 0 && wedge.block === 'front'
          ? withPoints(wedge, { upper: { from: 'bust', below: 25 } })
          : wedge,
      ),
    };
    const parts = draft(MEAN_BODY, style).pieces.flatMap((piece) => partsOf(piece, 'hem'));
    expect(parts.some(({ rows }) => rows.some(({ edge }) => edge === null))).toBe(true);
    for (const { rows } of parts)
      for (const { points } of rows)
        for (const [i, point] of points.entries()) if (i > 0) expect(point).not.toEqual(points[i - 1]);
  });
});

describe('a dart whose line straight on from its point runs out at a seam', () => {
  /** A panel that leans: 100 high, its foot `lean` nearer the centre than its head; a dart at `x` of the hem, 8 wide and 20 high. */
  const leaning = (x: number, lean = 60): Piece => {
    const at = (px: number, py: number): Point => ({ x: px, y: py });
    const [from, point, to] = [at(x, 100), at(x + 4, 80), at(x + 8, 100)];
    const edge = (
      place: Edge['at'],
      role: 'seam' | 'hem' | 'top',
      points: readonly Point[],
      leg?: 'inner' | 'outer',
    ): Edge => ({
      ...{ at: place, role, isSideSeam: false, mate: null, allowance: 0, points },
      ...(leg && { dart: { wedge: 'dart', leg } }),
    });
    return {
      ...identifyPiece('panel', 'front', 2),
      cut: { count: 2, onFold: false },
      edges: [
        edge('inner', 'seam', [at(lean, 0), at(0, 100)]),
        edge('hem', 'hem', [at(0, 100), from]),
        edge('hem', 'seam', [from, point], 'inner'),
        edge('hem', 'seam', [point, to], 'outer'),
        edge('hem', 'hem', [to, at(80, 100)]),
        edge('outer', 'seam', [at(80, 100), at(80 + lean, 0)]),
        edge('top', 'top', [at(80 + lean, 0), at(lean, 0)]),
      ],
      darts: [{ wedge: 'dart', inner: [point, from], outer: [point, to], open: true }],
      cutLine: [],
      grain: [at(70, 40), at(70, 60)],
      marks: [],
    };
  };
  /** The same standing on its head. */
  const upended = ({ edges, darts, ...piece }: Piece): Piece => {
    const turned = ({ x, y }: Point): Point => ({ x: 140 - x, y: 100 - y });
    const roles = { hem: 'top', top: 'hem' } as const;
    const across = { ...roles, inner: 'outer', outer: 'inner' } as const;
    const roleOf = (role: (typeof edges)[number]['role']) =>
      role === 'hem' || role === 'top' ? roles[role] : role;
    const round = [...edges.slice(5), ...edges.slice(0, 5)];
    return {
      ...piece,
      edges: round.map((each) => ({
        ...each,
        at: across[each.at],
        ...(each.dart && { dart: { ...each.dart, leg: across[each.dart.leg] } }),
        role: roleOf(each.role),
        points: each.points.map(turned),
      })),
      darts: darts.map(({ inner, outer, ...dart }) => ({
        ...dart,
        inner: [...outer].reverse().map(turned),
        outer: [...inner].reverse().map(turned),
      })),
    };
  };

  // Straight up from (24, 80) the slash would meet the inner seam 40 mm down, from (68, 80) the top edge.
  it('stays open: the panel is not slashed from side to side', () => {
    expect(partsOf(leaning(20), 'hem')).toHaveLength(1);
    expect(partsOf(upended(leaning(20)), 'top')).toHaveLength(1);
  });

  // Straight up from (10, 80) the slash would meet the inner seam; 15° outwards it ends at 31 of the top edge, 1 past its corner.
  it('is slashed as little aslant as ends on the edge across, and shut', () => {
    for (const [piece, at] of [
      [leaning(6, 30), 'hem'],
      [upended({ ...leaning(6, 30) }), 'top'],
    ] as const) {
      const parts = partsOf(piece, at);
      expect(parts).toHaveLength(2);
      const slashed = parts[0]?.rows.find(({ edge }) => edge === null)?.points ?? [];
      const [from, to] = [slashed[0], slashed.at(-1)] as [Point, Point];
      const lean = Math.abs(Math.atan((to.x - from.x) / (to.y - from.y)));
      expect((lean * 180) / Math.PI).toBeCloseTo(15, 9);
      expect(parts.map((part) => Math.abs(area(ring(part)))).reduce((sum, each) => sum + each)).toBeCloseTo(
        80 * 100 - (8 * 20) / 2,
        6,
      );
    }
  });

  it('is shut where the line ends on the edge across', () => {
    for (const [piece, at] of [
      [leaning(64), 'hem'],
      [upended(leaning(64)), 'top'],
    ] as const) {
      const parts = partsOf(piece, at);
      expect(parts).toHaveLength(2);
      // The trapezium towards the centre: (8 + 68) / 2 wide all the way up.
      expect(parts.map((part) => Math.abs(area(ring(part)))).reduce((sum, each) => sum + each)).toBeCloseTo(
        80 * 100 - (8 * 20) / 2,
        6,
      );
    }
  });
});

describe('a dart in the side seam', () => {
  const made = draft(withShoulders(MEAN_BODY), inSideSeam());
  const side = (
    block: 'front' | 'back',
    sidePart: 'aboveDart' | 'belowDart',
    at: ClosedAt,
  ): readonly Point[] => {
    const piece = made.pieces.find((each) => each.block === block) as Piece;
    const edge = piece.edges.findIndex((each) => each.at === 'outer' && each.sidePart === sidePart);
    const part = partsOf(piece, at).findIndex(({ rows }) => rows.some((row) => row.edge === edge));
    const placed = closeUp(made.pieces, at).find((each) => each.piece.block === block && each.part === part);
    if (!placed) throw new Error('every part is placed');
    return (piece.edges[edge]?.points ?? []).map((point) => placePoint(placed, point));
  };
  const apart = (a: Point | undefined, b: Point | undefined): number =>
    Math.hypot((a?.x ?? Number.NaN) - (b?.x ?? Number.NaN), (a?.y ?? Number.NaN) - (b?.y ?? Number.NaN));

  it('is shut at the top: front and back meet under the arm and run on there alike', () => {
    const [front, back] = [side('front', 'aboveDart', 'top'), side('back', 'aboveDart', 'top')];
    expect(apart(front.at(-1), back.at(-1))).toBeLessThan(1e-9);
    expect(apart(front[0], back[0])).toBeLessThan(4);
  });

  it('brings its legs together, so that the side seam runs on', () => {
    const [below, above] = [side('front', 'belowDart', 'top'), side('front', 'aboveDart', 'top')];
    expect(apart(below.at(-1), above[0])).toBeLessThan(1e-6);
    expect(
      apart(side('front', 'belowDart', 'hem').at(-1), side('front', 'aboveDart', 'hem')[0]),
    ).toBeGreaterThan(10);
  });

  it('is held below it at the hem', () => {
    expect(apart(side('front', 'belowDart', 'hem')[0], side('back', 'belowDart', 'hem')[0])).toBeLessThan(
      1e-6,
    );
  });
});
