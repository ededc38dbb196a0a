import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, draft, type Piece, type Point, type Style, USUAL_EXTRAS } from '../../../src/engine';
import { type Cloth, OPEN_CLOTH } from '../../../src/paper/layPlan/cloth';
import { cutOnce } from '../../../src/paper/layPlan/copies';
import { isClear } from '../../../src/paper/layPlan/isClear';
import type { LayPlan, Placed } from '../../../src/paper/layPlan/plan';
import { placesOf, planAgain, sumOf } from '../../../src/paper/layPlan/planFrom';
import { type LayStart, startLay } from '../../../src/paper/layPlan/startLay';
import { faultsOf, signed } from '../../support/judges/judgeLay';

function pieces(style: Style = DEFAULT_STYLE): readonly Piece[] {
  const drafted = draft(DEMO_CLIENT.measurements, style);
  return [...drafted.pieces, ...drafted.extras];
}
const { sleeve: _, ...EXTRAS } = USUAL_EXTRAS;
/** A front on the fold, and what lies beside the panels. */
const WITH_EXTRAS: Style = {
  ...(NAMED_STYLES.get('bridal-bodice')?.style ?? DEFAULT_STYLE),
  extras: EXTRAS,
};
const CLOTH: Cloth = { ...OPEN_CLOTH, widthMm: 1120 };

const once = (cut: readonly Piece[]) => cut.map(cutOnce);

function planAfter(start: LayStart, steps: number): LayPlan {
  if (!start.ok) throw new Error(start.faults.map(({ code }) => code).join());
  for (let n = 0; n < steps; n += 1) start.work.step();
  return start.work.best();
}

/** The angle, in degrees, by which an outline is turned from its piece as drawn, or as mirrored. */
function turnOf({ piece, outline, mirrored }: Placed): number {
  const drawn = piece.cutLine.map(({ x, y }) => ({ x: mirrored ? -x : x, y }));
  const angle = (ring: readonly Point[]): number =>
    Math.atan2((ring[1] as Point).y - (ring[0] as Point).y, (ring[1] as Point).x - (ring[0] as Point).x);
  const degrees = ((angle(outline) - angle(drawn)) * 180) / Math.PI;
  return Math.round((((degrees % 360) + 360) % 360) * 1e6) / 1e6;
}

