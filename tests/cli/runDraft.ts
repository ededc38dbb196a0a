// Runs the real command, as a maker's shell would.

import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/**
 * Runs it with words behind the command and, for --stdin, what it reads. `leaves` stops reading the answers as soon as
 * there is one, as head does.
 */
export function runDraft(words: readonly string[], input = '', { leaves = false } = {}): Promise<Ran> {
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
