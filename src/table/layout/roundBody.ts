// The panels of a half laid round an oval body and seen from in front and from behind: a sketch to know a style by, in which
// every length along the cloth is shortened only by the turn of the body. Not the sewn garment, which the Fit step shows.

import {
  type Draft,
  halfOpenAt,
  innerEdge,
  outerEdge,
  type Piece,
  type Point,
  type Style,
} from '../../engine';
import { sewnAtSide } from './sewnAtSide';

/** Depth of the oval as a part of its width: about that of a waist in stays. */
const DEPTH = 0.75;
const STEPS = 48;
/** Less of a panel than this is not seen from a side. mm */
const LEAST_SEEN_MM = 1;

/** A panel as it is seen, x from the body's middle outwards, y as on the panel; mm. */
export interface SeenPanel {
  readonly piece: Piece;
  readonly outline: readonly Point[];
  /** Stitched lines of its darts. */
  readonly darts: readonly (readonly Point[])[];
}

export interface RoundBody {
  readonly front: readonly SeenPanel[];
  readonly back: readonly SeenPanel[];
}

/**
 * A half draft's panels round the body. Each height is an oval of its own girth; a seam's edges meet on it. Heights that a panel
 * does not reach are taken from its nearest end.
 */
export function roundBody(draft: Pick<Draft, 'pieces' | 'turnedDart'>, closure: Style['closure']): RoundBody {
  const panels = panelsAround(sewnAtSide(draft));
  const gaps = { front: halfOpenAt('front', closure), back: halfOpenAt('back', closure) };
  const rows = new Map<number, Row>();
  const rowAt = (y: number): Row => {
    const known = rows.get(y);
    if (known) return known;
    let end = gaps.front;
    const starts = panels.map((piece) => {
      const start = end;
      end += widthOf(piece, y);
      return start;
    });
    const row = { starts, half: end + gaps.back };
    rows.set(y, row);
    return row;
  };
  const laid = panels.map((piece, i) => {
    const partAt = ({ x, y }: Point): Part => {
      const { starts, half } = rowAt(y);
      return { part: ((starts[i] ?? 0) + alongOf(piece, x, y)) / half, y };
    };
    return {
      piece,
      ring: piece.edges.flatMap(({ points }) => points.slice(0, -1).map(partAt)),
      darts: piece.darts.map(({ inner }) => inner.map(partAt)),
    };
  });
  const place = ({ part, y }: Part): Point => ({ x: rowAt(y).half * outOf(part), y });
  const seen = (from: 'front' | 'back'): SeenPanel[] => {
    const fromThere = ({ part, y }: Part): Part => ({ part: from === 'front' ? part : 1 - part, y });
    return laid.flatMap(({ piece, ring, darts }) => {
      const outline = toSide(ring.map(fromThere)).map(place);
      const across = outline.map(({ x }) => x);
      if (Math.max(...across) - Math.min(...across) < LEAST_SEEN_MM) return [];
      const lines = darts.map((line) =>
        line
          .map(fromThere)
          .filter(({ part }) => part <= SIDE)
          .map(place),
      );
      return [{ piece, outline, darts: lines }];
    });
  };
  return { front: seen('front'), back: seen('back') };
}

/** The panels at one height, along the cloth, mm. */
interface Row {
  /** Of each panel, how far from the body's middle in front it begins. */
  readonly starts: readonly number[];
  /** From the middle in front to the middle of the back. */
  readonly half: number;
}

/** A place on the oval: what part of the half girth lies between it and the middle that is looked at. */
interface Part {
  readonly part: number;
  readonly y: number;
}

/** The side of the body: as far as is seen. */
const SIDE = 0.5;

/** What of a ring is seen: what lies beyond the side is left out, and the ring goes on along the side; empty where none is seen. */
function toSide(ring: readonly Part[]): Part[] {
  const start = ring.findIndex(({ part }) => part <= SIDE);
  const seen: Part[] = [];
  /** Beyond the side: where the ring came to it, and what follows. */
  let beyond: Part[] = [];
  for (const here of [...ring.slice(start), ...ring.slice(0, start + 1)]) {
    const before = beyond.at(-1) ?? seen.at(-1) ?? here;
    if (here.part > SIDE) {
      if (beyond.length === 0) seen.push(atSide(before, here));
      beyond.push(here);
      continue;
    }
    if (beyond.length > 0) {
      const [left, back] = [seen.at(-1)?.y ?? 0, atSide(before, here)];
      const [from, to] = [Math.min(left, back.y), Math.max(left, back.y)];
      const along = beyond.filter(({ y }) => y > from && y < to).map(({ y }) => ({ part: SIDE, y }));
      seen.push(...along.sort((a, b) => (left < back.y ? a.y - b.y : b.y - a.y)), back);
      beyond = [];
    }
    seen.push(here);
  }
  return start < 0 ? [] : seen.slice(0, -1);
}

