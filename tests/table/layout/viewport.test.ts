import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CanvasLayout } from '../../../src/table/layout/layOut';
import { fitTo, panZoomed, scrolledTo, type Viewport, zoomedTo } from '../../../src/table/layout/viewport';

const LAYOUT: CanvasLayout = {
  centreX: { front: 0, back: 500 },
  left: -25,
  top: 200,
  width: 550,
  height: 400,
  beyond: {},
};
const SIZE = { width: 1100, height: 600 };

/** Where a place of the table lies on the screen. */
const onScreen = (view: Viewport, x: number, y: number) => ({
  x: (x - view.left) * view.pxPerMm,
  y: (y - view.top) * view.pxPerMm,
});

const spot = fc.record({ x: fc.integer({ min: 0, max: 1100 }), y: fc.integer({ min: 0, max: 600 }) });

describe('the view of the table', () => {
  it('fits all of it, as large as it goes, in the middle', () => {
    const view = fitTo(LAYOUT, SIZE);
    expect(view.pxPerMm).toBeCloseTo(1.5, 9);
    expect(onScreen(view, -25, 200).y).toBeCloseTo(0, 9);
    expect(onScreen(view, -25, 200).x).toBeCloseTo((1100 - 550 * 1.5) / 2, 9);
  });

  it('begins at the left where it may not be drawn small enough', () => {
    const view = fitTo(LAYOUT, { width: 366, height: 500 }, 1.05);
    expect(view.pxPerMm).toBe(1.05);
    expect(onScreen(view, -25, 200)).toEqual({ x: 0, y: expect.any(Number) });
  });

  it('keeps the rims free at the sides and at the top, drawn small or in part', () => {
    const rims = { left: 60, right: 80, top: 10 };
    for (const [size, least] of [
      [SIZE, 0.25],
      [{ width: 366, height: 300 }, 1.05],
    ] as const) {
      const view = fitTo(LAYOUT, size, least, rims);
      expect(onScreen(view, LAYOUT.left, LAYOUT.top).y).toBeGreaterThanOrEqual(10 - 1e-9);
      expect(onScreen(view, LAYOUT.left, LAYOUT.top).x).toBeGreaterThanOrEqual(60 - 1e-9);
    }
  });

  it('keeps the place under the pointer there while it scales', () => {
    fc.assert(
      fc.property(spot, fc.double({ min: 0.6, max: 3, noNaN: true }), (at, factor) => {
        const before = fitTo(LAYOUT, SIZE);
        const mm = { x: before.left + at.x / before.pxPerMm, y: before.top + at.y / before.pxPerMm };
        // a place of the drawing; over bare paper the view is held back from losing it
        fc.pre(mm.x > 100 && mm.x < 400 && mm.y > 300 && mm.y < 500);
        const after = panZoomed(before, { from: at, to: at, factor }, LAYOUT, SIZE);
        expect(after.pxPerMm).toBeCloseTo(before.pxPerMm * factor, 9);
        expect(onScreen(after, mm.x, mm.y).x).toBeCloseTo(at.x, 6);
        expect(onScreen(after, mm.x, mm.y).y).toBeCloseTo(at.y, 6);
      }),
    );
  });

  it('never loses the drawing and never goes beyond its scales, whatever is asked', () => {
    const panZoom = fc.record({
      from: spot,
      to: spot,
      factor: fc.double({ min: 0.001, max: 1000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(panZoom, { maxLength: 20 }), (steps) => {
        const view = steps.reduce((last, each) => panZoomed(last, each, LAYOUT, SIZE), fitTo(LAYOUT, SIZE));
        expect(view.pxPerMm).toBeGreaterThanOrEqual(0.25);
        expect(view.pxPerMm).toBeLessThanOrEqual(24);
        const middle = { x: view.left + 550 / view.pxPerMm, y: view.top + 300 / view.pxPerMm };
        expect(middle.x).toBeGreaterThanOrEqual(-25 - 1e-6);
        expect(middle.x).toBeLessThanOrEqual(525 + 1e-6);
        expect(middle.y).toBeGreaterThanOrEqual(200 - 1e-6);
        expect(middle.y).toBeLessThanOrEqual(600 + 1e-6);
      }),
    );
  });

  it('is drawn at a scale about its middle', () => {
    const before = fitTo(LAYOUT, SIZE);
    const after = zoomedTo(before, 4, LAYOUT, SIZE);
    expect(after.pxPerMm).toBe(4);
    expect(onScreen(after, 250, 400)).toEqual(onScreen(before, 250, 400));
  });

  it('moves just so far that a place is to be seen, and not at all where it is', () => {
    const near = zoomedTo(fitTo(LAYOUT, SIZE), 10, LAYOUT, SIZE);
    const shown = scrolledTo(near, { x: 480, y: 400 }, LAYOUT, SIZE, 40);
    expect(onScreen(shown, 480, 400).x).toBeCloseTo(1060, 6);
    expect(onScreen(shown, 480, 400).y).toBeCloseTo(onScreen(near, 480, 400).y, 6);
    expect(scrolledTo(shown, { x: 470, y: 400 }, LAYOUT, SIZE, 40)).toBe(shown);
  });
});
