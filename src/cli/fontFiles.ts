// The fonts as they lie on disk, where the package manager put them.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { FontFiles } from '../paper';

const { resolve } = createRequire(import.meta.url);
const folderOf = (name: string): string => dirname(resolve(`${name}/package.json`));

export const fontFiles: FontFiles = {
  read: async (name) =>
    new Uint8Array(
      await readFile(
        name.endsWith('.ttf')
          ? join(folderOf('dejavu-fonts-ttf'), 'ttf', name)
          : join(folderOf('@fontsource/noto-sans-sc'), 'files', name),
      ),
    ),
  parts: async () =>
    JSON.parse(await readFile(join(folderOf('@fontsource/noto-sans-sc'), 'unicode.json'), 'utf8')),
};
