// What the wedges and the side seam of both blocks take in at a level.

import type { BlockName, LevelName } from '../terms/names';
import type { Block } from './block';

/** Where the closed half body grew smaller than at the bust: each wedge by id, and each block's side seam; mm. */
export interface Shaping {
  readonly wedges: Readonly<Record<string, number>>;
  readonly sideSeam: Readonly<Record<BlockName, number>>;
}

/** The shaping of blocks at a level; all 0 where the level is the bust. */
export function shapingAt(level: LevelName, blocks: readonly Block[]): Shaping {
  const wedges: Record<string, number> = {};
  const sideSeam = { front: 0, back: 0 };
  for (const block of blocks) {
    for (const wedge of block.wedges)
      wedges[wedge.id] = (wedge.intake.get(level) ?? 0) - (wedge.intake.get('bust') ?? 0);
    sideSeam[block.name] = (block.width.get('bust') ?? 0) - (block.width.get(level) ?? 0);
  }
  return { wedges, sideSeam };
}
