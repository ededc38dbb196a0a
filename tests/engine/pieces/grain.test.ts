// The grain line is what the maker lays along the warp: it must lie on cloth, be long enough to lay true, and show how the
// panel hangs from the waist.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { balancedWedge, DEFAULT_STYLE, draft, type Piece, type Style, withPoints } from '../../../src/engine';
import { pointsDown } from '../../../src/engine/geometry/polyline';
import { smoothLine } from '../../../src/engine/geometry/smoothLine';
import type { Panel } from '../../../src/engine/panels/panel';
import type { TruedEdge } from '../../../src/engine/panels/truing';
import { grainOf } from '../../../src/engine/pieces/grain';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { distanceTo, holds, ringOf } from '../../support/judges/outline';

const heights = (piece: Piece): number[] => ringOf(piece).map(({ y }) => y);

/** The xs, growing, at which a row of points crosses a height. */
function crossings(ring: readonly { x: number; y: number }[], y: number): number[] {
  return ring
    .flatMap((p, i) => {
      const q = ring[(i + 1) % ring.length];
      return q && p.y < y !== q.y < y ? [p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x)] : [];
    })
    .sort((a, b) => a - b);
}

describe('the grain line', () => {
  it('is plumb through the middle of each panel at the waist, over two thirds of its height', () => {
    for (const body of drawBodies(30, 71)) {
      const { pieces, levels, issues } = draft(body, DEFAULT_STYLE);
      if (issues.some(({ severity }) => severity === 'error')) continue;
      const waist = levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
      for (const piece of pieces) {
        const [left, right] = crossings(ringOf(piece), waist) as [number, number];
        const [top, foot] = piece.grain;
        expect(top.x).toBe(foot.x);
        expect(top.x).toBeCloseTo((left + right) / 2, 1);
        const height = Math.max(...heights(piece)) - Math.min(...heights(piece));
        expect(foot.y - top.y).toBeGreaterThan((2 / 3) * height);
      }
    }
  });

  it('of a panel that ends above the waist, or begins below it, stands at the end nearest to it', () => {
    const upright = (hemBelow: number): Style => ({ ...DEFAULT_STYLE, hemBelow });
    for (const piece of draft(MEAN_BODY, upright(-40)).pieces) {
      const least = Math.min(...heights(piece));
      const most = Math.max(...heights(piece));
      // An eighth of the height clear of hem and top edge, or nearly.
      const at = most - 0.12 * (most - least);
      const [left, right] = crossings(ringOf(piece), at) as [number, number];
      expect(Math.abs(piece.grain[0].x - (left + right) / 2)).toBeLessThan(1);
    }
  });

  it('lies on the wider side of a dart, never across its stitching', () => {
    const eye = withPoints(
      { ...balancedWedge('eye', 'front', 0.62, 1), sizing: 'manual', intake: { underBust: 8, waist: 16 } },
      { upper: { from: 'bust', below: 20 }, lower: { from: 'waist', below: 70 } },
    );
    const style: Style = {
      ...DEFAULT_STYLE,
      wedges: [...DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-side'), eye],
    };
    const { pieces, levels } = draft(MEAN_BODY, style);
    const piece = pieces.find(({ darts }) => darts.length > 0) as Piece;
    const [dart] = piece.darts;
    const waist = levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
    const ends = [...(dart?.inner ?? []), ...[...(dart?.outer ?? [])].reverse()];
    const [left, inner, outer, right] = [...crossings(ringOf(piece), waist), ...crossings(ends, waist)].sort(
      (a, b) => a - b,
    ) as [number, number, number, number];
    const middle = inner - left > right - outer ? (left + inner) / 2 : (outer + right) / 2;
    expect(piece.grain[0].x).toBeCloseTo(middle, 1);
    for (const point of piece.grain) expect(distanceTo(ends, point)).toBeGreaterThan(4);
  });

  it('keeps on the cloth in every named style, clear of edges and darts', () => {
    for (const { style } of NAMED_STYLES.values())
      for (const piece of draft(MEAN_BODY, style).pieces) {
        const [top, foot] = piece.grain;
        for (let part = 0; part <= 1; part += 0.125) {
          const y = top.y + (foot.y - top.y) * part;
          const xs = [
            ...crossings(ringOf(piece), y),
            ...piece.darts
              .filter(({ open }) => !open)
              .flatMap(({ inner, outer }) => crossings([...inner, ...[...outer].reverse()], y)),
          ].sort((a, b) => a - b);
          const before = xs.filter((x) => x < top.x);
          expect(before.length % 2, piece.id).toBe(1);
          for (const x of xs) expect(Math.abs(x - top.x), piece.id).toBeGreaterThan(3.5);
        }
      }
  });

  it('stays on a panel whose top edge or hem dips between its seams', () => {
    const dipped = (edge: 'topShape' | 'hemShape', beyond: number): Style => ({
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.filter(({ station }) => station === 0),
      [edge]: { ...DEFAULT_STYLE[edge], sideFront: { beyond, kind: 'corner' } },
    });
    const styles = [-60, -90, -120].flatMap((by) => [dipped('topShape', by), dipped('hemShape', by)]);
    for (const style of styles)
      for (const piece of draft(MEAN_BODY, { ...style, hemBelow: 60 }).pieces) {
        const [top, foot] = piece.grain;
        expect(foot.y - top.y).toBeGreaterThan(30);
        for (let part = 0; part <= 1; part += 0.125) {
          const point = { x: top.x, y: top.y + (foot.y - top.y) * part };
          expect(holds(ringOf(piece), point, 0), piece.id).toBe(true);
          expect(distanceTo(ringOf(piece), point), piece.id).toBeGreaterThan(2);
        }
      }
  });

  it('stands where the panel has room when it leans out of it at the waist', () => {
    // Upright above the waist, then away to the side: through the middle of the waist there is room for a few mm.
    const edge = (x: number) =>
      smoothLine([0, 90, 110, 200], [x, x, x + 50, x + 160], { start: 'free', end: 'free' });
    const trued = { top: { y: 0 }, hem: { y: 200 } } as TruedEdge;
    const panel = { inner: edge(0), outer: edge(30), darts: [] as Panel['darts'] } as Panel;
    const outline = [...pointsDown(panel.inner, 0, 200), ...pointsDown(panel.outer, 0, 200).reverse()];
    const [top, foot] = grainOf(panel, trued, trued, 108, outline);
    expect(foot.y - top.y).toBeGreaterThan(60);
    for (const point of [top, foot]) expect(holds(outline, point, 0)).toBe(true);
  });

  it('of a panel that leans ends 4 mm short of its edges', () => {
    // 40 wide, leaning out 4 in 5 from x = 0 at the waist: plumb through x = 20, the line meets the outer edge 25 above it
    // and the inner one 25 below; 4 mm clear of them it runs 20 either way.
    const edge = (x: number) => smoothLine([0, 200], [x - 80, x + 80], { start: 'free', end: 'free' });
    const trued = { top: { y: 0 }, hem: { y: 200 } } as TruedEdge;
    const panel = { inner: edge(0), outer: edge(40), darts: [] as Panel['darts'] } as Panel;
    const outline = [
      { x: -80, y: 0 },
      { x: 80, y: 200 },
      { x: 120, y: 200 },
      { x: -40, y: 0 },
    ];
    const [top, foot] = grainOf(panel, trued, trued, 100, outline);
    expect([top.x, foot.x]).toEqual([20, 20]);
    expect(top.y).toBeGreaterThanOrEqual(80);
    expect(foot.y).toBeLessThanOrEqual(120);
    expect(foot.y - top.y).toBeGreaterThan(32);
  });
});
