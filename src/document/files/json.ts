// Parses JSON from outside into unknown data or a fault.

import { FILES, type ValueKind } from '../messages/book/files';
import { type Read, refuse } from './fault';

/** The data of a JSON text, without a byte order mark; for any other text one fault, of the input as a whole. */
export function parseJson(text: string): Read<unknown> {
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\ufeff/, '')) };
  } catch (error) {
    // The parser's message quotes the text with its line ends; a fault is one line.
    const reason = error instanceof Error ? error.message.replace(/\s+/g, ' ').slice(0, 160) : '';
    return refuse('', FILES.notJson({ reason }));
  }
}

/** What a value is, for a fault that names it. */
export function kindOf(value: unknown): ValueKind {
  if (value === null) return 'null';
  return Array.isArray(value) ? 'list' : typeof value;
}
