// In version 10 the armhole of an off-shoulder band turned short and bent back before its corner where the body is wide. Drafts with a
// band are marked with the rule that draws it otherwise.

import * as z from 'zod/mini';

const draft = z.looseObject({
  style: z.looseObject({ shoulders: z.optional(z.looseObject({ bandAbove: z.optional(z.unknown()) })) }),
  redrafted: z.optional(z.union([z.literal(true), z.array(z.string())])),
});
const version10 = z.looseObject({ clients: z.array(z.looseObject({ drafts: z.array(draft) })) });

/** A book of version 10 as one of version 11; throws on data that is not of version 10. */
export function fromVersion10(old: unknown): unknown {
  const book = version10.parse(old);
  return {
    ...book,
    version: 11,
    clients: book.clients.map((client) => ({ ...client, drafts: client.drafts.map(marked) })),
  };
}

function marked(own: z.infer<typeof draft>): unknown {
  const { redrafted, style } = own;
  if (redrafted === true || style.shoulders?.bandAbove === undefined) return own;
  return { ...own, redrafted: [...(redrafted ?? []), 'bandArmhole'] };
}
