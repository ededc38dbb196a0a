// What there is to say of a garment as worn that has no figures.

import type { NotJudged } from '../../../engine';
import { catalogue } from '../catalogue';

const REASONS = catalogue<Record<NotJudged, string>>({
  cannotBeSewn: 'It cannot be sewn as it is drafted: see what the draft has to say, and mend that first.',
  shouldered:
    'Garments that hang from the shoulders are not judged yet: the body has no arms, so such a garment does not come to rest in one place.',
  bodyNotMet: 'No body can be made with these girths so near to one another. Look at the measurements again.',
  notAtRest:
    'The garment did not come to rest within the work allowed, so there are no figures. Girths far from the body’s own are the usual reason.',
});

export const notJudgedSentence = (reason: NotJudged): string => REASONS[reason];
