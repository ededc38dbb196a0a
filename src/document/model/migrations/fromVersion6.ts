// Version 6 knew no fittings, no notes of a draft and no prints.

import * as z from 'zod/mini';

const version6 = z.looseObject({
  clients: z.array(z.looseObject({ drafts: z.array(z.looseObject({})) })),
});

/** A book of version 6 as one of version 7; throws on data that is not of version 6. */
export function fromVersion6(old: unknown): unknown {
  const book = version6.parse(old);
  return {
    ...book,
    version: 7,
    clients: book.clients.map((client) => ({
      ...client,
      drafts: client.drafts.map((draft) => ({
        ...draft,
        fittings: [],
        notes: { cloth: '', event: '', heel: '', bra: '' },
      })),
      prints: [],
    })),
  };
}
