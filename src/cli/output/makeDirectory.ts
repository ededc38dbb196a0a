// Makes a directory and those above it. Node's own recursive mkdir never ends where the system reports a place as missing and
// makes no directory there, as under /proc.

import { mkdir, stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Makes the directory where it is missing; throws mkdir's error where a file has its name. */
export async function makeDirectory(path: string): Promise<void> {
  const missing: string[] = [];
  let place = resolve(path);
  while (!(await isThere(place)) && dirname(place) !== place) {
    missing.push(place);
    place = dirname(place);
  }
  for (const each of missing.reverse()) await mkdir(each);
}

const isThere = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );
