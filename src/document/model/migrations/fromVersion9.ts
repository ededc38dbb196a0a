// In version 9 the axis of a dart followed its station from level to level, its legs came blunt to its points, and it took its weight's
// part of what a block takes, however near its points. Drafts with a dart of that kind are marked with the rule that draws it otherwise.

import * as z from 'zod/mini';

const wedges = z.array(z.looseObject({ kind: z.string(), endsAt: z.optional(z.unknown()) }));
const draft = z.looseObject({
  style: z.looseObject({ wedges, rightWedges: z.optional(wedges) }),
  redrafted: z.optional(z.union([z.literal(true), z.array(z.string())])),
});
const version9 = z.looseObject({ clients: z.array(z.looseObject({ drafts: z.array(draft) })) });

/** A book of version 9 as one of version 10; throws on data that is not of version 9. */
export function fromVersion9(old: unknown): unknown {
  const book = version9.parse(old);
  return {
    ...book,
    version: 10,
    clients: book.clients.map((client) => ({ ...client, drafts: client.drafts.map(marked) })),
  };
}

function marked({ redrafted, ...own }: z.infer<typeof draft>): unknown {
  if (redrafted === true) return { ...own, redrafted };
  const all = [...own.style.wedges, ...(own.style.rightWedges ?? [])];
  // One that opens in neckline, shoulder, armhole or side seam has straight legs already.
  const isDarted = all.some(({ kind, endsAt }) => kind !== 'through' && !endsAt);
  const rules = [...(redrafted ?? []), ...(isDarted ? ['slimDarts'] : [])];
  return rules.length > 0 ? { ...own, redrafted: rules } : own;
}
