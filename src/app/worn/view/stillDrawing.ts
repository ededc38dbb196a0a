// The same picture without WebGL: triangles from the farthest to the nearest, each in one colour.

import { projected, projection } from './camera';
import type { Drawing } from './glView';
import { BODY_COLOUR, bandPlace, CLOTH_COLOUR, SCALES, valuesOf } from './shades';

/** Cloth lies in front of the skin it presses into, mm: triangles are sorted by their middles. */
const CLOTH_AHEAD_MM = 20;
const STROKES_AHEAD_MM = 32;

const STROKES = [
  { of: 'bones', colour: [0.36, 0.4, 0.46], mm: 4 },
  { of: 'seams', colour: [0.1, 0.13, 0.18], mm: 1 },
  { of: 'edges', colour: [0.1, 0.13, 0.18], mm: 1.2 },
  { of: 'lacing', colour: [0.52, 0.12, 0.24], mm: 2 },
] as const;

/** Null where the canvas cannot be drawn on at all. */
export function makeStillDrawing(canvas: HTMLCanvasElement): Drawing | null {
  const context = canvas.getContext('2d');
  if (!context) return null;
  return ({ picture, shading, camera, frame, background }) => {
    const { width, height } = canvas;
    const css = (colour: readonly number[], light = 1): string =>
      `rgb(${colour.map((part) => Math.round(255 * part * light)).join(' ')})`;
    context.fillStyle = css(background);
    context.fillRect(0, 0, width, height);
    const matrix = projection(camera, frame);
    const values = valuesOf(picture, shading);
    const faces = [
      ...facesOf(picture.body, matrix, () => BODY_COLOUR, 0),
      ...facesOf(
        picture,
        matrix,
        (v) =>
          values && shading !== 'cloth'
            ? (SCALES[shading].colours[Math.floor(bandPlace(SCALES[shading], values[v] ?? 0))] ??
              CLOTH_COLOUR)
            : CLOTH_COLOUR,
        CLOTH_AHEAD_MM * (camera.zoom / frame.half),
      ),
      ...STROKES.flatMap(({ of, colour, mm }) =>
        facesOfStrokes(picture[of], matrix, colour, mm, STROKES_AHEAD_MM * (camera.zoom / frame.half)),
      ),
    ].sort((a, b) => a.depth - b.depth);
    for (const { corners, colour, light, mm } of faces) {
      context.beginPath();
      for (const [right, up] of corners)
        context.lineTo(width / 2 + (right * height) / 2, height / 2 - (up * height) / 2);
      context.lineWidth = mm === 0 ? 1 : Math.max(1, (mm * height * camera.zoom) / frame.half / 2);
      context.fillStyle = css(colour, light);
      context.strokeStyle = context.fillStyle;
      if (mm === 0) {
        context.closePath();
        context.fill();
      }
      context.stroke();
    }
  };
}

type Corner = readonly [number, number, number];

const NOWHERE: Corner = [0, 0, 0];

interface Face {
  readonly corners: readonly Corner[];
  readonly depth: number;
  readonly light: number;
  readonly colour: readonly number[];
  /** Width of a stroke, mm; 0 for a triangle. */
  readonly mm: number;
}

function facesOf(
  { places, triangles }: { readonly places: Float32Array; readonly triangles: Uint32Array },
  matrix: Float32Array,
  colourOf: (vertex: number) => readonly number[],
  ahead: number,
): Face[] {
  const faces: Face[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const own = [0, 1, 2].map((k) => triangles[t + k] as number);
    const corners = own.map(
      (v): Corner =>
        projected(matrix, places[3 * v] as number, places[3 * v + 1] as number, places[3 * v + 2] as number),
    );
    const [a = NOWHERE, b = NOWHERE, c = NOWHERE] = corners;
    const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const [wx, wy, wz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const towards = ux * wy - uy * wx;
    const size = Math.hypot(uy * wz - uz * wy, uz * wx - ux * wz, towards);
    faces.push({
      corners,
      depth: (a[2] + b[2] + c[2]) / 3 + ahead,
      light: 0.55 + 0.45 * Math.abs(towards / (size || 1)),
      colour: colourOf(own[0] ?? 0),
      mm: 0,
    });
  }
  return faces;
}

/** The strokes, six numbers each, as faces of two corners. */
function facesOfStrokes(
  strokes: Float32Array,
  matrix: Float32Array,
  colour: readonly number[],
  mm: number,
  ahead: number,
): Face[] {
  return Array.from({ length: strokes.length / 6 }, (_, i): Face => {
    const [a, b] = [6 * i, 6 * i + 3].map(
      (k): Corner =>
        projected(matrix, strokes[k] as number, strokes[k + 1] as number, strokes[k + 2] as number),
    ) as [Corner, Corner];
    return { corners: [a, b], depth: (a[2] + b[2]) / 2 + ahead, light: 1, colour, mm };
  });
}
