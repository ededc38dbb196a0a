// What the screen needs of a sewn garment, as arrays that a worker can hand over.

import {
  type FitFigures,
  type LevelName,
  type NotJudged,
  type OtherWay,
  otherWay,
  type PieceIdentity,
  type Side,
  sectionPoints,
  type WholeMesh,
  type WornGarment,
  type WornHalf,
  type WornPlace,
  wholeMesh,
  worstPlaces,
} from '../../../engine';
import { type Channels, channelsOf } from './channels';
import { unitNormals } from './corners';
import { eyeletsOf, lacingOf } from './lacing';
import { finer } from './smoothed';

type Values = Float32Array<ArrayBuffer>;
type WholeLine = WholeMesh['lines'][number];

/** x to the wearer's left, y forwards, z up, mm; three numbers a vertex, three vertices a triangle. */
interface Solid {
  readonly places: Float32Array<ArrayBuffer>;
  readonly triangles: Uint32Array<ArrayBuffer>;
}

export interface WornPicture extends Solid {
  /** By vertex: mm, and parts of the length cut. */
  readonly standOff: Float32Array<ArrayBuffer>;
  readonly warp: Float32Array<ArrayBuffer>;
  readonly weft: Float32Array<ArrayBuffer>;
  /** By triangle, an index of `panels`. */
  readonly panelOf: Uint16Array<ArrayBuffer>;
  readonly panels: readonly PieceIdentity[];
  readonly body: Solid;
  /** Where bones lie between two layers. */
  readonly channels: Channels;
  /**
   * Pairs of points, six numbers a stroke: seams without a bone, bones and the stitches on both sides of them, edges of the cloth,
   * and lacing.
   */
  readonly seams: Float32Array<ArrayBuffer>;
  readonly bones: Float32Array<ArrayBuffer>;
  readonly stitches: Float32Array<ArrayBuffer>;
  readonly edges: Float32Array<ArrayBuffer>;
  readonly lacing: Float32Array<ArrayBuffer>;
  /** Their middles, three numbers each. */
  readonly eyelets: Float32Array<ArrayBuffer>;
}

export interface WornHalfFigures {
  readonly side: Side | null;
  readonly figures: FitFigures;
  readonly worst: readonly WornPlace[];
}

export interface WornResult {
  readonly notJudged: NotJudged | null;
  readonly leftOut: readonly PieceIdentity[];
  /** Another way in which it can come to rest; null where none was found. */
  readonly other: OtherWay | null;
  /** Null where nothing was sewn. */
  readonly picture: WornPicture | null;
  readonly halves: readonly WornHalfFigures[];
  /** What the waist lies in front of the plumb line, mm. */
  readonly hollow: number;
}

export function wornResult({ notJudged, leftOut, halves }: WornGarment): WornResult {
  return {
    notJudged,
    leftOut,
    other: otherWay({ halves }),
    picture: halves.length > 0 ? pictureOf(halves) : null,
    halves: halves.flatMap(({ side, figures, levels }) =>
      figures ? [{ side, figures, worst: worstPlaces(figures, levels) }] : [],
    ),
    hollow: halves[0]?.body.hollow ?? 0,
  };
}

/** The arrays of a result, to be handed over and not copied. */
export const buffersOf = ({ picture }: WornResult): ArrayBuffer[] =>
  picture
    ? [
        ...[picture.places, picture.standOff, picture.warp, picture.weft, picture.seams, picture.bones],
        ...[
          picture.lacing,
          picture.eyelets,
          picture.edges,
          picture.stitches,
          picture.channels.places,
          picture.channels.normals,
          picture.channels.triangles,
          picture.channels.of,
          picture.triangles,
          picture.panelOf,
          picture.body.places,
          picture.body.triangles,
        ],
      ].map(({ buffer }) => buffer)
    : [];

function pictureOf(halves: readonly WornHalf[]): WornPicture {
  const mesh = wholeMesh(halves);
  const panels = [...new Map(mesh.panels.map((panel) => [panel.id, panel])).values()];
  const indices = new Map(panels.map(({ id }, i) => [id, i]));
  const count = mesh.standOff.length;
  const { places, triangles, values, middleOf } = finer(
    Float32Array.from(mesh.places),
    Uint32Array.from(mesh.triangles),
    [
      Float32Array.from(mesh.standOff),
      byVertex(mesh.warp, mesh.triangles, count),
      byVertex(mesh.weft, mesh.triangles, count),
    ],
  );
  const [standOff, warp, weft] = values as [Values, Values, Values];
  const at = (v: number): number[] => [...places.subarray(3 * v, 3 * v + 3)];
  const withMiddles = ({ vertices }: WholeLine): number[] =>
    vertices.flatMap((v, i) => [middleOf(vertices[i - 1] ?? v, v) ?? [], v].flat());
  const strokes = (lines: readonly WholeLine[]): Values =>
    Float32Array.from(
      lines.flatMap((line) => {
        const all = withMiddles(line);
        return all.slice(1).flatMap((v, i) => [...at(all[i] ?? v), ...at(v)]);
      }),
    );
  const isEdge = ({ kind }: WholeLine): boolean => kind === 'top' || kind === 'hem' || kind === 'armhole';
  const within = mesh.lines.filter((line) => !isEdge(line));
  const boned = within.filter((line) => line.boned);
  const { stitches, ...channels } = channelsOf(
    boned.map((line) => ({ vertices: withMiddles(line), open: line.open })),
    places,
    unitNormals(places, triangles),
  );
  const laced = mesh.lines.filter(({ open }) => open);
  const lacedPlaces = laced.map(({ vertices }) => vertices.map(at));
  return {
    places,
    triangles,
    standOff,
    warp,
    weft,
    panelOf: Uint16Array.from({ length: triangles.length / 3 }, (_, t) => {
      const panel = mesh.panels[Math.floor(t / 4)];
      return (panel && indices.get(panel.id)) ?? 0;
    }),
    panels,
    body: yielding(bodySolid(halves), mesh),
    channels,
    seams: strokes(within.filter((line) => !line.boned)),
    bones: strokes(boned),
    stitches,
    edges: strokes([...mesh.lines.filter(isEdge), ...laced]),
    lacing: Float32Array.from(lacingOf(lacedPlaces)),
    eyelets: Float32Array.from(lacedPlaces.flatMap(eyeletsOf).flat()),
  };
}

