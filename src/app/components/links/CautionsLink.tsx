// The link to the cautions for tight lacing, in the Draft step where they are marked as read.

import { FIELDS } from '../../../document';
import { CAUTIONS_STEP, goToCautions } from '../awaited/awaitedFocus';

/** @param children what it is called where it is not told to be read */
export function CautionsLink({ children = FIELDS.readCautions }: { children?: string }) {
  return (
    <a href={CAUTIONS_STEP} onClick={goToCautions}>
      {children}
    </a>
  );
}
