// Version 2 knew no styles of the maker's own, kept apart from a client.

import * as z from 'zod/mini';

const version2 = z.looseObject({ clients: z.array(z.unknown()) });

/** A book of version 2 as one of version 3; throws on data that is not of version 2. */
export function fromVersion2(old: unknown): unknown {
  return { ...version2.parse(old), version: 3, styles: [] };
}
