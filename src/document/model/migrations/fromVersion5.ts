// Version 5 had a front share at every level and a height of the over-bust line in every style. What a style leaves out now follows
// the body; a style that had the usual numbers leaves them out. Drafts that are drawn otherwise by it are marked, and kept beside as
// they were asked for.

import * as z from 'zod/mini';
import { shouldersOfVersion6 } from './shouldersOfVersion6';

const shares = z.record(z.string(), z.number());
const style = z.looseObject({ frontShare: shares, overBustAbove: z.number() });
const version5 = z.looseObject({
  styles: z.array(z.looseObject({ style })),
  clients: z.array(
    z.looseObject({
      measurements: z.looseObject({}),
      sides: z.optional(z.looseObject({})),
      takenOn: z.nullable(z.string()),
      lastUsed: z.nullable(z.string()),
      drafts: z.array(z.looseObject({ style, comparison: z.nullable(z.looseObject({ style })) })),
    }),
  ),
});

type Style5 = z.infer<typeof style>;

/** What version 5 took for usual. */
const USUAL_SHARES: Readonly<Record<string, number>> = {
  overBust: 0.515,
  bust: 0.53,
  underBust: 0.515,
  waist: 0.51,
  highHip: 0.5,
  hip: 0.49,
};
const USUAL_OVER_BUST_MM = 50.8;

/** Two lengths nearer than this are one that was rounded. mm */
const SAME_MM = 1e-6;

/** The day these rules came, for drafts of clients whose last day of use is not known. */
const DAY_OF_RULES = '2026-11-26';

/** A book of version 5 as one of version 6; throws on data that is not of version 5. */
export function fromVersion5(old: unknown): unknown {
  const book = version5.parse(old);
  return {
    ...book,
    version: 6,
    styles: book.styles.map((own) => ({ ...own, style: followingBody(own.style) })),
    clients: book.clients.map((client) => ({
      ...client,
      drafts: client.drafts.map(({ comparison, ...draft }) => ({
        ...draft,
        style: followingBody(draft.style),
        redrafted: true,
        comparison: comparison ?? {
          on: client.lastUsed?.slice(0, 10) ?? client.takenOn ?? DAY_OF_RULES,
          measurements: client.measurements,
          ...(client.sides ? { sides: client.sides } : {}),
          style: draft.style,
        },
      })),
    })),
  };
}

/** A style whose share of the bust is its own, as that of the hand method is, keeps all of its lines. */
function followingBody({ frontShare, overBustAbove, ...style }: Style5): unknown {
  const isOwn = frontShare.bust !== USUAL_SHARES.bust;
  const keepsLine = isOwn || Math.abs(overBustAbove - USUAL_OVER_BUST_MM) > SAME_MM;
  return shouldersOfVersion6({
    ...style,
    frontShare: isOwn
      ? frontShare
      : Object.fromEntries(
          Object.entries(frontShare).filter(([level, share]) => share !== USUAL_SHARES[level]),
        ),
    ...(keepsLine ? { overBustAbove } : {}),
  });
}
