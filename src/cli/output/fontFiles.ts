// Reads the fonts from the packages installed on disk.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { FontFiles } from '../../paper';
import { type Face, faceOf, partFile, partsWith } from './otherFaces';
import { unpackWoff } from './unpackWoff';

const { resolve } = createRequire(import.meta.url);
const folderOf = (name: string): string => dirname(resolve(`${name}/package.json`));

/** The fonts on disk. Reading one that is not installed rejects. */
export const fontFiles: FontFiles = {
  read: async (name) => new Uint8Array(await readFile(join(folderOf('dejavu-fonts-ttf'), 'ttf', name))),
  others: async (characters) => {
    const byFace = new Map<Face, string[]>();
    for (const each of characters) byFace.set(faceOf(each), [...(byFace.get(faceOf(each)) ?? []), each]);
    const files = await Promise.all([...byFace].map(([face, each]) => partsOf(face, each)));
    return files.flat();
  },
  // Without a browser nothing draws a letter but the fonts read here.
  isDrawn: () => false,
};

/** The parts of a face that have the characters, unpacked. */
async function partsOf(face: Face, characters: readonly string[]): Promise<Uint8Array[]> {
  const folder = folderOf(`@fontsource/${face}`);
  const parts = partsWith(characters, JSON.parse(await readFile(join(folder, 'unicode.json'), 'utf8')));
  return Promise.all(
    [...parts.keys()].map(async (part) =>
      unpackWoff(new Uint8Array(await readFile(join(folder, 'files', partFile(face, part))))),
    ),
  );
}
