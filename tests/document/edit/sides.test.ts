import { describe, expect, it } from 'vitest';
import {
  addWedge,
  balanceAll,
  type DartSpace,
  DEMO_CLIENT,
  dartSpace,
  removeWedge,
  setCup,
  setDartPoint,
  setDiffering,
  setEnds,
  setIntake,
  setRightWedges,
  setSide,
  setSizing,
  setStation,
  setStationAt,
  slantDart,
  straighten,
  turnIntakeTo,
  wedgeNameOf,
  wedgesBeside,
  wedgesOf,
  wedgeWithId,
} from '../../../src/document';
import { type Block, DEFAULT_STYLE, draftWhole, halfOf, MOST_WEDGES, type Style } from '../../../src/engine';

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

describe('a style whose right half has wedges of its own', () => {
  const own = setRightWedges(DEFAULT_STYLE, true);
  const { measurements } = DEMO_CLIENT;

  it('has a list of wedges for each half, and one for both where they share it', () => {
    expect(wedgesOf(own, 'left')).toBe(own.wedges);
    expect(wedgesOf(own, 'right')).toBe(own.rightWedges);
    expect(wedgesOf(DEFAULT_STYLE, 'right')).toBe(DEFAULT_STYLE.wedges);
    expect(wedgesBeside(own, 'right-front-bust')).toBe(own.rightWedges);
    expect(wedgesBeside(own, 'front-bust')).toBe(own.wedges);
    expect(wedgesBeside(own, 'nobody')).toEqual([]);
    expect(wedgeWithId(own, 'right-front-bust')).toBe(own.rightWedges?.find(({ id }) => id.endsWith('bust')));
  });

  it('takes a new wedge on the half that is asked for, and no id twice', () => {
    const added = addWedge(addWedge(own, 'right', 'back', -0.5), 'right', 'back', 0.8);
    expect(added.wedges).toBe(own.wedges);
    expect(added.rightWedges).toHaveLength(own.wedges.length + 2);
    expect(wedgesOf(added, 'right').at(-1)).toMatchObject({ block: 'back', station: 0.8 });
    const both = addWedge(added, 'left', 'back', -0.5);
    expect(both.rightWedges).toBe(added.rightWedges);
    const ids = [...both.wedges, ...(both.rightWedges ?? [])].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(addWedge(DEFAULT_STYLE, 'right', 'back', -0.5)).toEqual(
      addWedge(DEFAULT_STYLE, 'left', 'back', -0.5),
    );
  });

  it('counts the most wedges of a block on each half by itself', () => {
    let full = own;
    for (let i = 0; i < MOST_WEDGES; i += 1) full = addWedge(full, 'right', 'back', 0.1 * i);
    expect(full.rightWedges?.filter(({ block }) => block === 'back')).toHaveLength(MOST_WEDGES);
    expect(addWedge(full, 'right', 'back', 0.9)).toBe(full);
    expect(addWedge(full, 'left', 'back', 0.9).wedges).toHaveLength(own.wedges.length + 1);
  });

  const half = halfOf(draftWhole(measurements, own), 'right');
  const front = half.blocks?.front as Block;
  const space = dartSpace(half, 'front', 'right-front-side') as DartSpace;
  const closed = setEnds(own, 'right-front-side', 'closed', space);
  const bent = setStationAt(setSizing(own, 'right-front-bust', 'manual', {}), 'right-front-bust', 'hip', 0.2);
  const redraft = (style: Style) => halfOf(draftWhole(measurements, style), 'right');

  it.each<[string, (style: Style) => Style]>([
    ['setStation', (style) => setStation(style, 'right-front-side', 0.4)],
    ['setStationAt', (style) => setStationAt(style, 'right-front-side', 'hip', 0.4)],
    ['straighten', () => straighten(bent, 'right-front-bust')],
    ['setIntake', (style) => setIntake(style, 'right-front-bust', 'waist', 33, {})],
    ['setSizing', (style) => setSizing(style, 'right-front-bust', 'manual', { waist: 20 })],
    ['setCup', (style) => setCup(style, 'right-front-bust', { below: 40, intake: 10 })],
    ['setEnds', (style) => setEnds(style, 'right-front-side', 'openAtHem', space)],
    ['setDartPoint', () => setDartPoint(closed, 'right-front-side', 'upper', { from: 'bust', below: 45 })],
    ['slantDart', () => slantDart(closed, 'right-front-side', 'lower', 120, redraft)],
    ['removeWedge', (style) => removeWedge(style, 'right-front-bust')],
    [
      'turnIntakeTo',
      (style) =>
        turnIntakeTo(style, front, half.levels, {
          from: { wedge: 'right-front-bust', level: 'waist' },
          to: { wedge: 'right-front-side', level: 'waist' },
          width: 5,
        }),
    ],
  ])('is changed by %s on the half that has the wedge', (_, command) => {
    const changed = command(own);
    expect(changed.wedges).toBe(own.wedges);
    expect(changed.rightWedges).not.toEqual(own.rightWedges);
  });

  it('loses a wedge of the left without one of the right', () => {
    const less = removeWedge(own, 'front-bust');
    expect(less.rightWedges).toBe(own.rightWedges);
    expect(less.wedges).toHaveLength(own.wedges.length - 1);
  });

  it('is balanced on both sides', () => {
    const byHand = setSizing(
      setSizing(own, 'front-bust', 'manual', { waist: 20 }),
      'right-front-bust',
      'manual',
      {
        waist: 30,
      },
    );
    const { wedges, rightWedges = [] } = balanceAll(byHand);
    expect([...wedges, ...rightWedges].every(({ sizing }) => sizing === 'balanced')).toBe(true);
  });

  it('keeps the left’s wedges when the right’s own are taken off', () => {
    const less = setRightWedges(removeWedge(own, 'right-front-bust'), false);
    expect(less.wedges).toBe(own.wedges);
    expect(less.rightWedges).toBeUndefined();
  });
});
