import { describe, expect, it } from 'vitest';
import {
  type BodySides,
  balancedWedge,
  closeUpWhole,
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  edgesAt,
  identityOf,
  placePoint,
  type Style,
  USUAL_BAND_ABOVE,
  USUAL_SHOULDERS,
  withPoints,
} from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { SET_LINES } from '../../support/styles/setLines';

const SIDES: BodySides = {
  leftShare: { bust: 0.51, waist: 0.52, hip: 0.49 },
  rightLower: { bust: 6, underBust: 6, waist: 8, hip: 10 },
};
const closedBy = (front: Style['closure']['front'], back: Style['closure']['back']): Style => ({
  ...DEFAULT_STYLE,
  wedges: DEFAULT_STYLE.wedges.filter(({ station }) => station > -1),
  closure: { front, back, lacingGap: 50 },
});

describe('a body alike on both sides', () => {
  it('is drafted as ever', () => {
    const plain = draft(MEAN_BODY, DEFAULT_STYLE);
    expect(draftWhole(MEAN_BODY, DEFAULT_STYLE)).toEqual(plain);
    expect(
      draftWhole(MEAN_BODY, DEFAULT_STYLE, { leftShare: { waist: 0.5 }, rightLower: { hip: 0 } }),
    ).toEqual(plain);
  });

  it('with the same wedges given for the right has two halves alike', () => {
    const made = draftWhole(MEAN_BODY, { ...DEFAULT_STYLE, rightWedges: DEFAULT_STYLE.wedges });
    const plain = draft(MEAN_BODY, DEFAULT_STYLE);
    for (const side of ['left', 'right'] as const)
      for (const { id, cutLine } of plain.pieces) {
        const own = made.pieces.find((piece) => piece.id === `${side}-${id}`)?.cutLine ?? [];
        const key = ({ x, y }: { x: number; y: number }) => `${Math.abs(x).toFixed(9)} ${y.toFixed(9)}`;
        expect(own.map(key).sort(), `${side} ${id}`).toEqual(cutLine.map(key).sort());
      }
    expect(made.proof.ledger.map(({ sewnGirth }) => sewnGirth?.toFixed(9))).toEqual(
      plain.proof.ledger.map(({ sewnGirth }) => sewnGirth?.toFixed(9)),
    );
  });
});

