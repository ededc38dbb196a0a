// The panels on both sides of a handle, whose widths are shown during a pull: two panels beside a wedge, two parts of one beside a
// dart.

import {
  crossingsAt,
  type Draft,
  type DraftedWedge,
  isThrough,
  type Piece,
  type Point,
  xAt,
} from '../../engine';
import { type PanelOnBlock, panelsOnBlock } from '../layout/panelsOnBlock';
import type { Handle } from './handle';

export interface PanelBeside {
  readonly piece: Piece;
  /** Width at the height of the handle, mm, measured on the finished outline. */
  readonly width: number;
  /** True where it is the width from the dart to the next edge only. */
  readonly part: boolean;
}

/** The panels to the left and to the right of the handle's wedge on the canvas; null where there is none. */
export function panelsBeside(handle: Handle, draft: Draft): [PanelBeside | null, PanelBeside | null] {
  const { block } = handle;
  const wedge = block ? draft.blocks?.[block].wedges.find(({ id }) => id === handle.wedge) : undefined;
  if (!block || !wedge) return [null, null];
  const panels = panelsOnBlock(draft, block);
  const [inner, outer] = !isThrough(wedge.extent)
    ? besideDart(wedge, handle.at.y, panels)
    : besideWedge(wedge, handle, panels, draft);
  return block === 'front' ? [inner, outer] : [outer, inner];
}

type Beside = [inner: PanelBeside | null, outer: PanelBeside | null];

function besideWedge(
  wedge: DraftedWedge,
  handle: Handle,
  panels: readonly PanelOnBlock[],
  draft: Draft,
): Beside {
  const row = draft.proof.ledger.find(({ level }) => level === handle.level);
  if (!row) return [null, null];
  const beside = panels.flatMap(({ piece, ring }) => {
    const width = row.widths[piece.id];
    const [from, to] = ends(crossings(ring, row.y));
    if (width === undefined || from === undefined || to === undefined) return [];
    return [{ piece, width, part: false, middle: (from + to) / 2 }];
  });
  const axis = wedge.onCentre ? 0 : xAt(wedge.axis, row.y);
  return [
    beside.findLast(({ middle }) => middle < axis) ?? null,
    beside.find(({ middle }) => middle >= axis) ?? null,
  ];
}

/** Tolerance: a line nearer than this to a dart's leg is the leg itself. mm */
const OWN_LEG_MM = 0.3;

function besideDart(wedge: DraftedWedge, y: number, panels: readonly PanelOnBlock[]): Beside {
  const [inner, outer] = [xAt(wedge.innerLeg, y), xAt(wedge.outerLeg, y)];
  for (const { piece, ring, darts } of panels) {
    const closed = darts
      .filter(({ open }) => !open)
      .flatMap((dart) => [[...dart.inner, ...[...dart.outer].reverse()]]);
    const met = [ring, ...closed].flatMap((each) => crossings(each, y));
    const before = met.filter((x) => x < inner - OWN_LEG_MM);
    const after = met.filter((x) => x > outer + OWN_LEG_MM);
    if (before.length === 0 || after.length === 0) continue;
    return [
      { piece, width: inner - Math.max(...before), part: true },
      { piece, width: Math.min(...after) - outer, part: true },
    ];
  }
  return [null, null];
}

const ends = (xs: readonly number[]): [number, number] | [] =>
  xs.length > 0 ? [Math.min(...xs), Math.max(...xs)] : [];

/** The x at which a ring crosses height `y`, mm from the centre line. */
const crossings = (ring: readonly Point[], y: number): number[] =>
  crossingsAt([...ring, ...ring.slice(0, 1)], y);
