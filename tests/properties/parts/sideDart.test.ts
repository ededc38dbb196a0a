// A bust dart that opens in the side seam: slashed and turned about the bust point, measured on the finished pieces.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  type Draft,
  draft,
  draftWhole,
  inches,
  type Measurements,
  type Piece,
  type Point,
  type Style,
  type Wedge,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { SIZED_BODIES, withShoulders } from '../../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { distanceTo, lengthOf, selfMeeting } from '../../support/judges/outline';
import { bustPointOf, ends, shuttingTurn } from '../../support/judges/sideDart';
import { BUST_DART, beforeTurning, DARTED, inSideSeam, withBustDart } from '../../support/styles/sideDart';

const COUNT = howMany({ few: 25, all: 200 });
const BODY = withShoulders(MEAN_BODY);
const ID = BUST_DART;

const errorsOf = ({ issues }: Draft): string[] =>
  issues.filter(({ severity }) => severity === 'error').map(({ code }) => code);

const frontOf = ({ pieces }: Draft): Piece => pieces.find(({ block }) => block === 'front') as Piece;

/** The dart as it is cut: the ends of its legs at the side and where they meet. */
function dartOf(made: Draft): { lower: Point; upper: Point; point: Point } {
  const dart = frontOf(made).darts.find(({ wedge }) => wedge === ID);
  const [point, lower, upper] = [dart?.inner[0], dart?.inner.at(-1), dart?.outer.at(-1)];
  if (!point || !lower || !upper) throw new Error('the front has no dart in its side seam');
  return { lower, upper, point };
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

const degreesAt = (apex: Point, a: Point, b: Point): number =>
  (Math.abs(Math.atan2(a.y - apex.y, a.x - apex.x) - Math.atan2(b.y - apex.y, b.x - apex.x)) * 180) / Math.PI;

/** A point mirrored in the line through two others. */
function mirrored(point: Point, a: Point, b: Point): Point {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy);
  const foot = { x: a.x + along * dx, y: a.y + along * dy };
  return { x: 2 * foot.x - point.x, y: 2 * foot.y - point.y };
}

const edgesOf = (piece: Piece, role: string): number =>
  lengthOf(piece.edges.find((edge) => edge.role === role)?.points ?? []);

