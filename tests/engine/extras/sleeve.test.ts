// The off-shoulder sleeve reads the upper arm, and is sewn to the top edge as far on the panels as on itself.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  type Piece,
  type Style,
  USUAL_SHOULDERS,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { howMany } from '../../support/howMany';
import { areaSeen, holds, lengthOf, ringOf } from '../../support/judges/outline';

const SLEEVE = { depth: 80, ease: 36, gathered: 120, joined: 45 };
const SLEEVED: Style = { ...DEFAULT_STYLE, extras: { sleeve: SLEEVE } };
const BODY = { ...MEAN_BODY, upperArm: 292 };

const sleeveOf = ({ extras }: Draft): Piece => extras.find(({ kind }) => kind === 'sleeve') as Piece;

/** The length along an edge from its first point to a mark on it, by the nearest point of each chord. */
function alongTo(points: Piece['cutLine'], at: Piece['cutLine'][number]): number {
  let [sum, best, along] = [0, Number.POSITIVE_INFINITY, 0];
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (!a) continue;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const t = Math.min(
      1,
      Math.max(0, ((at.x - a.x) * (b.x - a.x) + (at.y - a.y) * (b.y - a.y)) / chord ** 2),
    );
    const off = Math.hypot(a.x + t * (b.x - a.x) - at.x, a.y + t * (b.y - a.y) - at.y);
    if (off < best) [best, along] = [off, sum + t * chord];
    sum += chord;
  }
  expect(best).toBeLessThan(1e-6);
  return along;
}

describe('an off-shoulder sleeve', () => {
  it('is as wide as the upper arm, its ease and what is gathered in, and as deep as it was asked for', () => {
    const { edges, cutLine, cut } = sleeveOf(draft(BODY, SLEEVED));
    const [short, hem, other, top] = edges.map(({ points }) => lengthOf(points));
    expect([hem, top]).toEqual([292 + 36 + 120, 292 + 36 + 120]);
    expect([short, other]).toEqual([80, 80]);
    expect(cut).toEqual({ count: 2, onFold: false });
    expect(edges.map(({ role }) => role)).toEqual(['seam', 'hem', 'seam', 'top']);
    for (const { points } of edges)
      for (const point of points) expect(holds(cutLine, point, 1e-6)).toBe(true);
    expect(edges[0]?.mate).toMatchObject({ piece: { id: 'sleeve' }, edge: 2 });
  });

  it('is walked along the top edge beside the side seam, front and back, on drawn bodies', () => {
    for (const body of drawBodies(howMany({ few: 6, all: 80 }), 71)) {
      const made = draft({ ...body, upperArm: 280 }, SLEEVED);
      const sleeve = sleeveOf(made);
      const top = sleeve.edges[3]?.points ?? [];
      // They stand for no level of the body, and none is written beside them.
      expect(sleeve.marks.map(({ level }) => level)).toEqual([null, null]);
      for (const block of ['front', 'back'] as const) {
        const panel = made.pieces.filter((piece) => piece.block === block).at(-1) as Piece;
        const edge = panel.edges.findIndex(({ role }) => role === 'top');
        const mark = panel.marks.find((each) => each.edge === edge);
        const onPanel = alongTo(panel.edges[edge]?.points ?? [], mark?.at as never);
        const onSleeve = sleeve.marks.map(({ at }) =>
          alongTo(block === 'front' ? [...top].reverse() : top, at),
        );
        expect(Math.min(...onSleeve)).toBeCloseTo(onPanel, 6);
        expect(onPanel).toBeCloseTo(45, 6);
        const row = made.proof.seams.find(({ seam }) => seam.id === `${panel.id}/sleeve`);
        expect(row?.lengthA).toBeCloseTo(onPanel, 6);
        expect(row?.lengthB).toBeCloseTo(onPanel, 6);
      }
    }
  });

  it('is left out, with a warning, where the arm was not measured or no top edge meets the side seam', () => {
    const said = (made: Draft) =>
      made.issues.filter(({ code }) => code.startsWith('sleeve')).map(({ code }) => code);
    const unmeasured = draft(MEAN_BODY, SLEEVED);
    expect([said(unmeasured), sleeveOf(unmeasured)]).toEqual([['sleeveNeedsArm'], undefined]);
    const princess = NAMED_STYLES.get('princess-bodice')?.style ?? DEFAULT_STYLE;
    const shouldered: Style = { ...princess, extras: { sleeve: SLEEVE } };
    const body = { ...BODY, acrossShoulder: 366, backNeckToWaist: 385 };
    expect(said(draft(body, shouldered))).toEqual(['sleeveNeedsTop']);
    expect(said(draft(BODY, { ...SLEEVED, joinedSide: true }))).toEqual(['sleeveNeedsTop']);
    expect(said(draft(body, { ...SLEEVED, shoulders: { ...USUAL_SHOULDERS, bandAbove: 40 } }))).toEqual([]);
  });

  it('is cut for each half where the halves differ, and walked on both', () => {
    const made = draftWhole(BODY, SLEEVED, { leftShare: { waist: 0.52 }, rightLower: {} });
    expect(made.extras.filter(({ kind }) => kind === 'sleeve').map(({ id, cut }) => [id, cut.count])).toEqual(
      [
        ['left-sleeve', 1],
        ['right-sleeve', 1],
      ],
    );
    const rows = made.proof.seams.filter(({ seam }) => seam.kind === 'joined');
    expect(rows).toHaveLength(4);
    for (const { a, b, lengthA, lengthB } of rows) {
      expect(lengthA).toBeCloseTo(lengthB, 6);
      for (const { piece, edge } of [a, b])
        expect([...made.pieces, ...made.extras].find(({ id }) => id === piece.id)?.edges[edge]?.role).toBe(
          'top',
        );
    }
  });
});

it('the ring of a sleeve runs the same way round as those of panels', () => {
  const made = draft(BODY, SLEEVED);
  const [ring, panel] = [sleeveOf(made), made.pieces[0] as Piece].map((piece) => areaSeen(ringOf(piece)));
  expect(Math.sign(ring ?? 0)).toBe(Math.sign(panel ?? 0));
});
