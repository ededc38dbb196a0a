// The page's face as it is embedded in every PDF, so that no viewer substitutes another.

import { WRITABLE } from '../text/writable';
import { fontTables } from './fontTables';
import type { FontFiles } from './glyphs';
import { FACE_FILES, FACE_PER_EM } from './pageFaceFiles';
import { subsetFont } from './subsetFont';

/** TrueType files with the glyphs of WinAnsiEncoding only. Plain data. */
export interface PageFace {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** An input that carries the page's face; every PDF needs one. */
export interface WithFace {
  readonly face: PageFace;
}

/** What reads the files of the face. */
type FaceFiles = Pick<FontFiles, 'read'>;

const made = new WeakMap<FaceFiles, Promise<PageFace>>();

/** Adds the page's face, which is read once for the same `files`. What `files` throws is passed on. */
export async function withFace<T>(input: T, files: FaceFiles): Promise<T & WithFace> {
  const known = made.get(files) ?? pageFace(files);
  made.set(files, known);
  try {
    return { ...input, face: await known };
  } catch (error) {
    made.delete(files);
    throw error;
  }
}

async function pageFace(files: FaceFiles): Promise<PageFace> {
  const subset = async (name: string): Promise<Uint8Array> =>
    subsetFont(fontTables(await files.read(name)), {
      characters: WRITABLE,
      perEm: FACE_PER_EM,
      name: name.replace('.ttf', ''),
    });
  const [regular, bold] = await Promise.all([subset(FACE_FILES.regular), subset(FACE_FILES.bold)]);
  return { regular, bold };
}
