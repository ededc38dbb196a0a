// What a page gave to be downloaded. The browser may run in a process of its own, so that the file is saved before it is read.

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download } from 'playwright-core';

export async function downloadBytes(download: Download): Promise<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), 'staywright-'));
  try {
    const file = join(folder, 'download');
    await download.saveAs(file);
    return new Uint8Array(readFileSync(file));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