describe('a plan', () => {
  it.each([
    ['open', CLOTH],
    ['folded', { ...CLOTH, folded: true }],
    ['with nap and gap', { ...CLOTH, nap: true, gapMm: 6 }],
    ['narrow', { ...CLOTH, widthMm: 520, gapMm: 2 }],
    ['folded, with grain off by 3°', { ...CLOTH, folded: true, grainDegrees: 3 }],
  ] satisfies [string, Cloth][])('of %s cloth has no fault, at the start or later', (_, cloth) => {
    for (const style of [DEFAULT_STYLE, WITH_EXTRAS]) {
      const start = startLay(once(pieces(style)), cloth, 1);
      expect(faultsOf(planAfter(start, 0))).toEqual([]);
      const later = planAfter(start, 60);
      expect(faultsOf(later)).toEqual([]);
      expect(isClear(later)).toBe(true);
    }
  });

  it('is the same for the same seed and steps, and never longer after more', () => {
    const make = () => startLay(once(pieces()), { ...CLOTH, widthMm: 700 }, 7);
    const [one, other] = [planAfter(make(), 80), planAfter(make(), 80)];
    expect(other).toEqual(one);
    expect(one.lengthMm).toBeLessThan(planAfter(make(), 0).lengthMm);
  });

  it('is there before the search is made ready, in columns, and gets shorter by it', () => {
    for (const folded of [false, true]) {
      const start = startLay(once(pieces(WITH_EXTRAS)), { ...CLOTH, folded, gapMm: 8 }, 1);
      const atOnce = planAfter(start, 0);
      expect(faultsOf(atOnce)).toEqual([]);
      // Pieces of a column begin at one place along the cloth.
      const begins = new Set(
        atOnce.placed.map(({ outline }) => Math.round(Math.min(...outline.map(({ x }) => x)))),
      );
      expect(begins.size).toBeLessThan(atOnce.placed.length);
      expect(planAfter(start, 1).lengthMm).toBeLessThan(atOnce.lengthMm);
    }
  });

  it('lays each piece as often as it is cut, half as often on folded cloth, in mirrored pairs', () => {
    const cut = pieces(WITH_EXTRAS);
    const open = planAfter(startLay(once(cut), CLOTH, 1), 20);
    const folded = planAfter(startLay(once(cut), { ...CLOTH, folded: true }, 1), 20);
    for (const piece of cut) {
      const [onOpen, onFolded] = [open, folded].map(({ placed }) =>
        placed.filter((each) => each.piece === piece),
      );
      expect(onOpen).toHaveLength(piece.cut.count);
      expect(onFolded).toHaveLength(Math.ceil(piece.cut.count / 2));
      expect(onOpen?.map(({ mirrored }) => mirrored)).toEqual(onOpen?.map((_, i) => i % 2 === 1));
      const whole = (piece.cut.onFold ? 2 : 1) * Math.abs(signed(piece.cutLine));
      for (const { outline, mirrored } of onOpen ?? []) {
        expect(Math.abs(signed(outline))).toBeCloseTo(whole, 6);
        if (!piece.cut.onFold)
          expect(signed(outline) * (mirrored ? -1 : 1)).toBeCloseTo(signed(piece.cutLine), 6);
      }
      expect(onFolded?.every(({ onFold }) => onFold === piece.cut.onFold)).toBe(true);
    }
  });

  it('lays the grain along the cloth, heads first with a nap, and no farther off than is allowed', () => {
    const cut = pieces();
    const upright = (plan: LayPlan) => plan.placed.map((each) => (turnOf(each) + 90) % 360);
    for (const turn of upright(planAfter(startLay(once(cut), { ...CLOTH, nap: true }, 1), 30)))
      expect(turn).toBeCloseTo(0, 5);
    for (const turn of upright(planAfter(startLay(once(cut), CLOTH, 1), 30)))
      expect(turn % 180).toBeCloseTo(0, 5);
    const off = planAfter(
      startLay(once(cut), { ...CLOTH, nap: true, grainDegrees: 3, widthMm: 700 }, 1),
      200,
    );
    const turns = upright(off).map((turn) => Math.min(turn, 360 - turn));
    expect(Math.max(...turns)).toBeLessThanOrEqual(3 + 1e-6);
    expect(Math.max(...turns)).toBeGreaterThan(0);
  });

  it('lays what is cut on the bias at 45°', () => {
    const plan = planAfter(
      startLay(
        pieces(WITH_EXTRAS).map((piece) => ({ ...cutOnce(piece), bias: piece.kind === 'strap' })),
        CLOTH,
        1,
      ),
      20,
    );
    const straps = plan.placed.filter(({ piece }) => piece.kind === 'strap');
    expect(straps.length).toBeGreaterThan(0);
    for (const strap of straps) expect(turnOf(strap) % 90).toBeCloseTo(45, 5);
    expect(faultsOf(plan)).toEqual([]);
  });

  it('cuts each piece once for each layer, in pairs', () => {
    const cut = pieces(WITH_EXTRAS).map((piece) => ({ ...cutOnce(piece), layers: 2 }));
    for (const folded of [false, true]) {
      const once = planAfter(
        startLay(
          cut.map(({ piece }) => cutOnce(piece)),
          { ...CLOTH, folded },
          1,
        ),
        0,
      );
      const twice = planAfter(startLay(cut, { ...CLOTH, folded }, 1), 0);
      expect(faultsOf(twice)).toEqual([]);
      expect(twice.placed).toHaveLength(2 * once.placed.length);
      const mirrored = (plan: LayPlan) => plan.placed.filter((each) => each.mirrored).length;
      if (!folded) expect(mirrored(twice)).toBe(2 * mirrored(once));
    }
  });

  it('is made again from where its outlines lie, and not from other pieces', () => {
    const cut = once(pieces(WITH_EXTRAS));
    const cloth = { ...CLOTH, folded: true, grainDegrees: 2, gapMm: 6, shrinkAlong: 0.03 };
    const plan = planAfter(startLay(cut, cloth, 3), 30);
    const again = planAgain(cut, cloth, JSON.parse(JSON.stringify(placesOf(plan))));
    expect(again?.lengthMm).toBeCloseTo(plan.lengthMm, 6);
    expect(again && faultsOf(again)).toEqual([]);
    for (const [i, { outline }] of (again?.placed ?? []).entries())
      for (const [k, { x, y }] of outline.entries()) {
        expect(x).toBeCloseTo(plan.placed[i]?.outline[k]?.x ?? 0, 6);
        expect(y).toBeCloseTo(plan.placed[i]?.outline[k]?.y ?? 0, 6);
      }
    expect(planAgain(cut.slice(1), cloth, placesOf(plan))).toBeNull();
    expect(planAgain(cut, { ...cloth, gapMm: 40 }, placesOf(plan))).toBeNull();
    const other = pieces({ ...WITH_EXTRAS, hemBelow: WITH_EXTRAS.hemBelow + 1 });
    expect(sumOf(once(other))).not.toBe(sumOf(cut));
    expect(sumOf(once(pieces(WITH_EXTRAS)))).toBe(sumOf(cut));
  });

  it('refuses a piece on the bias that is cut on the fold of folded cloth', () => {
    const cut = pieces(WITH_EXTRAS).map((piece) => ({ ...cutOnce(piece), bias: piece.cut.onFold }));
    const start = startLay(cut, { ...CLOTH, folded: true }, 1);
    expect(start).toMatchObject({ ok: false });
    expect(!start.ok && start.faults.every(({ code }) => code === 'foldOnBias')).toBe(true);
    expect(faultsOf(planAfter(startLay(cut, CLOTH, 1), 4))).toEqual([]);
  });

  it('lays pieces larger for what the cloth will shrink by', () => {
    const cut = pieces();
    const plan = planAfter(
      startLay(once(cut), { ...CLOTH, nap: true, shrinkAlong: 0.05, shrinkAcross: 0.02 }, 1),
      5,
    );
    const sizeOf = (ring: readonly Point[], of: 'x' | 'y'): number =>
      Math.max(...ring.map((point) => point[of])) - Math.min(...ring.map((point) => point[of]));
    for (const { piece, outline } of plan.placed) {
      expect(sizeOf(outline, 'x') * 0.95).toBeCloseTo(sizeOf(piece.cutLine, 'y'), 6);
      expect(sizeOf(outline, 'y') * 0.98).toBeCloseTo(sizeOf(piece.cutLine, 'x'), 6);
    }
  });

  it('names every piece that is wider than the cloth, with what it needs', () => {
    const start = startLay(once(pieces()), { ...CLOTH, widthMm: 120 }, 1);
    const widest = pieces().filter(
      ({ cutLine }) => Math.max(...cutLine.map(({ x }) => x)) - Math.min(...cutLine.map(({ x }) => x)) > 120,
    );
    expect(widest.length).toBeGreaterThan(0);
    expect(start).toMatchObject({
      ok: false,
      faults: widest.map(({ id }) => ({ code: 'widerThanCloth', piece: { id } })),
    });
  });

  it('of nothing has no length', () => {
    expect(planAfter(startLay([], CLOTH, 1), 3)).toMatchObject({ lengthMm: 0, density: 0, placed: [] });
  });

  it('of every ready style is no longer than rows by hand', () => {
    for (const [name, { style }] of NAMED_STYLES) {
      const plan = planAfter(startLay(once(pieces(style)), { ...CLOTH, gapMm: 10 }, 1), 40);
      expect(faultsOf(plan), name).toEqual([]);
      expect(plan.lengthMm, name).toBeLessThanOrEqual(rowsByHand(plan.placed, 1120, 10) + 1e-6);
    }
  });
});

