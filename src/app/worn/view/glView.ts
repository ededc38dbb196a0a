// Draws body and garment with WebGL 2: light, bands of colour with lines between them, seams, bones and lacing.

import { type Camera, type Frame, projection } from './camera';
import { normalsOf, strokeCorners } from './corners';
import { SOLID_FRAGMENT, SOLID_VERTEX, STROKE_FRAGMENT, STROKE_VERTEX } from './shaders';
import { BODY_COLOUR, bandPlace, CLOTH_COLOUR, SCALES, type Shading, valuesOf } from './shades';
import type { WornPicture } from './wornPicture';

interface DrawChoice {
  readonly picture: WornPicture;
  readonly shading: Shading;
  readonly camera: Camera;
  readonly frame: Frame;
  /** Red, green and blue, 0 to 1. */
  readonly background: readonly [number, number, number];
  /** Pixels of the screen for a pixel of the page. */
  readonly ratio: number;
}

/** Draws into its canvas as large as that is. */
export type Drawing = (choice: DrawChoice) => void;

/** Cloth lies in front of the skin it presses into, and strokes in front of the cloth, mm. */
const CLOTH_AHEAD_MM = 5;
const STROKES_AHEAD_MM = 8;

const STROKES = [
  { of: 'bones', width: 4.5, colour: [0.36, 0.4, 0.46] },
  { of: 'seams', width: 1.4, colour: [0.1, 0.13, 0.18] },
  { of: 'lacing', width: 2, colour: [0.45, 0.1, 0.2] },
  { of: 'eyelets', width: 6, colour: [0.1, 0.13, 0.18] },
] as const;

/** Null where the browser has no WebGL 2. */
export function makeGlDrawing(canvas: HTMLCanvasElement): Drawing | null {
  const gl = canvas.getContext('webgl2', { antialias: true, alpha: false });
  if (!gl) return null;
  const solid = programOf(gl, SOLID_VERTEX, SOLID_FRAGMENT);
  const stroke = programOf(gl, STROKE_VERTEX, STROKE_FRAGMENT);
  if (!solid || !stroke) return null;
  let drawn: WornPicture | null = null;
  let buffers: ReturnType<typeof buffersFor> | null = null;
  let shaded: Shading | null = null;

  return ({ picture, shading, camera, frame, background, ratio }) => {
    if (drawn !== picture) {
      buffers?.free();
      buffers = buffersFor(gl, picture);
      [drawn, shaded] = [picture, null];
    }
    if (!buffers) return;
    if (shaded !== shading) {
      buffers.shade(placesOf(picture, shading));
      shaded = shading;
    }
    const { width, height } = canvas;
    gl.viewport(0, 0, width, height);
    gl.clearColor(...background, 1);
    gl.enable(gl.DEPTH_TEST);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    const matrix = projection(camera, frame);
    const scale = camera.zoom / frame.half;
    const begin = (program: WebGLProgram, ahead: number) =>
      beginWith(gl, program, { rows: matrix, size: [width, height], ahead: ahead * scale });
    const body = begin(solid, 0);
    gl.uniform1i(body('banded'), 0);
    gl.uniform3f(body('plain'), ...BODY_COLOUR);
    buffers.body.draw();
    const cloth = begin(solid, CLOTH_AHEAD_MM);
    gl.uniform1i(cloth('banded'), shading === 'cloth' ? 0 : 1);
    gl.uniform3f(cloth('plain'), ...CLOTH_COLOUR);
    if (shading !== 'cloth') gl.uniform3fv(cloth('bands'), SCALES[shading].colours.flat());
    buffers.cloth.draw();
    const strokes = begin(stroke, STROKES_AHEAD_MM);
    for (const { of, width: px, colour } of STROKES) {
      gl.uniform1f(strokes('width'), px * ratio);
      gl.uniform3fv(strokes('colour'), colour);
      buffers.strokes[of].draw();
    }
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
function placesOf(picture: WornPicture, shading: Shading): Float32Array {
  const values = valuesOf(picture, shading);
  if (!values || shading === 'cloth') return new Float32Array(picture.standOff.length);
  return values.map((value) => bandPlace(SCALES[shading], value));
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
const ATTRIBUTE_SIZES = { place: 3, normal: 3, band: 1, other: 3, side: 1 } as const;
const LOCATIONS = { place: 0, normal: 1, band: 2, other: 1, side: 2 } as const;

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
    const count = indices?.length ?? data.side?.length ?? 0;
    const draw = (): void => {
      gl.bindVertexArray(array);
      if (indices) gl.drawElements(gl.TRIANGLES, count, gl.UNSIGNED_INT, 0);
      else gl.drawArrays(gl.TRIANGLES, 0, count);
    };
    return { draw, own };
  };
  const solidOf = ({ places, triangles }: Pick<WornPicture, 'places' | 'triangles'>) =>
    arrayOf(
      { place: places, normal: normalsOf(places, triangles), band: new Float32Array(places.length / 3) },
      triangles,
    );
  const cloth = solidOf(picture);
  return {
    body: solidOf(picture.body),
    cloth,
    strokes: {
      bones: arrayOf(strokeCorners(picture.bones)),
      seams: arrayOf(strokeCorners(picture.seams)),
      lacing: arrayOf(strokeCorners(picture.lacing)),
      eyelets: arrayOf(strokeCorners(picture.eyelets)),
    },
    shade: (bands: Float32Array): void => {
      gl.bindBuffer(gl.ARRAY_BUFFER, cloth.own.get('band') ?? null);
      gl.bufferData(gl.ARRAY_BUFFER, bands, gl.DYNAMIC_DRAW);
    },
    free: (): void => {
      for (const buffer of made) gl.deleteBuffer(buffer);
    },
  };
}
