// Top edge and hem through their nodes: heights where they were asked, corners that keep their turn, and no kink elsewhere.

import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  type EdgeShape,
  LEVEL_EDGE,
  type Style,
  xAt,
} from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { distanceTo, ringOf } from '../../support/judges/outline';

const DEGREES = 180 / Math.PI;

const shaped = (shape: Partial<EdgeShape>, more: Partial<Style> = {}): Draft =>
  draft(MEAN_BODY, { ...DEFAULT_STYLE, topShape: { ...LEVEL_EDGE, ...shape }, ...more });

const smooth = (beyond: number) => ({ beyond, kind: 'smooth' }) as const;
const corner = (beyond: number) => ({ beyond, kind: 'corner' }) as const;

/** Heights of the ends of the top edges above the level top edge, by piece: towards the centre, towards the side. */
function endsAbove(made: Draft, piece: string): [number, number] {
  const top = made.pieces.find(({ id }) => id === piece)?.edges.find(({ role }) => role === 'top');
  const level = made.span?.top ?? Number.NaN;
  const [side, centre] = [top?.points[0]?.y ?? Number.NaN, top?.points.at(-1)?.y ?? Number.NaN];
  return [level - centre, level - side];
}

describe('nodes', () => {
  const made = shaped({
    centreFront: corner(-10),
    bustLine: smooth(30),
    underarm: smooth(5),
    centreBack: smooth(40),
  });

  it('are met at centre front, at a seam on the bust line, at the side and at centre back', () => {
    // A seam's end is the mean of both mates, half of what they differed by from either; the centre edge leans by tenths of a mm.
    const side = made.proof.seams.find(({ seam }) => seam.id === 'side');
    const moved = 0.5 + Math.abs(side?.lengthDifference ?? 0) / 2;
    expect(endsAbove(made, 'front-1')[0]).toBeCloseTo(-10, 0);
    expect(endsAbove(made, 'front-1')[1]).toBeCloseTo(30, 0);
    expect(endsAbove(made, 'front-2')[0]).toBeCloseTo(30, 0);
    for (const panel of ['front-3', 'back-3'])
      expect(Math.abs((endsAbove(made, panel)[1] ?? Number.NaN) - 5)).toBeLessThan(moved);
    expect(endsAbove(made, 'back-1')[0]).toBeCloseTo(40, 0);
  });

  it('are reported where the finished edges pass them', () => {
    const at = (name: string) => made.nodes.find((node) => node.edge === 'top' && node.name === name);
    // The bust line has a wedge: its node stands between the ends of both legs.
    const top = (id: string) =>
      made.pieces.find((piece) => piece.id === id)?.edges.find(({ role }) => role === 'top')?.points ?? [];
    const [inner, outer] = [top('front-1')[0], top('front-2').at(-1)];
    expect(at('bustLine')?.block).toBe('front');
    expect(at('bustLine')?.at.x).toBeCloseTo(((inner?.x ?? 0) + (outer?.x ?? 0)) / 2, 9);
    expect(at('bustLine')?.at.y).toBeCloseTo(((inner?.y ?? 0) + (outer?.y ?? 0)) / 2, 9);
    expect(at('bustLine')?.at.x).toBeCloseTo(made.blocks?.front.bustLine ?? 0, 1);
    expect(at('centreBack')).toMatchObject({ block: 'back', at: top('back-1').at(-1) });
    // Within a panel a node lies on the edge, wherever the panel leans.
    const wedges = DEFAULT_STYLE.wedges.filter(({ station }) => station < 0.4);
    const few = shaped(
      { centreFront: corner(-10), sideFront: smooth(25), sideBack: smooth(-15) },
      { wedges },
    );
    for (const node of few.nodes.filter(({ edge, name }) => edge === 'top' && name !== 'bustLine')) {
      const rings = few.pieces.filter(({ block }) => block === node.block).map(ringOf);
      const nearest = Math.min(...rings.map((ring) => distanceTo(ring, node.at)));
      expect(nearest, node.name).toBeLessThan(1e-6);
    }
    expect(made.nodes.filter(({ edge, name }) => edge === 'top' && name === 'underarm')).toHaveLength(1);
  });

  it('leave the seams equal and every crossing as asked', () => {
    expect(made.proof.seams.length).toBeGreaterThan(4);
    for (const row of made.proof.seams) expect(Math.abs(row.lengthA - row.lengthB)).toBeLessThanOrEqual(0.05);
    for (const row of made.proof.edges)
      expect(Math.abs(row.angle - row.asked) * DEGREES, `${row.seam} ${row.edge}`).toBeLessThanOrEqual(0.5);
  });

  it('a corner asks for a turn at centre front alone', () => {
    const asked = (seam: string): number =>
      made.proof.edges.find((row) => row.seam.id === seam && row.edge === 'top')?.asked ?? Number.NaN;
    expect(asked('front-centre') * DEGREES).toBeGreaterThan(200);
    for (const seam of ['front-1/front-2', 'front-2/front-3', 'side', 'back-1/back-2', 'back-centre'])
      expect(asked(seam) * DEGREES).toBeCloseTo(180, 9);
  });
});

