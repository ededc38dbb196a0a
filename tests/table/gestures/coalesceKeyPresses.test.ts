import { describe, expect, it } from 'vitest';
import { continuesPress } from '../../../src/table/gestures/coalesceKeyPresses';

describe('a press of a key', () => {
  const run = { handle: 'edge:hem', at: 5000 };

  it('goes on with the last one on the same handle', () => {
    expect(continuesPress(run, 'edge:hem', 5000)).toBe(true);
    expect(continuesPress(run, 'edge:hem', 6500)).toBe(true);
  });

  it('begins anew at first, after a rest, and on another handle', () => {
    expect(continuesPress(null, 'edge:hem', 5100)).toBe(false);
    expect(continuesPress(run, 'edge:hem', 6501)).toBe(false);
    expect(continuesPress(run, 'edge:top', 5100)).toBe(false);
  });
});
