// The same picture without WebGL: polygons from the farthest to the nearest, each in one colour, with lines between the bands.

import { type BandedCorner, partedInBands } from './bands';
import { projected, projection } from './camera';
import type { Drawing } from './glView';
import { BODY_COLOUR, bandPlace, CLOTH_COLOUR, scaleOf, valuesOf } from './shades';

/** Cloth lies in front of the skin it presses into, mm: triangles are sorted by their middles. */
const CLOTH_AHEAD_MM = 20;
const LIMITS_AHEAD_MM = 26;
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
  return ({ picture, shading, unit, camera, frame, background }) => {
    const { width, height } = canvas;
    const css = (colour: readonly number[], light = 1): string =>
      `rgb(${colour.map((part) => Math.round(255 * part * light)).join(' ')})`;
    context.fillStyle = css(background);
    context.fillRect(0, 0, width, height);
    const matrix = projection(camera, frame);
    const values = valuesOf(picture, shading);
    const scale = camera.zoom / frame.half;
    const cloth = facesOf(picture, matrix, CLOTH_COLOUR, CLOTH_AHEAD_MM * scale);
    const faces = [
      ...facesOf(picture.body, matrix, BODY_COLOUR, 0),
      ...(values && shading !== 'cloth'
        ? cloth.flatMap((face, t) => {
            const bands = [0, 1, 2].map((k) =>
              bandPlace(scaleOf(shading, unit), values[picture.triangles[3 * t + k] ?? 0] ?? 0),
            );
            return banded(
              face,
              bands,
              scaleOf(shading, unit).colours,
              (LIMITS_AHEAD_MM - CLOTH_AHEAD_MM) * scale,
            );
          })
        : cloth),
      ...STROKES.flatMap(({ of, colour, mm }) =>
        facesOfStrokes(picture[of], matrix, colour, mm, STROKES_AHEAD_MM * scale),
      ),
    ].sort((a, b) => a.depth - b.depth);
    for (const { corners, colour, light, mm } of faces) {
      context.beginPath();
      for (const [right, up] of corners)
        context.lineTo(width / 2 + (right * height) / 2, height / 2 - (up * height) / 2);
      context.lineWidth = mm === 0 ? 1 : Math.max(1, (mm * height * scale) / 2);
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

type Corner = readonly [right: number, up: number, towards: number];

const NOWHERE: Corner = [0, 0, 0];

interface Face {
  readonly corners: readonly (Corner | BandedCorner)[];
  readonly depth: number;
  readonly light: number;
  readonly colour: readonly number[];
  /** Width of a stroke, mm; 0 for a polygon. */
  readonly mm: number;
}

function facesOf(
  { places, triangles }: { readonly places: Float32Array; readonly triangles: Uint32Array },
  matrix: Float32Array,
  colour: readonly number[],
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
      colour,
      mm: 0,
    });
  }
  return faces;
}

const LIMIT = { colour: [0.1, 0.13, 0.18], mm: 0.5 } as const;

/** A triangle as its parts by band, and the limits between them, so much nearer to the viewer. */
function banded(
  face: Face,
  bands: readonly number[],
  colours: readonly (readonly number[])[],
  ahead: number,
): Face[] {
  const { polygons, limits } = partedInBands(
    face.corners.map(([right, up, towards], k): BandedCorner => [right, up, towards, bands[k] ?? 0]),
  );
  return [
    ...polygons.map(({ band, corners }) => ({ ...face, corners, colour: colours[band] ?? CLOTH_COLOUR })),
    ...limits.map((corners) => ({ corners, depth: face.depth + ahead, light: 1, ...LIMIT })),
  ];
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
