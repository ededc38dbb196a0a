// The prints of many bodies: one over another, or a pattern for each in a ZIP.

import { type Zippable, zipSync } from 'fflate';
import { draftSize, type SizedDraft } from '../../../document';
import {
  draftingSheetPdf,
  glyphsFor,
  type NestedInput,
  nestedDxf,
  nestedPagePdf,
  nestedPdf,
  nestedProjectorPdf,
  nestedSvg,
  type PlanInput,
  patternPdf,
  withFace,
} from '../../../paper';
import { fileName } from '../../components/files/fileName';
import { withFonts } from '../print/withFonts';
import type { JobOf, SizesResult, SizesWatch } from './sizesJob';

/** The file of a nested print; null where a page would be larger than it may be, or does not hold the sizes. */
export async function nestedOn(
  { on, savedDraft, unit, date, leftOut }: JobOf<'nested'>,
  sizes: readonly SizedDraft[],
): Promise<Uint8Array | string | null> {
  const { fontFiles } = await import('../print/fontFiles');
  const names = [savedDraft.name, ...sizes.map(({ name }) => name), date];
  // Where the letters of a name cannot be loaded the print says so.
  const glyphs = await glyphsFor(names, fontFiles).catch(() => null);
  const asked: NestedInput = { sizes, leftOut, savedDraft, unit, date, glyphs };
  if (on.form === 'svg') return nestedSvg(asked);
  if (on.form === 'dxf') return nestedDxf(asked);
  const input = await withFace(asked, fontFiles);
  switch (on.form) {
    case 'sheets':
      return nestedPdf(input, on.paper, on.correction);
    case 'page': {
      const made = await nestedPagePdf(input, on.choice, on.correction);
      return made.ok ? made.bytes : null;
    }
    case 'projector':
      return nestedProjectorPdf(input, on.choice);
  }
}

/** A pattern for each body that can be cut, each in a file of its own, and its drafting sheet where that is asked for. */
export async function zipped(
  { bodies, savedDraft, unit, date, program, paper, correction, making, withSheets }: JobOf<'zip'>,
  watch: SizesWatch,
): Promise<SizesResult> {
  const files: Zippable = {};
  const put = (name: string, bytes: Uint8Array): void => {
    let own = name;
    for (let count = 2; files[`${own}.pdf`]; count += 1) own = `${name}-${count}`;
    // A PDF is deflated already.
    files[`${own}.pdf`] = [bytes, { level: 0 }];
  };
  for (const [i, body] of bodies.entries()) {
    const { name, measurements, draft, canBeCut } = draftSize(body, savedDraft.style);
    if (canBeCut) {
      const input: PlanInput = {
        draft,
        client: { name, unit, measurements, estimated: [] },
        savedDraft,
        date,
        program,
        ...(making ? { making } : {}),
      };
      const faced = await withFonts(input);
      const print = {
        ...faced,
        paper,
        isQuick: bodies.length > MOST_SEARCHED,
        ...(correction ? { correction } : {}),
      };
      put(fileName(name), await patternPdf(print));
      if (withSheets) put(`${fileName(name)}-drafting-sheet`, await draftingSheetPdf(faced, paper));
    }
    await watch(i + 1, bodies.length);
  }
  return { kind: 'file', content: zipSync(files, { mtime: FIXED_DAY }) };
}

/** Of more bodies than this the layouts are not searched for as long. */
const MOST_SEARCHED = 20;

/** The day written into a ZIP, so that the same patterns are the same file; the date stands in the patterns. */
const FIXED_DAY = new Date(2000, 0, 1);
