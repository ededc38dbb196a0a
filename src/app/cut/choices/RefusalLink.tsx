// The link to the step where a refusal to print is cured.

import { CUT } from '../../../document';
import { CautionsLink } from '../../components/CautionsLink';
import type { Refusal } from './usePlanInput';

export function RefusalLink({ refusal }: { refusal: Refusal }) {
  return refusal === 'cautions' ? <CautionsLink /> : <a href={`#${refusal}`}>{CUT.goTo[refusal]}</a>;
}
