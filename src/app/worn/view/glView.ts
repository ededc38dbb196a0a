// Draws body and garment with WebGL 2: light, bands of colour with lines between them, seams, bones and lacing.

import type { Unit } from '../../../document';
import { BODY_BEYOND_MM, FADING_MM, type Solid } from './bodySolid';
import { type Camera, type Frame, projection } from './camera';
import {
  EYELET_FRAGMENT,
  EYELET_VERTEX,
  SOLID_FRAGMENT,
  SOLID_VERTEX,
  STROKE_FRAGMENT,
  STROKE_VERTEX,
} from './shaders';
import { BODY_COLOUR, bandPlace, CLOTH_COLOUR, type Shading, scaleOf, valuesOf } from './shades';
import type { WornPicture } from './wornPicture';

interface DrawChoice {
  readonly picture: WornPicture;
  readonly shading: Shading;
  /** The limits of the bands are round in this unit. */
  readonly unit: Unit;
  readonly camera: Camera;
  readonly frame: Frame;
  /** Red, green and blue, 0 to 1. */
  readonly background: readonly [number, number, number];
  /** Pixels of the screen for a pixel of the page. */
  readonly ratio: number;
}

/** Draws into its canvas as large as that is. */
export type Drawing = (choice: DrawChoice) => void;

/** Cloth lies in front of the skin it presses into, channels and then strokes in front of the cloth, mm. */
const CLOTH_AHEAD_MM = 5;
const CHANNELS_AHEAD_MM = 6.5;
const STROKES_AHEAD_MM = 8;

const INK = [0.1, 0.13, 0.18] as const;
const CORD = [0.52, 0.12, 0.24] as const;

interface Stroke {
  readonly of: 'bones' | 'stitches' | 'seams' | 'edges' | 'lacing';
  readonly colour: readonly [number, number, number];
  readonly alpha: number;
  /** Width in mm, but at least so many pixels of the page. */
  readonly mm: number;
  readonly px: number;
}

const STROKES: readonly Stroke[] = [
  { of: 'stitches', colour: INK, alpha: 0.65, mm: 0.5, px: 1 },
  { of: 'bones', colour: INK, alpha: 0.6, mm: 0.5, px: 1 },
  { of: 'seams', colour: INK, alpha: 0.85, mm: 0.6, px: 1.3 },
  { of: 'edges', colour: INK, alpha: 0.9, mm: 1.2, px: 1.8 },
  { of: 'lacing', colour: INK, alpha: 0.85, mm: 2.8, px: 2.4 },
  { of: 'lacing', colour: CORD, alpha: 1, mm: 1.8, px: 1.5 },
];
const EYELET = { mm: 6, px: 5, ring: [0.8, 0.77, 0.68], hole: INK } as const;

