// Loads the page's face and the glyphs that names need, when a print is made.

import { type PlanInput, type WithFace, withFace, withGlyphs } from '../../../paper';

/**
 * Adds the face and the glyphs to an input. Where the glyphs cannot be loaded they are left out, and the print says so. Throws
 * where the face cannot be loaded, because nothing is printed without it.
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
