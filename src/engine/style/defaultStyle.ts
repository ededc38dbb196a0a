// The style a new draft starts from, and what is usual where a part is first asked for.

import type { BlockName } from '../terms/names';
import { usualOf } from './fields';
import { type EdgeShape, type Extras, STYLE, type Style } from './style';
import type { Wedge } from './wedgeFields';

/** A balanced wedge at a station, the same at every level, from edge to edge. */
export function balancedWedge(id: string, block: BlockName, station: number, weight: number): Wedge {
  return { id, kind: 'through', block, station, stationAt: {}, sizing: 'balanced', intake: {}, weight };
}

/** Shoulders where they are first asked for. */
export const USUAL_SHOULDERS = usualOf(STYLE.fields.shoulders);

/** How far an off-shoulder band stands above the top edge at the centres where it is first asked for, mm. */
export const USUAL_BAND_ABOVE = STYLE.fields.shoulders.fields.bandAbove.usual;

const { modesty, facing, straps, sleeve } = STYLE.fields.extras.fields;

/** Pieces beside the panels where they are first asked for. */
export const USUAL_EXTRAS = {
  modesty: usualOf(modesty),
  facing: usualOf(facing),
  straps: usualOf(straps),
  sleeve: usualOf(sleeve),
} as const satisfies Required<Extras>;

/** An edge that runs level all round. */
export const LEVEL_EDGE: EdgeShape = usualOf(STYLE.fields.topShape);

/** Strapless over-bust corset: centre, bust and side-front wedges, two back wedges, seamed at centre front, laced behind. */
export const DEFAULT_STYLE: Style = {
  ...usualOf(STYLE),
  wedges: [
    balancedWedge('front-centre', 'front', -1, 1),
    balancedWedge('front-bust', 'front', 0, 2.5),
    balancedWedge('front-side', 'front', 0.5, 3),
    balancedWedge('back-centre', 'back', 0, 1.3),
    balancedWedge('back-side', 'back', 0.5, 1),
  ],
};
