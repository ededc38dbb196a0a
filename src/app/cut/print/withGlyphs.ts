// The letters that names need, loaded when they need any.

import { type PlanInput, withLetters } from '../../../paper';

/** The input with them; without where they cannot be loaded, which the print then says. */
export async function lettered<T extends PlanInput>(input: T): Promise<T> {
  try {
    return await withLetters(input, {
      read: async (name) => (await import('./fontFiles')).fontFiles.read(name),
      parts: async (face) => (await import('./fontFiles')).fontFiles.parts(face),
    });
  } catch {
    return input;
  }
}
