// The wedges of a style: one list for both halves, and a second one where the right half has wedges of its own. No id
// stands twice in the two lists, so a command that names a wedge finds the list that holds it.

import type { Side, Style, Wedge } from '../../../engine';

type WedgeLists = Pick<Style, 'wedges' | 'rightWedges'>;

/** The wedges one half is drafted by. */
export const wedgesOf = ({ wedges, rightWedges }: WedgeLists, side: Side): readonly Wedge[] =>
  side === 'right' ? (rightWedges ?? wedges) : wedges;

/** The wedges of the half that has the wedge with this id, itself among them; empty where neither half has it. */
export const wedgesBeside = ({ wedges, rightWedges }: WedgeLists, id: string): readonly Wedge[] =>
  [wedges, rightWedges ?? []].find((list) => list.some((wedge) => wedge.id === id)) ?? [];

/** The wedge with this id, of either half. */
export const wedgeWithId = (style: WedgeLists, id: string): Wedge | undefined =>
  wedgesBeside(style, id).find((wedge) => wedge.id === id);

/** The style with the wedges of one half changed; those of both where the halves share them. */
export function changeWedgesOf(
  style: Style,
  side: Side,
  change: (wedges: readonly Wedge[]) => readonly Wedge[],
): Style {
  return side === 'right' && style.rightWedges
    ? { ...style, rightWedges: change(style.rightWedges) }
    : { ...style, wedges: change(style.wedges) };
}

/** The style with every wedge changed, of both halves; a list in which none changes stays the same list. */
export function changeEveryWedge(style: Style, change: (wedge: Wedge) => Wedge): Style {
  const { wedges, rightWedges } = style;
  const changed = { ...style, wedges: changeEach(wedges, change) };
  return rightWedges ? { ...changed, rightWedges: changeEach(rightWedges, change) } : changed;
}

/** The style with one wedge changed, of whichever half it is. */
export function changeWedge(style: Style, id: string, change: (wedge: Wedge) => Wedge): Style {
  return changeEveryWedge(style, (wedge) => (wedge.id === id ? change(wedge) : wedge));
}

/** The style without a wedge, of whichever half it is. */
export function removeWedge(style: Style, id: string): Style {
  const side = style.rightWedges?.some((wedge) => wedge.id === id) ? 'right' : 'left';
  return changeWedgesOf(style, side, (wedges) => wedges.filter((wedge) => wedge.id !== id));
}

function changeEach(wedges: readonly Wedge[], change: (wedge: Wedge) => Wedge): readonly Wedge[] {
  const changed = wedges.map(change);
  return changed.every((wedge, i) => wedge === wedges[i]) ? wedges : changed;
}
