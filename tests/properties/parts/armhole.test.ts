// Armhole and shoulder on drawn bodies, read off the finished pieces: how long the one is, how the other slopes.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  type BlockName,
  balancedWedge,
  type Draft,
  draft,
  type Edge,
  type Measurements,
  type Point,
  type Style,
  UNMEASURED,
} from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { cornerAngle, lengthOf } from '../../support/judges/outline';

const SEED = 92;
const COUNT = howMany({ few: 60, all: 400 });
const BODIES: readonly Measurements[] = drawBodies(COUNT, SEED).map(withShoulders);
const BODY = BODIES[0] as Measurements;

const styleOf = (name: string): Style => (NAMED_STYLES.get(name) as { style: Style }).style;
const PRINCESS = styleOf('princess-bodice');
const BRIDAL = styleOf('armhole-bridal');

const edgesOf = ({ pieces }: Draft, role: Edge['role'], block?: BlockName): Edge[] =>
  pieces
    .filter((piece) => block === undefined || piece.block === block)
    .flatMap(({ edges }) => edges.filter((edge) => edge.role === role));

const lengthOfAll = (edges: readonly Edge[]): number =>
  edges.reduce((sum, { points }) => sum + lengthOf(points), 0);

/** Slope of the part of a shoulder line that begins at the neck, degrees. */
function slopeOf(made: Draft, block: BlockName): number {
  const ends = edgesOf(made, 'shoulder', block).map(({ points }) => [...points].sort((a, b) => a.x - b.x));
  const [neck, on] = ends.sort((a, b) => (a[0] as Point).x - (b[0] as Point).x)[0] as [Point, Point];
  return (Math.atan2(on.y - neck.y, on.x - neck.x) * 180) / Math.PI;
}

const spreadOf = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
};

describe.each([
  ['princess-bodice', PRINCESS],
  ['armhole-bridal', BRIDAL],
] as const)(`%s on ${COUNT} drawn bodies, seed ${SEED}`, (_, style) => {
  it(
    'keeps every bound; its armholes differ little in length, and its shoulders slope as usual',
    DRAWN,
    () => {
      const lengths: number[] = [];
      let refused = 0;
      for (const [i, body] of BODIES.entries()) {
        const made = draft(body, style);
        // Where a seam bends more tightly than can be sewn, which is warned of, its allowance may fall short by tenths of a mm.
        const isTight = made.issues.some(({ code }) => code === 'seamBendsTightly');
        const findings = broken(judge(body, style, made)).filter(
          (each) => !isTight || !each.includes('cut line no nearer than the least allowance'),
        );
        expect(findings, `body ${i}`).toEqual([]);
        if (made.issues.some(({ severity }) => severity === 'error')) {
          refused += 1;
          continue;
        }
        lengths.push(lengthOfAll(edgesOf(made, 'armhole')));
        const [front, back] = [slopeOf(made, 'front'), slopeOf(made, 'back')];
        expect(front).toBeGreaterThan(18);
        expect(front).toBeLessThan(23.01);
        expect((front + back) / 2).toBeGreaterThan(17.99);
      }
      expect(refused).toBeLessThanOrEqual(COUNT / 100);
      expect(spreadOf(lengths)).toBeLessThanOrEqual(45);
    },
  );

  it('lies in front deeper in than behind, and meets the side seam at a right angle unless its sides lean far apart', () => {
    const off: number[] = [];
    for (const body of BODIES.slice(0, 20)) {
      const made = draft(body, style);
      for (const piece of made.pieces)
        for (const [i, edge] of piece.edges.entries()) {
          const corner = [edge, piece.edges[(i + 1) % piece.edges.length]];
          if (corner.some((each) => each?.isSideSeam) && corner.some((each) => each?.role === 'armhole'))
            off.push(Math.abs(cornerAngle(piece, i) - 90));
        }
      const [front, back] = [made.blocks?.front.upper?.frame, made.blocks?.back.upper?.frame];
      expect(front?.inward).toBeLessThan(back?.inward ?? Number.NaN);
    }
    expect(off).toHaveLength(40);
    expect(off.filter((degrees) => degrees < 0.5).length).toBeGreaterThan(30);
    expect(Math.max(...off)).toBeLessThan(15);
  });
});

