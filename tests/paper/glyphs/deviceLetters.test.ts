// Letters that a device draws, from dots to outlines.

import { afterEach, describe, expect, it, vi } from 'vitest';
import { deviceLetters, isDrawnByDevice } from '../../../src/paper/glyphs/deviceLetters';

/** A device whose letters are squares as high as 0.5 em, an em apart: the letter r is half red, and no font has the others. */
class Canvas {
  private readonly dots: Uint8ClampedArray;
  private em = 0;

  constructor(
    private readonly width: number,
    private readonly height: number,
  ) {
    this.dots = new Uint8ClampedArray(4 * width * height);
  }

  getContext() {
    return this;
  }

  set font(font: string) {
    this.em = Number(/(\d+)px/.exec(font)?.[1]);
  }

  measureText(text: string) {
    const [box, high] = [this.em * text.length, this.em / 2];
    return {
      actualBoundingBoxLeft: 0,
      actualBoundingBoxRight: box,
      actualBoundingBoxAscent: high,
      actualBoundingBoxDescent: 0,
      width: box,
    };
  }

  fillRect() {
    this.dots.fill(255);
  }

  fillText(text: string, left: number, baseline: number) {
    const colour = text === 'r' ? [255, 128, 128] : [0, 0, 0];
    const side = text === 'k' || text === 'r' ? this.em / 2 : this.em / 4;
    for (let y = baseline - side; y < baseline; y += 1)
      for (let x = left; x < left + side; x += 1)
        for (const [i, value] of [...colour, 255].entries())
          this.dots[4 * (Math.round(y) * this.width + Math.round(x)) + i] = value;
  }

  getImageData() {
    return { data: this.dots.slice(0, 4 * this.width * this.height) };
  }
}

afterEach(() => {
  vi.unstubAllGlobals();
});

/** Area of the rectangles of an outline, square ems. */
function areaOf(letter: string): number {
  const set = deviceLetters(letter, false, false, 12);
  expect(set?.advance).toBeCloseTo(1000, 6);
  let area = 0;
  const steps = set?.outline ?? [];
  for (let i = 0; i < steps.length; i += 5) {
    const [a, b, c, d, end] = steps.slice(i, i + 5);
    expect([a?.type, b?.type, c?.type, d?.type, end?.type].join('')).toBe('MLLLZ');
    area += ((b?.values[0] ?? 0) - (a?.values[0] ?? 0)) * ((b?.values[1] ?? 0) - (c?.values[1] ?? 0));
  }
  return area / 1e6;
}

describe('letters that the device draws', () => {
  it('are none without a device that draws', () => {
    expect(deviceLetters('k', false, false, 12)).toBeNull();
    expect(isDrawnByDevice('k')).toBe(false);
  });

  it('have the place and size of what was painted', () => {
    vi.stubGlobal('OffscreenCanvas', Canvas);
    expect(areaOf('k')).toBeCloseTo(0.25, 6);
    const [first] = deviceLetters('k', false, false, 12)?.outline ?? [];
    expect(first?.values).toEqual([0, 500]);
  });

  it('in colours have as many black dots as they are dark', () => {
    vi.stubGlobal('OffscreenCanvas', Canvas);
    // A dot of this red is darker than white by (1 − 0.3 − 0.7 · 128/255) of black.
    expect(areaOf('r')).toBeCloseTo(0.25 * (0.7 - (0.7 * 128) / 255), 2);
  });

  it('are known from those that the device paints as it paints what no font has', () => {
    vi.stubGlobal('OffscreenCanvas', Canvas);
    expect(isDrawnByDevice('k')).toBe(true);
    expect(isDrawnByDevice('x')).toBe(false);
  });
});
