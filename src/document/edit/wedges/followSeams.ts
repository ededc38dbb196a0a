// The seams that alterations name, when the wedges of their style change: panels are counted anew, a seam stays with its wedge.

import {
  type Alteration,
  type BlockName,
  onCentre,
  type PanelName,
  type PartedPanels,
  partedPanels,
  type SeamName,
  type Style,
  withSeams,
} from '../../../engine';
import type { Fitting } from '../../model/fittings';
import { wedgesOf } from './wedgeLists';

/** The wedges that part the panels of each block by their ids, from the centre line to the side. */
interface Parted extends PartedPanels {
  readonly ids: Readonly<Record<BlockName, readonly string[]>>;
}

/**
 * The fittings of a draft whose style has changed. A seam is named by the panels that its wedge parts now, or as a dart where the
 * wedge has become one. A wedge that is gone keeps its alteration, by the wedge's own id: nothing else is altered in its place.
 */
export function followSeams(fittings: readonly Fitting[], before: Style, after: Style): readonly Fitting[] {
  if (fittings.length === 0) return fittings;
  const parted = {
    left: [partedBy(before, 'left'), partedBy(after, 'left')] as const,
    right: [partedBy(before, 'right'), partedBy(after, 'right')] as const,
  };
  const sides = [parted.left, parted.right];
  if (sides.every(([was, is]) => isSame(was, is))) return fittings;
  return fittings.map((fitting) => ({
    ...fitting,
    alterations: fitting.alterations.map((each) => {
      const [was, is] = each.side === 'right' ? parted.right : parted.left;
      return { ...followed(each, was, is), on: each.on };
    }),
  }));
}

function partedBy(style: Style, side: 'left' | 'right'): Parted {
  const wedges = wedgesOf(style, side);
  const idsOf = (block: BlockName): string[] =>
    wedges
      .filter((wedge) => wedge.block === block && wedge.kind === 'through' && !onCentre(wedge))
      .sort((a, b) => a.station - b.station || (a.id < b.id ? -1 : 1))
      .map(({ id }) => id);
  const ids = { front: idsOf('front'), back: idsOf('back') };
  return { ids, ...partedPanels({ front: ids.front.length, back: ids.back.length }, style.joinedSide) };
}

const isSame = (was: Parted, is: Parted): boolean =>
  was.isJoined === is.isJoined &&
  (['front', 'back'] as const).every(
    (block) =>
      was.ids[block].length === is.ids[block].length &&
      was.ids[block].every((id, i) => id === is.ids[block][i]),
  );

function followed(alteration: Alteration, was: Parted, is: Parted): Alteration {
  const now = withSeams(alteration, (name) => seamNow(name, was, is).seam);
  if (now.kind !== 'seam' || alteration.kind !== 'seam') return now;
  if (!seamNow(alteration.seam, was, is).isTurned) return now;
  return { ...now, at: now.at.map(({ height, a, b }) => ({ height, a: b, b: a })) };
}

/** `isTurned`: its first edge is what was its second. */
interface SeamNow {
  readonly seam: SeamName;
  readonly isTurned: boolean;
}

function seamNow(name: SeamName, was: Parted, is: Parted): SeamNow {
  const kept: SeamNow = { seam: name, isTurned: false };
  if (name.kind === 'dart') return { seam: seamOfWedge(name.wedge, is) ?? name, isTurned: false };
  const [a, b] = name.pieces;
  if (a.kind === 'panel' && b.kind === 'panel' && a.block !== b.block) {
    const outermost = (panel: typeof a): PanelName => ({ ...panel, number: is.ids[panel.block].length + 1 });
    return { seam: { kind: 'seam', pieces: [outermost(a), outermost(b)] }, isTurned: false };
  }
  const block = a.kind === 'panel' ? a.block : b.kind === 'panel' ? b.block : null;
  if (block === null) return kept;
  const numberOf = (panel: PanelName): number =>
    panel.kind === 'panel' ? panel.number : was.ids[block].length + 1;
  const inner = Math.min(numberOf(a), numberOf(b));
  // A centre seam has one panel on both sides.
  if (numberOf(a) === numberOf(b)) return kept;
  const id = was.ids[block][inner - 1];
  if (id === undefined) return kept;
  const isOuterFirst = numberOf(a) > inner;
  const now = seamOfWedge(id, is);
  if (now?.kind !== 'seam') return { seam: { kind: 'dart', wedge: id }, isTurned: isOuterFirst };
  const [first, second] = now.pieces;
  return { seam: isOuterFirst ? { kind: 'seam', pieces: [second, first] } : now, isTurned: false };
}

/** The seam that a wedge parts, towards the side, or null where it parts none. */
function seamOfWedge(id: string, { ids, panelAt }: Parted): SeamName | null {
  for (const block of ['front', 'back'] as const) {
    const at = ids[block].indexOf(id);
    if (at < 0) continue;
    return { kind: 'seam', pieces: [panelAt(block, at + 1), panelAt(block, at + 2)] };
  }
  return null;
}
