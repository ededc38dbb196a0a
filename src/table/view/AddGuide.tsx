// Where a new wedge would stand: a line under the pointer, down the panel it would part.

import { type Draft, type Side, stationOf, stationX, xAt } from '../../engine';
import { onTable, type TableLayout } from '../layout/layout';
import { pathThrough } from './paths';

export interface NewWedge {
  readonly side: Side;
  readonly station: number;
}

/** What a place of the table (mm) means for a new wedge; null outside the blocks. */
export function newWedgeAt(at: { x: number; y: number }, draft: Draft, layout: TableLayout): NewWedge | null {
  const { blocks, span } = draft;
  if (!blocks || !span || at.y < span.top || at.y > span.hem) return null;
  for (const side of ['front', 'back'] as const) {
    const x = side === 'front' ? at.x - layout.centreX.front : layout.centreX.back - at.x;
    const { sideSeam, bustLine } = blocks[side];
    const width = xAt(sideSeam, at.y);
    if (x > 0 && x < width) return { side, station: stationOf(x, bustLine, width) };
  }
  return null;
}

interface AddGuideProps {
  readonly wedge: NewWedge;
  readonly draft: Draft;
  readonly layout: TableLayout;
}

export function AddGuide({ wedge, draft, layout }: AddGuideProps) {
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const { bustLine, sideSeam } = blocks[wedge.side];
  const heights = [
    span.top,
    ...draft.levels.map(({ y }) => y).filter((y) => y > span.top && y < span.hem),
    span.hem,
  ];
  const line = heights.map((y) =>
    onTable(layout, wedge.side, { x: stationX(wedge.station, bustLine, xAt(sideSeam, y)), y }),
  );
  return <path className="add-guide" d={pathThrough(line)} />;
}
