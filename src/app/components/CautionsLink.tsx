// The link to the cautions for tight lacing, in the Draft step where they are marked as read.

import { FIELDS } from '../../document';
import { CAUTIONS_STEP, goToCautions } from './awaitedFocus';

export function CautionsLink() {
  return (
    <a href={CAUTIONS_STEP} onClick={goToCautions}>
      {FIELDS.readCautions}
    </a>
  );
}
