// In version 11 a top edge that was measured from the under-bust lay at or below the waist, or at the bust, where the under-bust does.
// Drafts with such an edge, of a body whose under-bust lies there, are marked with the rule that draws them otherwise.

import * as z from 'zod/mini';

const measured = z.optional(z.nullable(z.number()));
const lower = z.optional(z.number());
const draft = z.looseObject({
  style: z.looseObject({ topFrom: z.string() }),
  redrafted: z.optional(z.union([z.literal(true), z.array(z.string())])),
});
const client = z.looseObject({
  measurements: z.looseObject({
    neckToBust: measured,
    neckToUnderBust: measured,
    neckToWaist: measured,
  }),
  sides: z.optional(
    z.looseObject({ rightLower: z.looseObject({ bust: lower, underBust: lower, waist: lower }) }),
  ),
  drafts: z.array(draft),
});
const version11 = z.looseObject({ clients: z.array(client) });

/** A book of version 11 as one of version 12; throws on data that is not of version 11. */
export function fromVersion11(old: unknown): unknown {
  const book = version11.parse(old);
  return {
    ...book,
    version: 12,
    clients: book.clients.map((each) => ({ ...each, drafts: each.drafts.map((own) => marked(own, each)) })),
  };
}

function marked(own: z.infer<typeof draft>, of: z.infer<typeof client>): unknown {
  const { redrafted, style } = own;
  if (redrafted === true || style.topFrom !== 'underBust' || !goesWithout(of)) return own;
  return { ...own, redrafted: [...(redrafted ?? []), 'topLine'] };
}

/** Nearer to bust or waist than this, on either side of the body, the under-bust has no line of its own. mm */
const LEAST_APART_MM = 15;

function goesWithout({ measurements, sides }: z.infer<typeof client>): boolean {
  const { neckToBust, neckToUnderBust, neckToWaist } = measurements;
  if (!neckToBust || !neckToUnderBust || !neckToWaist) return false;
  const { bust = 0, underBust = 0, waist = 0 } = sides?.rightLower ?? {};
  const apart = (above: number, below: number): boolean => below - above >= LEAST_APART_MM;
  return !(
    apart(neckToBust, neckToUnderBust) &&
    apart(neckToUnderBust, neckToWaist) &&
    apart(neckToBust + bust, neckToUnderBust + underBust) &&
    apart(neckToUnderBust + underBust, neckToWaist + waist)
  );
}
