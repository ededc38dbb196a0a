// Version 4 called a client's drafts sheets, the draft kept to compare with `saved`, and a wedge sized by the user one of sizing `hand`.

import * as z from 'zod/mini';

const wedges = z.array(z.looseObject({ sizing: z.string() }));
const style = z.looseObject({ wedges, rightWedges: z.optional(wedges) });
const version4 = z.looseObject({
  styles: z.array(z.looseObject({ style })),
  clients: z.array(
    z.looseObject({
      sheets: z.array(z.looseObject({ style, saved: z.nullable(z.looseObject({ style })) })),
      openSheet: z.string(),
    }),
  ),
});

type Style4 = z.infer<typeof style>;

/** A book of version 4 as one of version 5; throws on data that is not of version 4. */
export function fromVersion4(old: unknown): unknown {
  const book = version4.parse(old);
  return {
    ...book,
    version: 5,
    styles: book.styles.map(withManual),
    clients: book.clients.map(({ sheets, openSheet, ...client }) => ({
      ...client,
      drafts: sheets.map(({ saved, ...sheet }) => ({
        ...withManual(sheet),
        comparison: saved && withManual(saved),
      })),
      openDraft: openSheet,
    })),
  };
}

function withManual<T extends { readonly style: Style4 }>(bearer: T): T {
  const renamed = (list: Style4['wedges']): Style4['wedges'] =>
    list.map((wedge) => (wedge.sizing === 'hand' ? { ...wedge, sizing: 'manual' } : wedge));
  const { rightWedges } = bearer.style;
  return {
    ...bearer,
    style: {
      ...bearer.style,
      wedges: renamed(bearer.style.wedges),
      ...(rightWedges ? { rightWedges: renamed(rightWedges) } : {}),
    },
  };
}
