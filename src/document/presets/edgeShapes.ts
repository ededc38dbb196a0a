// Top edges and hems by the names makers give them: shapes to start from, every node free to be moved. Heights are common
// practice, no source.

import { type EdgeNode, type EdgeShape, inches, LEVEL_EDGE } from '../../engine';

export interface NamedEdge {
  readonly name: string;
  readonly label: string;
  readonly shape: EdgeShape;
}

const smooth = (beyond: number): EdgeNode => ({ beyond: inches(beyond), kind: 'smooth' });
const corner = (beyond: number): EdgeNode => ({ beyond: inches(beyond), kind: 'corner' });

/** Heights above the level top edge. */
export const TOP_EDGES: readonly NamedEdge[] = [
  { name: 'level', label: 'Level', shape: LEVEL_EDGE },
  {
    name: 'sweetheart',
    label: 'Sweetheart',
    shape: { ...LEVEL_EDGE, centreFront: corner(-0.25), bustLine: smooth(1.25), sideFront: smooth(0.75) },
  },
  {
    name: 'scoop',
    label: 'Scoop',
    shape: { ...LEVEL_EDGE, centreFront: smooth(-1), bustLine: smooth(-0.5), sideFront: smooth(0.25) },
  },
  {
    name: 'square',
    label: 'Square',
    shape: { ...LEVEL_EDGE, centreFront: smooth(-1), bustLine: corner(-1), sideFront: smooth(0.75) },
  },
  {
    name: 'v',
    label: 'V',
    shape: { ...LEVEL_EDGE, centreFront: corner(-1.75), bustLine: smooth(0), sideFront: smooth(0.75) },
  },
  {
    name: 'high-back',
    label: 'High back',
    shape: { ...LEVEL_EDGE, sideBack: smooth(0.875), centreBack: smooth(2.5) },
  },
];

/** Depths below the level hem. */
export const HEM_EDGES: readonly NamedEdge[] = [
  { name: 'level', label: 'Level', shape: LEVEL_EDGE },
  {
    name: 'pointed',
    label: 'Pointed in front',
    shape: { ...LEVEL_EDGE, centreFront: corner(2), bustLine: smooth(0.375) },
  },
  {
    name: 'dipped',
    label: 'Dipped front and back',
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
    label: 'Arched over the hip',
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
