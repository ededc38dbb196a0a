// The kinds of shoulders and the kinds of a wedge, as they are chosen, and what drafts are called at first.

import { catalogue } from '../catalogue';

export const SHOULDER_KIND_WORDS = catalogue({
  strapless: 'Strapless',
  shoulders: 'Shoulders',
  band: 'Off-shoulder band',
});

export const WEDGE_KIND_WORDS = catalogue({
  through: 'Through',
  openAtHem: 'Open at hem',
  openAtTop: 'Open at top',
  closed: 'Closed',
});

/** What a draft is called until it is given a name. */
export const DRAFT_NAMES = catalogue({ first: 'First draft', another: 'New draft' });
