// The bust dart of a front without a seam up from the bust, where it is to open in the side seam. It is drafted as a dart from the
// neckline to the bust point, and the cut pieces are slashed from the side seam and turned about the bust point.

import type { Style } from '../../style/style';
import { USUAL_SIDE_BELOW, type Wedge } from '../../style/wedgeFields';
import { inches } from '../../terms/units';

/** A bust dart that is to open in the side seam. */
export interface SideDart {
  /** Id of the wedge it is. */
  readonly wedge: string;
  /** How far below the armhole it may open, along the side seam, mm: the first place that has room for it is taken. */
  readonly below: readonly number[];
  /** How far its point ends short of the bust point, mm. */
  readonly short: number;
}

/**
 * Where it is drafted along the neckline before it is turned: near the neck point, where a deep neckline is high too. Slash and turn
 * gives the same front from any place; our own, no source.
 */
export const DRAFTED_AT = { edge: 'neckline', part: 0.7 } as const;

/** Whether a wedge is a bust dart that asks to open in the side seam. */
export const asksForSide = ({ block, kind, endsAt }: Wedge): boolean =>
  block === 'front' && kind === 'openAtTop' && endsAt?.edge === 'side';

/** Whether it can open there: `upward` are the wedges of its block that run up. */
export const opensInSide = (wedge: Wedge, upward: readonly Wedge[]): boolean =>
  asksForSide(wedge) && upward.length === 1;

/** Two inches below the armhole; higher where the bust point lies so high that the dart would meet the waist darts (our own). mm */
const USUAL_BELOW_MM = [USUAL_SIDE_BELOW, inches(1.5), inches(1), 15];

/** Common practice, no source. mm */
const USUAL_SHORT_MM = inches(1);

/**
 * The style as it is drafted, with its bust dart in the neckline, and the dart that is to be turned; null where none opens in the
 * side seam, or where the front has another wedge that runs up, which leaves no cloth in one piece to turn.
 */
export function draftedAbove(style: Style): { style: Style; sideDart: SideDart | null } {
  const { shoulders, wedges } = style;
  const upward = wedges.filter(isUpward);
  const dart = upward.find((wedge) => opensInSide(wedge, upward));
  if (!shoulders || shoulders.bandAbove !== undefined || dart?.kind !== 'openAtTop')
    return { style, sideDart: null };
  const { lower, endsAt } = dart;
  const { fromCentre: _, ...own } = dart;
  const above: Wedge = {
    ...own,
    station: 0,
    stationAt: {},
    lower: { from: 'bust', below: 0 },
  };
  return {
    style: { ...style, wedges: wedges.map((wedge) => (wedge === dart ? above : wedge)) },
    sideDart: {
      wedge: dart.id,
      below: endsAt?.below === undefined ? USUAL_BELOW_MM : [endsAt.below],
      short: lower.from === 'bust' ? Math.abs(lower.below) : USUAL_SHORT_MM,
    },
  };
}

const isUpward = ({ block, station, upper }: Wedge): boolean =>
  block === 'front' && station > -1 && upper === undefined;
