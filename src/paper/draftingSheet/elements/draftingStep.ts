// What a drafting sheet is made of: numbered steps of sentences, tables and a small figure each, for screen and page alike.

import type { Point } from '../../../engine';

export interface StepTable {
  readonly columns: readonly string[];
  /** As many cells as there are columns; numbers as they are read off the tape. */
  readonly rows: readonly (readonly string[])[];
}

/** `guide`: what only helps. `done`: drawn in a step before. `drawn`: what this step draws. */
export type FigureLineKind = 'guide' | 'done' | 'drawn';

export interface DraftingFigure {
  /** x to the right, y down, mm of the draft; everything lies from 0 to width and height. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly { readonly kind: FigureLineKind; readonly points: readonly Point[] }[];
  /** Small rings round points to be marked. */
  readonly spots: readonly Point[];
  readonly labels: readonly FigureLabel[];
}

export interface FigureLabel {
  readonly text: string;
  readonly at: Point;
  /** Which end of the text stands at the point. */
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface DraftingStep {
  readonly heading: string;
  readonly sentences: readonly string[];
  readonly tables: readonly StepTable[];
  readonly figure: DraftingFigure | null;
}

export interface DraftingSheet {
  readonly client: string;
  readonly draft: string;
  readonly date: string;
  /** Where the draft has faults, not to cut it; null where it has none. */
  readonly warning: string | null;
  /** What holds for the whole sheet, before the first step. */
  readonly remarks: readonly string[];
  /** Numbered from 1 in their order. */
  readonly steps: readonly DraftingStep[];
}
