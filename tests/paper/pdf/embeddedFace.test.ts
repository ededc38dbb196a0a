// Every file that is printed brings the face it is set in: no machine's own face is drawn in its place.

import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { fontFiles } from '../../../src/cli/output/fontFiles';
import {
  draftingSheetPdf,
  onePagePdf,
  patternPdf,
  projectorPdf,
  usualMaking,
  withFace,
  withGlyphs,
} from '../../../src/paper';
import { type PrintInput, quickPattern } from '../demoPattern';

interface FontInFile {
  readonly name: string;
  /** The file only names it; pdf.js has to take another. */
  readonly missingFile: boolean;
}

/** The fonts that the pages of a file write in, as pdf.js loads them. */
async function fontsOf(bytes: Uint8Array): Promise<FontInFile[]> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const fonts = new Map<string, FontInFile>();
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { fnArray, argsArray } = await page.getOperatorList();
    for (const [i, operator] of fnArray.entries()) {
      if (operator !== OPS.setFont) continue;
      const { name, missingFile } = page.commonObjs.get(argsArray[i][0]) as FontInFile;
      fonts.set(name, { name, missingFile });
    }
  }
  await document.loadingTask.destroy();
  return [...fonts.values()].sort((a, b) => a.name.localeCompare(b.name));
}

const FACE = [
  { name: 'PAGEAA+DejaVuSansCondensed', missingFile: false },
  { name: 'PAGEAB+DejaVuSansCondensed-Bold', missingFile: false },
];

/** Under outlines lie letters of a font that is drawn as nothing. */
const UNSEEN = { name: 'PAGEAC+Unseen', missingFile: false };

/** How often an object of a kind stands in a file. */
const count = (bytes: Uint8Array, kind: RegExp): number =>
  [...Buffer.from(bytes).toString('latin1').matchAll(kind)].length;

async function expectEmbedded(bytes: Uint8Array | null, fonts: readonly FontInFile[]): Promise<void> {
  if (!bytes) throw new Error('no file was made');
  expect(await fontsOf(bytes)).toEqual(fonts);
  // Each is an object in the file, and another that names its letters; none that no page writes in stands beside them.
  expect(count(bytes, /\/FontFile2 \d+ 0 R/g)).toBe(fonts.length);
  expect(count(bytes, /\/Type \/Font\b(?!Desc)/g)).toBe(2 * fonts.length);
  expect(count(bytes, /\/Subtype \/Type1\b/g)).toBe(0);
}

const NAMES: readonly (readonly [string, readonly FontInFile[]])[] = [
  ['Wren Abernathy', FACE],
  ['Zoë Ångström', FACE],
  ['Ольга Щукина', [...FACE, UNSEEN]],
  ['王芳', [...FACE, UNSEEN]],
];

const PRINTS: readonly (readonly [string, (input: PrintInput) => Promise<Uint8Array | null>])[] = [
  ['sheets', (input) => patternPdf(input)],
  ['sheets and a making list', (input) => patternPdf({ ...input, making: usualMaking('in') })],
  ['one page', (input) => onePagePdf(input, { widthMm: 914.4, heightMm: null, marginMm: 10 })],
  ['the projector', (input) => projectorPdf(input, { widthMm: 914.4, lineMm: 1 })],
  ['the drafting sheet', (input) => draftingSheetPdf(input, input.paper)],
];

describe.each(PRINTS)('%s', (_, print) => {
  it.each(NAMES)('for %s bring their face', async (name, fonts) => {
    const asked = quickPattern();
    const input = await withGlyphs({ ...asked, client: { ...asked.client, name } }, fontFiles);
    await expectEmbedded(await print(input), fonts);
  });
});

describe('the face', () => {
  it('is a small part of the font, read once', async () => {
    const read: string[] = [];
    const files = {
      ...fontFiles,
      read: (name: string) => {
        read.push(name);
        return fontFiles.read(name);
      },
    };
    const { face } = await withFace({}, files);
    expect((await withFace({}, files)).face).toBe(face);
    expect(read).toHaveLength(2);
    for (const { length } of [face.regular, face.bold]) expect(length).toBeLessThan(50_000);
  });

  it('is asked for again where it did not come', async () => {
    let there = false;
    const files = {
      ...fontFiles,
      read: (name: string) => (there ? fontFiles.read(name) : Promise.reject(new Error('did not come'))),
    };
    await expect(withFace({}, files)).rejects.toThrow('did not come');
    there = true;
    expect((await withFace({}, files)).face.regular.length).toBeGreaterThan(10_000);
  });
});
