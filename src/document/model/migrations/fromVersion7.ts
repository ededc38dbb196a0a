// Version 7 named at most one rule that draws a draft otherwise. Its round necklines were narrower, and its side lines leaned as far
// as the girths asked for. A seam sized by hand opened in shoulder or armhole by the lengths alone. Of a bust smaller than the
// girths above and below it, the front alone had less. Drafts that may be drawn otherwise by the rules of today are marked with
// each rule that does.

import * as z from 'zod/mini';

const style = z.looseObject({
  frontShare: z.optional(z.looseObject({ bust: z.optional(z.number()) })),
  overBustAbove: z.optional(z.number()),
  shoulders: z.optional(z.looseObject({})),
});
const measured = z.optional(z.nullable(z.number()));
const measurements = z.looseObject({
  overBust: measured,
  bust: measured,
  underBust: measured,
  neckToBust: measured,
  neckToUnderBust: measured,
  neckToWaist: measured,
  underarmToWaist: measured,
  frontBustArc: measured,
});
const version7 = z.looseObject({
  clients: z.array(
    z.looseObject({
      measurements,
      drafts: z.array(
        z.looseObject({ style, redrafted: z.optional(z.union([z.literal(true), z.string()])) }),
      ),
    }),
  ),
});

/** A book of version 7 as one of version 8; throws on data that is not of version 7. */
export function fromVersion7(old: unknown): unknown {
  const book = version7.parse(old);
  return {
    ...book,
    version: 8,
    clients: book.clients.map((client) => ({
      ...client,
      drafts: client.drafts.map(({ redrafted, ...draft }) => {
        const rules = [
          ...(typeof redrafted === 'string' ? [redrafted] : []),
          ...(draft.style.shoulders ? ['neckAndSide'] : []),
          ...(isHollow(client.measurements, draft.style) ? ['smallBust'] : []),
        ];
        if (redrafted === true) return { ...draft, redrafted };
        return rules.length > 0 ? { ...draft, redrafted: rules } : draft;
      }),
    })),
  };
}

/** What version 7 took for the usual height of the over-bust line, and for its least and greatest from a measured armpit. mm */
const OVER_BUST_MM = { usual: 50.8, least: 25, most: 100 } as const;

/** Whether the bust is smaller than on the straight line between over-bust and under-bust, and follows them in the draft. */
function isHollow(
  of: z.infer<typeof measurements>,
  { frontShare, overBustAbove }: z.infer<typeof style>,
): boolean {
  const { overBust, bust, underBust, neckToBust, neckToUnderBust, neckToWaist, underarmToWaist } = of;
  const isSet = frontShare?.bust !== undefined || typeof of.frontBustArc === 'number';
  if (isSet || !overBust || !bust || !underBust || !neckToBust || !neckToUnderBust) return false;
  const armpit = neckToWaist && underarmToWaist ? neckToBust - (neckToWaist - underarmToWaist) : null;
  const { usual, least, most } = OVER_BUST_MM;
  const above = overBustAbove ?? (armpit === null ? usual : Math.min(most, Math.max(least, armpit)));
  const part = above / (above + neckToUnderBust - neckToBust);
  return bust < overBust + part * (underBust - overBust);
}
