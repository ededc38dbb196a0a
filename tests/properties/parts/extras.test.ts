// What lies behind a lacing, on drawn bodies and many styles: facings and modesty panels follow the edges they lie behind.

import { describe, expect, it } from 'vitest';
import { HEM_EDGES, NAMED_STYLES, TOP_EDGES } from '../../../src/document';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  type Edge,
  edgesAt,
  type Piece,
  type Point,
  type Style,
} from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { cutLineFaults } from '../../support/judges/cutLineFaults';
import { areaSeen, chainDistance, holds, isNear, ringOf, selfMeeting } from '../../support/judges/outline';
import { chance, type Random, randomFrom, uniform } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';
import { withDarts } from '../../support/styles/withDarts';

/** Flatness of the points and rounding. mm */
const EDGED = howMany({ few: 4, all: 12 });
const STYLED = howMany({ few: 40, all: 200 });
const HALVED = howMany({ few: 4, all: 10 });

const CLOSE_MM = 0.05;

/**
 * Between two chords of the edge its parallel is mitred, and lies farther off by 1 / cos of half their turn: a hair on what a
 * maker would draw, at most 6° on what could be typed.
 */
const MITRE = { named: 1.001, any: 1 / Math.cos((6 * Math.PI) / 180) } as const;

interface Asked {
  readonly overlap: number;
  readonly width: number;
}

const laced = (style: Style, { overlap, width }: Asked): Style => ({
  ...style,
  closure: { ...style.closure, front: 'lacing', back: 'lacing' },
  extras: { modesty: { overlap }, facing: { width } },
});

const panelOf = ({ pieces }: Draft, { block }: Piece): Piece =>
  pieces.find((piece) => piece.block === block && piece.number === 1) as Piece;

const rows = (piece: Piece, ...roles: Edge['role'][]): Point[] =>
  piece.edges.filter(({ role }) => roles.includes(role)).flatMap(({ points }) => points);

const TOP: Edge['role'][] = ['top', 'shoulder', 'armhole'];

/** Where `piece` has run on beyond its panel, or across a dart of it, there is no edge to follow. */
const endsBeside = (panel: Piece, role: 'top' | 'hem'): number => {
  const edges = role === 'hem' ? edgesAt(panel, 'hem') : edgesAt(panel, 'top').reverse();
  const dart = edges.findIndex((edge) => edge.dart !== undefined);
  const beside = dart < 0 ? edges : edges.slice(0, dart);
  return Math.max(...beside.flatMap(({ points }) => points.map(({ x }) => x)));
};

function expectSound(piece: Piece): void {
  const ring = ringOf(piece);
  expect(selfMeeting(ring)).toBeNull();
  expect(areaSeen(ring)).toBeGreaterThan(0);
  for (const [i, { points }] of piece.edges.entries())
    expect(points.at(-1)).toEqual(piece.edges[(i + 1) % piece.edges.length]?.points[0]);
  expect(cutLineFaults(piece, CLOSE_MM)).toEqual([]);
  const [top, foot] = piece.grain;
  expect(top.x).toBe(foot.x);
  expect(foot.y - top.y).toBeGreaterThan(0);
  for (const part of [0, 0.5, 1])
    expect(holds(ring, { x: top.x, y: top.y + (foot.y - top.y) * part }, 0)).toBe(true);
  for (const { at, edge } of piece.marks)
    expect(chainDistance(piece.edges[edge ?? -1]?.points ?? [], at)).toBeLessThan(CLOSE_MM);
}

function expectFollowing(facing: Piece, panel: Piece, width: number, mitre: number): void {
  const centre = panel.edges[0]?.points ?? [];
  expect(facing.edges[0]?.points).toEqual(centre);
  expect(facing.marks.filter(({ edge }) => edge === 0)).toEqual(panel.marks.filter(({ edge }) => edge === 0));
  for (const [role, roles] of [
    ['top', TOP],
    ['hem', ['hem']],
  ] as const)
    for (const point of rows(facing, ...roles))
      if (point.x < endsBeside(panel, role) - CLOSE_MM)
        expect(chainDistance(rows(panel, ...roles), point)).toBeLessThan(CLOSE_MM);
  const [upper, lower] = [centre[0] as Point, centre.at(-1) as Point];
  for (const point of facing.edges.find((edge) => edge.role === 'seam')?.points ?? []) {
    const off = chainDistance(centre, point);
    const fromEnds = Math.min(...[upper, lower].map((end) => Math.hypot(point.x - end.x, point.y - end.y)));
    expect(off).toBeGreaterThan(width - CLOSE_MM);
    // Past its ends the edge goes on straight, and so does what is parallel to it.
    if (off < fromEnds - CLOSE_MM) expect(off).toBeLessThan(width * mitre + CLOSE_MM);
  }
}

/** A modesty panel laid to the upper or lower end of the laced edge, its place under the panel of its right half. */
function laidAt(piece: Piece, panel: Piece, edge: 'top' | 'hem', { overlap }: Asked, gap: number): Point[] {
  const centre = panel.edges[0]?.points ?? [];
  const [end, next] = (edge === 'top' ? centre : [...centre].reverse()) as [Point, Point];
  const length = Math.hypot(next.x - end.x, next.y - end.y);
  const down = { x: (next.x - end.x) / length, y: (next.y - end.y) / length };
  const into = edge === 'top' ? { x: down.y, y: -down.x } : { x: -down.y, y: down.x };
  const points = rows(piece, edge);
  const atLacedEdge = points.reduce((best, point) =>
    Math.abs(point.x - overlap - gap) < Math.abs(best.x - overlap - gap) ? point : best,
  );
  return points
    .filter(({ x }) => x >= overlap + gap - 1e-9)
    .map((point) => {
      const across = point.x - overlap - gap;
      const inwards = (point.y - atLacedEdge.y) * (edge === 'top' ? 1 : -1);
      return {
        x: end.x + across * into.x + inwards * down.x,
        y: end.y + across * into.y + inwards * down.y,
      };
    });
}

