import { describe, expect, it } from 'vitest';
import { type AllowedEdge, cutLineAround } from '../../../../src/engine/geometry/offset/cutLine';
import type { Point } from '../../../../src/engine/geometry/point';
import { areaSeen, distanceTo, holds, selfMeeting } from '../../../support/judges/outline';

/** Straight edges round a ring that runs counter-clockwise as seen on paper, y down. */
const edgesOf = (
  corners: readonly (readonly [number, number])[],
  allowances: readonly number[],
): AllowedEdge[] =>
  corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] as readonly [number, number];
    return {
      points: [
        { x, y },
        { x: nextX, y: nextY },
      ],
      allowance: allowances[i] as number,
    };
  });

const square = [
  [0, 0],
  [0, 100],
  [100, 100],
  [100, 0],
] as const;

const cutOf = (edges: readonly AllowedEdge[]): Point[] => {
  const cut = cutLineAround(edges);
  expect(cut).not.toBeNull();
  expect(selfMeeting(cut ?? [])).toBeNull();
  return cut ?? [];
};

describe('the cut line of a square', () => {
  it('has the area of the widened square, each edge by its own allowance', () => {
    const cut = cutOf(edgesOf(square, [20, 30, 5, 10]));
    expect(areaSeen(cut)).toBeCloseTo((100 + 20 + 5) * (100 + 10 + 30), 9);
    expect(cut).toHaveLength(4);
  });

  it('without allowances is the square', () => {
    expect(areaSeen(cutOf(edgesOf(square, [0, 0, 0, 0])))).toBe(10_000);
  });

  it('with one allowance widens that side only', () => {
    const cut = cutOf(edgesOf(square, [0, 0, 25, 0]));
    expect(areaSeen(cut)).toBeCloseTo(12_500, 9);
    expect(Math.max(...cut.map(({ x }) => x))).toBeCloseTo(125, 9);
  });
});

describe('corners', () => {
  it('an inward corner keeps both allowances', () => {
    const ell = [
      [0, 0],
      [0, 100],
      [40, 100],
      [40, 60],
      [100, 60],
      [100, 0],
    ] as const;
    const cut = cutOf(edgesOf(ell, [10, 10, 10, 10, 10, 10]));
    // The bounding square of 120 less what is left of the notch, 60 × 40 narrowed by 10 on either side.
    expect(areaSeen(cut)).toBeCloseTo(120 * 120 - 60 * 40, 4);
  });

  it('a sharp one is squared off four allowances at most from its tip', () => {
    const sliver = [
      [0, 0],
      [0, 30],
      [400, 15],
    ] as const;
    const cut = cutOf(edgesOf(sliver, [10, 10, 10]));
    expect(Math.max(...cut.map(({ x }) => x))).toBeCloseTo(410, 0);
    for (const corner of sliver) expect(holds(cut, { x: corner[0], y: corner[1] }, 0)).toBe(true);
  });

  it('a blunt one with a wide allowance beside a narrow one is cut off along the narrow one', () => {
    const trapezium = [
      [0, 0],
      [-40, 100],
      [140, 100],
      [100, 0],
    ] as const;
    // The blunt corners lie at the top edge, which has no allowance: the sides end level with it.
    const cut = cutOf(edgesOf(trapezium, [25, 10, 25, 0]));
    expect(Math.min(...cut.map(({ y }) => y))).toBeCloseTo(0, 9);
    expect(
      cut
        .filter(({ y }) => Math.abs(y) < 1e-9)
        .map(({ x }) => x)
        .sort((a, b) => a - b)[0],
    ).toBeCloseTo(-25 * Math.hypot(1, 0.4), 6);
  });

  it('two that pass each other leave nothing of the edge between', () => {
    const wedge = [
      [0, 0],
      [20, 100],
      [50, 100],
      [70, 0],
    ] as const;
    const cut = cutOf(edgesOf(wedge, [0, 100, 0, 10]));
    expect(Math.max(...cut.map(({ y }) => y))).toBeCloseTo(175, 4);
  });
});

describe('a curved edge', () => {
  const hollow = (radius: number): Point[] =>
    Array.from({ length: 61 }, (_, i) => {
      const turn = (Math.PI * i) / 60;
      return { x: 100 - radius * Math.sin(turn), y: 50 + radius * Math.cos(turn) };
    });
  const notched = (radius: number, allowance: number): AllowedEdge[] => {
    const bend = hollow(radius);
    const [first, last] = [bend[0] as Point, bend.at(-1) as Point];
    const [a, b, c, d] = [
      { x: 0, y: 0 },
      { x: 0, y: 100 },
      { x: 100, y: 100 },
      { x: 100, y: 0 },
    ];
    return [[a, b], [b, c], [c, first], bend, [last, d], [d, a]].map((points) => ({ points, allowance }));
  };

  it('hollow and wide enough keeps the allowance all along', () => {
    const cut = cutOf(notched(40, 10));
    for (const point of hollow(40)) expect(distanceTo(cut, point)).toBeGreaterThan(9.9);
  });

  it('hollower than the allowance is bridged, never crossed', () => {
    const cut = cutOf(notched(8, 15));
    for (const edge of notched(8, 15))
      for (const point of edge.points) expect(distanceTo(cut, point)).toBeGreaterThan(14.9);
    expect(areaSeen(cut)).toBeCloseTo(130 * 130, 0);
  });
});

