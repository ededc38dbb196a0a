import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  draft,
  draftWhole,
  edgesAt,
  innerEdge,
  outerEdge,
  type Piece,
  type Point,
  type Style,
  USUAL_SHOULDERS,
} from '../../../src/engine';
import { facingShape } from '../../../src/engine/extras/facing';
import type { LacedEdge } from '../../../src/engine/extras/lacedEdge';
import { modestyShape } from '../../../src/engine/extras/modesty';
import { uprightInside } from '../../../src/engine/geometry/uprightInside';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { howMany } from '../../support/howMany';
import { alongTo, areaSeen, lengthOf, ringOf } from '../../support/judges/outline';

const ALL: Style = {
  ...DEFAULT_STYLE,
  extras: { modesty: { overlap: 50 }, facing: { width: 45 }, straps: { length: 400, width: 25 } },
};

const extraOf = (id: string, style: Style): Piece => {
  const piece = draft(MEAN_BODY, style).extras.find((each) => each.id === id);
  if (!piece) throw new Error(`no ${id}`);
  return piece;
};

const near = (mm: number): number => Math.round(mm * 1e6) / 1e6;

const span = (piece: Piece, along: 'x' | 'y'): number => {
  const places = ringOf(piece).map((point) => point[along]);
  return Math.max(...places) - Math.min(...places);
};

describe('pieces beside the panels', () => {
  it('are none where none is asked for, and those of the laced centre where it is laced', () => {
    const ids = (style: Style) => draft(MEAN_BODY, style).extras.map(({ id }) => id);
    expect(ids(DEFAULT_STYLE)).toEqual([]);
    expect(ids(ALL)).toEqual(['back-modesty', 'back-facing', 'strap']);
    const closed = (front: 'seam' | 'lacing', back: 'zip' | 'lacing'): Style => ({
      ...ALL,
      wedges: ALL.wedges.filter(({ station }) => station > -1),
      closure: { front, back, lacingGap: 40 },
    });
    expect(ids(closed('seam', 'zip'))).toEqual(['strap']);
    expect(ids(closed('lacing', 'zip'))).toEqual(['front-modesty', 'front-facing', 'strap']);
  });

  it('measure what was asked: gap and two overlaps, facing width, strap doubled; as long as the laced edge', () => {
    const back = draft(MEAN_BODY, ALL).pieces.find(({ id }) => id === 'back-1');
    const laced = lengthOf(back?.edges[0]?.points ?? []);
    const modesty = extraOf('back-modesty', ALL);
    // lacing gap of the default style, 2 in, and the overlap of 50 mm on either side
    expect(span(modesty, 'x')).toBeCloseTo(50.8 + 100, 9);
    const hem = modesty.edges[1]?.points.map(({ x, y }) => [x, y] as const) ?? [];
    const top = modesty.edges[3]?.points.map(({ x, y }) => [x, y] as const) ?? [];
    // Between the laced edges the ends run straight across, as far apart as those are long.
    for (const x of [50, 50 + 50.8]) {
      const [foot, head] = [hem, top].map((row) => row.find(([at]) => Math.abs(at - x) < 1e-9)?.[1]);
      expect((foot ?? 0) - (head ?? 0)).toBeCloseTo(laced, 9);
    }
    const facing = extraOf('back-facing', ALL);
    expect(facing.edges[0]?.points).toEqual(back?.edges[0]?.points);
    expect(span(facing, 'x')).toBeCloseTo(45, 9);
    const strap = extraOf('strap', ALL);
    expect([span(strap, 'x'), span(strap, 'y')]).toEqual([50, 400]);
    expect(Math.abs(areaSeen(ringOf(strap)))).toBeCloseTo(50 * 400, 9);
    expect(draft(MEAN_BODY, ALL).extras.map(({ cut }) => cut)).toEqual([
      { count: 1, onFold: false },
      { count: 2, onFold: false },
      { count: 2, onFold: false },
    ]);
  });

  it('carry the balance marks of the laced edge: a facing on it and square across, a modesty panel as far down', () => {
    const back = draft(MEAN_BODY, ALL).pieces.find(({ id }) => id === 'back-1') as Piece;
    const on = (piece: Piece, edge: number) => piece.marks.filter((mark) => mark.edge === edge);
    const [facing, modesty] = [extraOf('back-facing', ALL), extraOf('back-modesty', ALL)];
    expect(on(back, 0).length).toBeGreaterThan(1);
    expect(on(facing, 0)).toEqual(on(back, 0));
    // The default style's back is laced along a straight, upright edge.
    expect(on(facing, 2).map(({ level, at }) => [level, near(at.x), near(at.y)])).toEqual(
      on(back, 0).map(({ level, at }) => [level, 45, near(at.y)]),
    );
    const down = (points: readonly Point[]) =>
      (points[0]?.y ?? 0) < (points.at(-1)?.y ?? 0) ? points : [...points].reverse();
    const begins = back.edges[0]?.points[0]?.y ?? 0;
    for (const edge of [0, 2])
      expect(on(modesty, edge).map(({ level, at }) => [level, Math.round((at.y - begins) * 1e6)])).toEqual(
        on(back, 0).map(({ level, at }) => [
          level,
          Math.round(alongTo(down(back.edges[0]?.points ?? []), at).along * 1e6),
        ]),
      );
  });

  it('that have no room are left out, and the field says so', () => {
    // A deep point at centre back, from which the hem rises so fast that it would meet the top edge.
    const steep: Style = {
      ...ALL,
      hemShape: {
        ...ALL.hemShape,
        centreBack: { beyond: 150, kind: 'corner' },
        sideBack: { beyond: -120, kind: 'corner' },
      },
      extras: { facing: { width: 200 } },
    };
    const made = draft(MEAN_BODY, steep);
    expect(made.extras).toEqual([]);
    expect(made.issues.filter(({ code }) => code === 'extraHasNoRoom')).toMatchObject([
      { severity: 'warn', at: { field: 'extras.facing.width', block: 'back' } },
    ]);
  });

  it('are no part of the proof, and change nothing of the panels', () => {
    const [plain, withAll] = [draft(MEAN_BODY, DEFAULT_STYLE), draft(MEAN_BODY, ALL)];
    expect({ ...withAll, extras: [] }).toEqual(plain);
  });

  it('that cannot be cut are refused at their field', () => {
    const made = draft(MEAN_BODY, {
      ...ALL,
      extras: { modesty: { overlap: -1 }, facing: { width: Number.NaN }, straps: { length: 20, width: 25 } },
    });
    expect(made.issues.map(({ code, at }) => [code, at.field])).toEqual([
      ['styleOutOfRange', 'extras.modesty.overlap'],
      ['styleOutOfRange', 'extras.facing.width'],
      ['styleOutOfRange', 'extras.straps.length'],
    ]);
    expect(made.extras).toEqual([]);
  });

  it('are closed, turn the same way as panels and lie within their cut line, on drawn bodies', () => {
    for (const body of drawBodies(howMany({ few: 30, all: 200 }), 12)) {
      const { extras, pieces } = draft(body, ALL);
      const way = Math.sign(areaSeen(ringOf(pieces[0] as Piece)));
      expect(extras).toHaveLength(3);
      for (const piece of extras) {
        expect(Math.sign(areaSeen(ringOf(piece)))).toBe(way);
        for (const [i, { points }] of piece.edges.entries())
          expect(points.at(-1)).toEqual(piece.edges[(i + 1) % 4]?.points[0]);
        expect(Math.abs(areaSeen(piece.cutLine))).toBeGreaterThan(Math.abs(areaSeen(ringOf(piece))));
      }
    }
  });
});

