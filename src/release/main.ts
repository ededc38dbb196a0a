// `npm run release`: writes the release into release/ and says what is there.

import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { RELEASE } from '../document';
import { makeRelease, RELEASED } from './makeRelease';

const OUT = 'release';
makeRelease(OUT);

const sizeOf = (path: string): number =>
  statSync(path).isDirectory()
    ? readdirSync(path).reduce((sum, name) => sum + sizeOf(join(path, name)), 0)
    : statSync(path).size;

const megabytes = (name: string): number => sizeOf(join(OUT, name)) / 1e6;
process.stdout.write(
  RELEASE.made({
    out: OUT,
    ...RELEASED,
    folderMb: megabytes(RELEASED.folder),
    fileMb: megabytes(RELEASED.file),
  }),
);
