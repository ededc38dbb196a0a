// All handles of a draft: of the edges as a whole, of their nodes, and of the wedges.

import { setEdgeNode } from '../../document';
import type { Draft, EdgeNodePlace, Style } from '../../engine';
import { type CanvasLayout, onCanvas } from '../layout/layOut';
import type { Redraft } from './bendHandles';
import type { Handle } from './handle';
import { wedgeHandles } from './wedgeHandles';

/**
 * All handles of a draft: edges first, then wedge by wedge, the axis before its points and legs.
 *
 * @param bending drafts another style for the same body; where given, handles that bend the axes replace those of points and legs
 */
export function handlesOf(
  draft: Draft,
  style: Style,
  layout: CanvasLayout,
  bending: Redraft | null = null,
): Handle[] {
  const { blocks, span } = draft;
  if (!blocks || !span) return [];
  return [
    ...edgeHandles(style, span, layout),
    ...draft.nodes.map((node) => nodeHandle(node, style, layout)),
    ...(['front', 'back'] as const).flatMap((block) =>
      blocks[block].wedges.flatMap((wedge) =>
        wedgeHandles(wedge, blocks[block], draft, style, layout, bending),
      ),
    ),
  ];
}

function edgeHandles(style: Style, span: { top: number; hem: number }, layout: CanvasLayout): Handle[] {
  const x = layout.centreX.front - 12;
  const shared = { kind: 'edge', wedge: null, block: null, level: null, node: null } as const;
  return [
    {
      ...shared,
      id: 'edge:top',
      which: 'top',
      at: { x, y: span.top },
      value: style.topAbove,
      least: -300,
      most: 120,
      gain: { x: 0, y: -1 },
      set: (before, value) => ({ ...before, topAbove: value }),
    },
    {
      ...shared,
      id: 'edge:hem',
      which: 'hem',
      at: { x, y: span.hem },
      value: style.hemBelow,
      least: -200,
      most: 400,
      gain: { x: 0, y: 1 },
      set: (before, value) => ({ ...before, hemBelow: value }),
    },
  ];
}

/** How far a node may be moved from the straight edge, mm. */
const MOST_BEYOND_MM = 200;

function nodeHandle({ edge, name, block, at }: EdgeNodePlace, style: Style, layout: CanvasLayout): Handle {
  const shape = edge === 'top' ? 'topShape' : 'hemShape';
  return {
    id: `node:${edge}:${name}`,
    kind: 'node',
    wedge: null,
    block,
    level: null,
    which: edge,
    node: name,
    at: onCanvas(layout, block, at),
    value: style[shape][name].beyond,
    least: -MOST_BEYOND_MM,
    most: MOST_BEYOND_MM,
    gain: { x: 0, y: edge === 'top' ? -1 : 1 },
    set: (before, beyond) => setEdgeNode(before, shape, name, { ...before[shape][name], beyond }),
  };
}
