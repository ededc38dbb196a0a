// Runs the headless drafter: the command within this process, or the real process as a shell starts it.

import { spawn } from 'node:child_process';
import { closeSync, openSync } from 'node:fs';
import { PassThrough, Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { runCommand } from '../../src/cli/command';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/**
 * Runs the command in this process with words behind its name and, for --stdin, the text that it reads. `isFull`: the output has
 * no room.
 */
export async function runDraft(words: readonly string[], input = '', { isFull = false } = {}): Promise<Ran> {
  const [out, err] = [new TextSink(isFull), new TextSink(false)];
  const stdin = Readable.from([Buffer.from(input)]).pipe(new PassThrough());
  const code = await runCommand(words, { stdin, stdout: out, stderr: err });
  return { code, out: out.text, err: err.text };
}

/** A stream that keeps the text written to it, or has no room for any. */
class TextSink extends Writable {
  text = '';

  constructor(private readonly isFull: boolean) {
    super();
  }

  override _write(chunk: Buffer, _encoding: string, done: (error?: Error) => void): void {
    if (this.isFull) {
      done(Object.assign(new Error('no space'), { code: 'ENOSPC', syscall: 'write' }));
      return;
    }
    this.text += chunk.toString('utf8');
    done();
  }
}

interface Ends {
  /** Stops reading the answers as soon as there is one, as head does. */
  readonly leaves?: boolean;
  /** A file that stands for the output, which then comes back empty. */
  readonly to?: string;
  /** A file that stands for the input. */
  readonly from?: string;
}

/** What Node is given to start the drafter from its source, as `npm run draft` does. */
export const FROM_SOURCE: readonly string[] = ['--import', 'tsx', 'src/cli/main.ts'];

/** Runs the real process. */
export function runDraftProcess(
  start: readonly string[],
  words: readonly string[],
  input = '',
  ends: Ends = {},
): Promise<Ran> {
  const to = ends.to === undefined ? null : openSync(ends.to, 'w');
  const from = ends.from === undefined ? null : openSync(ends.from, 'r');
  return new Promise<Ran>((resolve, reject) => {
    const child = spawn(process.execPath, [...start, ...words], {
      cwd: ROOT,
      stdio: [from ?? 'pipe', to ?? 'pipe', 'pipe'],
    });
    let [out, err] = ['', ''];
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (ends.leaves) child.stdout?.destroy();
    });
    child.stderr?.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    // A command that ends without reading closes its end of the pipe, which is its right.
    child.stdin?.on('error', () => undefined);
    child.stdin?.end(input);
  }).finally(() => {
    for (const file of [to, from]) if (file !== null) closeSync(file);
  });
}
