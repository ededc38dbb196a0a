// Version 1 knew one set of measurements a client, and nothing of earlier sets, readings, archives and saved drafts; its
// top edges and hems were level, and every back was laced.

import * as z from 'zod/mini';

const version1 = z.looseObject({
  clients: z.array(
    z.looseObject({
      sheets: z.array(z.looseObject({ style: z.looseObject({ closure: z.looseObject({}) }) })),
    }),
  ),
});

const FLAT = { beyond: 0, kind: 'smooth' };

/** The only edge there was. */
const LEVEL = {
  centreFront: FLAT,
  bustLine: FLAT,
  sideFront: FLAT,
  underarm: FLAT,
  sideBack: FLAT,
  centreBack: FLAT,
};

/** A book of version 1 as one of version 2; throws on data that is not of version 1. */
export function fromVersion1(old: unknown): unknown {
  const book = version1.parse(old);
  return {
    ...book,
    version: 2,
    clients: book.clients.map((client) => ({
      ...client,
      takenOn: null,
      earlier: [],
      readings: {},
      estimated: [],
      archived: false,
      lastUsed: null,
      sheets: client.sheets.map((sheet) => ({
        ...sheet,
        style: {
          ...sheet.style,
          closure: { ...sheet.style.closure, back: 'lacing' },
          topFrom: 'overBust',
          topShape: LEVEL,
          hemShape: LEVEL,
        },
        saved: null,
      })),
    })),
  };
}
