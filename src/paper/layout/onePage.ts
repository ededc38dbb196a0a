// Lays the whole pattern on one page: a roll as long as needed, or one large sheet.

import { formatLength, type LengthUnit, ONE_PAGE_FAULTS } from '../../document';
import { MOST_SIDE_MM } from '../sheets/checkPaper';
import { type Correction, isCorrection, NO_CORRECTION } from '../sheets/correction';
import { HEAD_MM, INCH_SQUARE_MM, METRIC_SQUARE_MM, SQUARES_GAP_MM } from '../sheets/pageMeasures';
import type { PaperChoice } from '../sheets/papers';
import { movedPanel, type PlacedPanel } from './placePanels';
import type { PlanInput } from './planInput';
import { type Plan, planPanels } from './planPanels';

export interface OnePageChoice {
  /** Width as it goes into the printer, mm. */
  readonly widthMm: number;
  /** Null for a roll, which is cut off at the end of the pattern. A sheet may be turned. */
  readonly heightMm: number | null;
  readonly marginMm: number;
}

/** Widths of plotters' rolls and the largest sheet of ISO 216, mm; a common margin (common practice, no source). */
export const ONE_PAGES = [
  { name: '36 in roll', widthMm: 914.4, heightMm: null },
  { name: '24 in roll', widthMm: 609.6, heightMm: null },
  { name: 'A0', widthMm: 841, heightMm: 1189 },
] as const;

export const ONE_PAGE_MARGIN_MM = 10;

export interface OnePage {
  /** Size of the page in its orientation, in the millimetres that its printer makes. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
  /** Distance of the panels from the top of the page; above them are the squares and the text. mm */
  readonly headMm: number;
  /** The calibration squares, by their top left corners and sides. */
  readonly squares: readonly { readonly left: number; readonly top: number; readonly sideMm: number }[];
  /** Panels in page mm. */
  readonly panels: readonly PlacedPanel[];
  /** True for a sheet that lies on its long side. */
  readonly turned: boolean;
}

type OnePageFaultCode =
  | 'pageNotANumber'
  | 'marginOutOfRange'
  | 'pageTooNarrow'
  | 'pageTooLong'
  | 'pageTooSmall';

export interface OnePageFault {
  readonly code: OnePageFaultCode;
  /** The bound that was exceeded, mm. */
  readonly bound: number;
}

export type OnePageLayout =
  | { readonly ok: true; readonly page: OnePage }
  | { readonly ok: false; readonly fault: OnePageFault };

const MOST_MARGIN_MM = 50;
/** Least width: both squares side by side with margins. mm */
const LEAST_WIDTH_MM = 230;
const SQUARES_HEAD_MM = 138;
/** Least width at which the text is beside the squares; on a narrower page it is below them. mm */
export const TEXT_BESIDE_FROM_MM = 320;
const TEXT_MM = 78;

/**
 * Lays the panels out in rows across one page. Refuses a page that is too narrow for the widest panel or the squares, a
 * sheet that the panels do not fit on, and a side over 5080 mm, the longest a PDF page may have.
 */
export function layOutOnePage(
  input: PlanInput,
  choice: OnePageChoice,
  correction: Correction = NO_CORRECTION,
): OnePageLayout {
  return layOutPlan((mostWidthMm) => planPanels(input, mostWidthMm), choice, correction);
}

/** The same for any plan that is made for a width. */
export function layOutPlan(
  planFor: (mostWidthMm: number) => Plan,
  choice: OnePageChoice,
  correction: Correction = NO_CORRECTION,
): OnePageLayout {
  const { widthMm, heightMm, marginMm } = choice;
  if (![widthMm, heightMm ?? 0, marginMm].every(Number.isFinite) || !isCorrection(correction))
    return refused('pageNotANumber', 0);
  if (marginMm < 0 || marginMm > MOST_MARGIN_MM) return refused('marginOutOfRange', MOST_MARGIN_MM);
  if (Math.max(widthMm, heightMm ?? 0) > MOST_SIDE_MM) return refused('pageTooLong', MOST_SIDE_MM);
  if (Math.min(widthMm, heightMm ?? widthMm) < LEAST_WIDTH_MM)
    return refused('pageTooNarrow', LEAST_WIDTH_MM);

  const ways: { across: number; down: number | null; turned: boolean }[] = [
    {
      across: widthMm / correction.across,
      down: heightMm === null ? null : heightMm / correction.down,
      turned: false,
    },
  ];
  if (heightMm !== null)
    ways.push({ across: heightMm / correction.down, down: widthMm / correction.across, turned: true });
  let last: OnePageLayout = refused('pageTooSmall', 0);
  for (const { across, down, turned } of ways) {
    const plan = planFor(across - 2 * marginMm);
    const headMm = marginMm + SQUARES_HEAD_MM + (across < TEXT_BESIDE_FROM_MM ? TEXT_MM : 0);
    const length = headMm + plan.heightMm + marginMm;
    const wide = plan.widthMm + 2 * marginMm;
    if (wide > across + 1e-9) last = refused(down === null ? 'pageTooNarrow' : 'pageTooSmall', wide);
    else if (down === null && length * correction.down > MOST_SIDE_MM)
      last = refused('pageTooLong', MOST_SIDE_MM);
    else if (down !== null && length > down + 1e-9) last = refused('pageTooSmall', length);
    else
      return {
        ok: true,
        page: {
          widthMm: across,
          heightMm: down ?? length,
          marginMm,
          headMm,
          squares: squaresFrom(marginMm),
          panels: plan.panels.map((panel) => movedPanel(panel, { x: marginMm, y: headMm })),
          turned,
        },
      };
  }
  return last;
}

/** Papers with a shorter short side are joined from sheets. mm */
const LARGE_FROM_MM = 594;

/** A large paper as one page, where the whole pattern fits on it with the squares; null where sheets are joined. */
export function wholeOnPaper(
  input: PlanInput,
  { widthMm, heightMm, marginMm }: PaperChoice,
  correction: Correction = NO_CORRECTION,
): { readonly choice: OnePageChoice; readonly page: OnePage } | null {
  const choice = largePage({ widthMm, heightMm, marginMm });
  if (!choice) return null;
  const laid = layOutOnePage(input, choice, correction);
  return laid.ok ? { choice, page: laid.page } : null;
}

/** A paper that is large enough as one page; null for one whose sheets are joined. */
export function largePage({
  widthMm,
  heightMm,
  marginMm,
}: Pick<PaperChoice, 'widthMm' | 'heightMm' | 'marginMm'>): OnePageChoice | null {
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  return short < LARGE_FROM_MM ? null : { widthMm: short, heightMm: long, marginMm };
}

/** The two squares, side by side below the head. */
const squaresFrom = (marginMm: number): OnePage['squares'] => {
  const top = marginMm + HEAD_MM + SQUARES_GAP_MM;
  return [
    { left: marginMm, top, sideMm: METRIC_SQUARE_MM },
    { left: marginMm + METRIC_SQUARE_MM + SQUARES_GAP_MM, top, sideMm: INCH_SQUARE_MM },
  ];
};

const refused = (code: OnePageFaultCode, bound: number): OnePageLayout => ({
  ok: false,
  fault: { code, bound },
});

/** A sentence that says what is wrong with a page and how to mend it. */
export function onePageSentence({ code, bound }: OnePageFault, unit: LengthUnit): string {
  return ONE_PAGE_FAULTS[code]({ bound: formatLength(bound, unit, { withUnit: true }) });
}
