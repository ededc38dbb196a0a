// The kinds of shoulders, and the ends of a wedge, as they are chosen.

import { catalogue } from './catalogue';

export const SHOULDER_KIND_WORDS = catalogue({
  strapless: 'Strapless',
  shoulders: 'Shoulders',
  band: 'Off-shoulder band',
});

export const WEDGE_ENDS_WORDS = catalogue({
  through: 'Through',
  openAtHem: 'Open at the hem',
  openAtTop: 'Open at the top edge',
  closed: 'Closed',
});
