// The schema of lay plans as they are kept.

import * as z from 'zod/mini';
import { LAY_LAYERS } from '../lays';

const number = z.number();
const text = z.string();

export const laysSchema = z.array(
  z.object({
    layer: z.enum(LAY_LAYERS),
    cloth: z.object({
      widthMm: number,
      folded: z.boolean(),
      nap: z.boolean(),
      grainDegrees: number,
      gapMm: number,
      shrinkAlong: number,
      shrinkAcross: number,
      layers: number,
      price: z.nullable(number),
      bias: z.array(z.object({ of: number, piece: text })),
      others: z.array(z.object({ client: text, draft: text })),
    }),
    madeOf: text,
    lengthMm: number,
    density: number,
    placed: z.array(z.object({ x: number, y: number, turn: number, mirrored: z.boolean() })),
  }),
);