describe('a measured shoulder', () => {
  it('is as long and falls as far as it was measured, the back longer by its ease', () => {
    const measured = { ...BODY, shoulderLength: 118, shoulderDrop: 38 };
    const made = draft(measured, PRINCESS);
    expect(lengthOfAll(edgesOf(made, 'shoulder', 'front'))).toBeCloseTo(118, 6);
    expect(lengthOfAll(edgesOf(made, 'shoulder', 'back'))).toBeCloseTo(124, 6);
    const front = made.blocks?.front.upper?.frame;
    const back = made.blocks?.back.upper?.frame;
    // The seam lies a little before the shoulder's ridge.
    expect((front?.tip.y ?? 0) - (front?.neck.y ?? 0)).toBeCloseTo(43, 9);
    expect((back?.tip.y ?? 0) - (back?.neck.y ?? 0)).toBeCloseTo(33, 9);
  });

  it('needs no width across the shoulders', () => {
    const made = draft({ ...BODY, acrossShoulder: null, shoulderLength: 118 }, PRINCESS);
    expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});

describe('the armhole’s base', () => {
  it('lies 12 mm below the armpit where underarm to waist was measured', () => {
    const made = draft({ ...BODY, underarmToWaist: 170 }, PRINCESS);
    expect(made.blocks?.front.upper?.frame.underarm.y).toBeCloseTo((BODY.neckToWaist ?? 0) - 170 + 12, 9);
    expect(made.issues.some(({ code }) => code === 'armholeEstimated')).toBe(false);
  });

  it('is an estimate with its bounds where not', () => {
    const made = draft({ ...BODY, underarmToWaist: null }, PRINCESS);
    const note = made.issues.find(({ code }) => code === 'armholeEstimated');
    // By hand: 1.96 SDs of 21.5 mm times the root of 1 less .749 squared.
    expect(note?.values.within).toBeCloseTo(27.9, 1);
  });
});

describe('the arm', () => {
  const told = (upperArm: number | null): string[] =>
    draft({ ...BODY, upperArm }, PRINCESS)
      .issues.map(({ code }) => code)
      .filter((code) => code.startsWith('armhole'));

  it('is compared with the armhole where it was measured', () => {
    expect(told(null)).toEqual([]);
    expect(told(280)).toEqual(['armholeLength']);
    expect(told(420)).toEqual(['armholeTight']);
    const made = draft({ ...BODY, upperArm: 280 }, PRINCESS);
    const note = made.issues.find(({ code }) => code === 'armholeLength');
    expect(note?.values.length).toBeCloseTo(lengthOfAll(edgesOf(made, 'armhole')), 6);
  });
});

describe('where seams end above', () => {
  const through = (id: string, station: number, endsAt?: Style['wedges'][number]['endsAt']) => ({
    ...balancedWedge(id, 'front', station, 2),
    ...(endsAt ? { endsAt } : {}),
  });
  const withFront = (...front: Style['wedges']): Style => ({ ...BRIDAL, wedges: front });
  const roles = (made: Draft, id: string): string[] =>
    made.pieces.find((piece) => piece.id === id)?.edges.map(({ role, shoulder }) => shoulder ?? role) ?? [];

  it('may be neckline, shoulder and armhole of one block, with every bound kept', () => {
    const style = withFront(
      through('n', -0.6, { edge: 'neckline', part: 0.5 }),
      through('s', 0, { edge: 'shoulder', part: 0.6 }),
      through('a', 0.55, { edge: 'armhole', part: 0.7 }),
    );
    for (const [i, body] of BODIES.slice(0, 20).entries()) {
      const made = draft(body, style);
      expect(broken(judge(body, style, made)), `body ${i}`).toEqual([]);
      expect(roles(made, 'front-1')).toEqual(['centre', 'hem', 'seam', 'top']);
      expect(roles(made, 'front-2')).toEqual(['seam', 'hem', 'seam', 'neck', 'top']);
      expect(roles(made, 'front-3')).toEqual(['seam', 'hem', 'seam', 'armhole', 'tip']);
      expect(roles(made, 'front-4')).toEqual(['seam', 'hem', 'seam', 'armhole']);
    }
  });

  it.each([0.25, 0.4, 0.75])('is so far along the armhole: %s', (part) => {
    const style = withFront(through('a', 0, { edge: 'armhole', part }));
    const made = draft(BODY, style);
    const [upper, lower] = edgesOf(made, 'armhole', 'front').map(({ points }) => lengthOf(points));
    // The part below hangs from the other leg, whose dart turns it; only there does it differ from the sewn line.
    expect(Math.abs((upper ?? 0) / ((upper ?? 0) + (lower ?? 0)) - part)).toBeLessThan(0.06);
  });

  it('part the shoulder seam in three where front and back do not meet', () => {
    const style: Style = {
      ...withFront(through('s', 0, { edge: 'shoulder', part: 0.35 })),
      shoulders: { ease: 9 },
    };
    const back: Style = {
      ...style,
      wedges: [
        ...style.wedges,
        { ...balancedWedge('b', 'back', 0, 2), endsAt: { edge: 'shoulder', part: 0.7 } },
      ],
    };
    const walked = draft(BODY, back).proof.seams.filter(({ seam }) => seam.kind === 'shoulder');
    expect(walked.map(({ seam }) => seam.id)).toEqual(['shoulder-neck', 'shoulder-middle', 'shoulder-tip']);
    expect(walked.map(({ ease }) => ease)).toEqual([3.15, 3.15, 2.7].map((ease) => expect.closeTo(ease, 9)));
  });

  it('are refused out of their order, or where one does not say', () => {
    const codes = (style: Style): string[] =>
      draft(BODY, style)
        .issues.filter(({ severity }) => severity === 'error')
        .map(({ code, at }) => `${code} ${at.wedge}`);
    expect(
      codes(
        withFront(
          through('a', 0, { edge: 'armhole', part: 0.5 }),
          through('s', 0.5, { edge: 'shoulder', part: 0.5 }),
        ),
      ),
    ).toEqual(['shoulderWedges s']);
    expect(codes(withFront(through('a', 0, { edge: 'armhole', part: 0.5 }), through('s', 0.5)))).toEqual([
      'shoulderWedges s',
    ]);
  });

  it('stands nothing in the way of a body of which little is known', () => {
    const known = { ...UNMEASURED, ...BODY, overBust: null, underarmToWaist: null };
    expect(draft(known, BRIDAL).issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});
