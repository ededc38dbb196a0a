// Both halves of a sewn garment as one list of triangles, for files and pictures.

import type { PieceIdentity } from '../terms/identity';
import { isBoned } from './cloth/bones';
import type { MeshLine } from './mesh/garmentMesh';
import type { WornHalf } from './sewGarment';

/** Triangles of the whole garment; the cross product of their edges points outwards. */
export interface WholeMesh {
  /** x to the wearer's left, y forwards, z up, mm; three numbers a vertex. */
  readonly places: Float64Array;
  readonly standOff: Float64Array;
  readonly contact: Float64Array;
  /** Three vertices a triangle. */
  readonly triangles: Int32Array;
  /** For each triangle: which panel, its corners' x and y on paper (six numbers), and its strains. */
  readonly panels: readonly PieceIdentity[];
  readonly flat: Float64Array;
  readonly warp: Float64Array;
  readonly weft: Float64Array;
  readonly shear: Float64Array;
  /** Seams, darts, centres and edges, each by its vertices; a centre is `open` where it is laced. */
  readonly lines: readonly WholeLine[];
}

interface WholeLine {
  readonly kind: MeshLine['kind'];
  readonly open: boolean;
  /** Whether a bone lies along it. */
  readonly boned: boolean;
  readonly vertices: readonly number[];
}

/**
 * The whole of one half and its mirror image, or of a left and a right half. Where both are alike, a vertex at a closed centre
 * is one for both.
 */
export function wholeMesh(halves: readonly WornHalf[]): WholeMesh {
  const places: number[] = [];
  const standOff: number[] = [];
  const contact: number[] = [];
  const triangles: number[] = [];
  const panels: PieceIdentity[] = [];
  const flat: number[] = [];
  const lines: WholeLine[] = [];
  const strains = { warp: [] as number[], weft: [] as number[], shear: [] as number[] };
  const addHalf = (half: WornHalf, mirrored: boolean, shared: Int32Array | null): Int32Array => {
    const { draped, fields } = half;
    const { mesh, garment } = draped;
    const numbers = Int32Array.from({ length: mesh.count }, (_, v) => {
      const x = draped.places[3 * v]!;
      if (shared && garment.fixed[v] === 1 && x === 0) return shared[v]!;
      places.push(mirrored ? -x : x, draped.places[3 * v + 1]!, draped.places[3 * v + 2]!);
      standOff.push(fields.standOff[v]!);
      contact.push(fields.contact[v]!);
      return standOff.length - 1;
    });
    for (let t = 0; t < mesh.panelOfTriangle.length; t += 1) {
      const corners = [0, 1, 2].map((k) => mesh.triangles[3 * t + k]!);
      const order =
        facesOut(
          draped.places,
          corners.map((i) => mesh.sewnAs[i]!),
        ) === mirrored
          ? [0, 2, 1]
          : [0, 1, 2];
      for (const k of order) {
        triangles.push(numbers[mesh.sewnAs[corners[k]!]!]!);
        flat.push(mesh.flat[2 * corners[k]!]!, mesh.flat[2 * corners[k]! + 1]!);
      }
      panels.push(mesh.panels[mesh.panelOfTriangle[t]!]!.piece);
      for (const name of ['warp', 'weft', 'shear'] as const) strains[name].push(fields[name][t]!);
    }
    for (const line of mesh.lines)
      lines.push({
        kind: line.kind,
        open: line.kind === 'centre' && draped.places[3 * line.sewn[0]!] !== 0,
        boned: isBoned(line, mesh),
        vertices: line.sewn.map((v) => numbers[v]!),
      });
    return numbers;
  };
  const [first, second] = halves;
  if (first) {
    const left = addHalf(first, false, null);
    addHalf(second ?? first, true, second ? null : left);
  }
  return {
    places: Float64Array.from(places),
    standOff: Float64Array.from(standOff),
    contact: Float64Array.from(contact),
    triangles: Int32Array.from(triangles),
    panels,
    flat: Float64Array.from(flat),
    warp: Float64Array.from(strains.warp),
    weft: Float64Array.from(strains.weft),
    shear: Float64Array.from(strains.shear),
    lines,
  };
}

/** Whether the cross product of a triangle's edges points away from the axis. */
function facesOut(X: Float64Array, [a = 0, b = 0, c = 0]: readonly number[]): boolean {
  const edge = (i: number, j: number): number => X[3 * i + j]! - X[3 * a + j]!;
  const nx = edge(b, 1) * edge(c, 2) - edge(b, 2) * edge(c, 1);
  const ny = edge(b, 2) * edge(c, 0) - edge(b, 0) * edge(c, 2);
  return nx * X[3 * a]! + ny * X[3 * a + 1]! > 0;
}
