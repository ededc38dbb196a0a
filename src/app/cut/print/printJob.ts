// One print: what is to be made, and making it. The same here and in the worker.

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
import { lettered } from './withGlyphs';

export type PrintJob =
  | { readonly kind: 'sheets'; readonly input: PatternInput }
  | {
      readonly kind: 'page';
      readonly input: PlanInput;
      readonly choice: OnePageChoice;
      readonly correction: Correction | undefined;
    }
  | { readonly kind: 'projector'; readonly input: PlanInput; readonly choice: ProjectorChoice };

/** The bytes of the PDF; null where no page can be so large. */
export async function makePrint(job: PrintJob, watch: PageWatch): Promise<Uint8Array | null> {
  switch (job.kind) {
    case 'sheets':
      return patternPdf(await lettered(job.input), watch);
    case 'page':
      return onePagePdf(await lettered(job.input), job.choice, job.correction);
    case 'projector':
      return projectorPdf(await lettered(job.input), job.choice);
  }
}

/** What the worker tells. */
export type PrintNews =
  | { readonly kind: 'page'; readonly drawn: number; readonly of: number }
  | { readonly kind: 'made'; readonly bytes: Uint8Array | null }
  | { readonly kind: 'failed' };
