// The headless drafter as a package has it: it starts in a fraction of the time that its source takes.

import { cpSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildModules } from '../../src/release/buildTools';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Builds the drafter into an empty folder, and returns what Node is given to start it. */
export async function buildDrafter(folder: string): Promise<readonly string[]> {
  await buildModules(join(folder, 'lib'));
  cpSync(join(ROOT, 'package.json'), join(folder, 'package.json'));
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
  return [join(folder, 'lib/drafter/staywright.js')];
}
