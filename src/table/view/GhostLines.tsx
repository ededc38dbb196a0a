// The outlines of an earlier draft under the present one, centre lines on centre lines.

import { memo } from 'react';
import type { Draft } from '../../engine';
import { onTable, type TableLayout } from '../layout';
import { closedPath } from './paths';

export const GhostLines = memo(function GhostLines({ draft, layout }: { draft: Draft; layout: TableLayout }) {
  const outlines = draft.pieces.map((piece) =>
    closedPath(
      piece.edges
        .flatMap((edge) => edge.points.slice(0, -1))
        .map((point) => onTable(layout, piece.block, point)),
    ),
  );
  return <path className="ghost" d={outlines.join('')} />;
});
