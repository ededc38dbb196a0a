// What makes an input unusable: the place of the field, and a sentence.

export interface Fault {
  /** "measurements.bust"; empty for the input as a whole. */
  readonly path: string;
  readonly message: string;
}

/** Something read from outside, or everything that is wrong with it. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const refuse = (path: string, message: string): { ok: false; faults: Fault[] } => ({
  ok: false,
  faults: [{ path, message }],
});
