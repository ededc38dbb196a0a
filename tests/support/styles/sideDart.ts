// The darted bodice with its bust dart in the side seam, and with the same dart where it is drafted before it is turned.

import { NAMED_STYLES } from '../../../src/document';
import type { EndsAt, Style, Wedge } from '../../../src/engine';

export const DARTED = (NAMED_STYLES.get('darted-bodice') as { readonly style: Style }).style;

/** Id of its bust dart. */
export const BUST_DART = 'front-armhole';

export const withBustDart = (change: Partial<Wedge>): Style => ({
  ...DARTED,
  wedges: DARTED.wedges.map((wedge) => (wedge.id === BUST_DART ? ({ ...wedge, ...change } as Wedge) : wedge)),
});

/** The dart in the side seam, so far below the armhole, mm. */
export function inSideSeam(below?: number): Style {
  const endsAt: EndsAt = { edge: 'side', part: 0.5, ...(below === undefined ? {} : { below }) };
  return withBustDart({ endsAt });
}

/** The dart in the neckline, its point in the bust point. */
export const beforeTurning = (): Style =>
  withBustDart({
    endsAt: { edge: 'neckline', part: 0.7 },
    lower: { from: 'bust', below: 0 },
  } as Partial<Wedge>);
