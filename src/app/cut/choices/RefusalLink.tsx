// The link to the step where a refusal to print is cured.

import { CUT } from '../../../document';
import { CautionsLink } from '../../components/links/CautionsLink';
import { MeasureLink } from '../../components/links/MeasureLink';
import { useDraft } from '../../store/storeContext';
import type { Refusal } from './usePlanInput';

export function RefusalLink({ refusal }: { refusal: Refusal }) {
  const { issues } = useDraft();
  if (refusal === 'cautions') return <CautionsLink />;
  if (refusal !== 'measure') return <a href={`#${refusal}`}>{CUT.goTo[refusal]}</a>;
  const inTheWay = issues.filter(({ severity }) => severity === 'error').map(({ at }) => at.field ?? '');
  return <MeasureLink fields={inTheWay}>{CUT.goTo.measure}</MeasureLink>;
}
