// A hem that is finished with its own allowance, turned up, instead of being bound or faced.

import { type Issue, issue } from '../terms/issue';
import type { Style } from './style';

type Asked = Pick<Style, 'turnedHem' | 'allowances'>;

/** Whether there is something to turn up. */
export const turnsHemUp = ({ turnedHem, allowances }: Asked): boolean =>
  turnedHem === true && allowances.hem > 0;

/** A warning where a hem is to be turned up that has no allowance. */
export const checkHem = (style: Asked): Issue[] =>
  style.turnedHem && !turnsHemUp(style) ? [issue('hemNeedsAllowance', {}, { field: 'allowances.hem' })] : [];
