// Where the cloth starts: each panel at its share of the body's outline at its height, a little off the body.

import { crossingsAt } from '../../geometry/polyline';
import { radiusAt, sectionOf } from '../body/surface';
import { COLUMN_STEP, COLUMNS } from '../body/tape';
import type { WornBody } from '../body/wornBody';
import type { GarmentMesh, MeshPanel } from './garmentMesh';

/** How far off the body. mm */
const OFF_MM = 3;
/** Panels are laid as wide as they are at least so far inside their ends, mm. */
const INSIDE_END_MM = 18;
const ROW_MM = 2;

interface Row {
  readonly spans: readonly (readonly [left: number, right: number])[];
  /** Where each panel starts from centre front, and how far all go. */
  readonly starts: readonly number[];
  readonly total: number;
  /** Length along the body's section to each column. */
  readonly along: Float64Array;
}

/**
 * Places to start from: x, y and z of every sewn vertex, mm.
 *
 * @param gap half of what is open at centre front and centre back, mm
 * @param up how much higher than the body's marks it starts, mm
 */
export function placeOn(
  mesh: GarmentMesh,
  body: WornBody,
  gap: { readonly front: number; readonly back: number },
  up = 0,
): Float64Array {
  const places = new Float64Array(3 * mesh.count);
  const shares = new Float64Array(mesh.count);
  const order = inOrderRound(mesh.panels);
  const rows = new Map<number, Row>();
  const rowAt = (y: number): Row => {
    const k = Math.round(y / ROW_MM);
    const row = rows.get(k) ?? makeRow(k * ROW_MM, order, body);
    rows.set(k, row);
    return row;
  };
  for (let i = 0; i < mesh.sewnAs.length; i += 1) {
    const [x, y] = [mesh.flat[2 * i]!, mesh.flat[2 * i + 1]!];
    const panel = mesh.panels[mesh.panelOfVertex[i]!]!;
    const k = order.indexOf(panel);
    const { spans, starts, total, along } = rowAt(y);
    const [left, right] = spans[k]!;
    const part = (x - left) / (right - left);
    const round = starts[k]! + (panel.piece.block === 'front' ? part : 1 - part) * (right - left);
    const length = along[COLUMNS - 1]!;
    const at = Math.max(0, Math.min(length, gap.front + (round / total) * (length - gap.front - gap.back)));
    let c = 0;
    while (c < COLUMNS - 2 && along[c + 1]! < at) c += 1;
    const theta = (c + (at - along[c]!) / (along[c + 1]! - along[c]!)) * COLUMN_STEP;
    const z = body.heightOf(y);
    const r = radiusAt(body.surface, theta, z) + OFF_MM;
    const v = mesh.sewnAs[i]!;
    places[3 * v]! += r * Math.sin(theta);
    places[3 * v + 1]! += r * Math.cos(theta);
    places[3 * v + 2]! += z + up;
    shares[v]! += 1;
  }
  for (let v = 0; v < mesh.count; v += 1) for (let j = 0; j < 3; j += 1) places[3 * v + j]! /= shares[v]!;
  return places;
}

/** Front panels from the centre to the side, then back panels from the side to the centre. */
function inOrderRound(panels: readonly MeshPanel[]): MeshPanel[] {
  const middle = ({ ring }: MeshPanel): number => ring.reduce((sum, { x }) => sum + x, 0) / ring.length;
  const [front, back] = [
    panels.filter(({ piece }) => piece.block === 'front'),
    panels.filter(({ piece }) => piece.block === 'back'),
  ];
  return [...front.sort((a, b) => middle(a) - middle(b)), ...back.sort((a, b) => middle(b) - middle(a))];
}

function makeRow(y: number, order: readonly MeshPanel[], body: WornBody): Row {
  const spans = order.map((panel) => spanAt(panel, y));
  const starts: number[] = [];
  let total = 0;
  for (const [left, right] of spans) {
    starts.push(total);
    total += right - left;
  }
  const radii = sectionOf(body.surface, body.heightOf(y));
  const along = new Float64Array(COLUMNS);
  for (let i = 1; i < COLUMNS; i += 1) {
    const [a, b] = [(i - 1) * COLUMN_STEP, i * COLUMN_STEP];
    along[i] =
      along[i - 1]! +
      Math.hypot(
        radii[i]! * Math.sin(b) - radii[i - 1]! * Math.sin(a),
        radii[i]! * Math.cos(b) - radii[i - 1]! * Math.cos(a),
      );
  }
  return { spans, starts, total, along };
}

/** The least and greatest x of a panel at a height, kept inside its ends. */
function spanAt({ ring }: MeshPanel, y: number): readonly [number, number] {
  let [top, bottom] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const point of ring) {
    top = Math.min(top, point.y);
    bottom = Math.max(bottom, point.y);
  }
  const held = Math.max(top + INSIDE_END_MM, Math.min(bottom - INSIDE_END_MM, y));
  const crossings = crossingsAt([...ring, ring[0]!], held);
  if (crossings.length < 2) {
    const middle = ring.reduce((sum, { x }) => sum + x, 0) / ring.length;
    return [middle - 10, middle + 10];
  }
  return [Math.min(...crossings), Math.max(...crossings)];
}
