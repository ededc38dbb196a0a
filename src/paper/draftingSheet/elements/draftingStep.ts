// Content of a drafting sheet: numbered steps with sentences, tables and a figure, for HTML and PDF alike.

import type { Point } from '../../../engine';

export interface StepTable {
  readonly columns: readonly string[];
  /** Cells, as many as columns; lengths are rounded to the divisions of a tape. */
  readonly rows: readonly (readonly string[])[];
}

/** `guide`: an auxiliary line. `done`: drawn in an earlier step. `drawn`: drawn in this step. */
export type FigureLineKind = 'guide' | 'done' | 'drawn';

export interface DraftingFigure {
  /** Size, mm of the draft; x to the right, y down, from 0 to width and height. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly { readonly kind: FigureLineKind; readonly points: readonly Point[] }[];
  /** Points to be marked. */
  readonly spots: readonly Point[];
  readonly labels: readonly FigureLabel[];
}

export interface FigureLabel {
  readonly text: string;
  readonly at: Point;
  /** The end of the text that is at the point. */
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
  /** The warning not to cut a draft with errors; null where it has none. */
  readonly warning: string | null;
  /** Remarks on the whole sheet, before the first step. */
  readonly remarks: readonly string[];
  /** Steps, numbered from 1 in their order. */
  readonly steps: readonly DraftingStep[];
}
