// Shouldered blocks on realistic bodies: every bound of every draft, and the shoulder seam, read off the finished outlines.

import { describe, expect, it } from 'vitest';
import {
  type BlockName,
  balancedWedge,
  DEFAULT_STYLE,
  draft,
  type Edge,
  inches,
  type Measurements,
  type Piece,
  type Shoulders,
  type Style,
  type Wedge,
  withPoints,
} from '../../../src/engine';
import { drawBodies } from '../../support/bodies/drawBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { cornerAngle, holds, lengthOf, ringOf, selfMeeting } from '../../support/judges/outline';

const SEED = 92;
const COUNT = howMany({ few: 50, all: 250 });
const MATED = howMany({ few: 15, all: 60 });
const BANDED = howMany({ few: 20, all: 100 });
// Across the shoulders goes with the bust, from memory: about 350 mm for a bust of 800 and 400 for one of 1000.
const BODIES: readonly Measurements[] = drawBodies(COUNT, SEED).map((body) => ({
  ...body,
  acrossShoulder: 150 + 0.25 * (body.bust ?? 0),
}));
const BODY = BODIES[0] as Measurements;

/** What the back shoulder is longer, mm. */
const EASE = 6;

/** A drop of 1 in and 1/2 in into the armhole: common practice, no source. */
const SHOULDERS: Shoulders = {
  drop: inches(1),
  armholeIn: inches(0.5),
  intake: { front: inches(0.5), back: 6 },
};

const dart = (id: string, block: BlockName, station: number): Wedge =>
  withPoints(balancedWedge(id, block, station, 2), {
    upper: { from: 'bust', below: 30 },
    lower: { from: 'waist', below: 80 },
  });

const HOOKED = { ...DEFAULT_STYLE.closure, back: 'hooks', lacingGap: 0 } as const;

const PRINCESS: Style = {
  ...DEFAULT_STYLE,
  shoulders: SHOULDERS,
  wedges: [
    balancedWedge('fc', 'front', -1, 1),
    balancedWedge('fb', 'front', 0, 3),
    dart('fs', 'front', 0.5),
    balancedWedge('bb', 'back', 0, 2),
    dart('bs', 'back', 0.5),
  ],
};
const DARTED: Style = {
  ...DEFAULT_STYLE,
  shoulders: SHOULDERS,
  closure: HOOKED,
  wedges: [dart('fb', 'front', 0), dart('fs', 'front', 0.55), dart('bb', 'back', 0.2)],
};
const WEDGE_IN_FRONT_ONLY: Style = {
  ...DARTED,
  wedges: [balancedWedge('fb', 'front', 0, 3), dart('fs', 'front', 0.5), dart('bb', 'back', 0.2)],
};

const shoulderOf = (pieces: readonly { edges: readonly Edge[] }[]): Edge[] =>
  pieces.flatMap(({ edges }) => edges.filter(({ role }) => role === 'shoulder'));

describe.each([
  ['wedges to mid-shoulder on both blocks', PRINCESS, 4],
  ['darts only', DARTED, 2],
  ['a wedge to mid-shoulder in front only', WEDGE_IN_FRONT_ONLY, 4],
] as const)(`%s, ${COUNT} drawn bodies, seed ${SEED}`, (_, style, parts) => {
  it('keeps every bound, and is refused at most one time in a hundred', DRAWN, () => {
    let refused = 0;
    for (const [i, body] of BODIES.entries()) {
      const made = draft(body, style);
      expect(broken(judge(body, style, made)), `body ${i}`).toEqual([]);
      if (made.issues.some(({ severity }) => severity === 'error')) refused += 1;
    }
    expect(refused).toBeLessThanOrEqual(COUNT / 100);
  });

  it('has a straight shoulder seam as long as neck and shoulder say, the back longer by its ease', () => {
    for (const body of BODIES.slice(0, MATED)) {
      const { pieces, proof } = draft(body, style);
      const edges = shoulderOf(pieces);
      expect(edges).toHaveLength(parts);
      for (const edge of edges) {
        expect(edge.points).toHaveLength(2);
        const mate = pieces.find(({ id }) => id === edge.mate?.piece.id)?.edges[edge.mate?.edge ?? -1];
        expect(mate?.role).toBe('shoulder');
        const longer = lengthOf(edge.points) - lengthOf(mate?.points ?? []);
        expect(longer).toBeCloseTo((edge.ease ?? 0) - (mate?.ease ?? 0), 9);
      }
      // The back's: half the width across the shoulders less half a neck of 4 1/2 in, over a drop of 1 in.
      const run = (body.acrossShoulder ?? 0) / 2 - inches(2.25);
      const seamOf = (block: BlockName): number =>
        shoulderOf(pieces.filter((piece) => piece.block === block)).reduce(
          (sum, edge) => sum + lengthOf(edge.points),
          0,
        );
      expect(seamOf('back')).toBeCloseTo(Math.hypot(run, inches(1)), 6);
      expect(seamOf('back') - seamOf('front')).toBeCloseTo(EASE, 6);
      const walked = proof.seams.filter(({ seam }) => seam.kind === 'shoulder');
      expect(walked.reduce((sum, { ease }) => sum + ease, 0)).toBeCloseTo(EASE, 9);
      for (const { lengthA, lengthB, ease } of walked) expect(lengthB - lengthA).toBeCloseTo(ease, 9);
    }
  });

  it('meets the shoulder square at neck and armhole, so that front and back run on', () => {
    for (const { edges } of draft(BODY, style).pieces)
      for (const [i, edge] of edges.entries()) {
        const next = edges[(i + 1) % edges.length];
        const roles = [edge.role, next?.role];
        const square = roles.includes('shoulder') && (roles.includes('top') || roles.includes('armhole'));
        if (square) expect(Math.abs(cornerAngle({ edges } as never, i) - 90)).toBeLessThan(0.6);
      }
  });
});

