import { describe, expect, it } from 'vitest';
import { keyStep, valueByKey } from '../../../src/table/gestures/keyStep';

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

describe('the number a key brings a handle to', () => {
  const axis = { value: 0, least: 0, firstAfterLeast: 16, most: 180 };

  it('leaves a place it would fall back to in one step, and comes back to it in one', () => {
    expect(valueByKey(axis, 1.6)).toBe(16);
    expect(valueByKey({ ...axis, value: 16 }, 1.6)).toBeCloseTo(17.6);
    expect(valueByKey({ ...axis, value: 16.5 }, -1.6)).toBe(0);
  });

  it('goes no farther than the handle does', () => {
    expect(valueByKey({ ...axis, value: 179 }, 6)).toBe(180);
    expect(valueByKey(axis, -1.6)).toBe(0);
    expect(valueByKey({ value: 5, least: 0, most: 10 }, -6)).toBe(0);
    expect(valueByKey({ value: 5, least: 0, most: 10 }, -4)).toBe(1);
  });
});
