// A sign under each wedge for the way it is sized: a lock for a manual intake, scales for a balanced one.

import { memo } from 'react';
import { type BlockName, type Draft, type Wedge, xAt } from '../../engine';
import { type CanvasLayout, onCanvas, type ShownBlocks } from '../layout/layOut';

interface WedgeSignsProps {
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  /** The blocks that are drawn. */
  readonly shown: ShownBlocks;
  /** One px in canvas mm. */
  readonly px: number;
}

/** Distance below the hem, px. */
const DROP_PX = 15;

const LOCK = 'M-4 -1V-3.500A4 4 0 0 1 4 -3.500V-1M-5.500 -1H5.500V6H-5.500Z';
const BALANCE =
  'M-6.500 -3.500H6.500M0 -6V6M-3.500 6H3.500M-6.500 -3.500L-8.500 1.500H-4.500ZM6.500 -3.500L4.500 1.500H8.500Z';

/** The sign of each way to size a wedge, as SVG path data about its centre, about 17 wide and 12 high. */
export const SIZING_SIGNS: Readonly<Record<Wedge['sizing'], string>> = { manual: LOCK, balanced: BALANCE };

export const WedgeSigns = memo(function WedgeSigns({ draft, layout, shown, px }: WedgeSignsProps) {
  const { blocks, span } = draft;
  if (!blocks || !span) return null;
  const blockNames = shown === 'both' ? (['front', 'back'] as const) : [shown];
  return blockNames.map((block: BlockName) =>
    blocks[block].wedges.map((wedge) => {
      const at = onCanvas(layout, block, { x: xAt(wedge.axis, span.hem), y: span.hem + DROP_PX * px });
      return (
        <path
          key={wedge.id}
          className={`wedge-sign ${wedge.sizing}`}
          data-sign={wedge.sizing}
          d={SIZING_SIGNS[wedge.sizing]}
          transform={`translate(${at.x} ${at.y}) scale(${px})`}
        />
      );
    }),
  );
});
