// Tells an object of JSON data from every other value.

export type JsonObject = Readonly<Record<string, unknown>>;

/** True of an object that is neither null nor a list. */
export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
