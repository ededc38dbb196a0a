import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, setRightWedges, setSizing } from '../../../src/document';
import { DEFAULT_STYLE, draftWhole, halfOf, type Side, type Style } from '../../../src/engine';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { valueIn } from '../../../src/table/handles/valueIn';
import { type CanvasLayout, layOut } from '../../../src/table/layout/layOut';

const OWN = setRightWedges(DEFAULT_STYLE, true);

function handlesOn(side: Side, style: Style) {
  const half = halfOf(draftWhole(DEMO_CLIENT.measurements, style), side);
  return handlesOf(half, style, layOut(half) as CanvasLayout);
}

const called = (style: Style, id: string) => {
  const found = handlesOn('right', style).find((handle) => handle.id === id);
  if (!found) throw new Error(`no handle ${id}`);
  return found;
};

describe('the handles of a right half with wedges of its own', () => {
  it('are those of its own wedges', () => {
    const wedges = (side: Side) =>
      new Set(handlesOn(side, OWN).flatMap(({ wedge }) => (wedge === null ? [] : [wedge])));
    expect(wedges('left')).toEqual(new Set(OWN.wedges.map(({ id }) => id)));
    expect(wedges('right')).toEqual(new Set(OWN.rightWedges?.map(({ id }) => id)));
  });

  it.each(['leg:right-front-bust:waist:outer', 'axis:right-front-side'])(
    '%s changes that half only',
    (id) => {
      const handle = called(OWN, id);
      const value = handle.value + 6;
      const pulled = handle.set(OWN, value);
      expect(pulled.wedges).toBe(OWN.wedges);
      const half = halfOf(draftWhole(DEMO_CLIENT.measurements, pulled), 'right');
      expect(valueIn(half, pulled, handle)).toBeCloseTo(value, 6);
    },
  );

  it('go as far as the wedges beside them on that half let them', () => {
    const id = 'leg:right-front-side:waist:outer';
    const locked = (ids: readonly string[], style: Style): Style =>
      ids.reduce((before, each) => setSizing(before, each, 'manual', { waist: 20 }), style);
    const front = OWN.wedges.flatMap((wedge) => (wedge.block === 'front' ? [wedge.id] : []));
    const byLeft = locked(front, OWN);
    const byRight = locked(
      front.map((each) => `right-${each}`),
      OWN,
    );
    expect(called(byLeft, id).gain).toEqual(called(OWN, id).gain);
    expect(Math.abs(called(byRight, id).gain.x)).toBeLessThan(Math.abs(called(OWN, id).gain.x));
  });
});
