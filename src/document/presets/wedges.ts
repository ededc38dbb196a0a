// The wedges that ready styles are made of.

import {
  type BlockName,
  balancedWedge,
  type DartPoint,
  DEFAULT_STYLE,
  type EndsAt,
  inches,
  type Style,
  type Wedge,
  withPoints,
} from '../../engine';

/** Wedges without one at centre front, where a busk or a fold needs a straight edge; the front panel is wider for that. */
export const STRAIGHT_FRONT: readonly Wedge[] = [
  balancedWedge('front-bust', 'front', 0, 3),
  balancedWedge('front-side', 'front', 0.6, 2.5),
  balancedWedge('back-centre', 'back', 0, 1.3),
  balancedWedge('back-side', 'back', 0.5, 1),
];

/** Fewer wedges than in the default style have as much to take; the most of each, common practice for a seam, no source. */
export const FEWER: Style['balance'] = { ...DEFAULT_STYLE.balance, cap: inches(3) };

/** Below the bust the front is slimmer beyond the bust-point line, so the side-front seam stands farther out. */
export const BELOW_BUST_FRONT: readonly Wedge[] = STRAIGHT_FRONT.map((wedge) =>
  wedge.id === 'front-side' ? { ...wedge, station: 0.62 } : wedge,
);

/** Where darts end: below the fullness of the bust and above that of the hip (common practice, no source). */
const BELOW_BUST: DartPoint = { from: 'bust', below: inches(1) };
/** A second dart beside the first ends half an inch lower, so that their points do not lie on one line. */
const BESIDE: DartPoint = { from: 'bust', below: inches(1.5) };
const ABOVE_HIP: DartPoint = { from: 'waist', below: inches(3) };

export const openDart = (id: string, block: BlockName, station: number, weight: number): Wedge =>
  withPoints(balancedWedge(id, block, station, weight), { upper: BELOW_BUST });

export const closedDart = (id: string, block: BlockName, station: number, weight: number): Wedge =>
  withPoints(balancedWedge(id, block, station, weight), { upper: BELOW_BUST, lower: ABOVE_HIP });

/** A bust dart from neckline, shoulder or armhole, its point an inch short of the bust point (common practice, no source). */
export const bustDart = (id: string, endsAt: EndsAt): Wedge => ({
  ...withPoints(balancedWedge(id, 'front', 0, 1), { lower: { from: 'bust', below: -inches(1) } }),
  endsAt,
});

export const lowered = (dart: Wedge): Wedge => withPoints(dart, { lower: dart.lower, upper: BESIDE });

/** A wedge sized by hand takes this part of its waist intake under the bust, near what bodies ask for there. */
const UNDER_BUST_PART = 0.6;

/** A wedge sized by what it takes at the over-bust line and at the waist; inches, as it is taken with a ruler. */
export function manualWedge(
  id: string,
  block: BlockName,
  station: number,
  overBust: number,
  waist: number,
): Wedge {
  return {
    ...balancedWedge(id, block, station, 1),
    sizing: 'manual',
    intake: {
      overBust: inches(overBust),
      bust: 0,
      underBust: inches(UNDER_BUST_PART * waist),
      waist: inches(waist),
      highHip: inches(waist / 2),
      hip: 0,
    },
  };
}
