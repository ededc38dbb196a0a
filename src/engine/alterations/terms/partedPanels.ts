// The panels of a block by the wedges that part them.

import type { BlockName } from '../../terms/names';
import type { PanelName } from './alteration';

export interface PartedPanels {
  /** Whether front and back side panel are cut in one. */
  readonly isJoined: boolean;
  /** The panel of a number, from 1 at the centre line. */
  readonly panelAt: (block: BlockName, number: number) => PanelName;
}

/** The panels that so many wedges part on each block; those at the side are one where they are joined and each block is parted. */
export function partedPanels(wedges: Readonly<Record<BlockName, number>>, joinedSide = false): PartedPanels {
  const isJoined = joinedSide && wedges.front > 0 && wedges.back > 0;
  return {
    isJoined,
    panelAt: (block, number) =>
      isJoined && number === wedges[block] + 1 ? { kind: 'sidePanel' } : { kind: 'panel', block, number },
  };
}