describe('neckline and armhole across the shoulder seam', () => {
  const pointed: Style = {
    ...PRINCESS,
    topShape: { ...PRINCESS.topShape, centreFront: { beyond: 20, kind: 'corner' } },
  };

  it.each([
    ['princess', PRINCESS],
    ['darted', DARTED],
    ['with a wedge in front only', WEDGE_IN_FRONT_ONLY],
    ['with a pointed neckline', pointed],
  ])('run straight on, as the proof has it: %s', (_, style) => {
    for (const body of BODIES) {
      const { pieces, proof } = draft(body, style);
      const across = proof.edges.filter(({ seam }) => seam.kind === 'shoulder');
      expect(across.map(({ edge }) => edge)).toEqual(['neckline', 'armhole']);
      for (const { edge, angle, asked, at } of across) {
        const degrees = (angle * 180) / Math.PI;
        expect(asked).toBe(Math.PI);
        expect(Math.abs(degrees - 180)).toBeLessThanOrEqual(0.5);
        expect(degrees).toBeCloseTo(atShoulder(pieces, edge === 'armhole' ? 'armhole' : 'top'), 6);
        expect(
          pieces.find(({ id }) => id === at.piece.id)?.edges.some(({ points }) => points.includes(at.point)),
        ).toBe(true);
      }
    }
  });

  it('has no row without shoulders, nor where they are cut off as a band', () => {
    for (const shoulders of [undefined, { ...SHOULDERS, bandAbove: 30 }]) {
      const style = { ...DEFAULT_STYLE, ...(shoulders ? { shoulders } : {}) };
      expect(draft(BODY, style).proof.edges.filter(({ seam }) => seam.kind === 'shoulder')).toEqual([]);
    }
  });

  /** The angles in which shoulder and an edge meet on front and back, degrees together. */
  const atShoulder = (pieces: readonly Piece[], role: Edge['role']): number =>
    pieces.reduce((sum, piece) => {
      const met = piece.edges.findIndex((edge, i) => {
        const roles = [edge.role, piece.edges[(i + 1) % piece.edges.length]?.role];
        return roles.includes('shoulder') && roles.includes(role);
      });
      return met < 0 ? sum : sum + cornerAngle(piece, met);
    }, 0);
});

describe('the armhole', () => {
  it('goes in by what was asked at half its depth', () => {
    const side = draft(BODY, DARTED).pieces.find(({ id }) => id === 'front-1');
    const armhole = side?.edges.find(({ role }) => role === 'armhole')?.points ?? [];
    const [underarm, tip] = [armhole[0], armhole.at(-1)];
    const middle = ((underarm?.y ?? 0) + (tip?.y ?? 0)) / 2;
    const inward = armhole.reduce((least, point) => (point.x < least.x ? point : least));
    expect(Math.abs(inward.y - middle)).toBeLessThan(1);
    expect((tip?.x ?? 0) - inward.x).toBeCloseTo(inches(0.5), 3);
  });
});

