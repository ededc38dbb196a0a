// Lays out a release: a folder for any web space and one file that opens by a double click, with what to do and the licences.

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildApp } from './buildApp';
import { licenceText } from './licences';

/** Names in a release. The page in one file keeps its name, since some browsers keep a book for the place of a file. */
export const RELEASED = {
  folder: 'staywright',
  file: 'staywright.html',
  howTo: 'HOW-TO.txt',
  licences: 'LICENCES.txt',
} as const;

/**
 * Writes a release into a folder, which is emptied before. Run from the project's root.
 *
 * @param built the folder of a build that is there already; the app is built where none is given
 */
export function makeRelease(out: string, built?: string): void {
  rmSync(out, { recursive: true, force: true });
  const folder = join(out, RELEASED.folder);
  if (built === undefined) buildApp('production', folder);
  else cpSync(built, folder, { recursive: true });
  const single = mkdtempSync(join(tmpdir(), 'staywright-single-'));
  try {
    buildApp('single', single);
    cpSync(join(single, 'index.html'), join(out, RELEASED.file));
  } finally {
    rmSync(single, { recursive: true, force: true });
  }
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  const howTo = readFileSync(join(import.meta.dirname, 'HOW-TO.txt'), 'utf8').replaceAll(
    '{version}',
    version,
  );
  for (const place of [out, folder]) {
    writeFileSync(join(place, RELEASED.howTo), howTo);
    writeFileSync(join(place, RELEASED.licences), licenceText(process.cwd()));
  }
}