function expectUnder(piece: Piece, panel: Piece, asked: Asked, gap: number): void {
  for (const [edge, roles] of [
    ['top', TOP],
    ['hem', ['hem']],
  ] as const)
    for (const point of laidAt(piece, panel, edge, asked, gap))
      if (point.x < endsBeside(panel, edge) - CLOSE_MM)
        expect(chainDistance(rows(panel, ...roles), point)).toBeLessThan(CLOSE_MM);
  // Its left half is its right half in a mirror.
  const ring = ringOf(piece);
  for (const { x, y } of ring) expect(isNear(ring, { x: gap + 2 * asked.overlap - x, y }, 1e-6)).toBe(true);
}

function judge(made: Draft, style: Style, asked: Asked, mitre: number): number {
  const behind = made.extras.filter(({ id }) => /-(modesty|facing)$/.test(id));
  for (const piece of behind) {
    const panel = panelOf(made, piece);
    expectSound(piece);
    if (piece.kind === 'facing') expectFollowing(piece, panel, asked.width, mitre);
    else expectUnder(piece, panel, asked, style.closure.lacingGap);
  }
  return behind.length;
}

const drawAsked = (random: Random): Asked => ({
  overlap: chance(random, 0.2) ? 0 : uniform(random, 5, 150),
  width: uniform(random, 10, 120),
});

describe('what lies behind a lacing', () => {
  const named: [string, Style][] = [
    ...[...NAMED_STYLES].map(([name, { style }]): [string, Style] => [
      name,
      { ...style, closure: { ...style.closure, lacingGap: 40 } },
    ]),
    ...HEM_EDGES.map(({ name, shape }): [string, Style] => [
      `a hem, ${name}`,
      { ...DEFAULT_STYLE, hemShape: shape, turnedHem: true },
    ]),
    ...TOP_EDGES.map(({ name, shape }): [string, Style] => [
      `a top edge, ${name}`,
      { ...DEFAULT_STYLE, topShape: shape },
    ]),
  ];

  it.each(named)('follows the edges of %s', DRAWN, (_, style) => {
    const random = randomFrom(51);
    let count = 0;
    for (const body of drawBodies(EDGED, 51)) {
      const asked = drawAsked(random);
      const whole = laced(style, asked);
      count += judge(draft(body, whole), whole, asked, MITRE.named);
    }
    expect(count).toBe(4 * EDGED);
  });

  it('follows those of any style, or is left out and said to be', DRAWN, () => {
    const random = randomFrom(52);
    let [count, left] = [0, 0];
    for (const body of drawBodies(STYLED, 52)) {
      const asked = drawAsked(random);
      const style = laced(withDarts(randomStyle(random), random, false), asked);
      const made = draft(body, style);
      const cut = judge(made, style, asked, MITRE.any);
      const said = made.issues.filter(({ code }) => code === 'extraHasNoRoom').length;
      const hemmed = style.closure.lacingGap + 2 * asked.overlap === 0 ? 1 : 2;
      const blocks = (['front', 'back'] as const).filter((block) =>
        made.pieces.some((piece) => piece.block === block && piece.number === 1),
      );
      expect(cut + said).toBe(hemmed * blocks.length);
      count += cut;
      left += said;
    }
    expect(count).toBeGreaterThan((5 / 2) * STYLED);
    expect(left).toBeLessThan(count / 20);
  });

  it(
    'of halves that differ is cut for each where it is a facing, and under both where it is a modesty panel',
    DRAWN,
    () => {
      const asked = { overlap: 40, width: 50 };
      for (const body of drawBodies(HALVED, 53)) {
        const style = laced(
          { ...DEFAULT_STYLE, hemShape: HEM_EDGES[1]?.shape ?? DEFAULT_STYLE.hemShape },
          asked,
        );
        const made = draftWhole(body, style, { leftShare: { waist: 0.53 }, rightLower: { hip: 8 } });
        expect(made.extras.map(({ id }) => id)).toEqual([
          'front-modesty',
          'left-front-facing',
          'right-front-facing',
          'back-modesty',
          'left-back-facing',
          'right-back-facing',
        ]);
        for (const piece of made.extras) {
          expectSound(piece);
          expect(piece.cut).toEqual({ count: 1, onFold: false });
          if (piece.kind !== 'facing') continue;
          const panel = made.pieces.find(
            ({ block, number, side }) => block === piece.block && number === 1 && side === piece.side,
          );
          expect(piece.edges[0]?.points).toEqual(panel?.edges[0]?.points);
        }
        for (const block of ['front', 'back'] as const) {
          const modesty = made.extras.find(({ id }) => id === `${block}-modesty`) as Piece;
          // Seen right side up, a left front and a right back lie on the right.
          const half = made.halves?.[block === 'front' ? 'left' : 'right'] as Draft;
          const panel = panelOf(half, modesty);
          for (const [edge, roles] of [
            ['top', TOP],
            ['hem', ['hem']],
          ] as const)
            for (const point of laidAt(modesty, panel, edge, asked, style.closure.lacingGap))
              if (point.x < endsBeside(panel, edge) - CLOSE_MM)
                expect(chainDistance(rows(panel, ...roles), point)).toBeLessThan(CLOSE_MM);
        }
      }
    },
  );
});
