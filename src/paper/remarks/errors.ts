// Issues of a draft that forbid cutting it. Every file of the pattern reports them.

import { REMARKS } from '../../document';
import type { Draft, Issue } from '../../engine';

/** The warning on every file made from a draft with errors. */
export const DO_NOT_CUT = REMARKS.doNotCut;

/** The issues that forbid cutting. */
export const errorsOf = ({ issues }: Draft): Issue[] => issues.filter((issue) => issue.severity === 'error');

/** Whether a draft must not be cut. */
export const hasErrors = ({ draft }: { readonly draft: Draft }): boolean => errorsOf(draft).length > 0;
