// Papers, arrangement and the cutting of the plan into sheets.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkPaper,
  DEFAULT_PAPER_CHOICE,
  layOut,
  ownPartOf,
  PAPERS,
  paperChoice,
  paperSentence,
  sheetName,
  windowOf,
} from '../../../src/paper';
import { clipLine } from '../../../src/paper/geometry/clip';
import { arrange } from '../../../src/paper/packing/arrange';
import { gridFor } from '../../../src/paper/sheets/grid';
import { usedSheets } from '../../../src/paper/sheets/usedSheets';
import { demoPattern } from '../demoPattern';
import { type ReadPoint, sampled, toLines } from '../readPattern';

const A4 = DEFAULT_PAPER_CHOICE;

describe('papers', () => {
  // ISO 216: A3 297 × 420, A4 210 × 297 mm. ANSI/ASME Y14.1: Letter 8.5 × 11, Tabloid 11 × 17 in. Legal 8.5 × 14 in.
  it.each([
    ['A4', 210, 297],
    ['A3', 297, 420],
    ['Letter', 8.5 * 25.4, 11 * 25.4],
    ['Legal', 8.5 * 25.4, 14 * 25.4],
    ['Tabloid', 11 * 25.4, 17 * 25.4],
  ] as const)('%s has the size of its standard', (name, width, height) => {
    const choice = paperChoice(name);
    expect(choice.widthMm).toBeCloseTo(width, 9);
    expect(choice.heightMm).toBeCloseTo(height, 9);
    expect(checkPaper(choice)).toEqual({ ok: true });
  });

  it.each([
    [{ marginMm: 25 }, 'marginOutOfRange', 'between 0 and 2 cm'],
    [{ marginMm: -1 }, 'marginOutOfRange', 'between 0 and 2 cm'],
    [{ overlapMm: 2 }, 'overlapOutOfRange', 'between 0.5 cm and 3 cm'],
    [{ overlapMm: 200 }, 'overlapOutOfRange', 'between 0.5 cm and 3 cm'],
    [{ widthMm: 105, heightMm: 148 }, 'paperTooSmall', 'at least 18.5 cm × 25.6 cm'],
    [{ widthMm: 900, heightMm: 6000 }, 'paperTooLarge', 'over 508 cm'],
    [{ widthMm: Number.NaN }, 'paperNotANumber', 'numbers'],
  ])('refuses %j with a sentence', (change, code, part) => {
    const checked = checkPaper({ ...A4, ...change });
    expect(checked.ok ? null : checked.fault.code).toBe(code);
    expect(checked.ok ? '' : paperSentence(checked.fault, 'cm')).toContain(part);
  });

  it('allows the widest margin and overlap on every paper, on the first page too', () => {
    for (const { name } of PAPERS)
      expect(checkPaper({ ...paperChoice(name), marginMm: 20, overlapMm: 30 })).toEqual({ ok: true });
  });
});

describe('arrange', () => {
  it('keeps outlines 10 mm apart and inside the width it tells, whatever their sizes', async () => {
    const size = fc.record({
      width: fc.double({ min: 5, max: 300, noNaN: true }),
      height: fc.double({ min: 5, max: 600, noNaN: true }),
    });
    await fc.assert(
      fc.property(
        fc.array(size, { maxLength: 12 }),
        fc.integer({ min: 50, max: 900 }),
        fc.boolean(),
        (sizes, most, byHeight) => {
          const outlines = sizes.map(({ width, height }) => [
            { x: -3, y: 200 },
            { x: -3 + width, y: 200 },
            { x: -3 + width, y: 200 + height },
          ]);
          const { offsets, widthMm, heightMm } = arrange(outlines, most, byHeight);
          const boxes = offsets.map(({ x, y }, i) => ({
            left: x - 3,
            top: y + 200,
            right: x - 3 + (sizes[i]?.width ?? 0),
            bottom: y + 200 + (sizes[i]?.height ?? 0),
          }));
          expect(widthMm).toBeLessThanOrEqual(Math.max(most, ...sizes.map(({ width }) => width)) + 1e-9);
          for (const [i, box] of boxes.entries()) {
            expect(Math.min(box.left, box.top)).toBeGreaterThan(-1e-9);
            expect(box.right).toBeLessThan(widthMm + 1e-9);
            expect(box.bottom).toBeLessThan(heightMm + 1e-9);
            for (const other of boxes.slice(i + 1))
              expect(
                Math.max(
                  other.left - box.right,
                  box.left - other.right,
                  other.top - box.bottom,
                  box.top - other.bottom,
                ),
              ).toBeGreaterThan(10 - 1e-9);
          }
        },
      ),
    );
  });
});

describe('clipLine', () => {
  const box = { left: 0, top: 0, right: 10, bottom: 10 };

  it('keeps what is inside and says how far along it starts', () => {
    const runs = clipLine(
      [
        { x: -5, y: 5 },
        { x: 15, y: 5 },
        { x: 15, y: 8 },
        { x: 5, y: 8 },
      ],
      box,
    );
    expect(runs).toEqual([
      {
        points: [
          { x: 0, y: 5 },
          { x: 10, y: 5 },
        ],
        from: 5,
      },
      {
        points: [
          { x: 10, y: 8 },
          { x: 5, y: 8 },
        ],
        from: 28,
      },
    ]);
  });

  it('loses no length of a line that is cut into neighbouring boxes', async () => {
    const point = fc.record({
      x: fc.double({ min: -20, max: 40, noNaN: true }),
      y: fc.double({ min: 0, max: 10, noNaN: true }),
    });
    const length = (points: readonly ReadPoint[]): number =>
      points
        .slice(1)
        .reduce((sum, { x, y }, i) => sum + Math.hypot(x - (points[i]?.x ?? 0), y - (points[i]?.y ?? 0)), 0);
    await fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 8 }), (points) => {
        const boxes = [
          { ...box, left: -20, right: 7.5 },
          { ...box, left: 7.5, right: 40 },
        ];
        const parts = boxes.flatMap((each) => clipLine(points, each));
        // A stretch along the common side is in both boxes.
        fc.pre(!points.some(({ x }) => x === 7.5));
        expect(parts.reduce((sum, extent) => sum + length(extent.points), 0)).toBeCloseTo(length(points), 6);
      }),
    );
  });
});

