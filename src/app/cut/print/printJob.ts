// A print as data, and the function that makes it, which runs in the worker or on the page.

import {
  type Correction,
  type OnePageChoice,
  onePagePdf,
  type PageWatch,
  type PatternInput,
  type PlanInput,
  type ProjectorChoice,
  patternPdf,
  projectorPdf,
} from '../../../paper';
import { withFonts } from './withFonts';

export type PrintJob =
  | { readonly kind: 'sheets'; readonly input: PatternInput }
  | {
      readonly kind: 'page';
      readonly input: PlanInput;
      readonly choice: OnePageChoice;
      readonly correction: Correction | undefined;
    }
  | { readonly kind: 'projector'; readonly input: PlanInput; readonly choice: ProjectorChoice };

/** Makes the PDF; null where a page would be larger than PDF allows. */
export async function makePrint(job: PrintJob, watch: PageWatch): Promise<Uint8Array | null> {
  switch (job.kind) {
    case 'sheets':
      return patternPdf(await withFonts(job.input), watch);
    case 'page':
      return onePagePdf(await withFonts(job.input), job.choice, job.correction);
    case 'projector':
      return projectorPdf(await withFonts(job.input), job.choice);
  }
}

/** A message of the worker: a page is drawn, the PDF is made, or it could not be made. */
export type PrintMessage =
  | { readonly kind: 'page'; readonly drawn: number; readonly of: number }
  | { readonly kind: 'made'; readonly bytes: Uint8Array | null }
  | { readonly kind: 'failed' };
