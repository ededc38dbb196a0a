// The headless drafter: reads the command line, drafts, and writes files or lines.

import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import {
  CLI,
  type Fault,
  type FileStyle,
  type Fitting,
  NAMED_STYLES,
  notJudgedSentence,
  outcomesOf,
  parseJson,
  type Read,
  readFittings,
  readStyle,
  refuse,
  WORN,
} from '../document';
import { type Draft, otherWay, sewGarment } from '../engine';
import { draftClient } from './draftClient';
import { draftStream } from './draftStream';
import { DEMO_FILE_CLIENT, type FileClient, paperUnit, readClient } from './input/clientFile';
import { type Options, readOptions } from './input/options';
import { paperNamed, paperWords } from './input/paperNamed';
import { styleNamed } from './input/styleNamed';
import { draftFiles, issueLine } from './output/draftFiles';
import { faultLine, refusedLine } from './output/faultLine';
import { fontFiles } from './output/fontFiles';
import { sizeFiles } from './output/sizeFiles';
import { wornFile } from './output/wornFile';
import { isSystemError } from './output/writtenFiles';

const [DRAFTED, MUST_NOT_BE_CUT, UNUSABLE, NOT_WRITTEN] = [0, 1, 2, 3];

/** What the command reads and writes: the three standard streams of its process. */
export interface Streams {
  readonly stdin: Readable;
  readonly stdout: Writable;
  readonly stderr: Writable;
}

/**
 * Runs the command with the words behind its name. Gives the exit code: 0 drafted, 1 drafted but not to be cut, 2 input that
 * cannot be used, with a line for each fault on the error stream; 3 what was drafted could not be written, with one line.
 */
export async function runCommand(words: readonly string[], streams: Streams): Promise<number> {
  // Each write reports its own error. An error stream that cannot be written does not change the exit code.
  for (const stream of [streams.stdout, streams.stderr]) stream.on('error', () => undefined);
  try {
    return await run(words, streams);
  } catch (error) {
    if (!isSystemError(error) || error.syscall !== 'write') throw error;
    streams.stdin.destroy();
    streams.stderr.write(CLI.outputNotWritten(error));
    return NOT_WRITTEN;
  }
}

async function run(words: readonly string[], streams: Streams): Promise<number> {
  const { stdout, stderr } = streams;
  const options = readOptions(words);
  if (!options.ok) return unusable(options.faults, 'draft', stderr);
  const { task, style } = options.value;
  if (task === 'help') {
    const papers = paperWords(await import('../paper'));
    await write(stdout, CLI.help({ styles: [...NAMED_STYLES.keys()], papers }));
    return DRAFTED;
  }
  if (task === 'version') {
    await write(stdout, CLI.version({ version: await ownVersion() }));
    return DRAFTED;
  }
  const chosen = await styleOf(style);
  if (!chosen.ok) return unusable(chosen.faults, style, stderr);
  return task === 'stream' ? stream(chosen.value, streams) : files(options.value, chosen.value, streams);
}

async function stream({ style }: FileStyle, { stdin, stdout }: Streams): Promise<number> {
  stdin.setEncoding('utf8');
  const broken = once(stdout, 'error').then(([error]) => Promise.reject(error));
  await Promise.race([draftStream(stdin, stdout, style), broken]);
  return DRAFTED;
}

/** Writes a text; throws the system's error where that cannot be done. */
const write = (stream: Writable, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    stream.write(text, (error) => (error ? reject(error) : resolve()));
  });

async function ownVersion(): Promise<string> {
  const { version } = JSON.parse(await readFile(new URL('../../package.json', import.meta.url), 'utf8'));
  return version;
}

async function files(options: Options, style: FileStyle, streams: Streams): Promise<number> {
  if (options.sizes === null) return clientFiles(options, style, streams);
  const one = options.client === null ? DRAFTED : await clientFiles(options, style, streams);
  if (one > MUST_NOT_BE_CUT) return one;
  const text = await textOf(options.sizes, '--sizes');
  if (!text.ok) return unusable(text.faults, options.sizes, streams.stderr);
  const layer = await import('../paper');
  const paper = paperNamed(options.paper, layer);
  if (!paper.ok) return unusable(paper.faults, '', streams.stderr);
  const made = await sizeFiles(text.value, style, paper.value, options.out);
  if (!made.ok) {
    unusable(made.faults, options.sizes, streams.stderr);
    return made.isDeviceFull ? NOT_WRITTEN : UNUSABLE;
  }
  await write(streams.stdout, made.value.files.map((file) => `${file}\n`).join(''));
  for (const line of made.value.said) streams.stderr.write(line);
  return Math.max(one, made.value.isWhole ? DRAFTED : MUST_NOT_BE_CUT);
}

