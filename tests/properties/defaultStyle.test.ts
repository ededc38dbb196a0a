// The default style on many realistic bodies: every bound of every draft, measured from the finished outlines.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draft } from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { DRAWN, howMany } from '../support/howMany';
import { broken, judge } from '../support/judges/judge';

const SEED = 1988;
const COUNT = howMany({ few: 200, all: 2000 });

describe(`default style on ${COUNT} drawn bodies, seed ${SEED}`, () => {
  it('keeps every bound, blocked or not, and blocks at most one in a hundred', DRAWN, () => {
    let blocked = 0;
    for (const [i, body] of drawBodies(COUNT, SEED).entries()) {
      const made = draft(body, DEFAULT_STYLE);
      const findings = judge(body, DEFAULT_STYLE, made);
      expect(findings.length, `body ${i}: measured`).toBeGreaterThan(100);
      expect(broken(findings), `body ${i}`).toEqual([]);
      const blocking = made.issues.filter(({ severity }) => severity === 'error');
      if (blocking.length > 0) blocked += 1;
      for (const { code, at } of blocking) expect(at.level, `body ${i}: ${code}`).toBeDefined();
    }
    expect(blocked).toBeLessThanOrEqual(COUNT / 100);
  });
});
