// Work on many bodies as data, and what becomes of it.

import type { NamedBody, SavedDraft, SizeProof, SizeRow, Unit } from '../../../document';
import type { Correction, MakingSettings, OnePageChoice, PaperChoice, ProjectorChoice } from '../../../paper';

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

/** Work of one kind. */
export type JobOf<Kind extends SizesJob['kind']> = Extract<SizesJob, { kind: Kind }>;

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
