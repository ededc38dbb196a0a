// What a handle may be pulled to is what the style may be; a number beyond it stays where it is.

import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES, setEdgeNode, setIntake, setStation } from '../../../src/document';
import { checkStyle, DEFAULT_STYLE, type Draft, draft, type Style, stationOf } from '../../../src/engine';
import { valueByKey } from '../../../src/table/gestures/keyStep';
import type { Handle } from '../../../src/table/handles/handle';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { valueIn } from '../../../src/table/handles/valueIn';
import { type CanvasLayout, layOut } from '../../../src/table/layout/layOut';

const draftOf = (style: Style): Draft => draft(DEMO_CLIENT.measurements, style);

function handlesFor(style: Style, bending = false): Handle[] {
  const made = draftOf(style);
  return handlesOf(made, style, layOut(made) as CanvasLayout, bending ? draftOf : null);
}

const handleFor = (style: Style, id: string): Handle =>
  handlesFor(style).find((each) => each.id === id) as Handle;

describe('a typed number', () => {
  const hem = { ...DEFAULT_STYLE, hemBelow: 600 };
  const back = setEdgeNode(DEFAULT_STYLE, 'hemShape', 'centreBack', { beyond: 300, kind: 'smooth' });
  const high = { ...DEFAULT_STYLE, topAbove: 150 };
  const wide = setIntake(DEFAULT_STYLE, 'front-side', 'waist', 180, {});
  it.each([
    ['a hem at 600 mm', hem, 'edge:hem'],
    ['a back hem point at 300 mm', back, 'node:hem:centreBack'],
    ['a top edge at 150 mm', high, 'edge:top'],
    ['an intake of 180 mm', wide, 'leg:front-side:waist:outer'],
  ])('goes on from where it is: %s', (_, style, id) => {
    const handle = handleFor(style, id);
    expect(valueByKey(handle, 1)).toBe(handle.value + 1);
    expect(valueByKey(handle, -1)).toBe(handle.value - 1);
    expect(checkStyle(handle.set(style, handle.most))).toEqual([]);
    expect(checkStyle(handle.set(style, handle.least))).toEqual([]);
  });

  it.each([...NAMED_STYLES])('is within the limits of every handle: %s', (_, { style }) => {
    const handles = [...handlesFor(style), ...handlesFor(style, true)];
    expect(handles.length).toBeGreaterThan(20);
    const beyond = handles.filter(({ value, least, most }) => value < least || value > most);
    expect(beyond.map(({ id }) => id)).toEqual([]);
  });

  it('of an axis near the centre line is not pulled back to the line on its way out', () => {
    const block = draftOf(DEFAULT_STYLE).blocks?.front;
    const station = stationOf(10, block?.bustLine ?? 0, block?.width.get('waist') ?? 0);
    const style = setStation(DEFAULT_STYLE, 'front-bust', station);
    const handle = handleFor(style, 'axis:front-bust');
    expect(handle.value).toBeCloseTo(10, 9);
    const out = handle.set(style, 12);
    expect(valueIn(draftOf(out), out, handle)).toBeCloseTo(12, 9);
    const inwards = handle.set(style, 8);
    expect(valueIn(draftOf(inwards), inwards, handle)).toBe(0);
  });

  it('of an axis to be bent near the centre line stays where it is', () => {
    const block = draftOf(DEFAULT_STYLE).blocks?.front;
    const station = stationOf(10, block?.bustLine ?? 0, block?.width.get('waist') ?? 0);
    const bend = handlesFor(setStation(DEFAULT_STYLE, 'front-bust', station), true).find(
      ({ id }) => id === 'bend:front-bust:waist',
    );
    expect(bend && valueByKey(bend, -1)).toBeCloseTo(10, 9);
  });
});
