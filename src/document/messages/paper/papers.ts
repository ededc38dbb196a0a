// What is wrong with a paper or a page, and what would cure it. Lengths come written.

import { catalogue } from '../catalogue';

interface Span {
  readonly least: string;
  readonly most: string;
}

export const PAPER_FAULTS = catalogue({
  paperNotANumber: () => 'The paper’s width, height, margin and overlap must all be numbers.',
  marginOutOfRange: ({ most }: Span) => `The margin must be between 0 and ${most}.`,
  overlapOutOfRange: ({ least, most }: Span) =>
    `The overlap must be between ${least} and ${most}, so that the joining marks lie whole on both sheets.`,
  paperTooSmall: ({ least, most }: Span) =>
    `The paper is too small for the calibration squares: with this margin it must be at least ${least} × ${most}.`,
  paperTooLarge: ({ most }: Span) =>
    `The paper is larger than a PDF page may be: no side may be over ${most}.`,
});

interface Bound {
  readonly bound: string;
}

export const ONE_PAGE_FAULTS = catalogue({
  pageNotANumber: () => 'The page’s width, height and margin must be numbers.',
  marginOutOfRange: ({ bound }: Bound) => `The margin must be between 0 and ${bound}.`,
  pageTooNarrow: ({ bound }: Bound) => `The page is too narrow: it must be at least ${bound} wide.`,
  pageTooLong: ({ bound }: Bound) =>
    `The page would be longer than a PDF page may be, ${bound}: take a wider roll, or print on sheets.`,
  pageTooSmall: () => 'The panels do not fit on one such sheet: take a roll, or print on several sheets.',
});
