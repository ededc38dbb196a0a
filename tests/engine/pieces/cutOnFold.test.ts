// A piece cut on the fold: its cut line ends at the fold, where the other half continues it, and keeps the allowance beside every
// edge up to there, at the point of a V neckline as well.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  DEFAULT_STYLE,
  draft,
  type Measurements,
  type Piece,
  type Point,
  type Style,
} from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { alongTo } from '../../support/judges/outline';

const PRINCESS = NAMED_STYLES.get('princess-bodice')?.style as Style;

const ON_FOLD_MM = 1e-6;

/** Points along the cut line, but for what runs along the fold at x = 0. */
function offTheFold({ cutLine }: Piece): Point[] {
  return cutLine.flatMap((from, i) => {
    const to = cutLine[(i + 1) % cutLine.length] as Point;
    if (from.x < ON_FOLD_MM && to.x < ON_FOLD_MM) return [];
    return [0, 0.25, 0.5, 0.75, 1].map((part) => ({
      x: from.x + (to.x - from.x) * part,
      y: from.y + (to.y - from.y) * part,
    }));
  });
}

/** The least distance of the cut line from the sew line of the edges that are not on the fold, mm. */
function leastAllowance(piece: Piece): number {
  const sewn = piece.edges.filter(({ role }) => role !== 'centre');
  return Math.min(
    ...offTheFold(piece).flatMap((point) => sewn.map(({ points }) => alongTo(points, point).off)),
  );
}

const frontOf = (body: Measurements, style: Style): Piece => {
  const { pieces, issues } = draft(body, style);
  expect(issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  return pieces.find(({ id }) => id === 'front-1') as Piece;
};

/** Every allowance the same, so that one number holds for the whole cut line. */
const withAllowance = (mm: number): Style['allowances'] => ({
  seam: mm,
  side: mm,
  top: mm,
  hem: mm,
  centre: mm,
});

const pointed = (beyond: number) => ({ beyond, kind: 'corner' }) as const;

describe('a V neckline on the fold', () => {
  const style = (beyond: number, allowance: number): Style => ({
    ...PRINCESS,
    closure: { ...PRINCESS.closure, front: 'fold', back: 'zip' },
    wedges: PRINCESS.wedges.filter(({ station }) => station !== -1),
    allowances: withAllowance(allowance),
    topShape: { ...PRINCESS.topShape, centreFront: pointed(beyond) },
  });

  it.each([12.7, 30])('ends at the fold with %d mm at its point, from any height', (allowance) => {
    for (const neckWidth of [130, 180])
      for (let beyond = neckWidth < 150 ? -140 : -200; beyond <= 120; beyond += 20) {
        const body = withShoulders({ ...MEAN_BODY, neckWidth });
        const piece = frontOf(body, style(beyond, allowance));
        const place = `${neckWidth} ${beyond}`;
        expect(Math.min(...piece.cutLine.map(({ x }) => x)), place).toBeGreaterThan(-ON_FOLD_MM);
        expect(leastAllowance(piece), place).toBeGreaterThan(allowance - 0.05);
      }
  });
});

describe('top edge and hem on the fold', () => {
  const style = (top: number, hem: number): Style => ({
    ...DEFAULT_STYLE,
    closure: { ...DEFAULT_STYLE.closure, front: 'fold' },
    wedges: DEFAULT_STYLE.wedges.filter(({ station }) => station !== -1),
    allowances: withAllowance(20),
    topShape: { ...DEFAULT_STYLE.topShape, centreFront: pointed(top) },
    hemShape: { ...DEFAULT_STYLE.hemShape, centreFront: pointed(hem) },
  });

  it.each([
    [-100, -40],
    [-60, 0],
    [0, 60],
    [60, 120],
  ])('pointed by %d and %d mm end at the fold with their allowances', (top, hem) => {
    const piece = frontOf(MEAN_BODY, style(top, hem));
    expect(Math.min(...piece.cutLine.map(({ x }) => x))).toBeGreaterThan(-ON_FOLD_MM);
    expect(leastAllowance(piece)).toBeGreaterThan(20 - 0.05);
  });
});
