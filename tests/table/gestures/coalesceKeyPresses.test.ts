import { describe, expect, it } from 'vitest';
import { continuesPress } from '../../../src/table/gestures/coalesceKeyPresses';

describe('a press of a key', () => {
  const press = { handle: 'edge:hem', at: 5000 };

  it('continues the movement of the last one on the same handle', () => {
    expect(continuesPress(press, 'edge:hem', 5000)).toBe(true);
    expect(continuesPress(press, 'edge:hem', 6500)).toBe(true);
  });

  it('starts a new movement at first, after a pause, and on another handle', () => {
    expect(continuesPress(null, 'edge:hem', 5100)).toBe(false);
    expect(continuesPress(press, 'edge:hem', 6501)).toBe(false);
    expect(continuesPress(press, 'edge:top', 5100)).toBe(false);
  });
});
