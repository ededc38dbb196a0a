import { describe, expect, it } from 'vitest';
import {
  addWedge,
  balanceAll,
  changeDraft,
  changeStyle,
  DEMO_BOOK,
  DEMO_CLIENT,
  openClient,
  openDraftOf,
  removeWedge,
  setDiffering,
  setRightWedges,
  setSide,
  setSizing,
  swapSides,
  swapSidesOfStyle,
  wedgeNameOf,
} from '../../../src/document';
import { DEFAULT_STYLE } from '../../../src/engine';

describe('what differs left to right', () => {
  it('is written down number by number, and all of it can be taken off', () => {
    const differing = setDiffering(DEMO_CLIENT, true);
    expect(differing.sides).toEqual({ leftShare: {}, rightLower: {} });
    const set = setSide(setSide(differing, 'leftShare', 'waist', 0.52), 'rightLower', 'hip', -6);
    expect(set.sides).toEqual({ leftShare: { waist: 0.52 }, rightLower: { hip: -6 } });
    expect(setSide(set, 'leftShare', 'waist', null).sides).toEqual({
      leftShare: {},
      rightLower: { hip: -6 },
    });
    expect(setDiffering(set, true).sides).toEqual(set.sides);
    expect(setDiffering(set, false)).toEqual(DEMO_CLIENT);
  });

  it('in wedges begins with those of the left, under ids of their own', () => {
    const own = setRightWedges(DEFAULT_STYLE, true);
    expect(own.rightWedges?.map(({ id }) => id)).toEqual(DEFAULT_STYLE.wedges.map(({ id }) => `right-${id}`));
    expect(setRightWedges(own, true).rightWedges).toBe(own.rightWedges);
    expect(setRightWedges(own, false)).toEqual(DEFAULT_STYLE);
    expect(wedgeNameOf('right-front-bust', own)).toBe('Bust wedge');
  });
});

describe('a style with the right half on the table', () => {
  const own = setRightWedges(DEFAULT_STYLE, true);

  it('shows the right’s wedges in the place of the left’s, and is itself again when turned back', () => {
    const turned = swapSidesOfStyle(own, 'right');
    expect([turned.wedges, turned.rightWedges]).toEqual([own.rightWedges, own.wedges]);
    expect(swapSidesOfStyle(turned, 'right')).toBe(own);
    expect(swapSidesOfStyle(own, 'left')).toBe(own);
    expect(swapSidesOfStyle(DEFAULT_STYLE, 'right')).toBe(DEFAULT_STYLE);
  });

  it('takes changes to that half only, and no id twice', () => {
    const turned = swapSidesOfStyle(own, 'right');
    const added = swapSidesOfStyle(addWedge(addWedge(turned, 'back', -0.5), 'back', 0.8), 'right');
    expect(added.wedges).toBe(own.wedges);
    expect(added.rightWedges).toHaveLength(own.wedges.length + 2);
    const both = addWedge(added, 'back', -0.5);
    const ids = [...both.wedges, ...(both.rightWedges ?? [])].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is balanced on both sides', () => {
    const byHand = setSizing(
      swapSidesOfStyle(setSizing(own, 'front-bust', 'manual', { waist: 20 }), 'right'),
      'right-front-bust',
      'manual',
      { waist: 30 },
    );
    const { wedges, rightWedges = [] } = balanceAll(byHand);
    expect([...wedges, ...rightWedges].every(({ sizing }) => sizing === 'balanced')).toBe(true);
  });

  it('makes of the book one that turns back to the same book', () => {
    const book = changeStyle(DEMO_BOOK, () => own);
    const turned = swapSides(book, 'right');
    expect(openDraftOf(openClient(turned)).style.wedges).toBe(own.rightWedges);
    expect(swapSides(turned, 'right')).toBe(book);
    const less = swapSides(
      changeStyle(turned, (style) => removeWedge(style, 'right-front-bust')),
      'right',
    );
    expect(openDraftOf(openClient(less)).style.wedges).toBe(own.wedges);
    expect(openDraftOf(openClient(less)).style.rightWedges).toHaveLength(own.wedges.length - 1);
    expect(swapSides(DEMO_BOOK, 'right')).toBe(DEMO_BOOK);
    const { measurements } = DEMO_CLIENT;
    const kept = changeDraft(book, (savedDraft) => ({
      ...savedDraft,
      comparison: { on: '2026-11-25', measurements, style: own },
    }));
    const seen = openDraftOf(openClient(swapSides(kept, 'right')));
    expect(seen.comparison?.style).toBe(seen.style);
  });
});
