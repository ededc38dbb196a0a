// What lies where on a medium, as data and as the functions that work it out. They take up to a second, so they run in a worker.

import {
  type Correction,
  checkPaper,
  type Layout,
  layOut,
  layOutOnePage,
  type OnePageChoice,
  type OnePageLayout,
  type PaperChoice,
  type PlanInput,
  type ProjectorChoice,
  planProjected,
  wholeOnPaper,
} from '../../../paper';

export type PlanJob =
  | {
      readonly kind: 'sheets';
      readonly input: PlanInput;
      readonly paper: PaperChoice;
      readonly correction: Correction;
    }
  | {
      readonly kind: 'page';
      readonly input: PlanInput;
      readonly choice: OnePageChoice;
      readonly correction: Correction;
    }
  | { readonly kind: 'projector'; readonly input: PlanInput; readonly choice: ProjectorChoice };

export type PlanKind = PlanJob['kind'];
export type PlanJobOf<Kind extends PlanKind> = Extract<PlanJob, { kind: Kind }>;

interface Plans {
  /** The page where the paper holds the whole pattern, else the layout on sheets; neither on a paper that cannot be printed on. */
  readonly sheets: {
    readonly whole: ReturnType<typeof wholeOnPaper>;
    readonly layout: Layout | null;
  };
  readonly page: OnePageLayout;
  readonly projector: ReturnType<typeof planProjected>;
}

export type PlanOf<Kind extends PlanKind> = Plans[Kind];

type PlannerOf<Kind extends PlanKind> = (job: PlanJobOf<Kind>, isQuick: boolean) => PlanOf<Kind>;

const PLANNERS: { readonly [Kind in PlanKind]: PlannerOf<Kind> } = {
  sheets: ({ input, paper, correction }, isQuick) => {
    if (!checkPaper(paper, correction).ok) return { whole: null, layout: null };
    const whole = wholeOnPaper(input, paper, correction);
    return { whole, layout: whole ? null : layOut({ ...input, paper, correction, isQuick }) };
  },
  page: ({ input, choice, correction }) => layOutOnePage(input, choice, correction),
  projector: ({ input, choice }) => planProjected(input, choice),
};

export function makePlan<Kind extends PlanKind>(job: PlanJobOf<Kind>): PlanOf<Kind> {
  return (PLANNERS[job.kind] as PlannerOf<Kind>)(job, false);
}

/** The same on the page, which has to answer meanwhile: the layout on sheets is not searched for as long. */
export function makeQuickPlan<Kind extends PlanKind>(job: PlanJobOf<Kind>): PlanOf<Kind> {
  return (PLANNERS[job.kind] as PlannerOf<Kind>)(job, true);
}