describe('an inward corner rounded more tightly than the allowance is wide', () => {
  const radius = 4;

  /** The ell of 100 by 100 less 60 by 40, its inward corner rounded; walked down, in along the notch, and down again. */
  function ell(roundedIn: 'the edge before' | 'the edge after'): AllowedEdge[] {
    const at = (x: number, y: number): Point => ({ x, y });
    // Round (40 + r, 60 + r), from the foot of the inner side up to the notch's upper edge.
    const round = Array.from({ length: 10 }, (_, i) => {
      const turn = (Math.PI / 2) * (i / 9);
      return at(40 + radius - radius * Math.cos(turn), 60 + radius - radius * Math.sin(turn));
    });
    const [first, last] = [round[0] as Point, round.at(-1) as Point];
    const [before, after] = [
      [at(40, 100), first],
      [last, at(100, 60)],
    ];
    const rows =
      roundedIn === 'the edge before'
        ? [[...before, ...round.slice(1)], after]
        : [before, [...round.slice(0, -1), ...after]];
    return [
      [at(0, 0), at(0, 100)],
      [at(0, 100), at(40, 100)],
      ...rows,
      [at(100, 60), at(100, 0)],
      [at(100, 0), at(0, 0)],
    ].map((points) => ({ points, allowance: 10 }));
  }

  it.each(['the edge before', 'the edge after'] as const)(
    'keeps the allowance all along, in %s',
    (roundedIn) => {
      const edges = ell(roundedIn);
      const cut = cutOf(edges);
      for (const { points } of edges)
        for (const point of points) expect(distanceTo(cut, point)).toBeGreaterThan(10 - 0.03);
      // As of the ell with a sharp corner: 120 square less what is left of the notch.
      expect(areaSeen(cut)).toBeCloseTo(120 * 120 - 60 * 40, 1);
    },
  );
});

describe('an edge that bends in beside a corner', () => {
  // An armhole goes in square to the side seam for 2 mm, then up along a bend of 5 mm, less than its allowance of 12.
  const radius = 5;
  const bend = Array.from({ length: 10 }, (_, i): Point => {
    const turn = (Math.PI / 2) * (i / 9);
    return { x: 98 - radius * Math.sin(turn), y: 60 - radius * (1 - Math.cos(turn)) };
  });
  const rows: readonly (readonly [readonly Point[], number])[] = [
    [
      [
        { x: 0, y: 0 },
        { x: 0, y: 100 },
      ],
      12,
    ],
    [
      [
        { x: 0, y: 100 },
        { x: 100, y: 100 },
      ],
      12,
    ],
    [
      [
        { x: 100, y: 100 },
        { x: 100, y: 60 },
      ],
      25,
    ],
    [[{ x: 100, y: 60 }, ...bend, { x: 93, y: 0 }], 12],
    [
      [
        { x: 93, y: 0 },
        { x: 0, y: 0 },
      ],
      12,
    ],
  ];
  const walked = rows.map(([points, allowance]): AllowedEdge => ({ points, allowance }));
  const mirrored = rows.toReversed().map(
    ([points, allowance]): AllowedEdge => ({
      points: points.toReversed().map(({ x, y }) => ({ x: -x, y })),
      allowance,
    }),
  );

  it.each([
    ['at its start', walked],
    ['at its end', mirrored],
  ])('keeps its own allowance and the wider one up to the corner, %s', (_, edges) => {
    const cut = cutOf(edges);
    for (const { points, allowance } of edges)
      for (const point of points.slice(1, -1))
        expect(distanceTo(cut, point)).toBeGreaterThan(allowance - 0.03);
    // Its width of 93 with 12 on either side, and beside the side seam, from 12 above the armhole on, what lies past that.
    expect(areaSeen(cut)).toBeCloseTo((93 + 24) * 124 + (125 - 105) * (40 + 24), 6);
    for (const corner of [
      { x: 125, y: 48 },
      { x: 105, y: 48 },
    ])
      expect(distanceTo(cut, edges === mirrored ? { x: -corner.x, y: corner.y } : corner)).toBeLessThan(1e-6);
  });

  it('needs no loop taken out: the corner of the two allowances is a point of the line, unrounded', () => {
    expect(cutOf(walked)).toContainEqual({ x: 125, y: 48 });
  });
});

describe('a corner of the cut line', () => {
  const at = (x: number, y: number): Point => ({ x, y });

  it('whose tip would stand more than four allowances away is squared off an allowance past it', () => {
    // The edges meet at half an angle whose sine is 1 in 6, so the tip would stand six allowances away.
    const half = 300 / Math.sqrt(35);
    const line = cutLineAround([
      { points: [at(-half, 0), at(0, 300)], allowance: 10 },
      { points: [at(0, 300), at(half, 0)], allowance: 10 },
      { points: [at(half, 0), at(-half, 0)], allowance: 0 },
    ]);
    expect(Math.max(...(line ?? []).map(({ y }) => y))).toBeLessThan(311.7);
  });

  it('between two allowances on a nearly straight run is a step', () => {
    const line = cutLineAround([
      { points: [at(0, 0), at(0, 100)], allowance: 5 },
      { points: [at(0, 100), at(1, 200)], allowance: 20 },
      { points: [at(1, 200), at(100, 200)], allowance: 0 },
      { points: [at(100, 200), at(100, 0)], allowance: 0 },
      { points: [at(100, 0), at(0, 0)], allowance: 0 },
    ]);
    expect(selfMeeting(line ?? [])).toBeNull();
    expect((line ?? []).filter(({ x, y }) => x < -6 && y < 99)).toEqual([]);
  });
});
