import { describe, expect, it } from 'vitest';
import {
  draftSize,
  jumpsOf,
  NAMED_STYLES,
  passedOver,
  readSizes,
  sizesCsv,
  sizeTable,
  stepsOf,
} from '../../../src/document';
import { DEFAULT_STYLE, polylineLength } from '../../../src/engine';
import { sizeRange } from '../../support/bodies/sizeRange';
import { broken, judge } from '../../support/judges/judge';

const RANGE = readSizes(`\ufeff${sizeRange()}`, 'mm');
const SIZES = RANGE.bodies.map((body) => draftSize(body, DEFAULT_STYLE));
const FIRST = SIZES[0] as (typeof SIZES)[number];

describe('a table of sizes', () => {
  it('is read with its names, units, decimal commas and byte order mark', () => {
    expect(RANGE.faults).toEqual([]);
    expect(passedOver(RANGE.columns)).toEqual([]);
    expect(RANGE.bodies.map(({ name }) => name)).toEqual([
      '34',
      '36',
      '38',
      '40',
      '42',
      '44',
      '46',
      '48',
      '50',
      '52',
      '54',
      '56',
    ]);
    expect(RANGE.bodies[3]?.measurements).toMatchObject({ bust: 920, neckToBust: 270, overBust: null });
  });

  it('says a bad cell, a missing name and a name that comes twice by their rows, and reads the others', () => {
    const text = 'Size,Bust (cm),Waist (cm)\nS,84,66\nM,eighty,70\n,92,74\nS,96,78\nL,100,82';
    const read = readSizes(text, 'mm');
    expect(read.bodies.map(({ name }) => name)).toEqual(['S', 'L']);
    expect(read.faults).toEqual([
      { code: 'notALength', row: 3, column: 'Bust (cm)', text: 'eighty' },
      { code: 'nameMissing', row: 4 },
      { code: 'nameTwice', row: 5, name: 'S' },
    ]);
    expect(readSizes('Size,Shoe\nS,38', 'mm').bodies).toEqual([]);
  });
});

describe('a range of sizes', () => {
  it.each([...NAMED_STYLES.keys()].slice(0, 6))(
    'is drafted within the bounds of every draft: %s',
    (named) => {
      const style = NAMED_STYLES.get(named)?.style ?? DEFAULT_STYLE;
      for (const body of RANGE.bodies) {
        const { draft, canBeCut } = draftSize(body, style);
        if (canBeCut)
          expect([body.name, ...broken(judge(body.measurements, style, draft))]).toEqual([body.name]);
      }
    },
  );

  it('of the default style can all be cut', () => {
    expect(SIZES.filter(({ canBeCut }) => canBeCut)).toHaveLength(12);
  });

  it('has the widths of its panels and the lengths of its seams side by side, as they measure on the pieces', () => {
    const rows = sizeTable(SIZES);
    for (const row of rows) expect(row.lengths).toHaveLength(12);
    const seam = rows.find((row) => row.kind === 'seam' && row.seam.kind === 'sideSeam');
    for (const [i, { draft }] of SIZES.entries()) {
      const edge = draft.pieces.flatMap(({ edges }) => edges).find(({ isSideSeam }) => isSideSeam);
      expect(seam?.lengths[i]).toBeCloseTo(polylineLength(edge?.points ?? []), 1);
      const waist = rows.filter((each) => each.kind === 'width' && each.level === 'waist');
      const whole = 2 * waist.reduce((sum, { lengths }) => sum + (lengths[i] ?? Number.NaN), 0);
      const ledger = draft.proof.ledger.find(({ level }) => level === 'waist');
      expect(whole).toBeCloseTo(ledger?.sewnGirth ?? Number.NaN, 2);
    }
    const [width] = rows;
    expect(width && stepsOf(width)).toHaveLength(11);
  });

  it('has gaps in the table where a size cannot be cut, and says so in the file', () => {
    const bad = draftSize(
      { name: '=0', measurements: { ...FIRST.measurements, waist: null } },
      DEFAULT_STYLE,
    );
    expect(bad.canBeCut).toBe(false);
    const table = sizeTable([FIRST, bad]);
    expect(table.length).toBeGreaterThan(10);
    for (const row of table) {
      expect(row.lengths[1]).toBeNull();
      expect(stepsOf(row)).toEqual([null]);
    }
    const [head, cut, first] = sizesCsv([FIRST, bad]).split('\r\n');
    expect(head).toBe("what,piece or seam,level,unit,34,'=0");
    expect(cut).toBe('can be cut,,,,yes,no');
    expect(first).toMatch(/^panel width,Front 1,[a-z-]+,mm,\d+(\.\d+)?,$/);
  });
});

describe('a step that jumps', () => {
  const [row] = sizeTable([FIRST]);
  const jumps = (lengths: readonly (number | null)[], busts: readonly (number | null)[]): boolean[] =>
    jumpsOf({ ...(row as NonNullable<typeof row>), lengths }, busts);

  it('is over 2 mm from what the row usually grows over such a step of bust', () => {
    expect(jumps([100, 110, 120, 130], [800, 840, 880, 920])).toEqual([false, false, false]);
    expect(jumps([100, 110, 120, 133, 143], [800, 840, 880, 920, 960])).toEqual([false, false, true, false]);
    expect(jumps([100, 110, 120, 131.9, 142], [800, 840, 880, 920, 960])).toEqual(Array(4).fill(false));
    expect(jumps([100, 90, 80, 85], [800, 840, 880, 920])).toEqual([false, false, true]);
  });

  it('is told from a larger step of bust, over which the row grows more', () => {
    expect(jumps([100, 110, 120, 135, 150], [800, 840, 880, 940, 1000])).toEqual(Array(4).fill(false));
    expect(jumps([100, 110, 120, 130, 140], [800, 840, 880, 940, 980])).toEqual([false, false, true, false]);
  });

  it('is none where a length or a bust is not known, or of fewer than three steps', () => {
    expect(jumps([100, 110, 150], [800, 840, 880])).toEqual([false, false]);
    expect(jumps([100, null, 120, 130, 140], [800, 840, 880, 920, 960])).toEqual(Array(4).fill(false));
    expect(jumps([100, 110, 120, 130, 190], [800, 840, 880, 920, null])).toEqual(Array(4).fill(false));
  });
});