describe('sheets', () => {
  it('are named by row and column', () => {
    expect(sheetName({ row: 1, column: 2 })).toBe('B3');
    expect(sheetName({ row: 26, column: 0 })).toBe('AA1');
  });

  it('are as many as cover the pattern from edge to edge with their overlaps, and none more', () => {
    // Side by side, each sheet after the first adds its window less the overlap.
    const { windowWidthMm: wide, windowHeightMm: high, overlapMm } = gridFor(A4, 'portrait', 1, 1);
    expect(wide).toBeCloseTo(210 - 2 * A4.marginMm, 9);
    for (let count = 1; count <= 12; count += 1) {
      const [across, down] = [wide, high].map((each) => count * each - (count - 1) * overlapMm) as [
        number,
        number,
      ];
      const just = gridFor(A4, 'portrait', across, down);
      expect([just.columns, just.rows]).toEqual([count, count]);
      const over = gridFor(A4, 'portrait', across + 0.1, down + 0.1);
      expect([over.columns, over.rows]).toEqual([count + 1, count + 1]);
      const { right, bottom } = windowOf(just, { row: count - 1, column: count - 1 });
      expect(right).toBeCloseTo(across, 6);
      expect(bottom).toBeCloseTo(down, 6);
    }
  });

  it('without any line are left out', () => {
    const grid = gridFor(A4, 'portrait', 500, 700);
    expect([grid.columns, grid.rows]).toEqual([3, 3]);
    const corner = [
      { x: 20, y: 20 },
      { x: 20, y: 600 },
      { x: 500, y: 600 },
    ];
    expect(usedSheets(grid, [corner]).map(sheetName)).toEqual(['A1', 'B1', 'C1', 'C2', 'C3']);
    expect(usedSheets(grid, [])).toEqual([]);
  });

  it('that a line only touches where it ends are left out', () => {
    const grid = gridFor(A4, 'portrait', 370, 200);
    const { right } = ownPartOf(grid, { row: 0, column: 0 });
    const line = [
      { x: 20, y: 20 },
      { x: right, y: 20 },
    ];
    expect(usedSheets(grid, [line]).map(sheetName)).toEqual(['A1']);
  });

  it('that would show only what lies in an overlap are left out', () => {
    const grid = gridFor(A4, 'portrait', 370, 200);
    const { right } = windowOf(grid, { row: 0, column: 0 });
    const inOverlap = right - 5;
    expect(
      usedSheets(grid, [
        [
          { x: inOverlap, y: 10 },
          { x: inOverlap, y: 90 },
        ],
      ]).map(sheetName),
    ).toEqual(['A2']);
  });

  it.each(
    PAPERS.flatMap(({ name }) =>
      (['fewest', 'portrait', 'landscape'] as const).map((way) => [name, way] as const),
    ),
  )(
    'of a pattern on %s, %s, hold every line, have ink each, and no more than either way up needs',
    (name, orientation) => {
      const asked = demoPattern(name);
      const layout = layOut({ ...asked, paper: { ...asked.paper, orientation } });
      const windows = layout.sheets.map((sheet) => windowOf(layout.grid, sheet));
      const inside = ({ x, y }: ReadPoint): boolean =>
        windows.some(({ left, right, top, bottom }) => x >= left && x <= right && y >= top && y <= bottom);
      const lines = layout.panels.flatMap(({ lines: own }) => own.map(({ points }) => points));
      expect(lines.flatMap((line) => sampled(line, 3)).filter((point) => !inside(point))).toEqual([]);
      for (const sheet of layout.sheets) {
        const own = ownPartOf(layout.grid, sheet);
        expect(lines.some((line) => clipLine(line, own).length > 0)).toBe(true);
      }
      if (orientation !== 'fewest') {
        expect(layout.grid.orientation).toBe(orientation);
        expect(layOut(asked).sheets.length).toBeLessThanOrEqual(layout.sheets.length);
      }
    },
  );

  it('keep the real outlines 10 mm apart', () => {
    const rings = layOut(demoPattern()).panels.map(({ piece, offset }) =>
      [...piece.cutLine, piece.cutLine[0] as ReadPoint].map(({ x, y }) => ({
        x: x + offset.x,
        y: y + offset.y,
      })),
    );
    for (const [i, ring] of rings.entries()) {
      const apart = Math.min(
        ...sampled(ring, 4).map((point) =>
          toLines(
            point,
            rings.filter((_, j) => j !== i),
          ),
        ),
      );
      expect(apart).toBeGreaterThan(9.99);
    }
  });

  it('of one joint both hold its marks whole, and no other sheet does', () => {
    const { grid, sheets, joints } = layOut(demoPattern('A4'));
    expect(joints.length).toBeGreaterThan(4);
    expect(new Set(joints.map(({ number }) => number)).size).toBe(joints.length);
    for (const { sheets: pair, joinMarks: marks } of joints)
      for (const mark of marks) {
        const holders = sheets.filter((sheet) => {
          const { left, right, top, bottom } = windowOf(grid, sheet);
          return Math.min(mark.x - left, right - mark.x, mark.y - top, bottom - mark.y) >= 2.4;
        });
        expect(holders).toEqual(pair);
      }
  });
});
