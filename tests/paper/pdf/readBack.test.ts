// Names and labels of a print as its readers find them: pdf.js, which Firefox has, and pdftotext, which many other viewers share
// their code with.

import { execFileSync, spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { fontFiles } from '../../../src/cli/output/fontFiles';
import { patternPdf, withGlyphs } from '../../../src/paper';
import { glyphsFor } from '../../../src/paper/glyphs/glyphs';
import { pdfFile } from '../../../src/paper/pdf/file/pdfFile';
import { demoPattern, WITH_FACE } from '../demoPattern';
import { NAMES } from '../glyphs/names';
import { readPattern } from '../readPattern';

/** Names with marks, joiners and signs of two units as well; the pictures are in no font, and their boxes are found too. */
const ALL = [...NAMES, 'שָׂרָה כֹּהֵן', 'مُحَمَّد', 'Ada 👩‍🔬', 'Thread 🧵 (½)', 'Zoë Ångström'];

/** Names whose last letter, at the left, has a mark. */
const MARKED_ENDS = ['مُحَمَّد بن عَلِيّ', 'عَلِيُّ', 'أحمدٌ', 'עֵדָ'];

/** Names one below the other, some of them turned, with the page's own face before and after. */
async function namesOnPages(names: readonly string[]): Promise<Uint8Array> {
  const file = await pdfFile('Names', 'names', { ...WITH_FACE, glyphs: await glyphsFor(names, fontFiles) });
  for (const turnRad of [0, -Math.PI / 2, 0.3]) {
    const canvas = file.page(400, 400);
    const write = (text: string, place: number, bold = false) => {
      const along = 15 + 10 * place;
      const start = turnRad === 0 ? { x: 20, y: along } : { x: along, y: turnRad < 0 ? 390 : 20 };
      canvas.text({ text, start, turnRad, sizePt: 12, bold });
    };
    for (const [i, name] of names.entries()) write(name, i, i % 2 === 1);
    write('the end', names.length);
  }
  return file.bytes();
}

const hasPdftotext = spawnSync('pdftotext', ['-v']).error === undefined;
const itWithPdftotext = it.runIf(hasPdftotext);
const BY_PDFTOTEXT = hasPdftotext
  ? 'by pdftotext'
  : 'by pdftotext (not installed here: apt-get install poppler-utils)';

/** What pdftotext finds, without its marks of direction. */
const pdftotext = (bytes: Uint8Array, ...flags: readonly string[]): string =>
  execFileSync('pdftotext', [...flags, '-', '-'], { input: bytes, encoding: 'utf8' }).replace(
    /[\u202a-\u202e\u2066-\u2069]/gu,
    '',
  );

describe('names in any script', () => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await namesOnPages(ALL);
  });

  it('are found whole, each in one piece, by pdf.js', async () => {
    const { pages } = await readPattern(bytes);
    expect(pages).toHaveLength(3);
    for (const { texts } of pages) {
      expect(texts.map(({ text }) => text.trim())).toEqual([...ALL, 'the end']);
      for (const { widthMm } of texts) expect(widthMm).toBeGreaterThan(5);
    }
  });

  itWithPdftotext(`are found word by word ${BY_PDFTOTEXT}`, () => {
    expectWords(ALL, bytes);
  });

  itWithPdftotext(`are found to a mark on their last letter ${BY_PDFTOTEXT}`, async () => {
    expectWords(MARKED_ENDS, await namesOnPages(MARKED_ENDS));
  });

  function expectWords(names: readonly string[], file: Uint8Array): void {
    const lines = pdftotext(file, '-l', '1').normalize('NFC').split('\n');
    for (const [i, name] of names.entries()) {
      const words = name.normalize('NFC').split(' ');
      const line = lines.find((each) => words.every((word) => each.includes(word)));
      expect(line, `${i + 1}. ${name} of:\n${lines.join('\n')}`).toBeDefined();
    }
  }
});

describe('the labels of a pattern', () => {
  const name = 'Ольга Щукина';
  let bytes: Uint8Array;
  beforeAll(async () => {
    const asked = demoPattern();
    const client = { ...asked.client, name };
    bytes = await patternPdf(await withGlyphs({ ...asked, client }, fontFiles));
  });

  /** That parts stand in a text, one after the other. */
  function expectInOrder(text: string, parts: readonly string[]): void {
    let from = 0;
    for (const part of parts) {
      const at = text.indexOf(part, from);
      expect(at, `“${part}” after ${from} of:\n${text}`).toBeGreaterThanOrEqual(0);
      from = at + part.length;
    }
  }

  const FIRST = [
    name,
    'Winter ball bodice',
    'Print at 100 %',
    'This print',
    'Seam allowances, included',
    'How the sheets lie',
  ];
  const PANEL = ['Cut 2', name, 'Winter ball bodice', 'Bust', 'Under-bust'];

  function expectReadable(pages: readonly string[]): void {
    expectInOrder(pages[0] ?? '', FIRST);
    const sheets = pages.slice(1, -1);
    const panels = ['Front 1', 'Front 2', 'Front 3', 'Back 1', 'Back 2', 'Back 3'];
    for (const panel of panels) {
      const sheet = sheets.find((text) => new RegExp(`${panel}\\s+Cut 2`).test(text));
      expect(sheet, panel).toBeDefined();
      expectInOrder((sheet ?? '').slice(sheet?.search(new RegExp(`${panel}\\s+Cut 2`))), [panel, ...PANEL]);
    }
    for (const [i, text] of sheets.entries()) expect(text).toContain(`sheet ${i + 1} of ${sheets.length}`);
  }

  it('are read in their order by pdf.js', async () => {
    const { pages } = await readPattern(bytes);
    expectReadable(pages.map(({ texts }) => texts.map(({ text }) => text).join('\n')));
  });

  itWithPdftotext(`are read in their order ${BY_PDFTOTEXT}`, () => {
    // Pages end with a form feed.
    expectReadable(pdftotext(bytes, '-raw').split('\f').slice(0, -1));
  });
});