describe('a bust dart in the side seam', () => {
  it('opens so far below the armhole along the seam, with straight legs of one length', () => {
    for (const below of [20, inches(2), 70]) {
      const made = draft(BODY, inSideSeam(below));
      expect(errorsOf(made)).toEqual([]);
      const { lower, upper, point } = dartOf(made);
      const above = frontOf(made).edges.find(({ sidePart }) => sidePart === 'aboveDart');
      expect(lengthOf(above?.points ?? [])).toBeCloseTo(below, 6);
      expect(Math.abs(apart(point, lower) - apart(point, upper))).toBeLessThan(0.05);
      expect(apart(lower, upper)).toBeGreaterThan(20);
    }
  });

  it('lies two inches below the armhole where the style does not say', () => {
    const above = frontOf(draft(BODY, inSideSeam())).edges.find(({ sidePart }) => sidePart === 'aboveDart');
    expect(lengthOf(above?.points ?? [])).toBeCloseTo(inches(2), 6);
  });

  it('lies higher by itself where a high bust point would bring it into the waist darts, and not where the style says', () => {
    const high: Measurements = { ...BODY, neckToBust: 250, neckToUnderBust: 310, underarmToWaist: 140 };
    const made = draft(high, inSideSeam());
    expect(errorsOf(made)).toEqual([]);
    const above = frontOf(made).edges.find(({ sidePart }) => sidePart === 'aboveDart');
    expect(lengthOf(above?.points ?? [])).toBeLessThan(inches(2) - 5);
    expect(broken(judge(high, inSideSeam(), made))).toEqual([]);
    expect(errorsOf(draft(high, inSideSeam(inches(2))))).toEqual(['sideDartMeets']);
  });

  it('has the angle about the bust point that it has in any other edge', () => {
    const elsewhere = draft(BODY, withBustDart({ endsAt: { edge: 'shoulder', part: 0.5 } }));
    const dart = frontOf(elsewhere).darts.find(({ wedge }) => wedge === ID);
    const apex = bustPointOf(BODY, DARTED);
    const { lower, upper } = dartOf(draft(BODY, inSideSeam()));
    const other = degreesAt(apex, dart?.inner[0] as Point, dart?.outer[0] as Point);
    expect(Math.abs(degreesAt(apex, lower, upper) - other)).toBeLessThan(0.8);
  });

  it.each([0, 10, inches(1), inches(2)])('ends %f mm short of the bust point, on its fold', (short) => {
    const made = draft(
      BODY,
      withBustDart({
        endsAt: { edge: 'side', part: 0.5 },
        lower: { from: 'bust', below: -short },
      } as Partial<Wedge>),
    );
    const { lower, upper, point } = dartOf(made);
    const apex = bustPointOf(BODY, DARTED);
    expect(apart(point, apex)).toBeCloseTo(short, 3);
    const middle = { x: (lower.x + upper.x) / 2, y: (lower.y + upper.y) / 2 };
    if (short > 0) expect(degreesAt(apex, point, middle)).toBeLessThan(0.05);
    const drill = frontOf(made).marks.find(({ kind, at }) => kind === 'drill' && apart(at, point) < 20);
    expect(apart(drill?.at as Point, point)).toBeCloseTo(inches(0.5), 3);
  });

  it('opens as wide at the side as the style sets', () => {
    for (const width of [20, 40, 60]) {
      const style = inSideSeam();
      const set: Style = {
        ...style,
        shoulders: { ...(style.shoulders as NonNullable<Style['shoulders']>), intake: { front: width } },
      };
      const { lower, upper } = dartOf(draft(BODY, set));
      expect(Math.abs(apart(lower, upper) - width)).toBeLessThan(1);
    }
  });

  it('is folded down: unfolded, the cut line across it mirrors that below it', () => {
    const made = draft(BODY, inSideSeam());
    const { lower, upper, point } = dartOf(made);
    const { cutLine } = frontOf(made);
    const middle = { x: (lower.x + upper.x) / 2, y: (lower.y + upper.y) / 2 };
    const isWithin = (p: Point): boolean =>
      degreesAt(point, p, middle) < degreesAt(point, lower, middle) - 0.2;
    const across = cutLine.filter((p) => p.x > lower.x && isWithin(p));
    expect(across.length).toBeGreaterThan(0);
    for (const p of across) {
      const isLower = apart(p, lower) < apart(p, upper);
      // The layer beside the upper leg comes to lie on the lower leg first.
      const turn =
        Math.atan2(lower.y - point.y, lower.x - point.x) - Math.atan2(upper.y - point.y, upper.x - point.x);
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
      const onLower = {
        x: point.x + (p.x - point.x) * cos - (p.y - point.y) * sin,
        y: point.y + (p.x - point.x) * sin + (p.y - point.y) * cos,
      };
      const folded = isLower ? mirrored(p, point, lower) : onLower;
      expect(distanceTo(cutLine, folded)).toBeLessThan(1);
    }
  });

  it('keeps neckline, shoulder and armhole as long as they are with the dart in the neckline', () => {
    const turned = frontOf(draft(BODY, inSideSeam()));
    const plain = frontOf(draft(BODY, beforeTurning()));
    expect(edgesOf(turned, 'armhole')).toBeCloseTo(edgesOf(plain, 'armhole'), 6);
    expect(edgesOf(turned, 'shoulder')).toBeCloseTo(edgesOf(plain, 'shoulder'), 6);
    const necks = plain.edges
      .filter(({ role }) => role === 'top')
      .reduce((sum, { points }) => sum + lengthOf(points), 0);
    expect(edgesOf(turned, 'top')).toBeCloseTo(necks, 6);
  });

  it('lets the side run straight on across the sewn dart, and the back has a mark where it closes', () => {
    const made = draft(BODY, inSideSeam());
    const front = frontOf(made);
    const [above, below] = (['aboveDart', 'belowDart'] as const).map(
      (part) => front.edges.find(({ sidePart }) => sidePart === part)?.points ?? [],
    );
    const rad = shuttingTurn(front, bustPointOf(BODY, DARTED)) ?? 0;
    const lean = ([a, b]: readonly (Point | undefined)[]): number =>
      Math.atan2((b?.y ?? 0) - (a?.y ?? 0), (b?.x ?? 0) - (a?.x ?? 0));
    const kink = lean((above ?? []).slice(0, 2)) + rad - lean((below ?? []).slice(-2));
    expect(Math.abs((kink * 180) / Math.PI)).toBeLessThan(0.5);
    const back = made.pieces.find(({ block }) => block === 'back') as Piece;
    const side = back.edges.find(({ sidePart }) => sidePart === 'aboveDart')?.points ?? [];
    const [, end] = ends(side);
    expect(back.marks.some(({ level, at }) => level === null && apart(at, end) < 1e-6)).toBe(true);
  });

  it('walks the side seam in two parts, each with its mate, and the legs of the dart with one another', () => {
    const { proof } = draft(BODY, inSideSeam());
    const rows = new Map(
      proof.seams.map(({ seam, lengthA, lengthB }) => [seam.id, [lengthA, lengthB]] as const),
    );
    for (const id of ['side-above-dart', 'side-below-dart', `front-1/dart:${ID}`]) {
      const [a = Number.NaN, b = Number.NaN] = rows.get(id) ?? [];
      expect(Math.abs(a - b), id).toBeLessThan(0.05);
    }
    expect(rows.has('side')).toBe(false);
  });

  it.each([20, inches(2), 80])(
    `keeps every bound on ${COUNT} drawn bodies, %f mm below the armhole, or is refused as too near`,
    DRAWN,
    (below) => {
      const style = inSideSeam(below);
      let sewn = 0;
      for (const [i, body] of drawBodies(COUNT, 515).map(withShoulders).entries()) {
        const made = draft(body, style);
        const findings = judge(body, style, made);
        expect(findings.length, `body ${i}: measured`).toBeGreaterThan(40);
        expect(broken(findings), `body ${i}`).toEqual([]);
        const codes = errorsOf(made);
        expect(['sideDartMeets', 'sideDartOffSeam'], `body ${i}`).toEqual(expect.arrayContaining(codes));
        sewn += codes.length === 0 ? 1 : 0;
      }
      expect(sewn / COUNT).toBeGreaterThan(below < 60 ? 0.99 : 0.6);
    },
  );

  it('is drafted on each half where left and right differ, and marks meet', () => {
    const style = inSideSeam();
    const made = draftWhole(BODY, { ...style, rightWedges: inSideSeam(70).wedges });
    expect(errorsOf(made)).toEqual([]);
    const fronts = made.pieces.filter(({ block }) => block === 'front');
    expect(fronts).toHaveLength(2);
    const above = fronts.map((piece) =>
      lengthOf(piece.edges.find(({ sidePart }) => sidePart === 'aboveDart')?.points ?? []),
    );
    expect(above.map((mm) => Math.round(mm * 10) / 10).sort()).toEqual([50.8, 70]);
    for (const piece of made.pieces) {
      expect(selfMeeting(piece.edges.flatMap(({ points }) => points.slice(0, -1)))).toBeNull();
      for (const [i, edge] of piece.edges.entries()) {
        const other = made.pieces.find(({ id }) => id === edge.mate?.piece.id);
        const mate = other?.edges[edge.mate?.edge ?? -1];
        if (!mate || edge.role !== 'seam') continue;
        expect([mate.mate?.piece.id, mate.mate?.edge], `${piece.id}/${i}`).toEqual([piece.id, i]);
        expect(Math.abs(lengthOf(edge.points) - lengthOf(mate.points)), `${piece.id}/${i}`).toBeLessThan(
          0.05,
        );
      }
    }
  });

  it('goes with a side seam that is altered, and its own alteration is refused', () => {
    const side = {
      kind: 'seam',
      seam: { kind: 'seam', pieces: [front1, back1] },
      side: 'both',
      at: [{ height: { kind: 'level', level: 'waist' }, a: 6, b: 6 }],
    } as const;
    const own = {
      kind: 'seam',
      seam: { kind: 'dart', wedge: ID },
      side: 'both',
      at: [{ height: { kind: 'level', level: 'overBust' }, a: 3, b: 3 }],
    } as const;
    const plain = draftWhole(BODY, inSideSeam());
    const made = draftWhole(BODY, inSideSeam(), null, [side, own]);
    expect(made.alterations).toEqual([
      { applied: true, code: null },
      { applied: false, code: 'dartTurned' },
    ]);
    expect(errorsOf(made)).toEqual([]);
    const foot = (drafted: Draft): Point => ends(sideBelow(frontOf(drafted)))[1];
    expect(foot(plain).x - foot(made).x).toBeCloseTo(6, 1);
    const above = frontOf(made).edges.find(({ sidePart }) => sidePart === 'aboveDart');
    expect(lengthOf(above?.points ?? [])).toBeCloseTo(inches(2), 6);
  });
});