describe('what lies behind a laced edge', () => {
  const at = (x: number, y: number): Point => ({ x, y });
  /** Laced straight down for 100 mm. */
  const laced = (top: readonly Point[], hem: readonly Point[]): LacedEdge => ({
    block: 'back',
    centre: [at(0, 0), at(0, 100)],
    top: [{ role: 'top', points: [at(0, 0), ...top] }],
    hem: [{ role: 'hem', points: [at(0, 100), ...hem] }],
    marks: [],
  });
  const level = laced([at(500, 0)], [at(500, 100)]);

  it('has the allowances of the edges it lies behind', () => {
    const style: Style = { ...ALL, allowances: { seam: 10, side: 25, top: 3, hem: 7, centre: 20 } };
    const allowed = (id: string) => extraOf(id, style).edges.map(({ role, allowance }) => [role, allowance]);
    expect(allowed('back-facing')).toEqual([
      ['centre', 20],
      ['hem', 7],
      ['seam', 10],
      ['top', 3],
    ]);
    expect(allowed('back-modesty')).toEqual([
      ['seam', 10],
      ['hem', 7],
      ['seam', 10],
      ['top', 3],
    ]);
  });

  it('is no modesty panel where top edge and hem meet under either side, or an edge turns back before the overlap ends', () => {
    expect(modestyShape(level, level, 40, 50)).not.toBeNull();
    const falling = laced([at(100, 300)], [at(500, 100)]);
    expect(modestyShape(falling, level, 40, 50)).toBeNull();
    expect(modestyShape(level, falling, 40, 50)).toBeNull();
    const back = laced([at(20, -5), at(15, -20), at(500, -20)], [at(500, 100)]);
    expect(modestyShape(level, back, 40, 50)).toBeNull();
    expect(modestyShape(level, laced([at(20, 0)], [at(500, 100)]), 40, 50)).toBeNull();
  });

  it('is cut for each half of a body that differs: each its own facing, one modesty panel for both', () => {
    const { extras } = draftWhole(MEAN_BODY, ALL, { leftShare: { waist: 0.53 }, rightLower: {} });
    expect(extras.map(({ id }) => id)).toEqual([
      'back-modesty',
      'left-back-facing',
      'right-back-facing',
      'strap',
    ]);
    for (const piece of extras) expect(outerEdge(piece).role).toBe('seam');
  });

  it('knows its inner edge by its role, however many edges lie at its foot', () => {
    for (const piece of draft(MEAN_BODY, ALL).extras) {
      expect(lengthOf(innerEdge(piece).points), piece.id).toBeGreaterThan(100);
      expect(lengthOf(outerEdge(piece).points), piece.id).toBeGreaterThan(100);
    }
  });

  it('is a facing along every run of an edge up to its width', () => {
    const shape = facingShape(
      {
        ...level,
        top: [
          { role: 'top', points: [at(0, 0), at(30, 0)] },
          { role: 'shoulder', points: [at(30, 0), at(500, 0)] },
        ],
      },
      50,
    );
    expect(shape?.outline.filter((run) => run.at === 'top')).toEqual([
      { at: 'top', role: 'shoulder', points: [at(50, 0), at(30, 0)] },
      { at: 'top', role: 'top', points: [at(30, 0), at(0, 0)] },
    ]);
  });

  it('has its grain where it keeps clear of the edges, unless the line is much shorter there', () => {
    const withFoot = (y: number) => [at(0, 0), at(0, 100), at(100, 100), at(100, y), at(10, y), at(10, 0)];
    const rounded = (y: number) => uprightInside(withFoot(y)).map((end) => [near(end.x), near(end.y)]);
    expect(rounded(30)).toEqual([
      [50, 38.4],
      [50, 91.6],
    ]);
    expect(rounded(50)).toEqual([
      [near(100 / 24), 12],
      [near(100 / 24), 88],
    ]);
  });
});

