import { describe, expect, it } from 'vitest';
import { stationOf, stationX } from '../../../../src/engine';

describe('stations', () => {
  it('stand at the centre line, the bust-point line and the side seam', () => {
    expect([-1, 0, 1].map((station) => stationX(station, 92, 240))).toEqual([0, 92, 240]);
  });

  it('make the round trip', () => {
    for (let station = -1; station <= 1; station += 0.05)
      expect(stationOf(stationX(station, 92, 240), 92, 240)).toBeCloseTo(station, 12);
    for (let x = 0; x <= 240; x += 6) expect(stationX(stationOf(x, 92, 240), 92, 240)).toBeCloseTo(x, 9);
  });

  it('off the block count as its ends', () => {
    expect(stationOf(-30, 92, 240)).toBe(-1);
    expect(stationOf(300, 92, 240)).toBe(1);
  });
});
