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

/**
 * What is done on one half, null for what is not; of a centre seam only that half's own amount, which then stands in both places.
 * What is done alike on both halves is the same object for either.
 */
export function alterationsOfSide(alterations: readonly Alteration[], side: Side): (Alteration | null)[] {
  return alterations.map((each): Alteration | null => {
    if (each.side !== 'both' && each.side !== side) return null;
    if (each.kind !== 'seam' || !isCentre(each.seam))
      return each.side === 'both' ? each : { ...each, side: 'both' };
    const at = each.at.map(({ height, a, b }) => {
      const own = side === 'left' ? a : b;
      return { height, a: own, b: own };
    });
    return { ...each, side: 'both', at };
  });
}

/** Whether both halves are altered alike; no order counts. */
export function areAlike(
  left: readonly (Alteration | null)[],
  right: readonly (Alteration | null)[],
): boolean {
  const onlyOn = (half: readonly (Alteration | null)[], other: readonly (Alteration | null)[]): string[] =>
    half.flatMap((each, i) => (each && each !== other[i] ? [keyOf(each)] : [])).sort();
  const [own, others] = [onlyOn(left, right), onlyOn(right, left)];
  return own.length === others.length && own.every((key, i) => key === others[i]);
}

/** The same text for alterations that say the same. Sums are made in its order, so that no order of a list counts. */
export function keyOf(alteration: Alteration): string {
  const known = keys.get(alteration);
  if (known !== undefined) return known;
  const key = JSON.stringify(alteration);
  keys.set(alteration, key);
  return key;
}

/** Texts of alterations, which never change, so that a redraft does not write them again. */
const keys = new WeakMap<Alteration, string>();

/** What became of alterations on a garment of two halves: made where each half that it is for has it. */
export const outcomesOfHalves = (
  left: readonly (AlterationOutcome | null)[],
  right: readonly (AlterationOutcome | null)[],
): AlterationOutcome[] =>
  left.map((own, i) => [own, right[i]].find((each) => each && !each.applied) ?? APPLIED);
