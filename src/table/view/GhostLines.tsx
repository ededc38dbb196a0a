// The outlines of an earlier draft under the present one, centre lines on centre lines.

import { memo } from 'react';
import type { Draft, Point } from '../../engine';
import { type CanvasLayout, onCanvas } from '../layout/layout';
import { panelsOnBlock } from '../layout/panelsOnBlock';
import { closedPath, pathThrough } from './paths';

export const GhostLines = memo(function GhostLines({
  draft,
  layout,
}: {
  draft: Draft;
  layout: CanvasLayout;
}) {
  const outlines = (['front', 'back'] as const).flatMap((block) => {
    const place = (point: Point): Point => onCanvas(layout, block, point);
    return panelsOnBlock(draft, block).flatMap(({ ring, darts }) => [
      closedPath(ring.map(place)),
      ...darts
        .filter(({ open }) => !open)
        .flatMap(({ inner, outer }) => [inner, outer].map((leg) => pathThrough(leg.map(place)))),
    ]);
  });
  return <path className="ghost" d={outlines.join('')} />;
});
