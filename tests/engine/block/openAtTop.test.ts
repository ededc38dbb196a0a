// A balanced dart that opens at the top edge is open there at once: it takes its part above the bust, and shuts at the bust.

import { describe, expect, it } from 'vitest';
import {
  balancedWedge,
  type DartPoint,
  type Draft,
  draft,
  type LevelName,
  type Style,
  type Wedge,
  withPoints,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';
import { SET_LINES } from '../../support/styles/setLines';

const COUNT = howMany({ few: 20, all: 120 });

const ID = 'front-side';
const NEAR_BUST: DartPoint = { from: 'bust', below: -12 };
const BELOW_WAIST: DartPoint = { from: 'waist', below: 60 };

const openAtTop = (
  lower: DartPoint,
  change: Partial<Pick<Wedge, 'sizing' | 'intake' | 'station' | 'weight'>> = {},
  style: Style = SET_LINES,
): Style => ({
  ...style,
  wedges: style.wedges.map((wedge) =>
    wedge.id === ID ? withPoints({ ...wedge, ...change }, { lower }) : wedge,
  ),
});

const dartIn = ({ blocks }: Draft) => {
  const dart = blocks?.front.wedges.find(({ id }) => id === ID);
  if (!dart) throw new Error('the dart is drafted');
  return dart;
};
const cutIn = ({ pieces }: Draft) => pieces.flatMap(({ darts }) => darts).find(({ wedge }) => wedge === ID);
const heightOf = ({ levels }: Draft, name: LevelName): number =>
  levels.find((level) => level.name === name)?.y ?? Number.NaN;
const takenAt = ({ blocks }: Draft, level: LevelName): number =>
  (blocks?.front.wedges ?? []).reduce((sum, { intake }) => sum + (intake.get(level) ?? 0), 0);

describe('a balanced dart open at the top edge', () => {
  it('takes its part by weight of what must go above the bust, and is cut open', () => {
    const made = draft(MEAN_BODY, openAtTop(NEAR_BUST));
    const through = draft(MEAN_BODY, SET_LINES);
    expect(dartIn(made).intake.get('overBust')).toBeCloseTo(dartIn(through).intake.get('overBust') ?? 0, 9);
    expect(dartIn(made).intake.get('overBust')).toBeCloseTo((1.5 / 4.15) * takenAt(through, 'overBust'), 9);
    expect(cutIn(made)?.open).toBe(true);
    expect(dartIn(made).extent).toEqual({ upper: null, lower: heightOf(made, 'bust') - 12 });
  });

  it('ends at the bust where its point was put lower, and the others take what it would below', () => {
    const made = draft(MEAN_BODY, openAtTop(BELOW_WAIST));
    expect(dartIn(made).extent).toEqual({ upper: null, lower: heightOf(made, 'bust') });
    expect(cutIn(made)?.open).toBe(true);
    expect(dartIn(made).intake.get('waist')).toBe(0);
    expect(takenAt(made, 'waist')).toBeCloseTo(takenAt(draft(MEAN_BODY, SET_LINES), 'waist'), 9);
  });

  it('goes on over the bust when it is sized by hand', () => {
    const intake = { overBust: 10, bust: 8, underBust: 12, waist: 16 };
    const made = draft(MEAN_BODY, openAtTop(BELOW_WAIST, { sizing: 'manual', intake }));
    expect(dartIn(made).extent).toEqual({ upper: null, lower: heightOf(made, 'waist') + 60 });
  });

  it('runs on to its point from a top edge below the bust', () => {
    const made = draft(
      MEAN_BODY,
      openAtTop(BELOW_WAIST, {}, { ...SET_LINES, topFrom: 'underBust', topAbove: 10 }),
    );
    expect(dartIn(made).extent.lower).toBe(heightOf(made, 'waist') + 60);
    expect(cutIn(made)?.open).toBe(true);
  });

  it('is none, and is not refused, where less than two millimetres are left for it', () => {
    const even = { ...MEAN_BODY, overBust: MEAN_BODY.bust };
    const asked = [1.6, 2.4].map((mm) =>
      openAtTop(NEAR_BUST, { sizing: 'manual', intake: { overBust: mm } }, SET_LINES),
    );
    for (const [style, open, said] of [
      [
        openAtTop(NEAR_BUST, {}, { ...SET_LINES, frontShare: { ...SET_LINES.frontShare, overBust: 0.53 } }),
        false,
        ['dartLeftOut'],
      ],
      [asked[0] as Style, false, []],
      [asked[1] as Style, true, []],
    ] as const) {
      const made = draft(even, style);
      expect(cutIn(made) !== undefined).toBe(open);
      expect(dartIn(made).intake.get('overBust') ?? 0).toBe(open ? 2.4 : 0);
      expect(made.issues.filter(({ at }) => at.wedge === ID).map(({ code }) => code)).toEqual(said);
    }
  });

  it(`keeps every bound on ${COUNT} bodies, and is open on most`, () => {
    const style: Style = {
      ...openAtTop(BELOW_WAIST),
      wedges: [
        ...openAtTop(BELOW_WAIST).wedges,
        withPoints(balancedWedge('front-top', 'front', 0.78, 2), { lower: NEAR_BUST }),
      ],
    };
    let open = 0;
    for (const [i, body] of drawBodies(COUNT, 8).entries()) {
      const made = draft(body, style);
      expect(broken(judge(body, style, made)), `body ${i}`).toEqual([]);
      expect(
        made.issues.filter(({ severity, code }) => severity === 'error' && code.startsWith('dart')),
      ).toEqual([]);
      if (cutIn(made)?.open) open += 1;
    }
    expect(open).toBeGreaterThan((COUNT * 7) / 12);
  });
});