/** Null where the browser has no WebGL 2. */
export function makeGlDrawing(canvas: HTMLCanvasElement): Drawing | null {
  const gl = canvas.getContext('webgl2', { antialias: true, alpha: false });
  if (!gl) return null;
  const solid = programOf(gl, SOLID_VERTEX, SOLID_FRAGMENT);
  const stroke = programOf(gl, STROKE_VERTEX, STROKE_FRAGMENT);
  const eyelet = programOf(gl, EYELET_VERTEX, EYELET_FRAGMENT);
  if (!solid || !stroke || !eyelet) return null;
  let drawn: WornPicture | null = null;
  let buffers: ReturnType<typeof buffersFor> | null = null;
  let shaded: `${Shading} ${Unit}` | null = null;

  return ({ picture, shading, unit, camera, frame, background, ratio }) => {
    if (drawn !== picture) {
      buffers?.free();
      buffers = buffersFor(gl, picture);
      [drawn, shaded] = [picture, null];
    }
    if (!buffers) return;
    if (shaded !== `${shading} ${unit}`) {
      buffers.shade(placesOf(picture, shading, unit));
      shaded = `${shading} ${unit}`;
    }
    const { width, height } = canvas;
    gl.viewport(0, 0, width, height);
    gl.clearColor(...background, 1);
    gl.enable(gl.DEPTH_TEST);
    gl.depthMask(true);
    gl.disable(gl.BLEND);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    const matrix = projection(camera, frame);
    const scale = camera.zoom / frame.half;
    const begin = (program: WebGLProgram, ahead: number) =>
      beginWith(gl, program, { rows: matrix, size: [width, height], ahead: ahead * scale });
    const body = begin(solid, 0);
    gl.uniform1i(body('banded'), 0);
    gl.uniform3f(body('plain'), ...BODY_COLOUR);
    gl.uniform3f(body('ground'), ...background);
    gl.uniform1f(body('fading'), FADING_MM);
    const { bottom, top } = picture.extent;
    gl.uniform2f(body('shown'), bottom - BODY_BEYOND_MM, top + BODY_BEYOND_MM);
    buffers.body.draw();
    const cloth = begin(solid, CLOTH_AHEAD_MM);
    gl.uniform1i(cloth('banded'), shading === 'cloth' ? 0 : 1);
    gl.uniform3f(cloth('plain'), ...CLOTH_COLOUR);
    gl.uniform2f(cloth('shown'), bottom, top);
    if (shading !== 'cloth') gl.uniform3fv(cloth('bands'), scaleOf(shading, unit).colours.flat());
    buffers.cloth.draw();
    gl.uniform1f(cloth('ahead'), CHANNELS_AHEAD_MM * scale);
    buffers.channels.draw();
    gl.depthMask(false);
    gl.enable(gl.BLEND);
    gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA);
    const pixels = (mm: number, px: number): number => Math.max(px * ratio, (mm * scale * height) / 2);
    const strokes = begin(stroke, STROKES_AHEAD_MM);
    for (const { of, colour, alpha, mm, px } of STROKES) {
      gl.uniform1f(strokes('width'), pixels(mm, px));
      gl.uniform4f(strokes('colour'), ...colour, alpha);
      buffers.strokes[of].draw();
    }
    const eyelets = begin(eyelet, STROKES_AHEAD_MM);
    gl.uniform1f(eyelets('width'), pixels(EYELET.mm, EYELET.px));
    gl.uniform3f(eyelets('ring'), ...EYELET.ring);
    gl.uniform3f(eyelets('hole'), ...EYELET.hole);
    buffers.eyelets.draw();
  };
}

/** Draws by a program from here on; gives where its values are set. */
function beginWith(
  gl: WebGL2RenderingContext,
  program: WebGLProgram,
  view: { readonly rows: Float32Array; readonly size: readonly [number, number]; readonly ahead: number },
): (name: string) => WebGLUniformLocation | null {
  // biome-ignore lint/correctness/useHookAtTopLevel: a call of WebGL, no hook of React
  gl.useProgram(program);
  const at = (name: string) => gl.getUniformLocation(program, name);
  gl.uniform4fv(at('rows'), view.rows);
  gl.uniform2fv(at('size'), view.size);
  gl.uniform1f(at('ahead'), view.ahead);
  return at;
}

/** The place among the bands of each vertex's value. */
function placesOf(picture: WornPicture, shading: Shading, unit: Unit): Float32Array {
  const values = valuesOf(picture, shading);
  if (!values || shading === 'cloth') return new Float32Array(picture.standOff.length);
  const scale = scaleOf(shading, unit);
  return values.map((value) => bandPlace(scale, value));
}

function programOf(gl: WebGL2RenderingContext, vertex: string, fragment: string): WebGLProgram | null {
  const program = gl.createProgram();
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, vertex],
    [gl.FRAGMENT_SHADER, fragment],
  ] as const) {
    const shader = gl.createShader(kind);
    if (!shader) return null;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  return gl.getProgramParameter(program, gl.LINK_STATUS) ? program : null;
}

