// A directory with those above it. Node's own recursive mkdir never ends where the system answers that a place is missing and
// makes none there, as under /proc.

import { mkdir, stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Makes it where it is not there; a file in its place is an error of mkdir's. */
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