describe('a body that differs left to right', () => {
  const made = draftWhole(MEAN_BODY, DEFAULT_STYLE, SIDES);

  it('has pieces of both halves and a proof of the whole', () => {
    const ids = made.pieces.map(({ id }) => id);
    const half = draft(MEAN_BODY, DEFAULT_STYLE).pieces.map(({ id }) => id);
    expect(ids).toEqual([...half.map((id) => `left-${id}`), ...half.map((id) => `right-${id}`)]);
    expect(made.proof.seams.map(({ seam }) => seam.id)).toEqual([
      'front-centre',
      'left-front-1/left-front-2',
      'left-front-2/left-front-3',
      'left-side',
      'left-back-2/left-back-3',
      'left-back-1/left-back-2',
      'right-front-1/right-front-2',
      'right-front-2/right-front-3',
      'right-side',
      'right-back-2/right-back-3',
      'right-back-1/right-back-2',
      'back-centre',
    ]);
    const waist = made.proof.ledger.find(({ level }) => level === 'waist');
    expect(waist?.bodyGirth).toBe(MEAN_BODY.waist);
    expect(waist?.sewnGirth).toBeCloseTo(MEAN_BODY.waist + DEFAULT_STYLE.ease.waist - 50.8, 1);
    const sum = Object.values(waist?.widths ?? {}).reduce((all, width) => all + width, 0);
    expect(sum).toBeCloseTo(waist?.sewnGirth ?? Number.NaN, 9);
  });

  it('is the same whatever its wedges are called: an id is not read', () => {
    const darted = (open: string, shut: string): Style => ({
      ...DEFAULT_STYLE,
      wedges: [
        ...DEFAULT_STYLE.wedges.filter(({ station }) => station < 0.4),
        withPoints(balancedWedge(open, 'front', 0.5, 2), { upper: { from: 'bust', below: 25 } }),
        withPoints(balancedWedge(shut, 'back', 0.6, 2), {
          upper: { from: 'bust', below: 25 },
          lower: { from: 'waist', below: 80 },
        }),
      ],
    });
    const [open, shut] = ['left-front-1/dart:side', 'right-/-band'];
    const plain = draftWhole(MEAN_BODY, darted('one', 'two'), SIDES);
    const odd = draftWhole(MEAN_BODY, darted(open, shut), SIDES);
    expect(odd.pieces.map(({ id }) => id)).toEqual(plain.pieces.map(({ id }) => id));
    expect(plain.proof.seams.map(({ seam }) => seam.id)).toContain('left-front-2/dart:one');
    expect(odd.proof.seams.map(({ seam }) => seam.id)).toEqual(
      plain.proof.seams.map(({ seam }) => seam.id.replace('one', open)),
    );
    expect(odd.proof.closedDarts.map(({ seam }) => seam.id)).toEqual(
      (['left', 'right'] as const).map((side) => `${side}-back-2/dart:${shut}`),
    );
    expect(odd.proof.edges.map(({ seam }) => seam.id)).toEqual(
      plain.proof.edges.map(({ seam }) => seam.id.replace('one', open)),
    );
    const edgesOf = ({ pieces }: Draft) =>
      pieces.flatMap(({ edges }) => edges.map(({ mate, points }) => [mate, points]));
    expect(edgesOf(odd)).toEqual(edgesOf(plain));
  });

  it('says how far the centres differed before they were trued to each other', () => {
    const { proof } = draftWhole(MEAN_BODY, SET_LINES, SIDES);
    const centre = proof.seams.find(({ seam }) => seam.id === 'front-centre');
    // From waist to top the right is 2 mm longer (its waist 8 mm lower, its bust 6), below the waist they are alike.
    expect(Math.abs(Math.abs(centre?.lengthDifference ?? 0) - 2)).toBeLessThan(0.1);
    expect(Math.abs((centre?.lengthA ?? 0) - (centre?.lengthB ?? 1))).toBeLessThan(0.05);
    expect(centre?.markDrift).toBeGreaterThan(0);
  });

  it('joins left and right at a centre with a seam, and at no other', () => {
    const centre = (style: Style, id: string) =>
      draftWhole(MEAN_BODY, style, SIDES).pieces.find((piece) => piece.id === id)?.edges[0];
    expect(centre(closedBy('seam', 'lacing'), 'left-front-1')?.mate).toMatchObject({
      piece: { id: 'right-front-1' },
      edge: 0,
    });
    expect(centre(closedBy('seam', 'lacing'), 'right-front-1')?.mate).toMatchObject({
      piece: { id: 'left-front-1' },
      edge: 0,
    });
    expect(centre(closedBy('seam', 'lacing'), 'left-back-1')?.mate).toBeNull();
    expect(centre(closedBy('busk', 'zip'), 'left-front-1')?.mate).toBeNull();
  });

  it('puts no centre on the fold, and says so', () => {
    const folded = draftWhole(MEAN_BODY, closedBy('fold', 'lacing'), SIDES);
    expect(folded.pieces.every(({ cut }) => cut.count === 1 && !cut.onFold)).toBe(true);
    expect(folded.issues).toContainEqual(
      expect.objectContaining({
        code: 'halvesNotOnFold',
        severity: 'note',
        at: expect.objectContaining({ block: 'front' }),
      }),
    );
    expect(folded.pieces.find(({ id }) => id === 'left-front-1')?.edges[0]).toMatchObject({
      mate: { piece: { id: 'right-front-1' }, edge: 0 },
      allowance: DEFAULT_STYLE.allowances.centre,
    });
  });

  it('says what holds of the body once, with the numbers of the body', () => {
    const style = { ...DEFAULT_STYLE, ease: { ...DEFAULT_STYLE.ease, waist: -90 } };
    const said = draftWhole({ ...MEAN_BODY, overBust: null }, style, SIDES).issues;
    for (const code of ['waistReductionHigh', 'overBustEstimated', 'sittingUnknown'])
      expect(
        said.filter((each) => each.code === code),
        code,
      ).toHaveLength(1);
    expect(said.find(({ code }) => code === 'waistReductionHigh')?.values.share).toBeCloseTo(
      90 / MEAN_BODY.waist,
      12,
    );
  });

  it('cuts what lies beside the panels of both halves at once, and for no half alone', () => {
    const shoulders = { ...USUAL_SHOULDERS, bandAbove: USUAL_BAND_ABOVE };
    const extras = { modesty: { overlap: 50 }, facing: { width: 45 }, straps: { length: 400, width: 25 } };
    const body = { ...MEAN_BODY, acrossShoulder: 380 };
    const whole = draftWhole(body, { ...DEFAULT_STYLE, shoulders, extras }, SIDES);
    for (const side of ['left', 'right'] as const)
      expect(whole.halves?.[side].extras.map(({ id }) => id)).toEqual(['front-band', 'back-band']);
    expect(whole.extras.map(({ id }) => id)).toEqual([
      'left-front-band',
      'left-back-band',
      'right-front-band',
      'right-back-band',
      'back-modesty',
      'left-back-facing',
      'right-back-facing',
      'strap',
    ]);
  });

  it('says of a facing that has no room that it has none, once for either half', () => {
    // A deep point at centre back, from which the hem rises so fast that it would meet the top edge.
    const steep: Style = {
      ...DEFAULT_STYLE,
      hemShape: {
        ...DEFAULT_STYLE.hemShape,
        centreBack: { beyond: 150, kind: 'corner' },
        sideBack: { beyond: -120, kind: 'corner' },
      },
      extras: { facing: { width: 200 } },
    };
    const said = draftWhole(MEAN_BODY, steep, SIDES).issues.filter(({ code }) => code === 'extraHasNoRoom');
    expect(said.map(({ at }) => at)).toEqual([
      { block: 'back', field: 'extras.facing.width', side: 'left' },
      { block: 'back', field: 'extras.facing.width', side: 'right' },
    ]);
  });

  it('gives a panel too narrow with its half', () => {
    const style: Style = {
      ...DEFAULT_STYLE,
      rightWedges: DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === 'front-side'
          ? { ...wedge, id: 'right-front-side', station: 0.1, sizing: 'manual', intake: { waist: 20 } }
          : { ...wedge, id: `right-${wedge.id}` },
      ),
    };
    const blocking = draftWhole(MEAN_BODY, style, SIDES).issues.filter(
      ({ severity }) => severity === 'error',
    );
    expect(blocking).not.toEqual([]);
    for (const { at } of blocking)
      expect(at).toMatchObject({ side: 'right', piece: { id: 'right-front-2' } });
  });

  it('reaches from the higher top edge to the lower hem of its halves', () => {
    const lower = SIDES.rightLower.waist ?? 0;
    // The left is as the tape was laid; on the right the waist lies lower, and the hem 4 in below it.
    expect(made.span?.hem).toBeCloseTo(MEAN_BODY.neckToWaist + lower + 4 * 25.4, 9);
    expect(made.span?.top).toBeCloseTo(
      // 12 mm under the armpit, which the tape down the left gives.
      MEAN_BODY.neckToWaist - (MEAN_BODY.underarmToWaist ?? 0) + 12,
      9,
    );
    const hems = made.pieces.map((piece) => edgesAt(piece, 'hem').flatMap((each) => each.points));
    // Truing moves the end of a seam by half of what its mates differed by; between the seams the edge bows a little.
    const moved = Math.max(...made.proof.seams.map(({ lengthDifference }) => Math.abs(lengthDifference))) / 2;
    expect(Math.max(...hems.flat().map(({ y }) => y)) - (made.span?.hem ?? 0)).toBeLessThan(3 + moved);
  });

  it('has an off-shoulder band for each half, front and back, each sewn to its own at the shoulder', () => {
    const style: Style = { ...DEFAULT_STYLE, shoulders: { ...USUAL_SHOULDERS, bandAbove: 40 } };
    const { extras } = draftWhole({ ...MEAN_BODY, acrossShoulder: 380 }, style, SIDES);
    expect(extras.map(({ id, cut }) => [id, cut.count])).toEqual([
      ['left-front-band', 1],
      ['left-back-band', 1],
      ['right-front-band', 1],
      ['right-back-band', 1],
    ]);
    for (const [i, piece] of extras.entries()) {
      const { edges } = piece;
      const shoulder = edges.findIndex(({ role }) => role === 'shoulder');
      const mate = edges[shoulder]?.mate;
      expect(mate?.piece.id).toBe(extras[i ^ 1]?.id);
      // Sewn to each other: the mate of the mate is itself.
      expect(extras[i ^ 1]?.edges[mate?.edge ?? -1]?.mate).toEqual({
        piece: identityOf(piece),
        edge: shoulder,
      });
    }
  });

  it('puts no centre back on the fold either: its halves are sewn to each other there', () => {
    const { pieces } = draftWhole(MEAN_BODY, closedBy('lacing', 'fold'), SIDES);
    for (const [hand, other] of [
      ['left', 'right'],
      ['right', 'left'],
    ])
      expect(pieces.find(({ id }) => id === `${hand}-back-1`)).toMatchObject({
        cut: { count: 1, onFold: false },
        edges: expect.arrayContaining([
          expect.objectContaining({
            role: 'centre',
            mate: { piece: expect.objectContaining({ id: `${other}-back-1` }), edge: 0 },
            allowance: DEFAULT_STYLE.allowances.centre,
          }),
        ]),
      });
  });

  it('says of its closing once what is wrong with it, not once a half', () => {
    const busk = { ...DEFAULT_STYLE, closure: { front: 'busk', back: 'lacing', lacingGap: 50 } } as const;
    const shut = { ...DEFAULT_STYLE, closure: { front: 'seam', back: 'seam', lacingGap: 0 } } as const;
    for (const [style, code] of [
      [busk, 'buskNeedsStraightCentre'],
      [shut, 'noOpening'],
    ] as const)
      expect(draftWhole(MEAN_BODY, style, SIDES).issues.filter((each) => each.code === code)).toHaveLength(1);
  });

  it('names a seam that is too short by its half, as the seam walk does', () => {
    // The hem rises by 240 mm at the side front, to within 40 mm of the top edge.
    const sideFront = { beyond: -240, kind: 'corner' } as const;
    const { issues, proof } = draftWhole(
      MEAN_BODY,
      { ...DEFAULT_STYLE, hemShape: { ...DEFAULT_STYLE.hemShape, sideFront } },
      SIDES,
    );
    const named = issues.filter(({ code }) => code === 'garmentTooShort').map(({ at }) => at);
    expect(named.map(({ side }) => side)).toEqual(['left', 'right']);
    for (const { side, seam } of named) {
      expect(seam?.side).toBe(side);
      expect(proof.seams.map((row) => row.seam.id)).toContain(seam?.id);
    }
  });

  it('lies closed up with every seam held together, the right half before the left', () => {
    if (!made.halves) throw new Error('not drafted whole');
    for (const held of ['top', 'waist', 'hem'] as const) {
      const placements = closeUpWhole(made.halves, held);
      expect(placements.map(({ piece }) => piece.id).sort()).toEqual(made.pieces.map(({ id }) => id).sort());
      expect(placements.every(({ mirrored }) => !mirrored)).toBe(true);
      const end = (piece: string, edge: number) => {
        const placement = placements.find((each) => each.piece.id === piece);
        const points = made.pieces.find(({ id }) => id === piece)?.edges[edge]?.points ?? [];
        const down = [...points].sort((a, b) => a.y - b.y);
        const point = held === 'hem' ? down.at(-1) : down[0];
        return placement && point ? placePoint(placement, point) : { x: Number.NaN, y: Number.NaN };
      };
      if (held === 'waist') continue;
      for (const { seam, a, b } of made.proof.seams) {
        if (seam.id === 'back-centre') continue;
        const [p, q] = [end(a.piece.id, a.edge), end(b.piece.id, b.edge)];
        expect(p.y, `${held} ${seam.id}`).toBeCloseTo(q.y, 6);
        expect(p.x, `${held} ${seam.id}`).toBeCloseTo(q.x, 6);
      }
    }
  });

  it('that cannot be is refused at its field, never thrown at', () => {
    const odd: unknown[] = [
      { leftShare: { waist: 0.7 }, rightLower: {} },
      { leftShare: {}, rightLower: { hip: Number.NaN } },
      { leftShare: { bust: 'half' }, rightLower: {} },
    ];
    for (const sides of odd) {
      const { pieces, issues } = draftWhole(MEAN_BODY, DEFAULT_STYLE, sides as BodySides);
      expect(pieces).toEqual([]);
      expect(issues).toContainEqual(expect.objectContaining({ code: 'sidesOutOfRange', severity: 'error' }));
    }
    for (const sides of [3, 'left', [], {}])
      expect(() => draftWhole(MEAN_BODY, DEFAULT_STYLE, sides as BodySides)).not.toThrow();
    const rightWedges = 'none' as unknown as Style['wedges'];
    expect(draftWhole(MEAN_BODY, { ...DEFAULT_STYLE, rightWedges }, SIDES).issues).toContainEqual(
      expect.objectContaining({ code: 'styleOutOfRange', severity: 'error' }),
    );
    expect(draftWhole({ ...MEAN_BODY, waist: null }, DEFAULT_STYLE, SIDES).pieces).toEqual([]);
  });
});
