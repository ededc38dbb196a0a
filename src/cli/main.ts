// The headless drafter: reads the command line, drafts, writes files or lines, and sets the exit code.

import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  CLI,
  type Fault,
  type FileStyle,
  NAMED_STYLES,
  parseJson,
  type Read,
  readStyle,
  refuse,
} from '../document';
import { DEMO_FILE_CLIENT, type FileClient, paperUnit, readClient } from './clientFile';
import { draftClient } from './draftClient';
import { draftFiles, isSystemError, issueLine } from './draftFiles';
import { draftStream } from './draftStream';
import { faultLine } from './faultLine';
import { type Options, readOptions } from './options';
import { paperNamed, paperWords } from './paperNamed';
import { styleNamed } from './styleNamed';

const [DRAFTED, MUST_NOT_BE_CUT, UNUSABLE] = [0, 1, 2];

async function run(words: readonly string[]): Promise<number> {
  const options = readOptions(words);
  if (!options.ok) return unusable(options.faults, 'draft');
  const { task, style } = options.value;
  if (task === 'help') {
    const papers = paperWords(await import('../paper'));
    process.stdout.write(CLI.help({ styles: [...NAMED_STYLES.keys()], papers }));
    return DRAFTED;
  }
  const chosen = await styleOf(style);
  if (!chosen.ok) return unusable(chosen.faults, style);
  return task === 'stream' ? stream(chosen.value) : files(options.value, chosen.value);
}

async function stream({ style }: FileStyle): Promise<number> {
  process.stdin.setEncoding('utf8');
  try {
    const broken = once(process.stdout, 'error').then(([error]) => Promise.reject(error));
    await Promise.race([draftStream(process.stdin, process.stdout, style), broken]);
  } catch (error) {
    // A reader such as head may close the stream early; that is no fault.
    if (!isSystemError(error) || error.code !== 'EPIPE') throw error;
    process.stdin.destroy();
  }
  return DRAFTED;
}

async function files(
  { client: path, paper: paperName, out, nap }: Options,
  style: FileStyle,
): Promise<number> {
  const layer = await import('../paper');
  const paper = paperNamed(paperName, layer);
  if (!paper.ok) return unusable(paper.faults, '');
  const client = await clientOf(path);
  if (!client.ok) return unusable(client.faults, path ?? 'draft');
  const drafted = draftClient(client.value, style.style);
  if (!drafted.ok) return unusable(drafted.faults, path ?? 'draft');
  const made = await draftFiles(drafted.value, client.value, style, { ...paper.value, nap }, out);
  if (!made.ok) return unusable(made.faults, out);
  for (const file of made.value) process.stdout.write(`${file}\n`);
  for (const line of layer.estimatedLines({ ...client.value, unit: paperUnit(client.value) }))
    process.stderr.write(`warn measurements: ${line}\n`);
  const { issues } = drafted.value;
  for (const issue of issues.filter(({ severity }) => severity !== 'note'))
    process.stderr.write(issueLine(issue, style, client.value));
  return issues.some(({ severity }) => severity === 'error') ? MUST_NOT_BE_CUT : DRAFTED;
}

async function clientOf(path: string | null): Promise<Read<FileClient>> {
  if (path === null) return { ok: true, value: DEMO_FILE_CLIENT };
  const data = await jsonOf(path, '--client');
  return data.ok ? readClient(data.value) : data;
}

async function styleOf(name: string): Promise<Read<FileStyle>> {
  if (!name.endsWith('.json')) return styleNamed(name);
  const data = await jsonOf(name, '--style');
  return data.ok ? readStyle(data.value, basename(name, '.json')) : data;
}

async function jsonOf(path: string, flag: string): Promise<Read<unknown>> {
  try {
    return parseJson(await readFile(path, 'utf8'));
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return refuse(flag, CLI.fileNotRead({ path, code: error.code }));
  }
}

function unusable(faults: readonly Fault[], whole: string): number {
  for (const fault of faults) process.stderr.write(faultLine(fault, whole));
  return UNUSABLE;
}

process.exitCode = await run(process.argv.slice(2));
