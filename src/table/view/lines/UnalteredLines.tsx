// The lines of the draft without its fittings, where they lie otherwise than those of the altered draft.

import { memo } from 'react';
import type { Draft, Point } from '../../../engine';
import { type CanvasLayout, onCanvas } from '../../layout/layOut';
import { movedRuns } from '../../layout/movedRuns';
import { type PanelOnBlock, panelsOnBlock } from '../../layout/panelsOnBlock';
import { pathThrough } from './paths';

interface UnalteredLinesProps {
  readonly draft: Draft;
  /** Drafted alike, without what fittings changed. */
  readonly unaltered: Draft;
  readonly layout: CanvasLayout;
}

export const UnalteredLines = memo(function UnalteredLines({
  draft,
  unaltered,
  layout,
}: UnalteredLinesProps) {
  const runs = (['front', 'back'] as const).flatMap((block) => {
    const panels = panelsOnBlock(draft, block);
    return panelsOnBlock(unaltered, block).flatMap((was) => {
      const now = panels.find(({ piece }) => piece.id === was.piece.id);
      const lines = now ? linesOf(now) : [];
      return linesOf(was)
        .flatMap((line, i) => movedRuns(line, lines[i] ?? []))
        .map((run) => run.map((point): Point => onCanvas(layout, block, point)));
    });
  });
  return <path className="unaltered-lines" d={runs.map(pathThrough).join('')} />;
});

const linesOf = ({ inner, outer, lines, darts }: PanelOnBlock): (readonly Point[])[] => [
  inner,
  outer,
  ...lines,
  ...darts.flatMap((dart) => [dart.inner, dart.outer]),
];
