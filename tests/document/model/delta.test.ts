import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apply, changeClient, DEMO_BOOK, delta } from '../../../src/document';

/** As it comes back from being kept. */
const kept = <T>(data: T): T => JSON.parse(JSON.stringify(data)) as T;

describe('a delta', () => {
  it('leads from any plain data to any other, also after being kept', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (from, to) => {
        const [a, b] = [kept(from), kept(to)];
        expect(apply(a, kept(delta(a, b)))).toEqual(b);
      }),
    );
  });

  it('leads between lists and records that share most of their parts', () => {
    const record = fc.dictionary(fc.constantFrom('a', 'b', 'c', '__proto__', 'length'), fc.integer());
    const list = fc.array(record, { maxLength: 6 });
    fc.assert(
      fc.property(list, list, fc.nat(6), (shared, fresh, at) => {
        const [a, b] = [
          kept({ list: shared }),
          kept({ list: [...shared.slice(0, at), ...fresh, ...shared.slice(at)] }),
        ];
        expect(apply(a, kept(delta(a, b)))).toEqual(b);
        expect(apply(b, kept(delta(b, a)))).toEqual(a);
      }),
    );
  });

  it('is nothing between equals, and small for a small change', () => {
    expect(delta(DEMO_BOOK, DEMO_BOOK)).toBeNull();
    expect(delta(DEMO_BOOK, kept(DEMO_BOOK))).toBeNull();
    const after = changeClient(DEMO_BOOK, (client) => ({ ...client, name: 'Ada' }));
    expect(delta(DEMO_BOOK, after)).toEqual({
      in: { clients: { in: { 0: { in: { name: { set: 'Ada' } } } } } },
    });
  });
});
