// The schema of fittings and prints as they are kept.

import * as z from 'zod/mini';
import { LANDMARKS, LEVEL_NAMES, SEAM_ENDS, styleSchema } from '../../../engine';
import { PRINT_FORMS } from '../prints';

const number = z.number();
const text = z.string();
const level = z.enum(LEVEL_NAMES);

const panel = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('panel'), block: z.enum(['front', 'back']), number }),
  z.object({ kind: z.literal('sidePanel') }),
]);
const seam = z.object({ kind: z.literal('seam'), pieces: z.tuple([panel, panel]) });
const dart = z.object({ kind: z.literal('dart'), wedge: text });
const seamName = z.discriminatedUnion('kind', [seam, dart]);
const place = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('landmark'), name: z.enum(LANDMARKS) }),
  seam,
  dart,
]);
const height = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('level'), level }),
  z.object({ kind: z.literal('end'), end: z.enum(SEAM_ENDS) }),
  z.object({ kind: z.literal('belowWaist'), mm: number }),
]);
const bound = z.enum(['top', ...LEVEL_NAMES, 'hem']);
const common = { side: z.enum(['both', 'left', 'right']), on: z.boolean() };
const placed = z.array(z.object({ place, by: number })).check(z.minLength(1));

const alteration = z.discriminatedUnion('kind', [
  z.object({
    ...common,
    kind: z.literal('seam'),
    seam: seamName,
    at: z.array(z.object({ height, a: number, b: number })).check(z.minLength(1)),
  }),
  z.object({ ...common, kind: z.literal('length'), between: z.tuple([bound, bound]), at: placed }),
  z.object({
    ...common,
    kind: z.literal('edge'),
    edge: z.enum(['top', 'hem', 'neckline', 'armhole']),
    at: placed,
  }),
  z.object({ ...common, kind: z.literal('bustPoint'), out: number, down: number }),
]);

export const fittingsSchema = z.array(
  z.object({ date: text, note: text, on: z.boolean(), alterations: z.array(alteration) }),
);

/** Of prints; what is measured has the schemas of the client's own. */
export const printsSchema = <Measured extends z.ZodMiniType, Sides extends z.ZodMiniType>(
  measurements: Measured,
  sides: Sides,
) =>
  z.array(
    z.object({
      on: text,
      draft: text,
      draftName: text,
      mockup: z.nullable(number),
      form: z.enum(PRINT_FORMS),
      program: text,
      measurements,
      takenOn: z.nullable(text),
      sides: z.optional(sides),
      style: styleSchema,
      fittings: fittingsSchema,
    }),
  );
