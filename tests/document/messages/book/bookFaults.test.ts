import { expect, it } from 'vitest';
import { bookFaultSentence } from '../../../../src/document';

it('says what is wrong with a book or a backup, and where', () => {
  expect(bookFaultSentence({ code: 'notWhole' })).toBe('It is not whole, or no book of this page.');
  expect(bookFaultSentence({ code: 'noVersion' })).toMatch(/carries no version\.$/);
  expect(bookFaultSentence({ code: 'wrongShape', path: 'clients.0.unit' })).toMatch(
    /keeps it: see clients\.0\.unit\.$/,
  );
  expect(bookFaultSentence({ code: 'wrongShape', path: null })).toMatch(/keeps it\.$/);
  expect(bookFaultSentence({ code: 'backupNotWhole' })).toMatch(/not the whole of one\.$/);
  expect(bookFaultSentence({ code: 'notBackup' })).toBe('This is not a backup written by Staywright.');
});
