import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, placeTooltip, type TooltipRequest } from '../../../src/table/view/placeTooltip';

const TOOLTIP = { width: 240, height: 48 };
const boxOf = (asked: TooltipRequest): Box => {
  const { x, y } = placeTooltip(asked);
  return { left: x, top: y, right: x + asked.tooltip.width, bottom: y + asked.tooltip.height };
};

/** A laptop's canvas, with the waist at 350 and the handle of an axis below it. */
const ASKED: TooltipRequest = {
  at: { x: 300, y: 420 },
  tooltip: TOOLTIP,
  room: { left: 0, top: 0, right: 1090, bottom: 560 },
  wedge: { left: 280, right: 320 },
  lines: [
    { y: 35, watched: false },
    { y: 120, watched: false },
    { y: 240, watched: false },
    { y: 350, watched: true },
  ],
  finger: false,
  side: 'right',
};

describe('the place of the tooltip', () => {
  it('is beside the wedge under a mouse, on the side that was begun with', () => {
    const right = boxOf(ASKED);
    expect(right.left).toBeGreaterThan(320);
    expect(right.top).toBeLessThan(420);
    expect(right.bottom).toBeGreaterThan(420);
    const left = boxOf({ ...ASKED, side: 'left' });
    expect(left.right).toBeLessThan(280);
  });

  it('is above the level line where the handle lies on it', () => {
    const box = boxOf({ ...ASKED, at: { x: 320, y: 350 } });
    expect(box.bottom).toBeLessThan(350 - 4);
    expect(box.bottom).toBeGreaterThan(350 - 60);
  });

  it('changes the side where there is no room on the one it began with', () => {
    const box = boxOf({ ...ASKED, at: { x: 950, y: 420 }, wedge: { left: 930, right: 970 } });
    expect(box.right).toBeLessThan(930);
  });

  it('is not where a finger or its hand is', () => {
    const box = boxOf({ ...ASKED, finger: true });
    expect(box.bottom).toBeLessThanOrEqual(420 + 34);
    expect(box.left).toBeGreaterThanOrEqual(300 + 34);
  });

  it('stays where the canvas is in view, wherever the handle is pulled, and off the watched line where there is room for that', () => {
    fc.assert(
      fc.property(
        fc.record({
          x: fc.integer({ min: 0, max: 364 }),
          y: fc.integer({ min: 140, max: 590 }),
          finger: fc.boolean(),
          line: fc.integer({ min: 140, max: 590 }),
          side: fc.constantFrom<'left' | 'right'>('left', 'right'),
        }),
        ({ x, y, finger, line, side }) => {
          const room = { left: 0, top: 140, right: 364, bottom: 590 };
          const box = boxOf({
            ...ASKED,
            at: { x, y },
            wedge: { left: x - 12, right: x + 12 },
            room,
            finger,
            lines: [{ y: line, watched: true }],
            side,
          });
          expect(box.left).toBeGreaterThanOrEqual(room.left);
          expect(box.right).toBeLessThanOrEqual(room.right);
          expect(box.top).toBeGreaterThanOrEqual(room.top);
          expect(box.bottom).toBeLessThanOrEqual(room.bottom);
          expect(box.top < line && box.bottom > line).toBe(false);
          const overPlace =
            box.left < x + 12 && box.right > x - 12 && box.top < y + 12 && box.bottom > y - 12;
          expect(overPlace).toBe(false);
        },
      ),
    );
  });

  it.each([
    ['the watched line, rather than others', 320, 340, [290, 240, 370, 440], 290],
    ['a line so near the handle that it is watched with it', 460, 470, [380, 430], 430],
    ['any line, where the way off it is short', 450, 460, [410], 410],
  ])('is off %s', (_, y, bottom, lines, line) => {
    const box = boxOf({
      ...ASKED,
      at: { x: 300, y },
      room: { ...ASKED.room, bottom },
      lines: lines.map((each) => ({ y: each, watched: each === 290 })),
    });
    expect(box.top < line && box.bottom > line).toBe(false);
  });

  it('goes over a line that is not watched rather than below a finger', () => {
    const lines = [
      { y: 379, watched: false },
      { y: 430, watched: true },
    ];
    expect(boxOf({ ...ASKED, lines, finger: true }).bottom).toBeLessThan(430);
  });
});
