import { expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draft, inches } from '../../../src/engine';
import { ISSUE_KINDS, issue } from '../../../src/engine/terms/issue';

it('gives an issue the severity of its code', () => {
  expect(issue('intakeNotPlaced', { left: 3 }, { block: 'front' })).toEqual({
    code: 'intakeNotPlaced',
    severity: 'note',
    values: { left: 3 },
    at: { block: 'front' },
  });
  expect(issue('seamTooUneven', { lengthDifference: 10 }, {}).severity).toBe('warn');
  expect(issue('seamTooUneven', { lengthDifference: 200 }, {}, 'error').severity).toBe('error');
});

it('compiles only with the values and the severity that the code has', () => {
  const surplus = { height: 40, least: 50, most: 60 };
  const refused = [
    // @ts-expect-error A value is missing.
    () => issue('garmentTooShort', { height: 40 }, {}),
    // @ts-expect-error There is a value that the sentence does not need.
    () => issue('garmentTooShort', surplus, {}),
    // @ts-expect-error The code has no values.
    () => issue('noOpening', { height: 40 }, {}),
    // @ts-expect-error The code has one severity.
    () => issue('noOpening', {}, {}, 'error'),
    // @ts-expect-error There is no such code.
    () => issue('noSuchCode', {}, {}),
  ];
  expect(refused).toHaveLength(5);
});

it('gives drafts the values of their issues’ codes and no others', () => {
  const { measurements } = DEMO_CLIENT;
  const issues = [
    draft({ ...measurements, overBust: null, underarmToWaist: null, waistToLap: null }, DEFAULT_STYLE),
    draft({ ...measurements, underarmToWaist: 50, waistToLap: 30, frontBustArc: 600 }, DEFAULT_STYLE),
    draft({ ...measurements, bust: 1600, waist: 600 }, DEFAULT_STYLE),
    draft({ ...measurements, bust: 5 }, { ...DEFAULT_STYLE, hemBelow: 1e6 }),
    draft(measurements, { ...DEFAULT_STYLE, ease: { ...DEFAULT_STYLE.ease, waist: -inches(5) } }),
    draft(measurements, { ...DEFAULT_STYLE, topAbove: -inches(9), hemBelow: -inches(3) }),
  ].flatMap((made) => made.issues);
  expect(new Set(issues.map(({ code }) => code)).size).toBeGreaterThanOrEqual(8);
  for (const { code, values } of issues) {
    const names = Object.keys(values).sort();
    const kind = ISSUE_KINDS[code];
    if (names.length > 0 || !('valuesOptional' in kind)) expect(names, code).toEqual([...kind.values].sort());
  }
});
