// The schema of a book of this build's version. It is apart from the book's types so that a page without a kept book does not fetch
// it.

import * as z from 'zod/mini';
import { MEASUREMENTS, type MeasurementName, styleSchema } from '../../../engine';
import { BOOK_VERSION, LATER_RULES } from '../book';
import { fittingsSchema, printsSchema } from './fittingSchema';
import { laysSchema } from './laySchema';

const number = z.number();
const text = z.string();
const someLevels = z.partial(
  z.object({
    overBust: number,
    bust: number,
    underBust: number,
    waist: number,
    highHip: number,
    hip: number,
  }),
);
/** A measurement that a book does not have, since it was written before there was one of this name, was not taken. */
const length = z._default(z.nullable(number), null);

const measurementsSchema = z.object(
  Object.fromEntries(MEASUREMENTS.map(({ name }) => [name, length])) as Record<
    MeasurementName,
    typeof length
  >,
);

const sidesSchema = z.object({
  leftShare: someLevels,
  rightLower: z.partial(z.object({ bust: number, underBust: number, waist: number, hip: number })),
});

const measurementName = z.enum(MEASUREMENTS.map(({ name }) => name));

const draftSchema = z.object({
  id: text,
  name: text,
  style: styleSchema,
  acknowledgedReduction: z.nullable(number),
  acknowledgedRibs: z.optional(number),
  redrafted: z.exactOptional(z.union([z.literal(true), z.array(z.enum(LATER_RULES))])),
  comparison: z.nullable(
    z.object({
      on: text,
      name: z.exactOptional(text),
      measurements: measurementsSchema,
      sides: z.optional(sidesSchema),
      style: styleSchema,
      fittings: z.optional(fittingsSchema),
    }),
  ),
  fittings: fittingsSchema,
  notes: z.object({ cloth: text, event: text, heel: text, bra: text }),
  lays: z.exactOptional(laysSchema),
});

export const clientSchema = z.object({
  id: text,
  name: text,
  unit: z.enum(['in', 'cm']),
  measurements: measurementsSchema,
  takenOn: z.nullable(text),
  earlier: z.array(z.object({ on: z.nullable(text), measurements: measurementsSchema })),
  readings: z.partialRecord(measurementName, z.array(number)),
  estimated: z.array(measurementName),
  sides: z.optional(sidesSchema),
  archived: z.boolean(),
  lastUsed: z.nullable(text),
  drafts: z.array(draftSchema).check(z.minLength(1)),
  openDraft: text,
  prints: printsSchema(measurementsSchema, sidesSchema),
  changed: z.exactOptional(text),
  invented: z.exactOptional(z.literal(true)),
});

export const ownStyleSchema = z.object({ id: text, name: text, on: text, style: styleSchema });

export const bookSchema = z.object({
  version: z.literal(BOOK_VERSION),
  styles: z.array(ownStyleSchema),
  clients: z.array(clientSchema).check(z.minLength(1)),
  openClient: text,
});
