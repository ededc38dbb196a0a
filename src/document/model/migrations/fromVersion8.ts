// Version 8 had the end of a seam as so much above or below the waist, so that an alteration there stayed where the edge had been.

import * as z from 'zod/mini';
import {
  type BodySides,
  draftWhole,
  type Measurements,
  SEAM_ENDS,
  type SeamName,
  type Style,
  seamEnd,
} from '../../../engine';

const height = z.looseObject({ kind: z.string(), mm: z.optional(z.number()) });
const panel = z.looseObject({ kind: z.string() });
const seamName = z.looseObject({ kind: z.literal('seam'), pieces: z.tuple([panel, panel]) });
const alteration = z.looseObject({
  kind: z.string(),
  seam: z.optional(z.unknown()),
  at: z.optional(z.array(z.looseObject({ height: z.optional(height) }))),
});
const fittings = z.array(z.looseObject({ alterations: z.array(alteration) }));
const version8 = z.looseObject({
  clients: z.array(
    z.looseObject({
      drafts: z.array(z.looseObject({})),
      prints: z.array(z.looseObject({})),
    }),
  ),
});

/** A book of version 8 as one of version 9; throws on data that is not of version 8. */
export function fromVersion8(old: unknown): unknown {
  const book = version8.parse(old);
  return {
    ...book,
    version: 9,
    clients: book.clients.map((client) => ({
      ...client,
      drafts: client.drafts.map((draft) => ({
        ...draft,
        fittings: withEnds(draft.fittings, { ...client, style: draft.style }),
      })),
      prints: client.prints.map((print) => ({ ...print, fittings: withEnds(print.fittings, print) })),
    })),
  };
}

/** What a draft was made from, not checked yet: nothing makes a draft throw. */
interface Drafted {
  readonly measurements?: unknown;
  readonly sides?: unknown;
  readonly style?: unknown;
}

/** Fittings with those heights as ends of their seams that lie at one in the draft without alterations; what cannot be read stays. */
function withEnds(data: unknown, of: Drafted): unknown {
  const { data: kept } = fittings.safeParse(data);
  const heights = kept?.flatMap(({ alterations }) => alterations.flatMap(({ at }) => at ?? [])) ?? [];
  if (!kept || !heights.some((each) => each.height?.kind === 'belowWaist')) return data;
  const draft = draftWhole(
    of.measurements as Measurements,
    of.style as Style,
    (of.sides ?? null) as BodySides | null,
  );
  const { span } = draft;
  if (!span) return data;
  const endOf = (seam: unknown, mm: number) =>
    SEAM_ENDS.find((end) => {
      const y = seamEnd(draft, seam as SeamName, end);
      return y !== null && Math.abs(y - span.waist - mm) < AT_END_MM;
    });
  return kept.map((each) => ({
    ...each,
    alterations: each.alterations.map((own) => {
      const { at, seam: named } = own;
      const seam = seamName.safeParse(named);
      if (!at || !seam.success) return own;
      return {
        ...own,
        at: at.map((amount) => {
          const end = amount.height?.mm === undefined ? undefined : endOf(seam.data, amount.height.mm);
          return end ? { ...amount, height: { kind: 'end', end } } : amount;
        }),
      };
    }),
  }));
}

/** Nearer than this a height was the seam's end. mm */
const AT_END_MM = 0.5;
