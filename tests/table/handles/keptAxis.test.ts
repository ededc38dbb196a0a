// A wedge that was put somewhere by hand stays there, as a length from the body's centre, whatever else changes.

import { describe, expect, it } from 'vitest';
import { addStyle, DEMO_BOOK, DEMO_CLIENT, keepStyle, setIntake } from '../../../src/document';
import { DEFAULT_STYLE, type Draft, draft, type Measurements, type Style, xAt } from '../../../src/engine';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { type CanvasLayout, layOut } from '../../../src/table/layout/layOut';

const draftOf = (style: Style, change: Partial<Measurements> = {}): Draft =>
  draft({ ...DEMO_CLIENT.measurements, ...change }, style);

/** Distance of an axis from the body's centre at a level, mm. */
function fromCentre(made: Draft, style: Style, id: string, name: string): number {
  const block = made.blocks?.front.wedges.some((wedge) => wedge.id === id) ? 'front' : 'back';
  const wedge = made.blocks?.[block].wedges.find((each) => each.id === id);
  const level = made.levels.find((each) => each.name === name);
  if (!wedge || !level) throw new Error('the wedge and the level are drafted');
  return xAt(wedge.axis, level.y) + (style.closure[block] === 'lacing' ? style.closure.lacingGap / 2 : 0);
}

/** The style after the axis of a wedge was pulled outwards by `by` mm. */
function pulled(style: Style, id: string, by: number): Style {
  const made = draftOf(style);
  const axis = handlesOf(made, style, layOut(made) as CanvasLayout, null).find(
    ({ kind, wedge }) => kind === 'axis' && wedge === id,
  );
  if (!axis) throw new Error('the axis can be pulled');
  return axis.set(style, axis.value + by);
}

const LEVELS = ['bust', 'underBust', 'waist', 'hip'] as const;

describe.each(['front-side', 'back-side'])('the axis of the %s wedge', (id) => {
  const put = pulled(DEFAULT_STYLE, id, 9);

  it('goes at every level as far as it is pulled', () => {
    const [before, after] = [draftOf(DEFAULT_STYLE), draftOf(put)];
    for (const level of LEVELS)
      expect(fromCentre(after, put, id, level) - fromCentre(before, DEFAULT_STYLE, id, level)).toBeCloseTo(
        9,
        6,
      );
  });

  it('stays there when an arc is measured, another wedge takes more, or the gap is laced closer', () => {
    const there = LEVELS.map((level) => fromCentre(draftOf(put), put, id, level));
    const other = id === 'front-side' ? 'front-bust' : 'back-centre';
    const more = setIntake(put, other, 'waist', 40, {});
    const closer: Style = { ...put, closure: { ...put.closure, lacingGap: 20 } };
    for (const [style, change] of [
      [put, { frontBustArc: 505, frontWaistArc: 400 }],
      [more, {}],
      [closer, {}],
    ] as const) {
      const made = draftOf(style, change);
      for (const [i, level] of LEVELS.entries())
        expect(fromCentre(made, style, id, level)).toBeCloseTo(there[i] ?? Number.NaN, 9);
    }
    // One that was not put there by hand moves with the body.
    const follows = draftOf(DEFAULT_STYLE, { frontBustArc: 505, frontWaistArc: 400 });
    expect(
      Math.abs(
        fromCentre(follows, DEFAULT_STYLE, id, 'waist') -
          fromCentre(draftOf(DEFAULT_STYLE), DEFAULT_STYLE, id, 'waist'),
      ),
    ).toBeGreaterThan(1);
  });

  it('is let go of in a style that is kept for others, which has its station', () => {
    const [kept] = keepStyle(DEMO_BOOK, 'own', 'Herring', put, '2026-11-26').styles;
    const wedge = kept?.style.wedges.find((each) => each.id === id);
    expect(wedge).not.toHaveProperty('fromCentre');
    expect(wedge?.station).not.toBe(DEFAULT_STYLE.wedges.find((each) => each.id === id)?.station);
    expect(addStyle(DEMO_BOOK, 'own', 'Dusk', DEFAULT_STYLE, '2026-11-26').styles[0]?.style).toBe(
      DEFAULT_STYLE,
    );
  });

  it('is not kept by a pull that ends where it began', () => {
    expect(pulled(DEFAULT_STYLE, id, 0)).toBe(DEFAULT_STYLE);
    expect(pulled(put, id, 0)).toBe(put);
  });
});
