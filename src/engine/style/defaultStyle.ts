// The style a new draft starts from. Its figures are common practice, no source, each an editable default;
// front shares from memory.

import type { BlockName } from '../terms/names';
import { inches } from '../terms/units';
import type { EdgeNode, EdgeShape, Shoulders, Style, Wedge } from './style';

/** A balanced wedge at a station, the same at every level. */
export function balancedWedge(id: string, block: BlockName, station: number, weight: number): Wedge {
  return { id, block, station, stationAt: {}, sizing: 'balanced', intake: {}, weight };
}

/** Where the shaping of a bust wedge begins when its cup is to be full: about an inch below the bust point. */
export const USUAL_CUP = { below: inches(1), intake: 0 } as const;

/** Shoulders where they are first asked for. Common practice, no source. mm */
export const USUAL_SHOULDERS: Shoulders = {
  drop: inches(1),
  armholeIn: inches(0.5),
  intake: { front: inches(0.5), back: inches(0.25) },
};

/** How far an off-shoulder band stands above the top edge at the centres where it is first asked for. mm */
export const USUAL_BAND_ABOVE = inches(1.5);

const LEVEL: EdgeNode = { beyond: 0, kind: 'smooth' };

/** An edge that runs level all round. */
export const LEVEL_EDGE: EdgeShape = {
  centreFront: LEVEL,
  bustLine: LEVEL,
  sideFront: LEVEL,
  underarm: LEVEL,
  sideBack: LEVEL,
  centreBack: LEVEL,
};

/** Strapless over-bust corset: centre, bust and side-front wedges, two back wedges, seamed at centre front, laced behind. */
export const DEFAULT_STYLE: Style = {
  ease: { overBust: 0, bust: 0, underBust: 0, waist: -inches(2), highHip: 0, hip: 0 },
  frontShare: { overBust: 0.515, bust: 0.53, underBust: 0.515, waist: 0.51, highHip: 0.5, hip: 0.49 },
  overBustAbove: inches(2),
  topFrom: 'overBust',
  topAbove: 0,
  hemBelow: inches(4),
  topShape: LEVEL_EDGE,
  hemShape: LEVEL_EDGE,
  closure: { front: 'seam', back: 'lacing', lacingGap: inches(2) },
  wedges: [
    balancedWedge('front-centre', 'front', -1, 1),
    balancedWedge('front-bust', 'front', 0, 3),
    balancedWedge('front-side', 'front', 0.5, 2),
    balancedWedge('back-centre', 'back', 0, 2),
    balancedWedge('back-side', 'back', 0.5, 1),
  ],
  balance: { sideShare: 0.22, cap: inches(2.25) },
  allowances: { seam: inches(0.5), side: inches(1), top: inches(0.5), hem: inches(0.5), centre: inches(1) },
};
