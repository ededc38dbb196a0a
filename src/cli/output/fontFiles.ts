// Reads the fonts from the packages installed on disk.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { FontFiles } from '../../paper';

const { resolve } = createRequire(import.meta.url);
const folderOf = (name: string): string => dirname(resolve(`${name}/package.json`));

/** Path of a font file. The file of a part begins with the name of its face: noto-sans-sc-12-400-normal.woff. */
const placeOf = (name: string): string =>
  name.endsWith('.ttf')
    ? join(folderOf('dejavu-fonts-ttf'), 'ttf', name)
    : join(folderOf(`@fontsource/${/^noto-sans-[a-z]+/.exec(name)?.[0]}`), 'files', name);

/** The fonts on disk. Reading one that is not installed rejects. */
export const fontFiles: FontFiles = {
  read: async (name) => new Uint8Array(await readFile(placeOf(name))),
  parts: async (face) =>
    JSON.parse(await readFile(join(folderOf(`@fontsource/${face}`), 'unicode.json'), 'utf8')),
};
