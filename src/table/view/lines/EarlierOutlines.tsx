// The outlines of an earlier draft over the present one, centre lines on centre lines.

import { memo } from 'react';
import type { Draft, Point } from '../../../engine';
import { type CanvasLayout, onCanvas } from '../../layout/layOut';
import { panelsOnBlock } from '../../layout/panelsOnBlock';
import { closedPath, pathThrough } from './paths';

export const EarlierOutlines = memo(function EarlierOutlines({
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
  return <path className="earlier-outlines" d={outlines.join('')} />;
});
