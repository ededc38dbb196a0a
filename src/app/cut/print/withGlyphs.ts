// The face that a print is set in, and the letters that names need beside it, loaded when a print is made.

import { type Faced, type PlanInput, withFace, withLetters } from '../../../paper';

/**
 * The input with both; without the letters where they cannot be loaded, which the print then says. Throws where the face cannot:
 * nothing is printed without it.
 */
export async function lettered<T extends PlanInput>(input: T): Promise<T & Faced> {
  const { fontFiles } = await import('./fontFiles');
  const faced = await withFace(input, fontFiles);
  try {
    return await withLetters(faced, fontFiles);
  } catch {
    return faced;
  }
}
