// What a closure leaves open: the gaps of its lacings.

import type { Side } from '../terms/names';
import type { Closure } from './style';

/** Blocks that are laced at their centre. */
export const lacedSides = (closure: Closure): Side[] =>
  (['front', 'back'] as const).filter((side) => closure[side] === 'lacing');

/** What one block's centre leaves open all round, mm. */
export const openAt = (side: Side, closure: Closure): number =>
  closure[side] === 'lacing' ? closure.lacingGap : 0;

/** What the laced garment leaves open all round, mm. */
export const openWidth = (closure: Closure): number => openAt('front', closure) + openAt('back', closure);
