import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, unusualLine, widerThanBustLine } from '../../../src/document';
import { DEFAULT_STYLE, draft, inches, type Measurements } from '../../../src/engine';

const body: Measurements = DEMO_CLIENT.measurements;
const wide: Measurements = { ...body, waist: inches(40) };

describe('what a draft owes to an unusual body', () => {
  it('names each unusual measurement, in the unit asked for', () => {
    expect(unusualLine(body, [], 'in')).toBeNull();
    expect(unusualLine(wide, [], 'in')).toMatch(/^Unusual .* follows it: waist girth 40 in\. Measure again/);
    expect(unusualLine(wide, [], 'cm')).toContain('waist girth 101.6 cm');
  });

  it('does not say that the draft follows what it is only compared with', () => {
    const underarmToWaist = inches(11);
    const alone = unusualLine({ ...body, underarmToWaist }, [], 'in');
    expect(alone).toBe(
      'Unusual for her other measurements: underarm to waist 11 in. Measure again; if she is built so, it is right.',
    );
    expect(unusualLine({ ...wide, underarmToWaist }, [], 'in')).toMatch(
      /follows it: waist girth 40 in\. Unusual too: underarm to waist 11 in\. Measure again/,
    );
  });

  it('does not judge what was estimated', () => {
    expect(unusualLine(wide, ['waist'], 'in')).toBeNull();
  });

  it('says where the cloth is wider than at the bust, and nothing of a body that is not', () => {
    expect(widerThanBustLine(draft(body, DEFAULT_STYLE))).toBeNull();
    expect(widerThanBustLine(draft(wide, DEFAULT_STYLE))).toMatch(/^At the waist the cloth is wider/);
    const wider = { ...wide, underBust: inches(39.5) };
    expect(widerThanBustLine(draft(wider, DEFAULT_STYLE))).toMatch(/^At the under-bust and the waist /);
  });

  it('says nothing where nothing could be drafted', () => {
    expect(widerThanBustLine(draft({ ...body, bust: null }, DEFAULT_STYLE))).toBeNull();
  });
});