/** Where the line between two places comes to the side. */
function atSide(a: Part, b: Part): Part {
  const share = a.part === b.part ? 0 : (SIDE - a.part) / (b.part - a.part);
  return { part: SIDE, y: a.y + share * (b.y - a.y) };
}

/** From centre front round the side to centre back. */
function panelsAround(pieces: readonly Piece[]): Piece[] {
  const panels = pieces.filter(({ kind }) => kind === 'panel' || kind === 'sidePanel');
  const place = ({ kind, block, number }: Piece): number =>
    kind === 'sidePanel' ? 500 : block === 'front' ? number : 1000 - number;
  return panels.sort((a, b) => place(a) - place(b)).map(drawnCoarsely);
}

/** As many points of a line as a sketch shows. */
const MOST_POINTS = 24;

const drawnCoarsely = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map((edge) => ({ ...edge, points: fewer(edge.points) })),
  darts: piece.darts.map((dart) => ({ ...dart, inner: fewer(dart.inner), outer: fewer(dart.outer) })),
});

function fewer(points: readonly Point[]): readonly Point[] {
  const each = Math.ceil(points.length / MOST_POINTS);
  return points.filter((_, i) => i % each === 0 || i === points.length - 1);
}

/** The cloth of a panel at a height, its darts sewn up, mm. */
const widthOf = (piece: Piece, y: number): number =>
  Math.abs(xAtHeight(outerEdge(piece).points, y) - xAtHeight(innerEdge(piece).points, y)) -
  piece.darts.reduce((sum, dart) => sum + dartAt(dart, y).width, 0);

/** How far along the cloth a point of a panel lies from the panel's edge nearer to centre front, mm. */
function alongOf(piece: Piece, x: number, y: number): number {
  const isFront = piece.block === 'front';
  const start = xAtHeight((isFront ? innerEdge : outerEdge)(piece).points, y);
  const sewn = piece.darts.reduce((sum, dart) => {
    const { from, width } = dartAt(dart, y);
    const passed = isFront ? x - from : from + width - x;
    return sum + Math.min(Math.max(passed, 0), width);
  }, 0);
  return Math.abs(x - start) - sewn;
}

/** Where a dart lies at a height, and how wide it is there; of no width above and below it. */
function dartAt({ inner, outer }: Piece['darts'][number], y: number): { from: number; width: number } {
  const [top, foot] = [inner[0], inner.at(-1)];
  if (!top || !foot || y < Math.min(top.y, foot.y) || y > Math.max(top.y, foot.y))
    return { from: 0, width: 0 };
  const [a, b] = [xAtHeight(inner, y), xAtHeight(outer, y)];
  return { from: Math.min(a, b), width: Math.abs(b - a) };
}

/** The x of an edge at a height; beyond its ends that of the nearest end. */
function xAtHeight(points: readonly Point[], y: number): number {
  const isDownwards = (points[0]?.y ?? 0) <= (points.at(-1)?.y ?? 0);
  let above: Point | undefined;
  for (let i = 0; i < points.length; i += 1) {
    const below = points[isDownwards ? i : points.length - 1 - i];
    if (!below) break;
    if (below.y < y) above = below;
    else if (!above || below.y === above.y) return below.x;
    else return above.x + ((below.x - above.x) * (y - above.y)) / (below.y - above.y);
  }
  return above?.x ?? 0;
}

/** Lengths along a quarter of the oval of width 2, from its middle in front to its side. */
const QUARTER: readonly number[] = (() => {
  const lengths = [0];
  for (let i = 1; i <= STEPS; i += 1) {
    const [a, b] = [i - 1, i].map((step) => (step * Math.PI) / 2 / STEPS) as [number, number];
    lengths.push(
      (lengths[i - 1] as number) + Math.hypot(Math.sin(b) - Math.sin(a), DEPTH * (Math.cos(b) - Math.cos(a))),
    );
  }
  return lengths;
})();

/** How far out from the middle a part of the half girth is seen, for a half girth of 1; what lies beyond the side, at the side. */
function outOf(part: number): number {
  const whole = QUARTER[STEPS] as number;
  const side = 0.5 / whole;
  const length = Math.min(Math.max(part, 0) * 2, 1) * whole;
  const next = QUARTER.findIndex((each) => each >= length);
  if (next <= 0) return 0;
  const [a, b] = [QUARTER[next - 1] as number, QUARTER[next] as number];
  const angle = ((next - 1 + (length - a) / (b - a)) * Math.PI) / 2 / STEPS;
  return side * Math.sin(angle);
}