describe('the handles of neckline and armhole', () => {
  it.each([
    ['princess', PRINCESS],
    ['darted', DARTED],
    ['with a wedge in front only', WEDGE_IN_FRONT_ONLY],
  ])('stand at centre front and at the underarm point: %s', (_, style) => {
    for (const body of BODIES.slice(0, MATED)) {
      const { pieces, nodes } = draft(body, style);
      const edges = pieces.filter(({ block }) => block === 'front').flatMap((piece) => piece.edges);
      const pointsOf = (is: (edge: Edge) => boolean) => edges.filter(is).flatMap(({ points }) => points);
      const at = (name: string) => nodes.find((node) => node.edge === 'top' && node.name === name)?.at;
      const [armhole, neckline] = [
        pointsOf(({ role }) => role === 'armhole'),
        pointsOf(({ role }) => role === 'top'),
      ];
      expect(armhole).toContainEqual(at('underarm'));
      expect(pointsOf(({ isSideSeam: side }) => side)).toContainEqual(at('underarm'));
      expect(neckline).toContainEqual(at('centreFront'));
      expect(pointsOf(({ role }) => role === 'centre')).toContainEqual(at('centreFront'));
    }
  });
});

describe('shoulders are refused, with the place', () => {
  const told = (body: Measurements, style: Style): string[] =>
    draft(body, style)
      .issues.filter(({ severity }) => severity === 'error')
      .map(({ code, at }) => `${code} ${at.wedge ?? at.field}`);

  it.each([
    [
      'without the width across the shoulders',
      { ...BODY, acrossShoulder: null },
      DARTED,
      'measurementMissing acrossShoulder',
    ],
    [
      'on shoulders wider than the chest',
      { ...BODY, acrossShoulder: 700 },
      DARTED,
      'shoulderOffBlock acrossShoulder',
    ],
    [
      'with a second wedge that runs through',
      BODY,
      { ...PRINCESS, wedges: DEFAULT_STYLE.wedges },
      'shoulderWedges front-side',
    ],
    ['with a side panel in one', BODY, { ...PRINCESS, joinedSide: true }, 'shoulderNeedsSideSeam joinedSide'],
    [
      'on a top edge measured from the waist',
      BODY,
      { ...PRINCESS, topFrom: 'waist', topAbove: 60 },
      'shoulderNeedsTop topFrom',
    ],
    [
      'behind a lacing gap as wide as the neck',
      BODY,
      { ...PRINCESS, closure: { ...DEFAULT_STYLE.closure, lacingGap: inches(4) } },
      'shoulderOffBlock neckWidth',
    ],
  ] satisfies [string, Measurements, Style, string][])('%s', (_, body, style, expected) => {
    expect(told(body, style)).toContain(expected);
    // What can be drawn is drawn: a strapless draft to look at.
    expect(draft(body, style).pieces.length).toBeGreaterThan(0);
  });
});

const withoutTopMates = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map((edge) => (edge.role === 'top' ? { ...edge, mate: null } : edge)),
});

describe('an off-shoulder band', () => {
  const style: Style = { ...DEFAULT_STYLE, shoulders: { ...SHOULDERS, bandAbove: inches(1.5) } };

  it('lies above strapless panels, its lower edge as long as theirs sewn together', () => {
    for (const body of BODIES.slice(0, BANDED)) {
      const made = draft(body, style);
      // The band is their mate, and changes nothing else of them.
      expect(made.pieces.map(withoutTopMates)).toEqual(
        draft(body, DEFAULT_STYLE).pieces.map(withoutTopMates),
      );
      for (const block of ['front', 'back'] as const) {
        const band = made.extras.find(({ id }) => id === `${block}-band`);
        const tops = made.pieces
          .filter((piece) => piece.block === block)
          .map((piece) => ({ piece, top: piece.edges.findIndex(({ role }) => role === 'top') }));
        const seams = tops.map(() => 'seam');
        expect(band?.edges.map(({ role }) => role)).toEqual([
          'centre',
          ...seams,
          'armhole',
          'shoulder',
          'top',
        ]);
        for (const [i, { piece, top }] of tops.entries()) {
          const [own, mate] = [piece.edges[top], band?.edges[1 + i]];
          expect(own?.mate).toMatchObject({ piece: { id: band?.id }, edge: 1 + i });
          expect(mate?.mate).toMatchObject({ piece: { id: piece.id }, edge: top });
          expect(Math.abs(lengthOf(mate?.points ?? []) - lengthOf(own?.points ?? []))).toBeLessThan(0.01);
        }
      }
    }
  });

  it('has a simple outline inside its cut line, and shoulders that differ by the ease', () => {
    const { extras } = draft(BODY, style);
    const [front, back] = extras.map(({ edges }) =>
      lengthOf(edges.find(({ role }) => role === 'shoulder')?.points ?? []),
    );
    expect((back ?? Number.NaN) - (front ?? Number.NaN)).toBeCloseTo(EASE, 9);
    for (const piece of extras) {
      expect(selfMeeting(ringOf(piece))).toBeNull();
      expect(selfMeeting(piece.cutLine)).toBeNull();
      expect(ringOf(piece).every((point) => holds(piece.cutLine, point, 1e-4))).toBe(true);
    }
  });
});
