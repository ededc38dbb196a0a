// The face that a print is set in, and the letters that names need beside it, loaded when a print is made.

import { type PlanInput, type WithFace, withFace, withGlyphs } from '../../../paper';

/**
 * The input with both; without the letters where they cannot be loaded, which the print then says. Throws where the face cannot:
 * nothing is printed without it.
 */
export async function withFonts<T extends PlanInput>(input: T): Promise<T & WithFace> {
  const { fontFiles } = await import('./fontFiles');
  const faced = await withFace(input, fontFiles);
  try {
    return await withGlyphs(faced, fontFiles);
  } catch {
    return faced;
  }
}
