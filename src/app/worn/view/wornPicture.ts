// What the screen needs of a sewn garment, as arrays that a worker can hand over.

import {
  type FitFigures,
  type NotJudged,
  type OtherWay,
  otherWay,
  type PieceIdentity,
  type Side,
  type WholeMesh,
  type WornGarment,
  type WornHalf,
  type WornPlace,
  wholeMesh,
  worstPlaces,
} from '../../../engine';
import { bodySolid, type Solid } from './bodySolid';
import { type Channels, channelsOf } from './channels';
import { type Extent, extentOf } from './extent';
import { eyeletsOf, lacingOf } from './lacing';
import { unitNormals } from './normals';
import { finer } from './smoothed';

type Values = Float32Array<ArrayBuffer>;
type WholeLine = WholeMesh['lines'][number];

export interface WornPicture extends Solid {
  readonly extent: Extent;
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
          picture.normals,
          picture.body.places,
          picture.body.triangles,
          picture.body.normals,
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
  const normals = unitNormals(places, triangles);
  const isEdge = ({ kind }: WholeLine): boolean => kind === 'top' || kind === 'hem' || kind === 'armhole';
  const within = mesh.lines.filter((line) => !isEdge(line));
  const boned = within.filter((line) => line.boned);
  const { stitches, ...channels } = channelsOf(
    boned.map((line) => ({ vertices: withMiddles(line), open: line.open })),
    places,
    normals,
  );
  const laced = mesh.lines.filter(({ open }) => open);
  const lacedPlaces = laced.map(({ vertices }) => vertices.map(at));
  return {
    extent: extentOf(places),
    places,
    triangles,
    normals,
    standOff,
    warp,
    weft,
    panelOf: Uint16Array.from({ length: triangles.length / 3 }, (_, t) => {
      const panel = mesh.panels[Math.floor(t / 4)];
      return (panel && indices.get(panel.id)) ?? 0;
    }),
    panels,
    body: bodySolid(halves, mesh),
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