async function clientFiles(
  { client: path, fittings: fittingsPath, paper: paperName, out, nap, worn: isWorn, lay }: Options,
  style: FileStyle,
  { stdout, stderr }: Streams,
): Promise<number> {
  const layer = await import('../paper');
  const paper = paperNamed(paperName, layer);
  if (!paper.ok) return unusable(paper.faults, '', stderr);
  const client = await clientOf(path);
  if (!client.ok) return unusable(client.faults, path ?? 'draft', stderr);
  const fittings = await fittingsOf(fittingsPath);
  if (!fittings.ok) return unusable(fittings.faults, fittingsPath ?? 'draft', stderr);
  const drafted = draftClient(client.value, style.style, fittings.value ?? []);
  if (!drafted.ok) return unusable(drafted.faults, path ?? 'draft', stderr);
  const worn = isWorn ? sewn(drafted.value, client.value, style) : null;
  const print = { ...paper.value, nap, lay };
  const asked = { ...style, fittings: fittings.value };
  const unwritable = (await layer.glyphsFor([client.value.name, style.title], fontFiles))?.missing ?? [];
  if (unwritable.length > 0) stderr.write(`warn name: ${CLI.unwritable({ letters: unwritable })}\n`);
  const made = await draftFiles(drafted.value, client.value, asked, print, out, worn?.content ?? null);
  if (!made.ok) {
    unusable(made.faults, out, stderr);
    return made.isDeviceFull ? NOT_WRITTEN : UNUSABLE;
  }
  await write(stdout, made.value.map((file) => `${file}\n`).join(''));
  for (const line of layer.estimatedLines({ ...client.value, unit: paperUnit(client.value) }))
    stderr.write(`warn measurements: ${line}\n`);
  for (const line of worn?.said ?? []) stderr.write(`note worn: ${line}\n`);
  for (const each of outcomesOf(fittings.value ?? [], drafted.value))
    if (each.code !== null) stderr.write(refusedLine(each));
  const { issues } = drafted.value;
  for (const issue of issues.filter(({ severity }) => severity !== 'note'))
    stderr.write(issueLine(issue, style, client.value));
  return issues.some(({ severity }) => severity === 'error') ? MUST_NOT_BE_CUT : DRAFTED;
}

/** The content of worn.json, null where nothing could be sewn, and what is to be said of it. */
function sewn(drafted: Draft, client: FileClient, { style }: FileStyle) {
  const start = performance.now();
  const worn = sewGarment(drafted, client.measurements, style, client.sides);
  const file = wornFile(worn, drafted, performance.now() - start);
  const way = otherWay(worn);
  return {
    content: worn.halves.length > 0 ? `${JSON.stringify(file)}\n` : null,
    said: [
      ...(worn.notJudged === null ? [] : [notJudgedSentence(worn.notJudged)]),
      ...(way ? [WORN.other({ way, unit: paperUnit(client) })] : []),
      ...(worn.halves.length > 0 && worn.leftOut.length > 0 ? [WORN.leftOut({ pieces: worn.leftOut })] : []),
    ],
  };
}

async function clientOf(path: string | null): Promise<Read<FileClient>> {
  if (path === null) return { ok: true, value: DEMO_FILE_CLIENT };
  const data = await jsonOf(path, '--client');
  return data.ok ? readClient(data.value) : data;
}

/** The fittings of a file; null where none is named. */
async function fittingsOf(path: string | null): Promise<Read<readonly Fitting[] | null>> {
  if (path === null) return { ok: true, value: null };
  const data = await jsonOf(path, '--fittings');
  return data.ok ? readFittings(data.value) : data;
}

async function styleOf(name: string): Promise<Read<FileStyle>> {
  if (!name.endsWith('.json')) return styleNamed(name);
  const data = await jsonOf(name, '--style');
  return data.ok ? readStyle(data.value, basename(name, '.json')) : data;
}

async function jsonOf(path: string, flag: string): Promise<Read<unknown>> {
  const text = await textOf(path, flag);
  return text.ok ? parseJson(text.value) : text;
}

async function textOf(path: string, flag: string): Promise<Read<string>> {
  try {
    return { ok: true, value: await readFile(path, 'utf8') };
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return refuse(flag, CLI.fileNotRead({ path, code: error.code }));
  }
}

function unusable(faults: readonly Fault[], whole: string, stderr: Writable): number {
  for (const fault of faults) stderr.write(faultLine(fault, whole));
  return UNUSABLE;
}
