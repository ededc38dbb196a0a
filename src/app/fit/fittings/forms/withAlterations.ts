// Where an alteration goes that was made on the screen.

import { addAlterations, addFitting, type Fitting } from '../../../../document';
import type { Alteration } from '../../../../engine';

/** Alterations go into the last fitting; the first one makes a fitting of today. */
export function withAlterations(
  fittings: readonly Fitting[],
  added: readonly Alteration[],
  date: string,
): readonly Fitting[] {
  const begun = fittings.length > 0 ? fittings : addFitting(fittings, date);
  return addAlterations(begun, begun.length - 1, added);
}
