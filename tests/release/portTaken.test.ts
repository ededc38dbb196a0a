// Serving the page where its port is taken: another port would be another, empty book.

import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { SERVE } from '../../src/document/messages/screens/clients/start';

const manifest: { scripts: { start: string } } = JSON.parse(readFileSync('package.json', 'utf8'));

it('is refused with the reason and how to go on, and another port is not taken', async () => {
  expect(manifest.scripts.start).toMatch(/ && vite preview$/);
  const folder = mkdtempSync(join(tmpdir(), 'staywright-served-'));
  const other = createServer();
  await new Promise<void>((ready) => other.listen(0, '127.0.0.1', ready));
  const { port } = other.address() as AddressInfo;
  const served = spawn(process.execPath, [
    ...['node_modules/vite/bin/vite.js', 'preview', '--outDir', folder],
    ...['--host', '127.0.0.1', '--port', String(port)],
  ]);
  try {
    const said = { out: '', error: '' };
    served.stdout.on('data', (data) => (said.out += data));
    served.stderr.on('data', (data) => (said.error += data));
    const code = await new Promise((ended) => served.on('close', ended));
    expect(code).toBe(1);
    expect(said).toEqual({ out: '', error: SERVE.portTaken({ port }) });
  } finally {
    served.kill();
    other.close();
    rmSync(folder, { recursive: true, force: true });
  }
}, 60_000);
