// Darts within a panel: room beside them, the edge across them, and what the tape reads over them.

import { describe, expect, it } from 'vitest';
import {
  balancedWedge,
  DEFAULT_STYLE,
  draft,
  type Piece,
  type Point,
  type Style,
  type Wedge,
  withPoints,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { sewnAcross } from '../../support/judges/outline';

const dart = (id: string, station: number, waist: number) =>
  withPoints(
    { ...balancedWedge(id, 'back', station, 1), sizing: 'manual', intake: { waist } },
    { upper: { from: 'waist', below: -80 }, lower: { from: 'waist', below: 60 } },
  );

/** The back in one panel, but for these darts. */
const withDarts = (...darts: Style['wedges']): Style => ({
  ...DEFAULT_STYLE,
  wedges: [...DEFAULT_STYLE.wedges.filter(({ block }) => block === 'front'), ...darts],
});

const narrowBeside = (style: Style): (string | undefined)[] =>
  draft(MEAN_BODY, style)
    .issues.filter(({ code, severity }) => code === 'panelTooNarrow' && severity === 'error')
    .map(({ at }) => at.wedge);

describe('the room a dart leaves', () => {
  it('is refused where less than 20 mm lie between it and the side', () => {
    expect(narrowBeside(withDarts(dart('eye', 0.5, 16)))).toEqual([]);
    expect(narrowBeside(withDarts(dart('eye', 0.9, 16)))).toEqual(['eye']);
  });

  it('is refused where less than 20 mm lie between two of them', () => {
    expect(narrowBeside(withDarts(dart('one', 0.2, 16), dart('other', 0.65, 16)))).toEqual([]);
    expect(narrowBeside(withDarts(dart('one', 0.4, 16), dart('other', 0.6, 16)))).toEqual(['one']);
  });
});

describe('the axis of a dart', () => {
  const axisOf = (change: Partial<Wedge>): readonly number[] => {
    const style = withDarts({ ...dart('eye', 0.5, 16), ...change } as Wedge);
    return draft(MEAN_BODY, style).blocks?.back.wedges.find(({ id }) => id === 'eye')?.axis.xs ?? [];
  };
  const spread = (xs: readonly number[]): number => Math.max(...xs) - Math.min(...xs);

  it('is upright, whether or not it is open at an edge', () => {
    expect(axisOf({}).length).toBeGreaterThan(1);
    expect(spread(axisOf({}))).toBeLessThan(1e-9);
    expect(spread(axisOf({ kind: 'openAtHem', lower: undefined } as Partial<Wedge>))).toBeLessThan(1e-9);
  });

  it('leans where it was put by hand', () => {
    expect(spread(axisOf({ stationAt: { underBust: 0.7 } }))).toBeGreaterThan(3);
    expect(spread(axisOf({ fromCentre: { underBust: 60 } }))).toBeGreaterThan(3);
  });

  it('follows its station where it parts two panels', () => {
    const through = { kind: 'through', upper: undefined, lower: undefined } as Partial<Wedge>;
    expect(spread(axisOf(through))).toBeGreaterThan(3);
  });
});

describe('what a dart takes near its point', () => {
  const FULL = { ...MEAN_BODY, bust: 980, underBust: 780, waist: 700 };
  const takes = (seam: boolean): number => {
    const wedges = DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-centre');
    const style: Style = {
      ...DEFAULT_STYLE,
      balance: { ...DEFAULT_STYLE.balance, cap: 90 },
      wedges: wedges.flatMap((wedge) =>
        wedge.id === 'front-side'
          ? [withPoints({ ...wedge, weight: 3 }, { upper: { from: 'bust', below: 38 } })]
          : wedge.id === 'front-bust' && !seam
            ? []
            : [wedge],
      ),
    };
    const drafted = draft(FULL, style).blocks?.front.wedges.find(({ id }) => id === 'front-side');
    return drafted?.intake.get('underBust') ?? Number.NaN;
  };

  it('is so little that it is slim, where a seam can take the rest', () => {
    expect(takes(true)).toBeCloseTo(0.75 * (75 - 38), 6);
  });

  it('is what the body asks for, where none can', () => {
    expect(takes(false)).toBeGreaterThan(0.75 * (75 - 38) + 5);
  });
});

describe('the tape over a closed dart', () => {
  it('reads the cloth that is left when it is stitched', () => {
    const style = withDarts(dart('eye', 0.4, 20));
    for (const body of drawBodies(20, 81)) {
      const { pieces, proof, issues } = draft(body, style);
      if (issues.some(({ severity }) => severity === 'error')) continue;
      const waist = proof.ledger.find(({ level }) => level === 'waist');
      const cloth = pieces.reduce((sum, piece) => sum + (sewnAcross(piece, waist?.y ?? 0) ?? 0), 0);
      expect(waist?.sewnGirth).toBeCloseTo(2 * cloth, 6);
      expect(Math.abs((waist?.sewnGirth ?? 0) - (waist?.targetGirth ?? 0))).toBeLessThan(0.1);
    }
  });
});

describe('the edge across an open dart', () => {
  it('is cut to a peak that folds up along the leg onto the edge beside it', () => {
    const open = withPoints(
      { ...balancedWedge('open', 'back', 0.4, 1), sizing: 'manual', intake: { waist: 16, hip: 30 } },
      { upper: { from: 'waist', below: -80 } },
    );
    const style: Style = {
      ...withDarts(open),
      allowances: { ...DEFAULT_STYLE.allowances, hem: 0 },
    };
    const piece = draft(MEAN_BODY, style).pieces.find(({ darts }) => darts.length > 0) as Piece;
    const { inner, outer } = piece.darts[0] ?? { inner: [], outer: [] };
    const [tip, mouth, other] = [inner[0], inner.at(-1), outer.at(-1)] as [Point, Point, Point];
    const peaks = piece.cutLine.filter(({ x, y }) => x > mouth.x + 1 && x < other.x - 1 && y > tip.y);
    expect(peaks).toHaveLength(1);
    const peak = peaks[0] as Point;
    // Mirrored in the leg, from the dart's point to its mouth.
    const [dx, dy] = [mouth.x - tip.x, mouth.y - tip.y];
    const along = ((peak.x - tip.x) * dx + (peak.y - tip.y) * dy) / (dx * dx + dy * dy);
    const folded = { x: 2 * (tip.x + along * dx) - peak.x, y: 2 * (tip.y + along * dy) - peak.y };
    const hem = piece.edges[1]?.points ?? [];
    const [before, end] = hem.slice(-2) as [Point, Point];
    const off =
      ((end.x - before.x) * (folded.y - before.y) - (end.y - before.y) * (folded.x - before.x)) /
      Math.hypot(end.x - before.x, end.y - before.y);
    expect(Math.abs(off)).toBeLessThan(1e-3);
    expect(folded.x).toBeLessThan(mouth.x);
  });
});
