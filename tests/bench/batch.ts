// How many clients the headless drafter answers in a second, from starting it to its last line: `npm run bench -- batch`.
// For one core: `taskset -c 0 npm run bench -- batch`.

import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import type { Measurements } from '../../src/engine';

/** From a handful, where starting weighs most, to a size chart of a house. */
const BATCHES: readonly number[] = [1, 1000, 3000, 6000];

export async function benchBatch(
  bodies: readonly Measurements[],
  say: (line: string) => void,
): Promise<void> {
  const lines = bodies.map((measurements, i) =>
    JSON.stringify({ name: `Client ${i + 1}`, unit: 'mm', measurements }),
  );
  for (const clients of BATCHES) {
    const input = Array.from({ length: clients }, (_, i) => `${lines[i % lines.length]}\n`).join('');
    const start = performance.now();
    const bytes = await answered(input);
    const seconds = (performance.now() - start) / 1000;
    say(
      `${clients} ${clients === 1 ? 'client' : 'clients'}: ${seconds.toFixed(2)} s, ${(clients / seconds).toFixed(0)} a second, ${(bytes / 1e6).toFixed(1)} MB`,
    );
  }
}

/** Bytes that come back for an input. */
function answered(input: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', '--stdin'], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    let bytes = 0;
    child.stdout.on('data', (part: Buffer) => {
      bytes += part.length;
    });
    child.on('error', reject);
    child.on('close', () => resolve(bytes));
    child.stdin.end(input);
  });
}
