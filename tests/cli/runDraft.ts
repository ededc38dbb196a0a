// Runs the headless drafter: the command within this process, or the real process as a shell starts it.

import { spawn } from 'node:child_process';
import { PassThrough, Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { runCommand } from '../../src/cli/command';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command in this process with words behind its name and, for --stdin, the text that it reads. */
export async function runDraft(words: readonly string[], input = ''): Promise<Ran> {
  const [out, err] = [new TextSink(), new TextSink()];
  const stdin = Readable.from([Buffer.from(input)]).pipe(new PassThrough());
  const code = await runCommand(words, { stdin, stdout: out, stderr: err });
  return { code, out: out.text, err: err.text };
}

/** A stream that keeps the text written to it. */
class TextSink extends Writable {
  text = '';

  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString('utf8');
    done();
  }
}

/** Runs the real process. `leaves` stops reading the answers as soon as there is one, as head does. */
export function runDraftProcess(words: readonly string[], input = '', { leaves = false } = {}): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...words], { cwd: ROOT });
    let [out, err] = ['', ''];
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (leaves) child.stdout.destroy();
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    // A command that ends without reading closes its end of the pipe, which is its right.
    child.stdin.on('error', () => undefined);
    child.stdin.end(input);
  });
}
