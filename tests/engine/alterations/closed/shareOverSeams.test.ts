import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../../src/document';
import {
  DEFAULT_STYLE,
  draftWhole,
  openWidth,
  type PerLevel,
  type Style,
  shareOverSeams,
} from '../../../../src/engine';
import { MEAN_BODY } from '../../../support/bodies/drawBodies';

const LONG = NAMED_STYLES.get('long-line-side-panels')?.style as Style;

describe('gaps of the lacing read by level', () => {
  it.each([
    ['the default style', { ...DEFAULT_STYLE, hemBelow: 250 }],
    ['side panels in one', { ...LONG, hemBelow: 250 }],
    [
      'no wedge behind',
      { ...DEFAULT_STYLE, wedges: DEFAULT_STYLE.wedges.filter(({ block }) => block === 'front') },
    ],
  ] as readonly (readonly [string, Style])[])('close the lacing to what was asked for, %s', (_, style) => {
    const base = draftWhole(MEAN_BODY, style);
    const gap = openWidth(style.closure);
    const gaps: Partial<PerLevel> = { bust: 76.2, waist: 50.8, hip: 101.6 };
    if (!base.blocks) throw new Error('it is drafted');
    const alterations = shareOverSeams({ blocks: base.blocks, levels: base.levels, style, gaps });
    const made = draftWhole(MEAN_BODY, style, null, alterations);
    expect(made.alterations.length).toBeGreaterThan(0);
    expect(made.alterations.every((each) => each?.applied)).toBe(true);
    for (const { level, alteredBy } of made.proof.ledger) {
      const read = gaps[level];
      if (read !== undefined) expect(alteredBy, level).toBeCloseTo(read - gap, 9);
      if (level === 'overBust') expect(alteredBy, level).toBeCloseTo(0, 9);
    }
  });

  it('let out the side seam by its share at the waist and the front wedges by weight', () => {
    const base = draftWhole(MEAN_BODY, DEFAULT_STYLE);
    if (!base.blocks) throw new Error('it is drafted');
    const gap = openWidth(DEFAULT_STYLE.closure);
    const of = (id: string, other: string): number => {
      const found = shareOverSeams({
        blocks: base.blocks as NonNullable<typeof base.blocks>,
        levels: base.levels,
        style: DEFAULT_STYLE,
        gaps: { waist: gap + 40 },
      }).find(({ seam }) => JSON.stringify(seam).includes(id) && JSON.stringify(seam).includes(other));
      const [said] = found?.at ?? [];
      return (said?.a ?? 0) + (said?.b ?? 0);
    };
    const panel = (block: string, number: number) => JSON.stringify({ kind: 'panel', block, number });
    expect(of(panel('front', 3), panel('back', 3))).toBeCloseTo(-20 * DEFAULT_STYLE.balance.sideShare, 9);
    const [bust, side] = [of(panel('front', 1), panel('front', 2)), of(panel('front', 2), panel('front', 3))];
    const weights = DEFAULT_STYLE.wedges.filter(({ block, station }) => block === 'front' && station > -1);
    const [first, second] = [...weights].sort((a, b) => a.station - b.station);
    expect(bust / side).toBeCloseTo((first?.weight ?? 0) / (second?.weight ?? 1), 9);
  });

  it('ask for nothing where the lacing lies as it should', () => {
    const base = draftWhole(MEAN_BODY, DEFAULT_STYLE);
    if (!base.blocks) throw new Error('it is drafted');
    const gap = openWidth(DEFAULT_STYLE.closure);
    const gaps = { bust: gap, waist: gap };
    expect(shareOverSeams({ blocks: base.blocks, levels: base.levels, style: DEFAULT_STYLE, gaps })).toEqual(
      [],
    );
  });
});
