import { act, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { useStep } from '../../../src/app/shell/steps';

function StepInView() {
  return <p>{useStep()[0]}</p>;
}

const goTo = (hash: string): void => {
  act(() => {
    window.location.hash = hash;
    window.dispatchEvent(new HashChangeEvent('hashchange'));
  });
};

afterEach(() => {
  window.location.hash = '';
});

describe('the step in the address', () => {
  it.each([
    ['fit', 'fit'],
    ['cut', 'cut'],
    ['true', 'fit'],
    ['elsewhere', 'measure'],
    ['', 'measure'],
  ])('“%s” opens %s', (hash, step) => {
    window.location.hash = hash;
    const { unmount } = render(<StepInView />);
    expect(screen.getByText(step)).toBeVisible();
    unmount();
  });

  it('is followed under its former name too', () => {
    render(<StepInView />);
    goTo('draft');
    expect(screen.getByText('draft')).toBeVisible();
    goTo('true');
    expect(screen.getByText('fit')).toBeVisible();
  });
});
