// Work on many bodies as data, and the function that does it, which runs in the worker or on the page.

import type { Zippable } from 'fflate';
import {
  draftSize,
  type NamedBody,
  proveSize,
  type SavedDraft,
  type SizedDraft,
  type SizeProof,
  type SizeRow,
  sizeTable,
  type Unit,
} from '../../../document';
import {
  type Correction,
  draftingSheetPdf,
  glyphsFor,
  type MakingSettings,
  type NestedInput,
  nestedDxf,
  nestedPagePdf,
  nestedPdf,
  nestedProjectorPdf,
  nestedSvg,
  type OnePageChoice,
  type PaperChoice,
  type PlanInput,
  type ProjectorChoice,
  patternPdf,
  withFace,
} from '../../../paper';
import { fileName } from '../../components/fileName';
import { withFonts } from '../print/withFonts';

interface OfBodies {
  readonly bodies: readonly NamedBody[];
  readonly savedDraft: SavedDraft;
}

/** What every print is told. */
interface Print extends OfBodies {
  readonly unit: Unit;
  readonly date: string;
  readonly program: string;
}

/** How the sizes lie in a nested print. */
export type NestedOn =
  | { readonly form: 'sheets'; readonly paper: PaperChoice; readonly correction: Correction | undefined }
  | { readonly form: 'page'; readonly choice: OnePageChoice; readonly correction: Correction | undefined }
  | { readonly form: 'projector'; readonly choice: ProjectorChoice }
  | { readonly form: 'svg' }
  | { readonly form: 'dxf' };

export type SizesJob =
  | ({ readonly kind: 'prove'; readonly withTable: boolean } & OfBodies)
  | ({ readonly kind: 'nested'; readonly on: NestedOn; readonly leftOut: readonly string[] } & Print)
  | ({
      readonly kind: 'zip';
      readonly paper: PaperChoice;
      readonly correction: Correction | undefined;
      readonly making: MakingSettings | undefined;
      readonly withSheets: boolean;
    } & Print);

/** `tooLarge`: a page would be larger than it may be, or does not hold the sizes. */
export type SizesResult =
  | { readonly kind: 'proved'; readonly table: readonly SizeRow[] }
  | { readonly kind: 'file'; readonly content: Uint8Array | string }
  | { readonly kind: 'tooLarge' };

/** Called with how many bodies are done, of all, and with the proof of the last one where it was asked for; the work waits for it. */
export type SizesWatch = (done: number, of: number, proof?: SizeProof) => void | Promise<void>;

export async function runSizes(job: SizesJob, watch: SizesWatch): Promise<SizesResult> {
  const sizes: SizedDraft[] = [];
  if (job.kind === 'zip') return zipped(job, watch);
  for (const [i, body] of job.bodies.entries()) {
    const size = draftSize(body, job.savedDraft.style);
    if (job.kind === 'nested' || job.withTable) sizes.push(size);
    await watch(i + 1, job.bodies.length, job.kind === 'prove' ? proveSize(size) : undefined);
  }
  if (job.kind === 'prove') return { kind: 'proved', table: sizeTable(sizes) };
  const content = await nestedOn(job, sizes);
  return content === null ? { kind: 'tooLarge' } : { kind: 'file', content };
}

async function nestedOn(
  { on, savedDraft, unit, date, leftOut }: Extract<SizesJob, { kind: 'nested' }>,
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
async function zipped(
  {
    bodies,
    savedDraft,
    unit,
    date,
    program,
    paper,
    correction,
    making,
    withSheets,
  }: Extract<SizesJob, { kind: 'zip' }>,
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
      put(fileName(name), await patternPdf({ ...faced, paper, ...(correction ? { correction } : {}) }));
      if (withSheets) put(`${fileName(name)}-drafting-sheet`, await draftingSheetPdf(faced, paper));
    }
    await watch(i + 1, bodies.length);
  }
  const { zipSync } = await import('fflate');
  return { kind: 'file', content: zipSync(files, { mtime: FIXED_DAY }) };
}

/** The day written into a ZIP, so that the same patterns are the same file; the date stands in the patterns. */
const FIXED_DAY = new Date(2000, 0, 1);
