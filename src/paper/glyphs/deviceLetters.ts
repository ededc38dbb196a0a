// Letters drawn by the device with fonts of its own, as outlines of what it painted: for scripts that no font at hand has.

import type { OutlineStep, SetLine } from './outline';

/** Dots to an inch at which letters are painted. */
const PER_INCH = 600;

/** The same for letters in colours, as emoji are: their shades become dots. */
const PER_INCH_COLOURED = 300;

/** What is darker than this is ink, of 255. */
const HALF = 127;

/** From this difference of red, green and blue on a dot is coloured, of 255; smoothed edges of letters stay below. */
const COLOUR = 60;

type Brush = OffscreenCanvasRenderingContext2D;

/** A brush with a canvas of this size; null where there is none, as without a browser. */
function brushOn(width: number, height: number): Brush | null {
  if (typeof OffscreenCanvas === 'undefined') return null;
  return new OffscreenCanvas(Math.max(1, width), Math.max(1, height)).getContext('2d', {
    willReadFrequently: true,
  });
}

/** A painted run: how dark each dot is, from 0 white to 255, in rows from its top. */
interface Painted {
  readonly width: number;
  readonly height: number;
  /** Dots from the left and from the top to the start of its baseline. */
  readonly left: number;
  readonly above: number;
  readonly advance: number;
  readonly darkness: Float32Array;
  readonly isColoured: boolean;
}

/** A run of text as the device paints it; null where nothing paints. */
export function deviceLetters(
  text: string,
  bold: boolean,
  rightToLeft: boolean,
  sizePt: number,
): SetLine | null {
  const dotsPerEm = (dpi: number): number => Math.max(16, Math.round((sizePt / 72) * dpi));
  const fine = painted(text, bold, rightToLeft, dotsPerEm(PER_INCH));
  if (!fine?.isColoured) return fine && outlineOf(fine, 1000 / dotsPerEm(PER_INCH));
  const coarse = painted(text, bold, rightToLeft, dotsPerEm(PER_INCH_COLOURED));
  return coarse && outlineOf(dithered(coarse), 1000 / dotsPerEm(PER_INCH_COLOURED));
}

function painted(text: string, bold: boolean, rightToLeft: boolean, perEm: number): Painted | null {
  const style = (brush: Brush): Brush => {
    brush.font = `${bold ? 'bold ' : ''}${perEm}px sans-serif`;
    brush.direction = rightToLeft ? 'rtl' : 'ltr';
    brush.textAlign = 'left';
    return brush;
  };
  const probe = brushOn(1, 1);
  if (!probe) return null;
  const measures = style(probe).measureText(text);
  const room = (length: number): number => Math.ceil(length) + 2;
  const [left, above] = [room(measures.actualBoundingBoxLeft), room(measures.actualBoundingBoxAscent)];
  const width = left + room(measures.actualBoundingBoxRight);
  const height = above + room(measures.actualBoundingBoxDescent);
  const brush = brushOn(width, height);
  if (!brush) return null;
  brush.fillStyle = '#fff';
  brush.fillRect(0, 0, width, height);
  style(brush).fillStyle = '#000';
  brush.fillText(text, left, above);
  const { data } = brush.getImageData(0, 0, width, height);
  const darkness = new Float32Array(width * height);
  let isColoured = false;
  for (let i = 0; i < darkness.length; i += 1) {
    const [red = 255, green = 255, blue = 255] = data.subarray(4 * i, 4 * i + 3);
    darkness[i] = 255 - (0.3 * red + 0.59 * green + 0.11 * blue);
    isColoured ||= Math.max(red, green, blue) - Math.min(red, green, blue) > COLOUR;
  }
  return { width, height, left, above, advance: measures.width, darkness, isColoured };
}

/** Colours as black dots, as many as they are dark: error diffusion by Floyd and Steinberg, 1976. */
function dithered(picture: Painted): Painted {
  const { width, height } = picture;
  const darkness = Float32Array.from(picture.darkness);
  const pass = (x: number, y: number, error: number): void => {
    if (x >= 0 && x < width && y < height) darkness[y * width + x] = (darkness[y * width + x] ?? 0) + error;
  };
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const is = darkness[y * width + x] ?? 0;
      const set = is > HALF ? 255 : 0;
      darkness[y * width + x] = set;
      const error = (is - set) / 16;
      pass(x + 1, y, 7 * error);
      pass(x - 1, y + 1, 3 * error);
      pass(x, y + 1, 5 * error);
      pass(x + 1, y + 1, error);
    }
  return { ...picture, darkness };
}

/** The dark dots of each row as rectangles. */
function outlineOf({ width, height, left, above, advance, darkness }: Painted, scale: number): SetLine {
  const outline: OutlineStep[] = [];
  const isInk = (x: number, y: number): boolean => (darkness[y * width + x] ?? 0) > HALF;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      if (!isInk(x, y)) continue;
      const from = x;
      while (x < width && isInk(x, y)) x += 1;
      const [start, end] = [(from - left) * scale, (x - left) * scale];
      const [high, low] = [(above - y) * scale, (above - y - 1) * scale];
      outline.push(
        { type: 'M', values: [start, high] },
        { type: 'L', values: [end, high] },
        { type: 'L', values: [end, low] },
        { type: 'L', values: [start, low] },
        { type: 'Z', values: [] },
      );
    }
  return { outline, advance: advance * scale };
}

/**
 * Whether the device has a font for a character: it paints something else for it than for a code that no font has. Always false
 * without a browser.
 */
export function isDrawnByDevice(character: string): boolean {
  const [painted, unknown] = [picture(character), picture('\u{10fff0}')];
  return painted !== null && unknown !== null && painted !== unknown;
}

function picture(text: string): string | null {
  const brush = brushOn(48, 48);
  if (!brush) return null;
  brush.font = '24px sans-serif';
  brush.textAlign = 'left';
  brush.fillText(text, 12, 32);
  const { data } = brush.getImageData(0, 0, 48, 48);
  return data.some((value) => value > 0) ? data.join() : null;
}
