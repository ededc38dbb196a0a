import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../src/engine';
import { layOut } from '../../../src/table';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { hitAreaOffset, nearestHandle } from '../../../src/table/handles/nearestHandle';

const made = draft(DEMO_CLIENT.measurements, DEFAULT_STYLE);
const layout = layOut(made);
if (!layout) throw new Error('no layout');
const handles = handlesOf(made, DEFAULT_STYLE, layout, null).filter(
  ({ kind, wedge }) => kind !== 'leg' || wedge === 'front-bust',
);
/** 1.05 px for a mm, as on a small screen */
const PX = 1 / 1.05;

describe('a press on the canvas', () => {
  it('takes the handle whose hit area has the nearest centre, however many overlap', () => {
    expect(handles.length).toBeGreaterThan(15);
    for (const handle of handles) {
      const at = { x: handle.at.x + hitAreaOffset(handle) * PX, y: handle.at.y };
      expect(nearestHandle(handles, at, PX)?.id).toBe(handle.id);
    }
  });

  it('tells legs that touch apart by the side it is on', () => {
    const inner = handles.find(({ id }) => id === 'leg:front-bust:bust:inner');
    const outer = handles.find(({ id }) => id === 'leg:front-bust:bust:outer');
    if (!inner || !outer) throw new Error('no legs');
    expect(Math.abs(inner.at.x - outer.at.x)).toBeLessThan(1);
    const beside = (by: number) => nearestHandle(handles, { x: inner.at.x + by, y: inner.at.y }, PX)?.id;
    expect(beside(-4)).toBe(inner.id);
    expect(beside(4)).toBe(outer.id);
  });

  it('takes nothing where there is nothing', () => {
    expect(nearestHandle([], { x: 0, y: 0 }, PX)).toBeNull();
  });
});
