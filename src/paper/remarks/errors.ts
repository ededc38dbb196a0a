// Whether a draft may be cut at all, as every file of the pattern has to say.

import type { Draft, Issue } from '../../engine';

/** Written on everything made from a draft that must not be cut. */
export const DO_NOT_CUT = 'This draft has blocking faults: do not cut.';

export const errorsOf = ({ issues }: Draft): Issue[] => issues.filter((issue) => issue.severity === 'error');

export const hasErrors = ({ draft }: { readonly draft: Draft }): boolean => errorsOf(draft).length > 0;
