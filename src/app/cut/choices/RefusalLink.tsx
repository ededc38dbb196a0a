// The way to where it is cured that nothing can be printed.

import { CautionsLink } from '../../components/CautionsLink';
import type { Refusal } from './usePlanInput';

const WORDS = {
  measure: 'Go to the measurements',
  draft: 'Go to the draft',
} as const;

export function RefusalLink({ cure }: Pick<Refusal, 'cure'>) {
  return cure === 'cautions' ? <CautionsLink /> : <a href={`#${cure}`}>{WORDS[cure]}</a>;
}
