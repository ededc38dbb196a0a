// A front without a seam up from the bust: its bust dart, turned about the bust point to wherever it opens.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  draft,
  type EndsAt,
  inches,
  type Measurements,
  type Point,
  type Style,
  type Wedge,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';

const COUNT = howMany({ few: 25, all: 200 });
const BODY = withShoulders(MEAN_BODY);
const DARTED = (NAMED_STYLES.get('darted-bodice') as { style: Style }).style;
const ID = 'front-armhole';

const PLACES: readonly EndsAt[] = [
  { edge: 'armhole', part: 0.5 },
  { edge: 'shoulder', part: 0.5 },
  { edge: 'neckline', part: 0.6 },
];

const withDart = (change: Partial<Wedge>): Style => ({
  ...DARTED,
  wedges: DARTED.wedges.map((wedge) => (wedge.id === ID ? ({ ...wedge, ...change } as Wedge) : wedge)),
});

/** The dart as it is cut: where its legs end above and where they meet. */
function dartOf(
  body: Measurements,
  style: Style,
): { inner: Point; outer: Point; point: Point; legs: number[] } {
  const dart = draft(body, style)
    .pieces.flatMap(({ darts }) => darts)
    .find(({ wedge }) => wedge === ID);
  const [inner, outer, point] = [dart?.inner[0], dart?.outer[0], dart?.inner.at(-1)];
  if (!dart || !inner || !outer || !point) throw new Error('the front has no bust dart');
  return {
    inner,
    outer,
    point,
    legs: [inner, outer].map((end) => Math.hypot(end.x - point.x, end.y - point.y)),
  };
}

/** Where the bust point lies on the block of a body whose front is cut on the fold. */
const bustPoint = (body: Measurements): Point => ({
  x: (body.bustPointWidth ?? 0) / 2,
  y: body.neckToBust ?? 0,
});

const angleAt = (apex: Point, a: Point, b: Point): number =>
  Math.abs(Math.atan2(a.x - apex.x, apex.y - a.y) - Math.atan2(b.x - apex.x, apex.y - b.y)) * (180 / Math.PI);

describe('a bust dart within the front', () => {
  it.each(PLACES)(
    'opens in the $edge with straight legs of one length, the edge running on across it',
    ({ edge, part }) => {
      const made = draft(BODY, withDart({ endsAt: { edge, part } }));
      const [piece] = made.pieces;
      const role = edge === 'neckline' ? 'top' : edge;
      const legs = piece?.edges.flatMap(({ dart }, i) => (dart?.wedge === ID ? [i] : [])) ?? [];
      expect(legs).toHaveLength(2);
      for (const beside of [(legs[0] ?? 0) - 1, (legs[1] ?? 0) + 1])
        expect(piece?.edges[beside]?.role).toBe(role);
      const [inner = 0, outer = 0] = dartOf(BODY, withDart({ endsAt: { edge, part } })).legs;
      expect(Math.abs(inner - outer)).toBeLessThan(0.05);
      const crossing = made.proof.edges.find(({ seam }) => seam.kind === 'dart' && seam.wedge === ID);
      expect(Math.abs((crossing?.angle ?? 0) - Math.PI) * (180 / Math.PI)).toBeLessThan(0.5);
    },
  );

  it('has one angle about the bust point wherever it opens', () => {
    const angles = PLACES.map((endsAt) => {
      const { inner, outer } = dartOf(BODY, withDart({ endsAt }));
      return angleAt(bustPoint(BODY), inner, outer);
    });
    expect(Math.min(...angles)).toBeGreaterThan(5);
    expect(Math.max(...angles) - Math.min(...angles)).toBeLessThan(0.8);
  });

  it.each(PLACES)('points at the bust point and ends an inch above it: $edge', (endsAt) => {
    const { inner, outer, point } = dartOf(BODY, withDart({ endsAt }));
    const apex = bustPoint(BODY);
    expect(apex.y - point.y).toBeCloseTo(inches(1), 6);
    const middle = { x: (inner.x + outer.x) / 2, y: (inner.y + outer.y) / 2 };
    expect(angleAt(apex, point, middle)).toBeLessThan(2.5);
  });

  it('opens as wide as it was set by hand at the over-bust line', () => {
    const style = withDart({
      sizing: 'manual',
      intake: { overBust: 20 },
      endsAt: { edge: 'shoulder', part: 0.5 },
    });
    const { blocks } = draft(BODY, style);
    const taken = blocks?.front.wedges.find(({ id }) => id === ID)?.intake.get('overBust');
    expect(taken).toBeCloseTo(20, 6);
  });

  it('turns what the front is longer than the back, so that the side seam runs straighter than without it', () => {
    const without: Style = { ...DARTED, wedges: DARTED.wedges.filter(({ id }) => id !== ID) };
    const fuller = { ...BODY, bust: (BODY.bust ?? 0) + 60 };
    const width = (style: Style) => draft(fuller, style).blocks?.front.width.get('overBust') ?? 0;
    expect(width(DARTED)).toBeGreaterThan(width(without) + 8);
  });

  it('is refused beside a seam nearer to the bust point', () => {
    const style: Style = {
      ...DARTED,
      wedges: [
        ...DARTED.wedges.map((wedge) => (wedge.id === ID ? { ...wedge, station: 0.2 } : wedge)),
        { ...(NAMED_STYLES.get('princess-bodice')?.style.wedges[0] as Wedge), id: 'seam' },
      ],
    };
    const blocking = draft(BODY, style).issues.filter(({ severity }) => severity === 'error');
    expect(blocking.map(({ code, at }) => `${code} ${at.wedge}`)).toContain(`shoulderWedges ${ID}`);
  });

  it.each(PLACES)(`keeps every bound on ${COUNT} drawn bodies: $edge`, DRAWN, (endsAt) => {
    const style = withDart({ endsAt });
    for (const [i, body] of drawBodies(COUNT, 515).map(withShoulders).entries()) {
      const made = draft(body, style);
      const findings = judge(body, style, made);
      expect(findings.length, `body ${i}: measured`).toBeGreaterThan(40);
      expect(broken(findings), `body ${i}`).toEqual([]);
      expect(
        made.issues.filter(({ severity }) => severity === 'error'),
        `body ${i}`,
      ).toEqual([]);
    }
  });
});
