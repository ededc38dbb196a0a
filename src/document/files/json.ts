// JSON from outside, as unknown data or a fault.

import { type Read, refuse } from './fault';

export function parseJson(text: string): Read<unknown> {
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\ufeff/, '')) };
  } catch (error) {
    // The parser quotes what it stumbled on, line ends and all; a fault is one line.
    const said = error instanceof Error ? error.message.replace(/\s+/g, ' ').slice(0, 160) : '';
    return refuse('', `This is not JSON (${said}).`);
  }
}

export type JsonObject = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What a value is, as a fault names it. */
export function kindOf(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' ? 'an object' : `a ${typeof value}`;
}
