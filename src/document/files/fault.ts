// Faults of an input that cannot be used: the path of the field, and a sentence.

export interface Fault {
  /** Path of the field, as "measurements.bust"; empty for the input as a whole. */
  readonly path: string;
  readonly message: string;
}

/** A value read from outside, or all its faults. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A reading with one fault. */
export const refuse = (path: string, message: string): { ok: false; faults: Fault[] } => ({
  ok: false,
  faults: [{ path, message }],
});
