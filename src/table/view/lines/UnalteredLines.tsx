// The lines of the draft without its fittings, where they lie otherwise than those of the altered draft.

import { memo } from 'react';
import type { BlockName, Draft, Point } from '../../../engine';
import { type CanvasLayout, onCanvas } from '../../layout/layOut';
import { movedRuns } from '../../layout/movedRuns';
import { type PanelOnBlock, panelsOnBlock } from '../../layout/panelsOnBlock';
import { pathThrough } from './paths';

interface UnalteredLinesProps {
  readonly draft: Draft;
  /** Drafted alike, without what fittings changed. */
  readonly unaltered: Draft;
  readonly layout: CanvasLayout;
  /** The blocks that are drawn. */
  readonly shown: 'both' | BlockName;
}

export const UnalteredLines = memo(function UnalteredLines({
  draft,
  unaltered,
  layout,
  shown,
}: UnalteredLinesProps) {
  const runs = (['front', 'back'] as const).flatMap((block) => {
    if (shown !== 'both' && shown !== block) return [];
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
