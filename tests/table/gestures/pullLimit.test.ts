import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullLimit } from '../../../src/table/gestures/pullLimit';

/** A draft that has one fault more beyond each of two values. */
const faultsBetween =
  (least: number, most: number) =>
  (value: number): number =>
    value < least || value > most ? 1 : 0;

const same = (value: number): number => value;

describe('how far a handle is pulled', () => {
  it('is as far as it is asked, where the draft can be cut there', () => {
    const limit = pullLimit(10, 0);
    expect(limit.reach(14, 1, same, faultsBetween(0, 20))).toEqual({ value: 14, made: 14, isLimit: false });
  });

  it('is to the last value that can be cut, to within a line of the grid, and never beyond it', () => {
    fc.assert(
      fc.property(fc.double({ min: 10.5, max: 60, noNaN: true }), (most) => {
        const faults = faultsBetween(0, most);
        const limit = pullLimit(10, 0);
        const found = limit.reach(70, 1.5, same, faults);
        expect(found.isLimit).toBe(true);
        expect(faults(found.value)).toBe(0);
        expect(most - found.value).toBeLessThan(1.5);
        // What lies beyond is not tried again, and the way back is free.
        let tried = 0;
        const again = limit.reach(80, 1.5, (value) => value + 0 * tried++, faults);
        expect([again.value, tried]).toEqual([found.value, 1]);
        expect(limit.reach(10, 1.5, same, faults).isLimit).toBe(false);
      }),
    );
  });

  it('lets a draft be pulled that could not be cut before', () => {
    expect(pullLimit(30, 1).reach(40, 1, same, faultsBetween(0, 20))).toMatchObject({
      value: 40,
      isLimit: false,
    });
  });
});
