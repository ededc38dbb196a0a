// All handles of a draft: of the edges as a whole, of their nodes, and of the wedges.

import { setEdgeNode } from '../../document';
import { type Draft, type EdgeNodePlace, type Style, styleSpan } from '../../engine';
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
  const handles = [
    ...edgeHandles(style, span, layout),
    ...draft.nodes.map((node) => nodeHandle(node, style, layout)),
    ...(['front', 'back'] as const).flatMap((block) =>
      blocks[block].wedges.flatMap((wedge) =>
        wedgeHandles(wedge, blocks[block], draft, style, layout, bending),
      ),
    ),
  ];
  return handles.map(holdingItsNumber);
}

/** A number beyond the limits of its handle, typed or balanced, is the limit: no pull moves it the other way. */
const holdingItsNumber = (handle: Handle): Handle => ({
  ...handle,
  least: Math.min(handle.least, handle.value),
  most: Math.max(handle.most, handle.value),
});

function edgeHandles(style: Style, span: { top: number; hem: number }, layout: CanvasLayout): Handle[] {
  const x = layout.centreX.front - 12;
  const shared = { kind: 'edge', wedge: null, block: null, level: null, node: null } as const;
  const [top, hem] = [styleSpan('topAbove'), styleSpan('hemBelow')];
  return [
    {
      ...shared,
      id: 'edge:top',
      which: 'top',
      at: { x, y: span.top },
      value: style.topAbove,
      least: top[0],
      most: top[1],
      gain: { x: 0, y: -1 },
      set: (before, value) => ({ ...before, topAbove: value }),
    },
    {
      ...shared,
      id: 'edge:hem',
      which: 'hem',
      at: { x, y: span.hem },
      value: style.hemBelow,
      least: hem[0],
      most: hem[1],
      gain: { x: 0, y: 1 },
      set: (before, value) => ({ ...before, hemBelow: value }),
    },
  ];
}

function nodeHandle({ edge, name, block, at }: EdgeNodePlace, style: Style, layout: CanvasLayout): Handle {
  const shape = edge === 'top' ? 'topShape' : 'hemShape';
  const [least, most] = styleSpan(`${shape}.${name}.beyond`);
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
    least,
    most,
    gain: { x: 0, y: edge === 'top' ? -1 : 1 },
    set: (before, beyond) => setEdgeNode(before, shape, name, { ...before[shape][name], beyond }),
  };
}
