import { describe, expect, it } from 'vitest';
import { keyStep } from '../../src/table/gestures/keyStep';

describe('an arrow key', () => {
  it('moves a handle sideways the way it looks, on the front and on the mirrored back', () => {
    expect(keyStep('ArrowRight', { x: 1, y: 0 }, 2)).toBe(2);
    expect(keyStep('ArrowRight', { x: -1, y: 0 }, 2)).toBe(-2);
    expect(keyStep('ArrowLeft', { x: -2, y: 0 }, 2)).toBe(2);
  });

  it('makes a number larger upwards and smaller downwards where the handle moves sideways', () => {
    expect(keyStep('ArrowUp', { x: -1, y: 0 }, 2)).toBe(2);
    expect(keyStep('ArrowDown', { x: -1, y: 0 }, 2)).toBe(-2);
  });

  it('moves an edge up and down the way it looks', () => {
    expect(keyStep('ArrowUp', { x: 0, y: -1 }, 5)).toBe(5);
    expect(keyStep('ArrowDown', { x: 0, y: -1 }, 5)).toBe(-5);
    expect(keyStep('ArrowUp', { x: 0, y: 1 }, 5)).toBe(-5);
    expect(keyStep('ArrowDown', { x: 0, y: 1 }, 5)).toBe(5);
  });

  it('leaves every other key alone', () => {
    for (const key of ['Tab', 'Enter', 'a', ' ']) expect(keyStep(key, { x: 1, y: 0 }, 1)).toBeNull();
  });
});
