// Where the body grows below the waist, and what the wedges let out for it.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, type Draft, draft, type Style } from '../../../src/engine';
import { growthUpTo } from '../../../src/engine/block/spring';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';

const half = (made: Draft, name: 'waist' | 'hip'): number => {
  const level = made.levels.find((each) => each.name === name);
  if (!level) throw new Error(`the draft has a ${name} line`);
  return (level.bodyGirth + level.ease) / 2;
};

const letOut = (made: Draft, id: string): number => {
  const wedges = [...(made.blocks?.front.wedges ?? []), ...(made.blocks?.back.wedges ?? [])];
  const { intake } = wedges.find((wedge) => wedge.id === id) ?? {};
  return (intake?.get('waist') ?? Number.NaN) - (intake?.get('hip') ?? Number.NaN);
};

const width = (made: Draft, block: 'front' | 'back', level: 'waist' | 'hip'): number =>
  made.blocks?.[block].width.get(level) ?? Number.NaN;

const withManual = (id: string, intake: Style['wedges'][number]['intake']): Style => ({
  ...DEFAULT_STYLE,
  wedges: DEFAULT_STYLE.wedges.map((wedge) =>
    wedge.id === id ? ({ ...wedge, sizing: 'manual', intake } as typeof wedge) : wedge,
  ),
});

describe('the growth of the half girth', () => {
  it('is nothing at centre front, all at centre back, most at the side, and never falls between', () => {
    expect([-1, 0, 1, 2].map(growthUpTo)).toEqual([0, 0, 1, 1]);
    const parts = Array.from({ length: 101 }, (_, i) => growthUpTo(i / 100));
    for (const [i, part] of parts.entries())
      if (i > 0) expect(part).toBeGreaterThanOrEqual(parts[i - 1] ?? 0);
    expect(growthUpTo(0.45)).toBeCloseTo((0.238 + 0.397) / 2, 12);
    expect(growthUpTo(0.6) - growthUpTo(0.4)).toBeGreaterThan(growthUpTo(0.2) - growthUpTo(0));
  });
});

describe('spring below the waist', () => {
  it('is shared by wedges and side seam: together they let out all that the body grows', () => {
    for (const body of [MEAN_BODY, ...drawBodies(40, 12)]) {
      const made = draft(body, DEFAULT_STYLE);
      const wedges = DEFAULT_STYLE.wedges.reduce((sum, { id }) => sum + letOut(made, id), 0);
      const side = (['front', 'back'] as const).reduce(
        (sum, block) => sum + width(made, block, 'hip') - width(made, block, 'waist'),
        0,
      );
      expect(wedges + side).toBeCloseTo(half(made, 'hip') - half(made, 'waist'), 9);
    }
  });

  it('of a wedge by hand is its own and changes no other wedge of the other block', () => {
    const [plain, byHand] = [
      draft(MEAN_BODY, DEFAULT_STYLE),
      draft(MEAN_BODY, withManual('front-side', { waist: 20, hip: -60 })),
    ];
    expect(letOut(byHand, 'front-side')).toBe(80);
    for (const id of ['back-centre', 'back-side']) expect(letOut(byHand, id)).toBe(letOut(plain, id));
    // However much it lets out, a balanced wedge lets out too and never closes.
    for (const id of ['front-centre', 'front-bust']) expect(letOut(byHand, id)).toBeGreaterThanOrEqual(0);
  });

  it('is none where the body grows no further', () => {
    const straight = { ...MEAN_BODY, highHip: null, hip: MEAN_BODY.waist - 60 };
    const made = draft(straight, DEFAULT_STYLE);
    for (const { id } of DEFAULT_STYLE.wedges) expect(letOut(made, id)).toBe(0);
  });

  it('of a dart stops at nothing: it adds no cloth', () => {
    const wide = { ...MEAN_BODY, hip: MEAN_BODY.hip + 200 };
    const dart = {
      ...DEFAULT_STYLE,
      hemBelow: 200,
      wedges: DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === 'back-side'
          ? ({ ...wedge, kind: 'openAtHem', upper: { from: 'bust', below: 30 } } as typeof wedge)
          : wedge,
      ),
    };
    const through = draft(wide, { ...dart, wedges: DEFAULT_STYLE.wedges });
    expect(through.blocks?.back.wedges.find(({ id }) => id === 'back-side')?.intake.get('hip')).toBeLessThan(
      0,
    );
    const made = draft(wide, dart);
    expect(made.blocks?.back.wedges.find(({ id }) => id === 'back-side')?.intake.get('hip')).toBe(0);
  });
});
