// Drafts many clients: one line of input each, answered by one line of output in the same order, faults included.

import { once } from 'node:events';
import type { Writable } from 'node:stream';
import { CLI, type Fault, isObject, parseJson } from '../document';
import type { Style } from '../engine';
import { draftClient } from './draftClient';
import { readClient } from './input/clientFile';
import { type Line, LONGEST_LINE, linesOf } from './input/lines';
import { piecesFile } from './output/piecesFile';

/** Drafts every line of the input; blank lines are skipped. Waits while the output is full. */
export async function draftStream(
  input: AsyncIterable<string>,
  output: Writable,
  style: Style,
): Promise<void> {
  let number = 0;
  for await (const line of linesOf(input)) {
    number += 1;
    if (line?.trim() === '') continue;
    if (!output.write(`${answer(line, number, style)}\n`)) await once(output, 'drain');
  }
  // The last answer is written, or its error told, before the stream is through.
  await new Promise<void>((resolve, reject) => {
    output.write('', (error) => (error ? reject(error) : resolve()));
  });
}

/** The answer to one line, as one line of JSON. A fault of the line as a whole gives its number, counted from 1. */
function answer(line: Line, number: number, style: Style): string {
  const fault = (name: unknown, faults: readonly Fault[]): string =>
    JSON.stringify({
      name: typeof name === 'string' ? name : null,
      error: faults.map(({ path, message }) => ({
        path,
        message: path === '' ? CLI.line({ number, message }) : message,
      })),
    });
  if (line === null) return fault(null, [{ path: '', message: CLI.lineTooLong({ most: LONGEST_LINE }) }]);
  const json = parseJson(line);
  if (!json.ok) return fault(null, json.faults);
  const client = readClient(json.value);
  if (!client.ok) return fault(isObject(json.value) ? json.value.name : null, client.faults);
  const { name, unit } = client.value;
  const drafted = draftClient(client.value, style);
  if (!drafted.ok) return fault(name, drafted.faults);
  return JSON.stringify({ name, ...piecesFile(drafted.value, style, unit) });
}
