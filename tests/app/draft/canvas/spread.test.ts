import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../../src/app/draft/canvas/spread';

describe('rows of the ledger', () => {
  it('stand on their lines where there is room', () => {
    expect(spread([100, 200, 300], [36, 36, 94], 18, 600)).toEqual([82, 182, 282]);
  });

  it('cover no other and end within the table, in whatever order their lines lie close', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ line: fc.integer({ min: -300, max: 900 }), height: fc.integer({ min: 30, max: 94 }) }),
          {
            minLength: 1,
            maxLength: 6,
          },
        ),
        (rows) => {
          const sorted = [...rows].sort((a, b) => a.line - b.line);
          const heights = sorted.map(({ height }) => height);
          const tops = spread(
            sorted.map(({ line }) => line),
            heights,
            18,
            700,
          );
          tops.forEach((top, i) => {
            expect(top + (heights[i] ?? 0)).toBeLessThanOrEqual(tops[i + 1] ?? 700);
            expect(top).toBeGreaterThanOrEqual(0);
          });
        },
      ),
    );
  });
});
