import { describe, expect, it } from 'vitest';
import {
  type DartSpace,
  DEMO_CLIENT,
  pointX,
  setEnds,
  setStationAt,
  slantDart,
  straighten,
  straightenAt,
} from '../../../../src/document';
import { DEFAULT_STYLE, type Draft, draft, type Style } from '../../../../src/engine';

const SPACE: DartSpace = { top: 235, bust: 273, waist: 406, hem: 508 };
const redraft = (style: Style): Draft => draft(DEMO_CLIENT.measurements, style);
const closed = (id: string): Style => setEnds(DEFAULT_STYLE, id, 'closed', SPACE);

describe('an axis', () => {
  it('is bent at one level, and straightened there or all over', () => {
    const bent = setStationAt(
      setStationAt(DEFAULT_STYLE, 'front-side', 'waist', 0.6),
      'front-side',
      'hip',
      0.4,
    );
    expect(
      straightenAt(bent, 'front-side', 'waist').wedges.find(({ id }) => id === 'front-side')?.stationAt,
    ).toEqual({ hip: 0.4 });
    expect(straighten(bent, 'front-side')).toEqual(DEFAULT_STYLE);
  });
});

describe('a closed dart', () => {
  it.each([
    ['front-side', 'upper', 12],
    ['front-side', 'lower', -9],
    ['back-side', 'lower', 7],
    ['front-bust', 'upper', -15],
  ] as const)('%s: its %s point is moved across by %d mm, the other stays within a mm', (id, end, by) => {
    const style = closed(id);
    const other = end === 'upper' ? 'lower' : 'upper';
    const [from, still] = [pointX(redraft(style), id, end), pointX(redraft(style), id, other)];
    const slanted = redraft(slantDart(style, id, end, (from ?? 0) + by, redraft));
    expect(pointX(slanted, id, end)).toBeCloseTo((from ?? 0) + by, 1);
    expect(Math.abs((pointX(slanted, id, other) ?? 0) - (still ?? 0))).toBeLessThan(1);
    expect(slanted.pieces.length).toBe(redraft(style).pieces.length);
  });

  it('is left as it was where there is none to slant', () => {
    expect(slantDart(DEFAULT_STYLE, 'front-side', 'upper', 100, redraft)).toEqual(DEFAULT_STYLE);
    expect(slantDart(DEFAULT_STYLE, 'nobody', 'upper', 100, redraft)).toEqual(DEFAULT_STYLE);
  });
});
