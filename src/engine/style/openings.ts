// What a closure leaves open: the gaps of its lacings.

import type { BlockName } from '../terms/names';
import type { Closure } from './style';

/** Blocks that are laced at their centre. */
export const lacedBlocks = (closure: Closure): BlockName[] =>
  (['front', 'back'] as const).filter((block) => closure[block] === 'lacing');

/** What one block's centre leaves open all round, mm. */
const openAt = (block: BlockName, closure: Closure): number =>
  closure[block] === 'lacing' ? closure.lacingGap : 0;

/** Half of it, which is what one half block is cut narrower by at its centre, mm. */
export const halfOpenAt = (block: BlockName, closure: Closure): number => openAt(block, closure) / 2;

/** What the laced garment leaves open all round, mm. */
export const openWidth = (closure: Closure): number => openAt('front', closure) + openAt('back', closure);
