// Top edges and hems by the names makers give them: shapes to start from, every node free to be moved. Heights are common
// practice, no source.

import { type EdgeNode, type EdgeShape, inches, LEVEL_EDGE } from '../../engine';
import { EDGE_LABELS } from '../messages/words/presets';

export interface NamedEdge {
  readonly name: string;
  readonly label: string;
  readonly shape: EdgeShape;
}

const smooth = (beyond: number): EdgeNode => ({ beyond: inches(beyond), kind: 'smooth' });
const corner = (beyond: number): EdgeNode => ({ beyond: inches(beyond), kind: 'corner' });

/** Heights above the level top edge. */
export const TOP_EDGES: readonly NamedEdge[] = [
  { name: 'level', label: EDGE_LABELS.top.level, shape: LEVEL_EDGE },
  {
    name: 'sweetheart',
    label: EDGE_LABELS.top.sweetheart,
    shape: { ...LEVEL_EDGE, centreFront: corner(-0.25), bustLine: smooth(1.25), sideFront: smooth(0.75) },
  },
  {
    name: 'scoop',
    label: EDGE_LABELS.top.scoop,
    shape: { ...LEVEL_EDGE, centreFront: smooth(-1), bustLine: smooth(-0.5), sideFront: smooth(0.25) },
  },
  {
    name: 'square',
    label: EDGE_LABELS.top.square,
    shape: { ...LEVEL_EDGE, centreFront: smooth(-1), bustLine: corner(-1), sideFront: smooth(0.75) },
  },
  {
    name: 'v',
    label: EDGE_LABELS.top.v,
    shape: { ...LEVEL_EDGE, centreFront: corner(-1.75), bustLine: smooth(0), sideFront: smooth(0.75) },
  },
  {
    name: 'high-back',
    label: EDGE_LABELS.top['high-back'],
    shape: { ...LEVEL_EDGE, sideBack: smooth(0.875), centreBack: smooth(2.5) },
  },
];

/** Depths below the level hem. */
export const HEM_EDGES: readonly NamedEdge[] = [
  { name: 'level', label: EDGE_LABELS.hem.level, shape: LEVEL_EDGE },
  {
    name: 'pointed',
    label: EDGE_LABELS.hem.pointed,
    shape: { ...LEVEL_EDGE, centreFront: corner(2), bustLine: smooth(0.375) },
  },
  {
    name: 'dipped',
    label: EDGE_LABELS.hem.dipped,
    shape: {
      ...LEVEL_EDGE,
      centreFront: smooth(1),
      bustLine: smooth(0.625),
      sideFront: smooth(0.1875),
      sideBack: smooth(0.25),
      centreBack: smooth(1),
    },
  },
  {
    name: 'arched',
    label: EDGE_LABELS.hem.arched,
    shape: { ...LEVEL_EDGE, sideFront: smooth(-0.625), underarm: smooth(-1.25), sideBack: smooth(-0.75) },
  },
];

/** The name of a shape; `free` where a node was moved from it. */
export function edgeShapeName(shape: EdgeShape, among: readonly NamedEdge[]): string {
  const same = among.find(({ shape: other }) =>
    (Object.keys(other) as (keyof EdgeShape)[]).every(
      (node) =>
        Math.abs(other[node].beyond - shape[node].beyond) < 1e-6 && other[node].kind === shape[node].kind,
    ),
  );
  return same?.name ?? 'free';
}

/** The shape of a name; level where there is none of that name. */
export function edgeShapeNamed(name: string, among: readonly NamedEdge[]): EdgeShape {
  return among.find((edge) => edge.name === name)?.shape ?? LEVEL_EDGE;
}
