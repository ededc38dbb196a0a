// How many clients the headless drafter answers in a second, from starting it to its last line: `npm run bench -- batch`. First
// batches of several sizes in the default style, then one of every ready style.
// For one core: `taskset -c 0 npm run bench -- batch`.

import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { NAMED_STYLES } from '../../src/document';
import type { Measurements } from '../../src/engine';

/** From a handful, where starting weighs most, to a size chart of a house. */
const BATCHES: readonly number[] = [1, 1000, 3000, 6000];

/** The batch of every ready style. */
const OF_EACH_STYLE = 3000;

export async function benchBatch(
  bodies: readonly Measurements[],
  say: (line: string) => void,
): Promise<void> {
  const lines = bodies.map((measurements, i) =>
    JSON.stringify({ name: `Client ${i + 1}`, unit: 'mm', measurements }),
  );
  const run = async (clients: number, style: string): Promise<void> => {
    const input = Array.from({ length: clients }, (_, i) => `${lines[i % lines.length]}\n`).join('');
    const start = performance.now();
    const bytes = await answered(input, style);
    const seconds = (performance.now() - start) / 1000;
    say(
      `${style}, ${clients} ${clients === 1 ? 'client' : 'clients'}: ${seconds.toFixed(2)} s, ${(clients / seconds).toFixed(0)} a second, ${(bytes / 1e6).toFixed(1)} MB`,
    );
  };
  for (const clients of BATCHES) await run(clients, 'default');
  for (const style of NAMED_STYLES.keys()) if (style !== 'default') await run(OF_EACH_STYLE, style);
}

/** Bytes that come back for an input. */
function answered(input: string, style: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', 'src/cli/main.ts', '--stdin', '--style', style],
      { stdio: ['pipe', 'pipe', 'inherit'] },
    );
    let bytes = 0;
    child.stdout.on('data', (part: Buffer) => {
      bytes += part.length;
    });
    child.on('error', reject);
    child.on('close', () => resolve(bytes));
    child.stdin.end(input);
  });
}
