// Why an alteration of a fitting was not made, as it is said where it stands.

import type { FittingOutcome } from '../../model/fittings';
import { catalogue } from '../catalogue';

export const ALTERATION_REFUSED: Readonly<Record<NonNullable<FittingOutcome['code']>, string>> = catalogue({
  switchedOff: 'It is switched off.',
  seamGone: 'This style has no such seam or dart. It is kept, and made again where the seam stands.',
  levelGone: 'This draft has no such level, or the lower one stands first.',
  placeGone: 'Its place does not stand on this edge of this style.',
  edgeGone: 'The garment has no such edge.',
  beyondSeam: 'Its height lies at or past the end of the dart or seam. Name one farther in.',
  centreStraight:
    'The centre lies on a fold or takes a busk and must stay straight. Alter the seam beside it.',
  panelCrossed: 'The edges of a panel would meet or cross. Take in less, or share it with other seams.',
  dartClosed: 'The dart would be let out past its own intake. Let out less, or share it with other seams.',
  dartTurned:
    'This dart was turned into the side seam. Set how wide it opens on Draft, or alter the side seam.',
  lengthUsedUp: 'Too little would be left between the two levels. Shorten less.',
  bustPointOutOfSpan: 'The bust point so corrected cannot be drafted. Move it less.',
  amountOutOfSpan: 'An amount or a height is beyond what a fitting can ask.',
  notDrafted: 'The draft did not come as far.',
});
