// The client book as it is kept: plain data, checked at every door it comes in by.

import * as z from 'zod/mini';
import type { Measurements, Style } from '../engine';

/** The version this build writes. A book of a lower one is migrated, of a higher one put aside. */
export const BOOK_VERSION = 1;

/** The unit a maker reads and types in; everything is kept in mm. */
export type Unit = 'in' | 'cm';

/** One draft of a client: a style with a name. */
export interface Sheet {
  readonly id: string;
  readonly name: string;
  readonly style: Style;
  /** The waist reduction, mm, for which the maker has read the caution; null while she has not. */
  readonly acknowledgedReduction: number | null;
}

export interface Client {
  readonly id: string;
  readonly name: string;
  readonly unit: Unit;
  readonly measurements: Measurements;
  readonly sheets: readonly Sheet[];
  readonly openSheet: string;
}

export interface Book {
  readonly version: typeof BOOK_VERSION;
  readonly clients: readonly Client[];
  readonly openClient: string;
}

const number = z.number();
const text = z.string();
const perLevel = z.object({
  overBust: number,
  bust: number,
  underBust: number,
  waist: number,
  highHip: number,
  hip: number,
});
const someLevels = z.partial(perLevel);
const length = z.nullable(number);

const measurementsSchema = z.object({
  bust: length,
  underBust: length,
  waist: length,
  hip: length,
  overBust: length,
  highHip: length,
  neckToBust: length,
  neckToUnderBust: length,
  neckToWaist: length,
  neckToHip: length,
  bustPointWidth: length,
  acrossShoulder: length,
  neckWidth: length,
  backNeckToWaist: length,
  underarmToWaist: length,
  waistToLap: length,
});

/** The shape of a style; whether its numbers can be drafted is the engine's to say. */
const styleSchema = z.object({
  ease: perLevel,
  frontShare: perLevel,
  overBustAbove: number,
  topAbove: number,
  hemBelow: number,
  closure: z.object({ front: z.enum(['fold', 'seam', 'busk']), lacingGap: number }),
  wedges: z.array(
    z.object({
      id: text,
      block: z.enum(['front', 'back']),
      station: number,
      stationAt: someLevels,
      sizing: z.enum(['balanced', 'hand']),
      intake: someLevels,
      weight: number,
    }),
  ),
  balance: z.object({ sideShare: number, cap: number }),
  allowances: z.object({ seam: number, side: number, top: number, hem: number, centre: number }),
});

const sheetSchema = z.object({
  id: text,
  name: text,
  style: styleSchema,
  acknowledgedReduction: z.nullable(number),
});

const clientSchema = z.object({
  id: text,
  name: text,
  unit: z.enum(['in', 'cm']),
  measurements: measurementsSchema,
  sheets: z.array(sheetSchema).check(z.minLength(1)),
  openSheet: text,
});

export const bookSchema = z.object({
  version: z.literal(BOOK_VERSION),
  clients: z.array(clientSchema).check(z.minLength(1)),
  openClient: text,
});

/** The open client; the first one where the book names one it does not hold. */
export function openClient(book: Book): Client {
  return book.clients.find((client) => client.id === book.openClient) ?? (book.clients[0] as Client);
}

/** The open draft of a client; the first one where it names one it does not hold. */
export function openSheet(client: Client): Sheet {
  return client.sheets.find((sheet) => sheet.id === client.openSheet) ?? (client.sheets[0] as Sheet);
}
