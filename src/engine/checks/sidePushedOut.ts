// Wedges set by hand that take more than the girth gives: the side seam makes up for it and runs outwards.

import type { Block } from '../block/block';
import type { Level } from '../block/lines/levels';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import { inches } from '../terms/units';

/** Less than this outwards is a side seam like any other; common practice, no source. mm */
const LEAST_MM = inches(0.5);

/**
 * A note for each block whose side seam wedges set by hand push outwards, at the level where they push it farthest: there they
 * take more out of the block than it is smaller than at the bust. Levels larger than the bust are not looked at.
 */
export function sidePushedOut(
  blocks: readonly Block[],
  { wedges }: Style,
  levels: readonly Level[],
): Issue[] {
  const manual = new Set(wedges.filter(({ sizing }) => sizing === 'manual').map(({ id }) => id));
  const bust = levels.find(({ name }) => name === 'bust');
  if (!bust) return [];
  return blocks.flatMap((block): Issue[] => {
    let most: { readonly level: Level; readonly by: number } | null = null;
    for (const level of levels) {
      const smaller = bust.net[block.name] - level.net[block.name];
      const isByHand = block.wedges.some(
        ({ id, intake }) => manual.has(id) && (intake.get(level.name) ?? 0) > 0,
      );
      if (smaller <= 0 || !isByHand) continue;
      const taken = block.wedges.reduce(
        (sum, { intake }) => sum + (intake.get(level.name) ?? 0) - (intake.get('bust') ?? 0),
        0,
      );
      if (taken - smaller > (most?.by ?? LEAST_MM)) most = { level, by: taken - smaller };
    }
    return most
      ? [issue('sidePushedOut', { by: most.by }, { block: block.name, level: most.level.name })]
      : [];
  });
}