/** A value by triangle as the mean of each vertex's triangles. */
function byVertex(values: Float64Array, triangles: Int32Array, count: number): Float32Array<ArrayBuffer> {
  const [sums, shares] = [new Float32Array(count), new Float32Array(count)];
  for (const [k, v] of triangles.entries()) {
    sums[v] = (sums[v] ?? 0) + (values[Math.floor(k / 3)] ?? 0);
    shares[v] = (shares[v] ?? 0) + 1;
  }
  return sums.map((sum, v) => sum / (shares[v] || 1));
}

const ROW_MM = 9;
const BELOW_LAST_MM = 90;
/** Columns that are left out between two that are drawn. */
const EVERY = 4;

/** The body's skin from above the bust to below the hip; the left half of a left body, the right half of a right one. */
function bodySolid(halves: readonly WornHalf[]): Solid {
  const [left, right = left] = halves;
  if (!left || !right) return { places: new Float32Array(0), triangles: new Uint32Array(0) };
  const zOf = (name: LevelName): number => left.body.levels.find((level) => level.name === name)?.z ?? 0;
  const [top, bottom] = [Math.min(-20, zOf('overBust') + 130), zOf('hip') - BELOW_LAST_MM];
  const rows = Math.ceil((top - bottom) / ROW_MM);
  const places: number[] = [];
  let around = 0;
  for (let j = 0; j <= rows; j += 1) {
    const z = top + ((bottom - top) * j) / rows;
    const [ring, other] = [sectionPoints(left.body.surface, z), sectionPoints(right.body.surface, z)];
    const kept = ring
      .map((point, k) => (point.x < 0 ? (other[k] ?? point) : point))
      .filter((_, k) => k % EVERY === 0);
    around = kept.length;
    for (const { x, y } of kept) places.push(x, y, z);
  }
  const triangles: number[] = [];
  for (let j = 0; j < rows; j += 1)
    for (let i = 0; i < around; i += 1) {
      const [a, b] = [j * around + i, j * around + ((i + 1) % around)];
      triangles.push(a, a + around, b, b, a + around, b + around);
    }
  return { places: Float32Array.from(places), triangles: Uint32Array.from(triangles) };
}

/** The skin lies so far under the cloth that presses it in, and gives way so far round a place of the cloth, mm. */
const UNDER_MM = 2;
const REACH_MM = 18;

/** Times that hollows between two places of the cloth are evened out. */
const EVENED = 4;

/** The body's skin pressed in where the cloth presses it, so that it does not come out through the cloth. */
function yielding({ places, triangles }: Solid, { places: cloth, standOff }: WholeMesh): Solid {
  const depths = new Float32Array(places.length / 3);
  for (const v of depths.keys()) {
    const [x = 0, y = 0, z = 0] = places.subarray(3 * v, 3 * v + 3);
    let depth = 0;
    for (const [w, off] of standOff.entries()) {
      if (off > 0 || UNDER_MM - off <= depth) continue;
      const [dx, dy, dz] = [
        (cloth[3 * w] ?? 0) - x,
        (cloth[3 * w + 1] ?? 0) - y,
        (cloth[3 * w + 2] ?? 0) - z,
      ];
      const reach = REACH_MM - off;
      const square = dx * dx + dy * dy + dz * dz;
      if (square >= reach * reach) continue;
      depth = Math.max(depth, (UNDER_MM - off) * Math.min(1, 2 * (1 - Math.sqrt(square) / reach)));
    }
    depths[v] = depth;
  }
  for (let round = 0; round < EVENED; round += 1) {
    const sums = new Float32Array(depths.length);
    const shares = new Float32Array(depths.length);
    for (const [k, v] of triangles.entries()) {
      const next = triangles[k - (k % 3) + ((k + 1) % 3)] ?? v;
      sums[v] = (sums[v] ?? 0) + (depths[next] ?? 0);
      shares[v] = (shares[v] ?? 0) + 1;
    }
    for (const [v, sum] of sums.entries()) depths[v] = Math.max(depths[v] ?? 0, sum / (shares[v] || 1));
  }
  const pressed = places.slice();
  for (const [v, depth] of depths.entries()) {
    const [i, j] = [3 * v, 3 * v + 1];
    const [x = 0, y = 0] = places.subarray(i, j + 1);
    const r = Math.hypot(x, y) || 1;
    pressed[i] = x * (1 - depth / r);
    pressed[j] = y * (1 - depth / r);
  }
  return { places: pressed, triangles };
}
