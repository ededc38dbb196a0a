// A side panel without a side seam: the outermost front and back panels in one piece. Laid side line to side line they would
// leave a wedge open between them; it is moved into the seams beside the panel, so that its middle runs straight down.

import { closedAgain } from '../block/lines/closedDart';
import { combine, type SmoothLine, straightDown, xAt } from '../geometry/smoothLine';
import { identifyPiece, identifyWedgeSeam } from '../terms/identity';
import type { Panel, PanelDart } from './panel';
import { type Seam, seamEdgeOf } from './seamEdge';

/**
 * The joined panel of two outermost panels, or null when one of them reaches to its centre line: that line must stay
 * straight. Widths are kept at every height, so girths are too. It lies on the front block, its middle at the side
 * seam's place at height `y`.
 */
export function joinSides(front: Panel, back: Panel, y: number): Panel | null {
  if (front.number === 1 || back.number === 1) return null;
  const side = straightDown(xAt(front.outer, y));
  const onFront = (line: SmoothLine): SmoothLine => movedByWidth(side, line, front.outer);
  const onBack = (line: SmoothLine): SmoothLine => movedByWidth(side, back.outer, line);
  return {
    ...front,
    ...identifyPiece('sidePanel', front.block, front.number),
    kind: 'sidePanel',
    inner: onFront(front.inner),
    outer: onBack(back.inner),
    drafted: { inner: front.drafted.inner, outer: back.drafted.inner },
    darts: [
      ...front.darts.map((dart) => moved(dart, onFront(dart.innerLeg), onFront(dart.outerLeg))),
      // Seen from the front the back lies mirrored: its darts come in the other order, their legs too.
      ...[...back.darts].reverse().map((dart) => ({
        ...moved(dart, onBack(dart.outerLeg), onBack(dart.innerLeg)),
        drafted: { inner: dart.drafted.outer, outer: dart.drafted.inner },
      })),
    ],
  };
}

/** The seam where the joined panel meets the back. */
export function backSeamOf(joined: Panel, back: readonly Panel[]): Seam[] {
  const last = back.at(-1);
  if (!last) return [];
  return [
    {
      identity: identifyWedgeSeam(joined, last),
      a: seamEdgeOf(joined, 'outer'),
      b: seamEdgeOf(last, 'outer'),
    },
  ];
}

/** A line moved by the width from `outer` to `inner` at every height: away from the centre where `inner` lies farther out. */
const movedByWidth = (from: SmoothLine, outer: SmoothLine, inner: SmoothLine): SmoothLine =>
  combine(from, 1, combine(outer, 1, inner, -1), 1);

function moved(dart: PanelDart, innerLeg: SmoothLine, outerLeg: SmoothLine): PanelDart {
  const { upper, lower } = dart;
  const legs = { innerLeg, outerLeg };
  return { ...dart, ...(upper === null || lower === null ? legs : closedAgain(legs, upper, lower)) };
}
