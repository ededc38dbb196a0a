import { describe, expect, it } from 'vitest';
import {
  addClient,
  addStyle,
  type Book,
  changeStyle,
  DEMO_BOOK,
  DEMO_CLIENT,
  keepStyle,
  NAMED_STYLES,
  openClient,
  openDraftOf,
  readBook,
  removeStyle,
  renameStyle,
  styleCalled,
} from '../../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../../src/engine';
import { SIZED_BODIES } from '../../../support/bodies/sizedBodies';

const other = NAMED_STYLES.get('cincher')?.style ?? DEFAULT_STYLE;
const names = (book: Book): string[] => book.styles.map(({ name }) => name);
const two = keepStyle(
  keepStyle(DEMO_BOOK, 'a', 'Ferry', DEFAULT_STYLE, '2026-11-01'),
  'b',
  'Gala',
  other,
  '2026-11-02',
);

describe('a style of the maker’s own', () => {
  it('is kept under a name, and is read again', () => {
    expect(two.styles).toEqual([
      { id: 'a', name: 'Ferry', on: '2026-11-01', style: DEFAULT_STYLE },
      { id: 'b', name: 'Gala', on: '2026-11-02', style: other },
    ]);
    expect(readBook(JSON.stringify(two))).toEqual({ kind: 'book', book: two });
  });

  it('is found by its name, whatever its capitals', () => {
    expect(styleCalled(two, ' ferry ')?.id).toBe('a');
    expect(styleCalled(two, 'fer')).toBeNull();
  });

  it('is written over under the same name, and stays in its place', () => {
    const again = keepStyle(two, 'c', 'ferry', other, '2026-11-03');
    expect(again.styles[0]).toEqual({ id: 'a', name: 'ferry', on: '2026-11-03', style: other });
    expect(names(again)).toEqual(['ferry', 'Gala']);
  });

  it('takes no other’s name', () => {
    expect(names(renameStyle(two, 'b', 'Revel'))).toEqual(['Ferry', 'Revel']);
    expect(names(renameStyle(two, 'b', 'ferry'))).toEqual(['Ferry', 'ferry 2']);
    expect(names(renameStyle(two, 'b', 'gala'))).toEqual(['Ferry', 'gala']);
  });

  it('is added from elsewhere under a name of its own', () => {
    const added = addStyle(addStyle(two, 'c', 'GALA', DEFAULT_STYLE, ''), 'd', 'Gala 2', other, '');
    expect(names(added)).toEqual(['Ferry', 'Gala', 'GALA 2', 'Gala 3']);
    expect(added.styles[1]).toBe(two.styles[1]);
  });

  it('goes without the drafts that were made from it', () => {
    const used = changeStyle(two, () => other);
    const gone = removeStyle(used, 'b');
    expect(names(gone)).toEqual(['Ferry']);
    expect(gone.clients).toBe(used.clients);
    expect(removeStyle(gone, 'b')).toBe(gone);
  });

  it.each(SIZED_BODIES)('fits itself anew to another client: %s', (_, measurements) => {
    const kept = keepStyle(DEMO_BOOK, 'a', 'Ferry', openDraftOf(DEMO_CLIENT).style, '2026-11-01');
    const client = { ...openClient(addClient(kept, 'bea', 'Bea')), measurements };
    const style = kept.styles[0]?.style ?? other;
    const made = draft(client.measurements, style);
    expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    const waist = made.proof.ledger.find(({ level }) => level === 'waist');
    // what is sewn and what the lacing leaves open come to the body and its ease, whoever wears it
    expect((waist?.sewnGirth ?? 0) + style.closure.lacingGap).toBeCloseTo(
      (measurements.waist ?? 0) + style.ease.waist,
      1,
    );
  });
});