describe('allowances, warnings and halves of what lies behind a lacing', () => {
  /** One seam over the bust and one behind, laced in front along an upright edge. */
  const frontLaced: Style = {
    ...DEFAULT_STYLE,
    wedges: DEFAULT_STYLE.wedges.filter(({ id }) => id === 'front-bust' || id === 'back-centre'),
    closure: { front: 'lacing', back: 'seam', lacingGap: 40 },
  };

  it('a facing that reaches the shoulder has a seam’s allowance there, as the shoulder it is sewn to', () => {
    const style: Style = {
      ...frontLaced,
      allowances: { seam: 11, side: 25, top: 3, hem: 7, centre: 20 },
      shoulders: USUAL_SHOULDERS,
      extras: { facing: { width: 110 } },
    };
    const { extras, pieces } = draft({ ...MEAN_BODY, acrossShoulder: 380 }, style);
    const facing = extras.find(({ id }) => id === 'front-facing');
    const panel = pieces.find(({ id }) => id === 'front-1');
    for (const piece of [facing, panel])
      expect(
        piece?.edges.filter(({ role }) => role === 'shoulder').map(({ allowance }) => allowance),
      ).toEqual([11]);
  });

  it('a modesty panel behind a curved edge is marked as far down as the tape runs along that edge', () => {
    const style: Style = {
      ...DEFAULT_STYLE,
      closure: { front: 'lacing', back: 'seam', lacingGap: 40 },
      extras: { modesty: { overlap: 40 } },
    };
    const { extras, pieces } = draft(MEAN_BODY, style);
    const panel = pieces.find(({ id }) => id === 'front-1') as Piece;
    const modesty = extras.find(({ id }) => id === 'front-modesty') as Piece;
    const edge = panel.edges[0]?.points ?? [];
    // Where the centre wedge takes most the edge is a hair longer than it is deep: by a mark's width at the lowest.
    const down = panel.marks.filter((mark) => mark.edge === 0).map(({ at }) => alongTo(edge, at).along);
    const depths = panel.marks.filter((mark) => mark.edge === 0).map(({ at }) => at.y - (edge[0]?.y ?? 0));
    expect((down.at(-1) ?? 0) - (depths.at(-1) ?? 0)).toBeGreaterThan(0.2);
    for (const side of [0, 2]) {
      const marks = modesty.marks.filter((mark) => mark.edge === side);
      expect(marks).toHaveLength(down.length);
      for (const [i, { at }] of marks.entries())
        expect(at.y - (edge[0]?.y ?? 0)).toBeCloseTo(down[i] ?? Number.NaN, 6);
    }
  });

  it('a facing whose turned hem cannot lie on its seams says so, by the name of its piece', () => {
    // Square to centre front it dips 60 mm, and bends up again within its 75 mm of allowance; 13 mm lie over the bend.
    const deep: Style = {
      ...frontLaced,
      turnedHem: true,
      allowances: { ...frontLaced.allowances, hem: 75 },
      hemShape: { ...frontLaced.hemShape, centreFront: { beyond: 60, kind: 'smooth' } },
      extras: { facing: { width: 60 } },
    };
    const said = (style: Style) =>
      draft(MEAN_BODY, style)
        .issues.filter(({ code, at }) => code === 'hemTurnsShort' && at.piece?.kind === 'facing')
        .map(({ severity, at }) => [severity, at.block, at.piece?.id]);
    expect(said(deep)).toEqual([['warn', 'front', 'front-facing']]);
    expect(said({ ...deep, hemShape: frontLaced.hemShape })).toEqual([]);
  });

  it('a modesty panel lies with her right side under her right, wherever it is laced', () => {
    // The left half is the slimmer one, so that a hem that rises as much to the bust line rises faster there.
    const corner = { beyond: -60, kind: 'corner' } as const;
    const style: Style = {
      ...frontLaced,
      closure: { front: 'lacing', back: 'lacing', lacingGap: 40 },
      hemShape: { ...frontLaced.hemShape, bustLine: corner, sideBack: corner },
      extras: { modesty: { overlap: 30 } },
    };
    const made = draftWhole(MEAN_BODY, style, { leftShare: { waist: 0.46, hip: 0.46 }, rightLower: {} });
    for (const [block, onLeft, onRight] of [
      ['front', 'right', 'left'],
      ['back', 'left', 'right'],
    ] as const) {
      const modesty = made.extras.find(({ id }) => id === `${block}-modesty`) as Piece;
      // Her laced edges are upright: the hem 30 mm from one is as much higher than at its foot as on the panel it lies under.
      const rise = (side: 'left' | 'right'): number => {
        const panel = made.halves?.[side].pieces.find(({ id }) => id === `${block}-1`) as Piece;
        const hem = edgesAt(panel, 'hem').flatMap(({ points }) => points);
        return heightAt(hem, 30) - (innerEdge(panel).points.at(-1)?.y ?? 0);
      };
      const hem = modesty.edges[1]?.points ?? [];
      const foot = (x: number): number => heightAt(hem, x);
      expect(Math.abs(rise('left') - rise('right')), block).toBeGreaterThan(1);
      expect(foot(0) - foot(30), block).toBeCloseTo(rise(onLeft), 6);
      expect(foot(100) - foot(70), block).toBeCloseTo(rise(onRight), 6);
    }
  });

  it('a facing that has no room in the slimmer half only is left out there, told of with that half, and cut in the other', () => {
    // From a deep point the hem rises by 270 mm to the side front: within a facing's width only where that is near.
    const style: Style = {
      ...frontLaced,
      hemShape: {
        ...frontLaced.hemShape,
        centreFront: { beyond: 150, kind: 'corner' },
        sideFront: { beyond: -120, kind: 'corner' },
      },
      extras: { facing: { width: 140 } },
    };
    for (const [slimmer, other, share] of [
      ['left', 'right', 0.46],
      ['right', 'left', 0.54],
    ] as const) {
      const leftShare = { bust: share, waist: share, hip: share };
      const { extras, issues } = draftWhole(MEAN_BODY, style, { leftShare, rightLower: {} });
      expect(extras.map(({ id }) => id)).toEqual([`${other}-front-facing`]);
      expect(issues.filter(({ code }) => code === 'extraHasNoRoom').map(({ at }) => at)).toEqual([
        { field: 'extras.facing.width', block: 'front', side: slimmer },
      ]);
    }
  });
});

/** Height of a row of points that grows in x, where it passes `x`. */
function heightAt(points: readonly Point[], x: number): number {
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (a.x <= x && x <= b.x && a.x < b.x) return a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
  }
  return Number.NaN;
}
