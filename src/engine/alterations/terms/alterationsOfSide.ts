// The alterations of one half of a garment.

import type { Side } from '../../terms/names';
import {
  type Alteration,
  type AlterationOutcome,
  APPLIED,
  type PanelName,
  type SeamName,
} from './alteration';

/** Whether two names mean one panel. */
export const samePanel = (one: PanelName, other: PanelName): boolean =>
  one.kind === 'sidePanel' || other.kind === 'sidePanel'
    ? one.kind === other.kind
    : one.block === other.block && one.number === other.number;

/** Whether a seam joins the two halves at a centre. */
export const isCentre = (seam: SeamName): boolean =>
  seam.kind === 'seam' && samePanel(seam.pieces[0], seam.pieces[1]);

/**
 * The alterations of one half, in the order of the list; null for one that is not made on it. Of a centre seam it has that half's
 * amount alone, for both mates. An alteration that is made alike on both halves is the same object for either.
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

/** Whether both halves are altered alike, in whatever order. */
export function areAlike(
  left: readonly (Alteration | null)[],
  right: readonly (Alteration | null)[],
): boolean {
  if (left.every((each, i) => each === right[i])) return true;
  const onlyOn = (half: readonly (Alteration | null)[], other: readonly (Alteration | null)[]): string[] =>
    half.flatMap((each, i) => (each && each !== other[i] ? [keyOf(each)] : [])).sort();
  const [own, others] = [onlyOn(left, right), onlyOn(right, left)];
  return own.length === others.length && own.every((key, i) => key === others[i]);
}

/** A text that is the same for equal alterations. They are added in its order, so that sums do not depend on the order of a list. */
export function keyOf(alteration: Alteration): string {
  const known = keys.get(alteration);
  if (known !== undefined) return known;
  const key = JSON.stringify(alteration);
  keys.set(alteration, key);
  return key;
}

/** Texts of alterations, which never change, so that a redraft does not write them again. */
const keys = new WeakMap<Alteration, string>();

/** The outcomes of alterations on a garment of two halves: one is applied where it is on each half that it is for. */
export const outcomesOfHalves = (
  left: readonly (AlterationOutcome | null)[],
  right: readonly (AlterationOutcome | null)[],
): AlterationOutcome[] =>
  left.map((own, i) => [own, right[i]].find((each) => each && !each.applied) ?? APPLIED);
