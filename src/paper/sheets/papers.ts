// Sizes of paper, and the choice of one with margins, overlap and orientation.

/**
 * Trimmed sizes, portrait, mm: ISO 216 for A0, A3 and A4, ANSI/ASME Y14.1 for Letter and Tabloid (8½ × 11, 11 × 17 in), Legal
 * 8½ × 14 in.
 */
export const PAPERS = [
  { name: 'A4', widthMm: 210, heightMm: 297 },
  { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
  { name: 'Legal', widthMm: 215.9, heightMm: 355.6 },
  { name: 'A3', widthMm: 297, heightMm: 420 },
  { name: 'Tabloid', widthMm: 279.4, heightMm: 431.8 },
  { name: 'A0', widthMm: 841, heightMm: 1189 },
] as const;

export type PaperName = (typeof PAPERS)[number]['name'];

export interface PaperChoice {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Margin on all four sides, which printers cannot reach. */
  readonly marginMm: number;
  /** Overlap of neighbouring sheets. */
  readonly overlapMm: number;
  /** `fewest`: the orientation that needs fewer sheets. */
  readonly orientation: 'fewest' | 'portrait' | 'landscape';
}

/** A named paper with the usual margin and overlap (common practice, no source). */
export function paperChoice(name: PaperName): PaperChoice {
  const paper = PAPERS.find((each) => each.name === name) ?? PAPERS[0];
  return { ...paper, marginMm: 10, overlapMm: 10, orientation: 'fewest' };
}

export const DEFAULT_PAPER_CHOICE: PaperChoice = paperChoice('A4');