/** The length of the boxes of outlines in rows across a cloth, the longest first, a gap between any two. mm */
function rowsByHand(placed: readonly Placed[], width: number, gap: number): number {
  const boxes = placed
    .map(({ outline }) => ({
      length: Math.max(...outline.map(({ x }) => x)) - Math.min(...outline.map(({ x }) => x)),
      width: Math.max(...outline.map(({ y }) => y)) - Math.min(...outline.map(({ y }) => y)),
    }))
    .sort((a, b) => b.length - a.length);
  const rows: { left: number; readonly length: number }[] = [];
  for (const box of boxes) {
    const row = rows.find(({ left }) => left >= box.width + gap);
    if (row) row.left -= box.width + gap;
    else rows.push({ left: width - box.width, length: box.length });
  }
  return rows.reduce((sum, { length }) => sum + length, 0) + gap * (rows.length - 1);
}

describe('the check of a plan', () => {
  const plan = planAfter(startLay(once(pieces()), { ...CLOTH, gapMm: 4 }, 1), 10);
  const movedBy = (i: number, dx: number, dy: number): LayPlan => ({
    ...plan,
    placed: plan.placed.map((each, n) =>
      n === i ? { ...each, outline: each.outline.map(({ x, y }) => ({ x: x + dx, y: y + dy })) } : each,
    ),
  });
  const onto = (i: number, j: number): LayPlan => {
    const [a, b] = [plan.placed[i] as Placed, plan.placed[j] as Placed];
    return { ...plan, placed: [a, { ...b, outline: a.outline }] };
  };

  it('finds an outline past an edge, on another, inside another, or too near', () => {
    expect(isClear(plan)).toBe(true);
    expect(isClear(movedBy(0, -2000, 0))).toBe(false);
    expect(isClear(movedBy(0, 0, 2000))).toBe(false);
    expect(isClear(onto(0, 1))).toBe(false);
    const large = plan.placed[0] as Placed;
    const [cx, cy] = (['x', 'y'] as const).map(
      (of) => large.outline.reduce((sum, point) => sum + point[of], 0) / large.outline.length,
    ) as [number, number];
    const small = {
      ...large,
      outline: large.outline.map(({ x, y }) => ({ x: cx + (x - cx) / 50, y: cy + (y - cy) / 50 })),
    };
    expect(isClear({ ...plan, placed: [large, small] })).toBe(false);
    expect(isClear({ ...plan, cloth: { ...plan.cloth, gapMm: 60 } })).toBe(false);
  });
});