describe('a shape', () => {
  it('of level nodes is the level edge', () => {
    expect(shaped({})).toEqual(draft(MEAN_BODY, DEFAULT_STYLE));
  });

  it('is not bent by what a wedge takes at the top', () => {
    const shape = { bustLine: smooth(25), sideFront: smooth(10) };
    const wide = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.id === 'front-bust'
        ? { ...wedge, sizing: 'manual' as const, intake: { overBust: 30, waist: 20 } }
        : wedge,
    );
    const [before, after] = [shaped(shape), shaped(shape, { wedges: wide })];
    for (const made of [before, after]) {
      expect(endsAbove(made, 'front-1')[1]).toBeCloseTo(25, 0);
      expect(endsAbove(made, 'front-2')[0]).toBeCloseTo(endsAbove(made, 'front-1')[1], 0);
    }
  });

  it('never overshoots its nodes between them', () => {
    const made = shaped({ bustLine: smooth(30), sideFront: smooth(30) });
    const highest = Math.min(
      ...made.pieces
        .flatMap(({ edges }) => edges.filter(({ role }) => role === 'top'))
        .flatMap(({ points }) => points.map(({ y }) => y)),
    );
    // Truing lets an end out by half of what its mates differed by.
    const differed = Math.max(...made.proof.seams.map(({ lengthDifference }) => Math.abs(lengthDifference)));
    expect((made.span?.top ?? 0) - highest).toBeLessThan(30.5 + differed / 2);
    expect(made.span?.highest).toBeCloseTo((made.span?.top ?? 0) - 30, 9);
  });

  it('may hang from the under-bust line or the waist', () => {
    for (const [topFrom, line] of [
      ['underBust', MEAN_BODY.neckToUnderBust],
      ['waist', MEAN_BODY.neckToWaist],
    ] as const)
      expect(draft(MEAN_BODY, { ...DEFAULT_STYLE, topFrom, topAbove: 20 }).span?.top).toBeCloseTo(
        (line ?? 0) - 20,
        9,
      );
  });

  it('that leaves no height at a seam is refused there', () => {
    const { issues } = shaped({ bustLine: smooth(-240) });
    expect(issues).toContainEqual(
      expect.objectContaining({
        code: 'garmentTooShort',
        at: { seam: expect.objectContaining({ id: 'front-1/front-2' }), field: 'hemBelow' },
      }),
    );
  });

  it('goes into the cautions where it is worn', () => {
    const body = { ...MEAN_BODY, underarmToWaist: 175, waistToLap: 110 };
    const codes = (style: Partial<Style>): string[] =>
      draft(body, { ...DEFAULT_STYLE, ...style }).issues.map(({ code }) => code);
    const pointed = { ...LEVEL_EDGE, centreFront: corner(30) };
    expect(codes({ hemBelow: 100 })).not.toContain('hemTooLongToSit');
    expect(codes({ hemBelow: 100, hemShape: pointed })).toContain('hemTooLongToSit');
    const low = codes({ topShape: LEVEL_EDGE, topAbove: -10 });
    const high = codes({ topShape: { ...LEVEL_EDGE, underarm: smooth(60) }, topAbove: -10 });
    expect(low).not.toContain('topAboveArmpit');
    expect(high).toContain('topAboveArmpit');
  });
});

describe('a gore', () => {
  it('adds cloth, so that the panels lie over each other in the block and the sewn girth still meets its target', () => {
    const wedges = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.id === 'back-side'
        ? { ...wedge, sizing: 'manual' as const, intake: { waist: 10, hip: -40, highHip: -20 } }
        : wedge,
    );
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, hemBelow: 245, wedges });
    expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    const hip = made.proof.ledger.find(({ level }) => level === 'hip');
    expect(hip?.sewnGirth).toBeCloseTo(hip?.targetGirth ?? 0, 6);
    const edge = (piece: string, mate: string): number => {
      const points = made.pieces
        .find(({ id }) => id === piece)
        ?.edges.find((each) => each.mate?.piece.id === mate)?.points;
      const at = points?.find(({ y }) => Math.abs(y - (hip?.y ?? 0)) < 1e-6);
      return at?.x ?? Number.NaN;
    };
    expect(edge('back-2', 'back-3') - edge('back-3', 'back-2')).toBeCloseTo(40, 6);
  });
});

describe('the fullness of a cup', () => {
  const bustY = MEAN_BODY.neckToBust ?? 0;
  const withCup = (cup: { below: number; intake: number }): Draft =>
    draft(MEAN_BODY, {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) => (wedge.id === 'front-bust' ? { ...wedge, cup } : wedge)),
    });
  const takes = (made: Draft, y: number): number => {
    const wedge = made.blocks?.front.wedges.find(({ id }) => id === 'front-bust');
    return wedge ? xAt(wedge.outerLeg, y) - xAt(wedge.innerLeg, y) : Number.NaN;
  };

  it('holds the wedge to its intake below the bust point, and leaves the levels as they were', () => {
    const [plain, full] = [draft(MEAN_BODY, DEFAULT_STYLE), withCup({ below: 25.4, intake: 0 })];
    expect(takes(plain, bustY + 25.4)).toBeGreaterThan(0.5);
    expect(takes(full, bustY + 25.4)).toBeCloseTo(0, 9);
    expect(takes(full, bustY + 12)).toBeCloseTo(0, 9);
    expect(
      full.proof.ledger.map(({ sewnGirth, targetGirth }) => (sewnGirth ?? targetGirth) - targetGirth),
    ).toEqual(full.proof.ledger.map(() => expect.closeTo(0, 6)));
    for (const row of full.proof.seams) expect(Math.abs(row.lengthA - row.lengthB)).toBeLessThanOrEqual(0.05);
  });

  it('is left out where a level already stands', () => {
    const below = (MEAN_BODY.neckToUnderBust ?? 0) - bustY;
    expect(withCup({ below, intake: 3 }).pieces).toEqual(draft(MEAN_BODY, DEFAULT_STYLE).pieces);
  });
});
