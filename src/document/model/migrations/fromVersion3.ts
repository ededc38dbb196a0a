// Version 3 knew no front arcs, and none of the settings that a style or client may have since and need not have.

import * as z from 'zod/mini';

const lengths = z.looseObject({});
const version3 = z.looseObject({
  clients: z.array(
    z.looseObject({
      measurements: lengths,
      earlier: z.array(z.looseObject({ measurements: lengths })),
      sheets: z.array(z.looseObject({ saved: z.nullable(z.looseObject({ measurements: lengths })) })),
    }),
  ),
});

const UNMEASURED = { frontBustArc: null, frontWaistArc: null, frontHipArc: null };

/** A book of version 3 as one of version 4; throws on data that is not of version 3. */
export function fromVersion3(old: unknown): unknown {
  const book = version3.parse(old);
  const withArcs = <T extends { measurements: object }>(set: T): T => ({
    ...set,
    measurements: { ...UNMEASURED, ...set.measurements },
  });
  return {
    ...book,
    version: 4,
    clients: book.clients.map((client) => ({
      ...withArcs(client),
      earlier: client.earlier.map(withArcs),
      sheets: client.sheets.map((sheet) => ({ ...sheet, saved: sheet.saved && withArcs(sheet.saved) })),
    })),
  };
}
