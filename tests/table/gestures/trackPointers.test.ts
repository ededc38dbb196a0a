import { describe, expect, it } from 'vitest';
import {
  NO_POINTERS,
  type PointersEvent,
  trackPointers,
  wheelFactor,
} from '../../../src/table/gestures/trackPointers';

const event = (kind: PointersEvent['kind'], id: number, x: number, y: number): PointersEvent => ({
  kind,
  id,
  x,
  y,
});

function run(...events: PointersEvent[]) {
  let pointers = NO_POINTERS;
  return events.map((each) => {
    const step = trackPointers(pointers, each);
    ({ pointers } = step);
    return step;
  });
}

describe('pointers on the canvas', () => {
  it('pan it with one pointer from where that came down', () => {
    const [, step] = run(event('down', 1, 100, 100), event('move', 1, 140, 90));
    expect(step?.panZoom).toEqual({ from: { x: 100, y: 100 }, to: { x: 140, y: 90 }, factor: 1 });
  });

  it('leave it alone under a click that moves a little', () => {
    const steps = run(event('down', 1, 100, 100), event('move', 1, 102, 101), event('up', 1, 102, 101));
    expect(steps.map(({ panZoom }) => panZoom)).toEqual([null, null, null]);
    expect(steps.at(-1)?.pointers).toEqual(NO_POINTERS);
  });

  it('lose none of the travel within the slack', () => {
    const steps = run(event('down', 1, 100, 100), event('move', 1, 103, 100), event('move', 1, 106, 100));
    expect(steps.at(-1)?.panZoom).toMatchObject({ from: { x: 100 }, to: { x: 106 } });
  });

  it('scales it by how far two pointers part, about the middle between them', () => {
    const steps = run(event('down', 1, 100, 100), event('down', 2, 200, 100), event('move', 2, 300, 100));
    expect(steps.at(-1)?.panZoom).toEqual({ from: { x: 150, y: 100 }, to: { x: 200, y: 100 }, factor: 2 });
  });

  it('does not jump when one of two pointers is lifted', () => {
    const steps = run(
      event('down', 1, 100, 100),
      event('down', 2, 200, 100),
      event('up', 1, 100, 100),
      event('move', 2, 205, 100),
    );
    expect(steps.at(-1)?.panZoom).toEqual({ from: { x: 200, y: 100 }, to: { x: 205, y: 100 }, factor: 1 });
  });

  it('ignore a third one and one that never came down', () => {
    const steps = run(
      event('down', 1, 0, 0),
      event('down', 2, 50, 0),
      event('down', 3, 90, 0),
      event('move', 3, 10, 10),
      event('move', 9, 10, 10),
    );
    expect(steps.at(-1)?.panZoom).toBeNull();
    expect(steps.at(-1)?.pointers.active.map(({ id }) => id)).toEqual([1, 2]);
  });

  it('keeps its scale when two pointers meet in one place', () => {
    const steps = run(event('down', 1, 100, 100), event('down', 2, 200, 100), event('move', 2, 100, 100));
    expect(steps.at(-1)?.panZoom?.factor).toBe(1);
  });
});

describe('the wheel', () => {
  it('zooms in when turned away and back again by the same turn', () => {
    expect(wheelFactor(-120, 0)).toBeGreaterThan(1);
    expect(wheelFactor(-120, 0) * wheelFactor(120, 0)).toBeCloseTo(1, 12);
  });

  it('reads lines and pages, and never more than doubles the scale in one turn', () => {
    expect(wheelFactor(-3, 1)).toBeCloseTo(wheelFactor(-48, 0), 12);
    expect(wheelFactor(-1, 2)).toBeGreaterThan(wheelFactor(-1, 1));
    expect(wheelFactor(-1e9, 0)).toBe(2);
    expect(wheelFactor(1e9, 0)).toBe(0.5);
  });
});
