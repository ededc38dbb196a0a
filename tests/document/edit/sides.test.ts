import { describe, expect, it } from 'vitest';
import {
  addWedge,
  balanceAll,
  bookOnTable,
  changeSheet,
  changeStyle,
  DEMO_BOOK,
  DEMO_CLIENT,
  openClient,
  openSheet,
  removeWedge,
  setDiffering,
  setRightWedges,
  setSide,
  setSizing,
  styleOnTable,
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
    const turned = styleOnTable(own, 'right');
    expect([turned.wedges, turned.rightWedges]).toEqual([own.rightWedges, own.wedges]);
    expect(styleOnTable(turned, 'right')).toBe(own);
    expect(styleOnTable(own, 'left')).toBe(own);
    expect(styleOnTable(DEFAULT_STYLE, 'right')).toBe(DEFAULT_STYLE);
  });

  it('takes changes to that half only, and no id twice', () => {
    const turned = styleOnTable(own, 'right');
    const added = styleOnTable(addWedge(addWedge(turned, 'back', -0.5), 'back', 0.8), 'right');
    expect(added.wedges).toBe(own.wedges);
    expect(added.rightWedges).toHaveLength(own.wedges.length + 2);
    const both = addWedge(added, 'back', -0.5);
    const ids = [...both.wedges, ...(both.rightWedges ?? [])].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is balanced on both sides', () => {
    const byHand = setSizing(
      styleOnTable(setSizing(own, 'front-bust', 'hand', { waist: 20 }), 'right'),
      'right-front-bust',
      'hand',
      { waist: 30 },
    );
    const { wedges, rightWedges = [] } = balanceAll(byHand);
    expect([...wedges, ...rightWedges].every(({ sizing }) => sizing === 'balanced')).toBe(true);
  });

  it('makes of the book one that turns back to the same book', () => {
    const book = changeStyle(DEMO_BOOK, () => own);
    const turned = bookOnTable(book, 'right');
    expect(openSheet(openClient(turned)).style.wedges).toBe(own.rightWedges);
    expect(bookOnTable(turned, 'right')).toBe(book);
    const less = bookOnTable(
      changeStyle(turned, (style) => removeWedge(style, 'right-front-bust')),
      'right',
    );
    expect(openSheet(openClient(less)).style.wedges).toBe(own.wedges);
    expect(openSheet(openClient(less)).style.rightWedges).toHaveLength(own.wedges.length - 1);
    expect(bookOnTable(DEMO_BOOK, 'right')).toBe(DEMO_BOOK);
    const { measurements } = DEMO_CLIENT;
    const kept = changeSheet(book, (sheet) => ({
      ...sheet,
      saved: { on: '2026-11-25', measurements, style: own },
    }));
    const seen = openSheet(openClient(bookOnTable(kept, 'right')));
    expect(seen.saved?.style).toBe(seen.style);
  });
});
