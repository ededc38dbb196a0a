// Version 6 knew no fittings, no notes of a draft and no prints. Its bust darts followed lengths alone, and above the bust no wedge
// let anything out; drafts that may be drawn otherwise by the rules of today are marked.

import * as z from 'zod/mini';

const shoulders = z.looseObject({
  bandAbove: z.optional(z.number()),
  intake: z.optional(z.looseObject({ front: z.optional(z.number()) })),
});
const wedge = z.looseObject({
  block: z.string(),
  station: z.number(),
  sizing: z.optional(z.string()),
  upper: z.optional(z.unknown()),
  lower: z.optional(z.unknown()),
});
const style = z.looseObject({
  topFrom: z.optional(z.string()),
  shoulders: z.optional(shoulders),
  wedges: z.array(wedge),
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
        ...(draft.redrafted === true ? {} : redraftedBy(draft.style)),
        fittings: [],
        notes: { cloth: '', event: '', heel: '', bra: '' },
      })),
      prints: [],
    })),
  };
}

/** The rule that may draw a draft of a style otherwise. */
const redraftedBy = (of: z.infer<typeof style>): { redrafted?: 'bustDart' | 'aboveBust' } => {
  if (hasBustDart(of)) return { redrafted: 'bustDart' };
  return opensAbove(of) ? { redrafted: 'aboveBust' } : {};
};

/** Whether a style has a strapless top edge over the bust, and balanced wedges up to it. */
const opensAbove = ({ topFrom, shoulders, wedges }: z.infer<typeof style>): boolean =>
  topFrom === 'overBust' &&
  (shoulders === undefined || shoulders.bandAbove !== undefined) &&
  wedges.some(
    ({ station, sizing, upper, lower }) =>
      station > -1 && sizing === 'balanced' && upper === undefined && lower === undefined,
  );

/** Whether a style has shoulders and a front wedge up to them, for which it sets no width. */
const hasBustDart = ({ shoulders, wedges }: z.infer<typeof style>): boolean =>
  shoulders !== undefined &&
  shoulders.bandAbove === undefined &&
  shoulders.intake?.front === undefined &&
  wedges.some(({ block, station, upper }) => block === 'front' && station > -1 && upper === undefined);
