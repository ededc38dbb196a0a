import { describe, expect, it } from 'vitest';
import { goesOn } from '../../../src/table/gestures/coalesceKeyPresses';

describe('a press of a key', () => {
  const run = { handle: 'edge:hem', at: 5000 };

  it('goes on with the last one on the same handle', () => {
    expect(goesOn(run, 'edge:hem', 5000)).toBe(true);
    expect(goesOn(run, 'edge:hem', 6500)).toBe(true);
  });

  it('begins anew at first, after a rest, and on another handle', () => {
    expect(goesOn(null, 'edge:hem', 5100)).toBe(false);
    expect(goesOn(run, 'edge:hem', 6501)).toBe(false);
    expect(goesOn(run, 'edge:top', 5100)).toBe(false);
  });
});
