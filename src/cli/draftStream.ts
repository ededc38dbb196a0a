// Many clients, one a line in and one a line out, in the same order; a bad line is answered and passed.

import { once } from 'node:events';
import type { Writable } from 'node:stream';
import type { Style } from '../engine';
import { readClient } from './clientFile';
import { draftClient } from './draftClient';
import type { Fault } from './fault';
import { isObject, parseJson } from './json';
import { type Line, LONGEST_LINE, linesOf } from './lines';
import { piecesFile } from './piecesFile';

/** Drafts every line of the input; blank lines are passed over. Waits whenever the reader of the output does. */
export async function draftStream(
  input: AsyncIterable<string>,
  output: Writable,
  style: Style,
): Promise<void> {
  for await (const line of linesOf(input)) {
    if (line?.trim() === '') continue;
    if (!output.write(`${answer(line, style)}\n`)) await once(output, 'drain');
  }
}

/** The answer to one line, as one line of JSON. */
function answer(line: Line, style: Style): string {
  if (line === null)
    return fault(null, [{ path: '', message: `This line is longer than ${LONGEST_LINE} characters.` }]);
  const json = parseJson(line);
  if (!json.ok) return fault(null, json.faults);
  const client = readClient(json.value);
  if (!client.ok) return fault(isObject(json.value) ? json.value.name : null, client.faults);
  const { name, unit } = client.value;
  const drafted = draftClient(client.value, style);
  if (!drafted.ok) return fault(name, drafted.faults);
  return JSON.stringify({ name, ...piecesFile(drafted.value, style, unit) });
}

const fault = (name: unknown, error: readonly Fault[]): string =>
  JSON.stringify({ name: typeof name === 'string' ? name : null, error });