/** Names and sizes of what the shaders take by vertex, in the order of their locations. */
const ATTRIBUTE_SIZES = { place: 3, normal: 3, band: 1 } as const;
const LOCATIONS = { place: 0, normal: 1, band: 2 } as const;

const STROKE_NUMBERS = 6;
/** Two triangles. */
const STROKE_CORNERS = 6;

function buffersFor(gl: WebGL2RenderingContext, picture: WornPicture) {
  const made: WebGLBuffer[] = [];
  const upload = (target: number, data: Float32Array | Uint32Array): WebGLBuffer => {
    const buffer = gl.createBuffer();
    made.push(buffer);
    gl.bindBuffer(target, buffer);
    gl.bufferData(target, data, gl.DYNAMIC_DRAW);
    return buffer;
  };
  const arrayOf = (
    data: Partial<Record<keyof typeof ATTRIBUTE_SIZES, Float32Array>>,
    indices?: Uint32Array,
  ) => {
    const array = gl.createVertexArray();
    gl.bindVertexArray(array);
    const own = new Map<string, WebGLBuffer>();
    for (const name of Object.keys(data) as (keyof typeof ATTRIBUTE_SIZES)[]) {
      own.set(name, upload(gl.ARRAY_BUFFER, data[name] ?? new Float32Array(0)));
      gl.enableVertexAttribArray(LOCATIONS[name]);
      gl.vertexAttribPointer(LOCATIONS[name], ATTRIBUTE_SIZES[name], gl.FLOAT, false, 0, 0);
    }
    if (indices) upload(gl.ELEMENT_ARRAY_BUFFER, indices);
    const count = indices?.length ?? (data.place?.length ?? 0) / 3;
    const draw = (): void => {
      gl.bindVertexArray(array);
      if (indices) gl.drawElements(gl.TRIANGLES, count, gl.UNSIGNED_INT, 0);
      else gl.drawArrays(gl.POINTS, 0, count);
    };
    return { draw, own };
  };
  const solidOf = ({ places, triangles, normals }: Solid) =>
    arrayOf({ place: places, normal: normals, band: new Float32Array(places.length / 3) }, triangles);
  /** Two ends a stroke, six numbers; its corners are made where it is drawn. */
  const strokesOf = (strokes: Float32Array) => {
    const array = gl.createVertexArray();
    gl.bindVertexArray(array);
    upload(gl.ARRAY_BUFFER, strokes);
    for (const end of [0, 1]) {
      gl.enableVertexAttribArray(end);
      gl.vertexAttribPointer(end, 3, gl.FLOAT, false, 4 * STROKE_NUMBERS, 12 * end);
      gl.vertexAttribDivisor(end, 1);
    }
    const draw = (): void => {
      gl.bindVertexArray(array);
      gl.drawArraysInstanced(gl.TRIANGLES, 0, STROKE_CORNERS, strokes.length / STROKE_NUMBERS);
    };
    return { draw };
  };
  const cloth = solidOf(picture);
  const channels = solidOf(picture.channels);
  const shade = ({ own }: typeof cloth, bands: Float32Array): void => {
    gl.bindBuffer(gl.ARRAY_BUFFER, own.get('band') ?? null);
    gl.bufferData(gl.ARRAY_BUFFER, bands, gl.DYNAMIC_DRAW);
  };
  return {
    body: solidOf(picture.body),
    cloth,
    channels,
    strokes: {
      stitches: strokesOf(picture.stitches),
      bones: strokesOf(picture.bones),
      seams: strokesOf(picture.seams),
      edges: strokesOf(picture.edges),
      lacing: strokesOf(picture.lacing),
    },
    eyelets: arrayOf({ place: picture.eyelets }),
    shade: (bands: Float32Array): void => {
      shade(cloth, bands);
      shade(
        channels,
        Float32Array.from(picture.channels.of, (v) => bands[v] ?? 0),
      );
    },
    free: (): void => {
      for (const buffer of made) gl.deleteBuffer(buffer);
    },
  };
}
