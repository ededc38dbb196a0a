// Version 6 knew no fittings, no notes of a draft and no prints. Its bust darts followed lengths alone; now they follow the girth
// above the bust as well, and drafts that may be drawn otherwise by it are marked.

import * as z from 'zod/mini';

const shoulders = z.looseObject({
  bandAbove: z.optional(z.number()),
  intake: z.optional(z.looseObject({ front: z.optional(z.number()) })),
});
const style = z.looseObject({
  shoulders: z.optional(shoulders),
  wedges: z.array(z.looseObject({ block: z.string(), station: z.number(), upper: z.optional(z.unknown()) })),
});
const version6 = z.looseObject({
  clients: z.array(z.looseObject({ drafts: z.array(z.looseObject({ style })) })),
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
        ...(draft.redrafted !== true && hasBustDart(draft.style) ? { redrafted: 'bustDart' } : {}),
        fittings: [],
        notes: { cloth: '', event: '', heel: '', bra: '' },
      })),
      prints: [],
    })),
  };
}

/** Whether a style has shoulders and a front wedge up to them, for which it sets no width. */
const hasBustDart = ({ shoulders, wedges }: z.infer<typeof style>): boolean =>
  shoulders !== undefined &&
  shoulders.bandAbove === undefined &&
  shoulders.intake?.front === undefined &&
  wedges.some(({ block, station, upper }) => block === 'front' && station > -1 && upper === undefined);
