// A length that a warning is about is never written as nothing: below the smallest part that is written it is "less than" that.

import { expect, it } from 'vitest';
import { DEMO_CLIENT, issueSentence } from '../../../../src/document';
import { DEFAULT_STYLE, draft, type Issue } from '../../../../src/engine';
import { SET_LINES } from '../../../support/styles/setLines';

const UNITS = ['in', 'cm', 'mm'] as const;

/** The top edge of the default style stands this much above the underarm, and its hem as far below the lap. */
function overBy(mm: number): readonly Issue[] {
  const { measurements } = DEMO_CLIENT;
  // Its top edge hangs from the bust line, wherever the armpit is.
  const height = draft({ ...measurements, underarmToWaist: null }, SET_LINES).issues.find(
    (issue) => issue.code === 'armpitUnknown',
  )?.values.height;
  const asked = {
    ...measurements,
    underarmToWaist: (height ?? Number.NaN) - mm,
    waistToLap: SET_LINES.hemBelow - mm,
  };
  return draft(asked, SET_LINES).issues.filter(
    ({ code }) => code === 'topAboveArmpit' || code === 'hemTooLongToSit',
  );
}

it.each(UNITS)('no warning in %s is about 0', (unit) => {
  for (const mm of [0.51, 0.6, 0.79, 0.8, 1.2, 3]) {
    const issues = overBy(mm);
    expect(issues).toHaveLength(2);
    for (const issue of issues)
      expect(issueSentence(issue, { unit, style: DEFAULT_STYLE })).not.toMatch(/(^|\s)0 (in|cm|mm)/);
  }
});

it('says less than a sixteenth of an inch', () => {
  const [armpit] = overBy(0.6);
  expect(armpit && issueSentence(armpit, { unit: 'in', style: DEFAULT_STYLE })).toContain(
    'stands less than ¹⁄₁₆ in higher',
  );
});
