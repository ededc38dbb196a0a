// A print as data, and the function that makes it, which runs in the worker.

import {
  type Correction,
  draftingSheetPdf,
  type Layout,
  type LayPlan,
  layPdf,
  layProjectorPdf,
  layRollPdf,
  type OnePageChoice,
  onePagePdf,
  type PageWatch,
  type PaperChoice,
  type PatternInput,
  type PlanInput,
  type ProjectorChoice,
  patternPdf,
  projectorPdf,
  type WithFace,
} from '../../../paper';

export type PrintJob =
  | {
      readonly kind: 'sheets';
      readonly input: PatternInput;
      /** The layout of the input where it was made before; null where it was not. */
      readonly layout: Layout | null;
    }
  | {
      readonly kind: 'page';
      readonly input: PlanInput;
      readonly choice: OnePageChoice;
      readonly correction: Correction | undefined;
    }
  | { readonly kind: 'projector'; readonly input: PlanInput; readonly choice: ProjectorChoice }
  | { readonly kind: 'lay'; readonly input: PlanInput; readonly plan: LayPlan; readonly on: LayPaper }
  | { readonly kind: 'draftingSheet'; readonly input: PlanInput; readonly paper: PaperChoice };

/** A lay plan on pages with its measurements, or at full size. */
export type LayPaper =
  | { readonly form: 'measured' }
  | { readonly form: 'page'; readonly choice: OnePageChoice; readonly correction: Correction | undefined }
  | { readonly form: 'projector'; readonly choice: ProjectorChoice };

/** A print with the face it is set in. The page fetches the fonts, since only the page knows where they are. */
export type FacedJob = {
  readonly [Kind in PrintJob['kind']]: Faced<Extract<PrintJob, { kind: Kind }>>;
}[PrintJob['kind']];

type Faced<Job extends PrintJob> = Omit<Job, 'input'> & { readonly input: Job['input'] & WithFace };

/** Makes the PDF; null where a page would be larger than PDF allows. */
export async function makePrint(job: FacedJob, watch: PageWatch): Promise<Uint8Array | null> {
  switch (job.kind) {
    case 'sheets':
      return patternPdf(job.input, watch, job.layout);
    case 'page':
      return onePagePdf(job.input, job.choice, job.correction);
    case 'projector':
      return projectorPdf(job.input, job.choice);
    case 'lay':
      return makeLay(job);
    case 'draftingSheet':
      return draftingSheetPdf(job.input, job.paper);
  }
}

async function makeLay({ input, plan, on }: Extract<FacedJob, { kind: 'lay' }>): Promise<Uint8Array | null> {
  const { client, savedDraft, date } = input;
  const head = { client: client.name, draft: savedDraft.name, date, unit: client.unit };
  switch (on.form) {
    case 'measured':
      return layPdf(plan, head, input);
    case 'page':
      return layRollPdf(plan, head, on.choice, input, on.correction);
    case 'projector':
      return layProjectorPdf(plan, head, on.choice, input);
  }
}

/** A message of the worker: a page is drawn, the PDF is made, or it could not be made. */
export type PrintMessage =
  | { readonly kind: 'page'; readonly drawn: number; readonly of: number }
  | { readonly kind: 'made'; readonly bytes: Uint8Array | null }
  | { readonly kind: 'failed' };
