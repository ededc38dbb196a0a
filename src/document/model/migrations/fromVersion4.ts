// Version 4 called a client's drafts sheets, the draft kept to compare with `saved`, and a wedge sized by the user one of sizing
// `hand`. A wedge had no kind but that of its points, and one on the centre line could have points that came to nothing.

import * as z from 'zod/mini';
import { kindFrom, POINTS_OF } from '../../../engine';

const point = z.looseObject({});
const wedge = z.looseObject({
  sizing: z.string(),
  station: z.number(),
  upper: z.optional(point),
  lower: z.optional(point),
});
const wedges = z.array(wedge);
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

type Wedge4 = z.infer<typeof wedge>;
type Style4 = z.infer<typeof style>;

/** A book of version 4 as one of version 5; throws on data that is not of version 4. */
export function fromVersion4(old: unknown): unknown {
  const book = version4.parse(old);
  return {
    ...book,
    version: 5,
    styles: book.styles.map(withKinds),
    clients: book.clients.map(({ sheets, openSheet, ...client }) => ({
      ...client,
      drafts: sheets.map(({ saved, ...sheet }) => ({
        ...withKinds(sheet),
        comparison: saved && withKinds(saved),
      })),
      openDraft: openSheet,
    })),
  };
}

function withKind({ upper, lower, ...wedge }: Wedge4): Wedge4 {
  const kind = kindFrom(wedge.station, { upper, lower });
  return {
    ...wedge,
    kind,
    sizing: wedge.sizing === 'hand' ? 'manual' : wedge.sizing,
    ...(POINTS_OF[kind].includes('upper') ? { upper } : {}),
    ...(POINTS_OF[kind].includes('lower') ? { lower } : {}),
  };
}

function withKinds<T extends { readonly style: Style4 }>(bearer: T): T {
  const { rightWedges } = bearer.style;
  return {
    ...bearer,
    style: {
      ...bearer.style,
      wedges: bearer.style.wedges.map(withKind),
      ...(rightWedges ? { rightWedges: rightWedges.map(withKind) } : {}),
    },
  };
}