const front1 = { kind: 'panel', block: 'front', number: 1 } as const;
const back1 = { kind: 'panel', block: 'back', number: 1 } as const;
const sideBelow = (piece: Piece): readonly Point[] =>
  piece.edges.find(({ sidePart }) => sidePart === 'belowDart')?.points ?? [];

describe('a bust dart in the side seam that cannot be', () => {
  it('is refused beside another wedge that runs up, on the back, and as a wedge that runs through', () => {
    const seam = {
      ...(NAMED_STYLES.get('princess-bodice')?.style.wedges[0] as Wedge),
      id: 'seam',
      station: 0.6,
    };
    const beside: Style = {
      ...inSideSeam(),
      wedges: [...inSideSeam().wedges, { ...seam, endsAt: { edge: 'armhole', part: 0.8 } }],
    };
    expect(errorsOf(draft(BODY, beside))).toContain('shoulderWedges');
    expect(
      errorsOf(draft(BODY, withBustDart({ block: 'back', endsAt: { edge: 'side', part: 0.5 } }))),
    ).toContain('shoulderWedges');
    const { lower: _, ...through } = DARTED.wedges.find(({ id }) => id === ID) as Wedge & { lower: unknown };
    const run = withBustDart({});
    const parted: Style = {
      ...run,
      wedges: [
        ...run.wedges.filter(({ id }) => id !== ID),
        { ...through, kind: 'through', endsAt: { edge: 'side', part: 0.5 } } as Wedge,
      ],
    };
    expect(errorsOf(draft(BODY, parted))).toContain('shoulderWedges');
  });

  it('is refused with the room there is where it lies past the end of the seam', () => {
    const { issues } = draft(BODY, inSideSeam(290));
    const found = issues.find(({ code }) => code === 'sideDartOffSeam');
    expect(found?.at.wedge).toBe(ID);
    expect(found?.values).toMatchObject({ least: 15 });
  });

  const hostile: [string, Measurements, Style][] = [
    ...[15, 60, 100, 140, 180, 300].flatMap((below) =>
      SIZED_BODIES.map(([name, body]): [string, Measurements, Style] => [
        `${name}, ${below} below`,
        body,
        inSideSeam(below),
      ]),
    ),
    ['a dart 160 mm wide', BODY, wide(160)],
    ['a bust point above the armhole', { ...BODY, neckToBust: 175, neckToUnderBust: 260 }, inSideSeam()],
    ['a bust point far below the armhole', { ...BODY, neckToBust: 330, neckToUnderBust: 380 }, inSideSeam()],
    [
      'a point far past the bust point',
      BODY,
      withBustDart({
        endsAt: { edge: 'side', part: 0.5 },
        lower: { from: 'bust', below: 400 },
      } as Partial<Wedge>),
    ],
    [
      'a point told from the hip',
      BODY,
      withBustDart({
        endsAt: { edge: 'side', part: 0.5 },
        lower: { from: 'hip', below: 0 },
      } as Partial<Wedge>),
    ],
    [
      'a raised armhole',
      BODY,
      { ...inSideSeam(), topShape: { ...DARTED.topShape, underarm: { beyond: 40, kind: 'smooth' } } },
    ],
    [
      'a deep V',
      BODY,
      { ...inSideSeam(), topShape: { ...DARTED.topShape, centreFront: { beyond: -40, kind: 'corner' } } },
    ],
    ['a laced front', BODY, { ...inSideSeam(), closure: { front: 'lacing', back: 'seam', lacingGap: 60 } }],
    ['a turned hem', BODY, { ...inSideSeam(), turnedHem: true, hemBelow: 60 }],
  ];

  it.each(hostile)('is drawn or refused, and never NaN: %s', (_, body, style) => {
    const made = draft(body, style);
    for (const piece of made.pieces) {
      const points = [
        ...piece.edges.flatMap((edge) => edge.points),
        ...piece.cutLine,
        ...piece.grain,
        ...piece.marks.map(({ at }) => at),
      ];
      expect(points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
    }
    if (errorsOf(made).length > 0) return;
    expect(frontOf(made).edges.filter(({ at, dart }) => at === 'outer' && dart)).toHaveLength(2);
    expect(broken(judge(body, style, made))).toEqual([]);
  });
});

function wide(front: number): Style {
  const style = inSideSeam();
  return {
    ...style,
    shoulders: { ...(style.shoulders as NonNullable<Style['shoulders']>), intake: { front } },
  };
}
