// The line along which a new wedge would divide a panel, under the pointer.

import { type BlockName, type Draft, stationOf, stationX, xAt } from '../../../engine';
import { type CanvasLayout, onCanvas } from '../../layout/layOut';
import { pathThrough } from './paths';

export interface NewWedge {
  readonly block: BlockName;
  readonly station: number;
}

/** The block and station of a new wedge at a point, canvas mm; null outside the blocks. */
export function newWedgeAt(
  at: { x: number; y: number },
  draft: Draft,
  layout: CanvasLayout,
): NewWedge | null {
  const { blocks, span } = draft;
  if (!blocks || !span || at.y < span.top || at.y > span.hem) return null;
  for (const block of ['front', 'back'] as const) {
    const x = block === 'front' ? at.x - layout.centreX.front : layout.centreX.back - at.x;
    const { sideSeam, bustLine } = blocks[block];
    const width = xAt(sideSeam, at.y);
    if (x > 0 && x < width) return { block, station: stationOf(x, bustLine, width) };
  }
  return null;
}

interface AddGuideProps {
  readonly wedge: NewWedge;
  readonly draft: Draft;
  readonly layout: CanvasLayout;
}

export function AddGuide({ wedge, draft, layout }: AddGuideProps) {
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const { bustLine, sideSeam } = blocks[wedge.block];
  const heights = [
    span.top,
    ...draft.levels.map(({ y }) => y).filter((y) => y > span.top && y < span.hem),
    span.hem,
  ];
  const line = heights.map((y) =>
    onCanvas(layout, wedge.block, { x: stationX(wedge.station, bustLine, xAt(sideSeam, y)), y }),
  );
  return <path className="add-guide" d={pathThrough(line)} />;
}
