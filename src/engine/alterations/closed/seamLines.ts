// Which lines of the closed half the seams of a draft's panels lie on.

import type { Panel } from '../../panels/panel';
import type { Seam } from '../../panels/seamEdge';
import type { PanelName } from '../terms/alteration';
import { type BodyLine, type ClosedHalf, lineAt, lineNamed } from './closedHalf';

/** The line that each seam of the panels lies on; none for one of whose panels was not made. */
export type SeamLines = ReadonlyMap<Seam, BodyLine>;

/** Finds the lines that seams lie on. */
export function linesOf(seams: readonly Seam[], closedHalf: ClosedHalf): SeamLines {
  const lines = new Map<Seam, BodyLine>();
  for (const seam of seams) {
    const line = lineOf(seam, closedHalf);
    if (line) lines.set(seam, line);
  }
  return lines;
}

function lineOf({ identity, a, b }: Seam, closedHalf: ClosedHalf): BodyLine | null {
  if (identity.kind === 'centre')
    return lineAt(closedHalf, {
      kind: 'landmark',
      name: identity.block === 'front' ? 'centreFront' : 'centreBack',
    });
  if (!b) return null;
  return lineNamed(closedHalf, { kind: 'seam', pieces: [nameOf(a.panel), nameOf(b.panel)] })?.line ?? null;
}

const nameOf = ({ kind, block, number }: Panel): PanelName =>
  kind === 'sidePanel' ? { kind } : { kind, block, number };
