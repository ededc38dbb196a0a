import { createEvent, fireEvent } from '@testing-library/react';
import { expect, it } from 'vitest';
import { keepPage } from '../../../src/app/shell/keepPage';

const drop = (types: readonly string[]): Event => {
  const event = createEvent.drop(document.body, { dataTransfer: { types } });
  fireEvent(document.body, event);
  return event;
};

it('does not let a file that is dropped beside its place take the place of the page', () => {
  expect(drop(['Files']).defaultPrevented).toBe(false);
  const end = keepPage(window);
  expect(drop(['Files']).defaultPrevented).toBe(true);
  // A text dropped into a field is the field's own.
  expect(drop(['text/plain']).defaultPrevented).toBe(false);
  end();
  expect(drop(['Files']).defaultPrevented).toBe(false);
});
