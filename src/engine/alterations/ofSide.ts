// The alterations of one half of a garment.

import type { Side } from '../terms/names';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type PanelName,
  type SeamName,
} from './alteration';

export const samePanel = (one: PanelName, other: PanelName): boolean =>
  one.kind === 'sidePanel' || other.kind === 'sidePanel'
    ? one.kind === other.kind
    : one.block === other.block && one.number === other.number;

/** Whether a seam joins the two halves at a centre. */
export const isCentre = (seam: SeamName): boolean =>
  seam.kind === 'seam' && samePanel(seam.pieces[0], seam.pieces[1]);

/** What is done on one half; of a centre seam only that half's own amount, which then stands in both places. */
export function alterationsOfSide(alterations: readonly Alteration[], side: Side): (Alteration | null)[] {
  return alterations.map((each): Alteration | null => {
    if (each.side !== 'both' && each.side !== side) return null;
    const onHalf = { ...each, side: 'both' } as const;
    if (onHalf.kind !== 'seam' || !isCentre(onHalf.seam)) return onHalf;
    const at = onHalf.at.map(({ height, a, b }) => {
      const own = side === 'left' ? a : b;
      return { height, a: own, b: own };
    });
    return { ...onHalf, at };
  });
}

/** Whether both halves are altered alike; no order counts. */
export function areAlike(
  left: readonly (Alteration | null)[],
  right: readonly (Alteration | null)[],
): boolean {
  const keys = (half: readonly (Alteration | null)[]): string[] =>
    half.flatMap((each) => (each ? [keyOf(each)] : [])).sort();
  const [own, other] = [keys(left), keys(right)];
  return own.length === other.length && own.every((key, i) => key === other[i]);
}

/** The same text for alterations that say the same. Sums are made in its order, so that no order of a list counts. */
export const keyOf = (alteration: Alteration): string => JSON.stringify(alteration);

/** What became of alterations on a garment of two halves: made where each half that it is for has it. */
export const outcomesOfHalves = (
  left: readonly (AlterationOutcome | null)[],
  right: readonly (AlterationOutcome | null)[],
): AlterationOutcome[] =>
  left.map((own, i) => [own, right[i]].find((each) => each && !each.applied) ?? APPLIED);
