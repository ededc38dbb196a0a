// Centre front and centre back: what stays open, what lies on the fold, and that a garment can be got into.

import { describe, expect, it } from 'vitest';
import { type Closure, DEFAULT_STYLE, type Draft, draft, openWidth } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

const GAP = 50;
const straight = DEFAULT_STYLE.wedges.filter(({ station }) => station > -1);
const closed = (front: Closure['front'], back: Closure['back'], wedges = straight): Draft =>
  draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges, closure: { front, back, lacingGap: GAP } });
const codes = ({ issues }: Draft): string[] => issues.map(({ code }) => code);
const cloth = (made: Draft): number =>
  made.proof.ledger.find(({ level }) => level === 'waist')?.sewnGirth ?? Number.NaN;

describe('a lacing', () => {
  it('takes its gap off the block whose centre it is at, and off both where both are laced', () => {
    const none = closed('busk', 'hooks');
    const net = (made: Draft, block: 'front' | 'back'): number =>
      made.levels.find(({ name }) => name === 'waist')?.net[block] ?? Number.NaN;
    for (const [made, front, back] of [
      [closed('busk', 'lacing'), 0, GAP],
      [closed('lacing', 'zip'), GAP, 0],
      [closed('lacing', 'lacing'), GAP, GAP],
    ] as const) {
      expect(net(none, 'front') - net(made, 'front')).toBeCloseTo(front / 2, 9);
      expect(net(none, 'back') - net(made, 'back')).toBeCloseTo(back / 2, 9);
      expect(cloth(none) - cloth(made)).toBeCloseTo(front + back, 6);
    }
  });

  it('is told with the draft, and its open width with the closure', () => {
    expect(closed('lacing', 'lacing').laced).toEqual(['front', 'back']);
    expect(closed('busk', 'zip').laced).toEqual([]);
    expect(openWidth({ front: 'lacing', back: 'lacing', lacingGap: 30 })).toBe(60);
    expect(openWidth({ front: 'seam', back: 'zip', lacingGap: 30 })).toBe(0);
  });
});

describe('a fold', () => {
  it('at centre back is cut once, with no allowance there', () => {
    const piece = closed('busk', 'fold').pieces.find(({ id }) => id === 'back-1');
    expect(piece?.cut).toEqual({ count: 1, onFold: true });
    expect(piece?.edges.find(({ role }) => role === 'centre')?.allowance).toBe(0);
    expect(closed('busk', 'fold').pieces.find(({ id }) => id === 'front-1')?.cut.onFold).toBe(false);
  });

  it('at centre back that a wedge curves becomes a seam', () => {
    const [first] = straight;
    const centre = first && {
      ...first,
      id: 'cb',
      block: 'back' as const,
      station: -1,
      sizing: 'manual' as const,
      intake: { waist: 10 },
    };
    const made = closed('busk', 'fold', centre ? [...straight, centre] : []);
    expect(made.issues).toContainEqual(
      expect.objectContaining({
        code: 'foldBecomesSeam',
        at: { block: 'back', wedge: 'cb', field: 'closure.back' },
      }),
    );
    expect(made.pieces.find(({ id }) => id === 'back-1')?.cut.onFold).toBe(false);
  });
});

it('a garment that opens nowhere is warned of', () => {
  expect(codes(closed('fold', 'seam'))).toContain('noOpening');
  expect(codes(closed('seam', 'seam'))).toContain('noOpening');
  for (const back of ['lacing', 'hooks', 'zip'] as const)
    expect(codes(closed('fold', back))).not.toContain('noOpening');
  expect(codes(closed('busk', 'fold'))).not.toContain('noOpening');
});

describe('a zip', () => {
  const zipped = (more: Partial<typeof DEFAULT_STYLE>, sideZip = true): Draft =>
    draft(MEAN_BODY, {
      ...DEFAULT_STYLE,
      closure: { front: 'seam', back: 'seam', lacingGap: 0, sideZip },
      ...more,
    });

  it('in the side seam opens the garment', () => {
    expect(codes(zipped({}, false))).toContain('noOpening');
    expect(codes(zipped({}))).not.toContain('noOpening');
  });

  it('needs a side seam to be in', () => {
    const refused = zipped({ joinedSide: true }).issues.find(({ code }) => code === 'sideZipNeedsSeam');
    expect(refused).toMatchObject({ severity: 'error', at: { field: 'closure.sideZip' } });
  });

  it('needs 1 in beside it (common practice, no source), at the side and at a centre', () => {
    expect(codes(zipped({}))).not.toContain('zipNeedsAllowance');
    const allowances = { ...DEFAULT_STYLE.allowances, side: 12, centre: 12 };
    const fields = (made: Draft): (string | undefined)[] =>
      made.issues.filter(({ code }) => code === 'zipNeedsAllowance').map(({ at }) => at.field);
    expect(fields(zipped({ allowances }))).toEqual(['allowances.side']);
    const atBack = { front: 'seam', back: 'zip', lacingGap: 0 } as const;
    expect(fields(zipped({ allowances, closure: atBack }))).toEqual(['allowances.centre']);
  });
});
