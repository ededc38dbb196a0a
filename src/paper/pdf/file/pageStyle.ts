// Styles of the lines, texts and background of a page.

import { STROKE_STYLES, type StrokeStyle } from '../../panel/strokeStyles';
import type { StrokeKind } from '../../panel/strokes';

/** Kinds of lines: those of the pattern and those of the sheets it is printed on. */
export type LineKind =
  | StrokeKind
  | 'calibration'
  | 'trim'
  | 'join'
  | 'rule'
  | 'mapSheet'
  | 'mapPanel'
  | 'mapBlank'
  | 'grid';

/** The style of a page. Greys are from 0, black, to 1, white. */
export interface PageStyle {
  readonly line: (kind: LineKind) => StrokeStyle;
  readonly background: number;
  /** The grey of a text, from the grey it has on white paper. */
  readonly text: (grey: number) => number;
}

const LINES: Readonly<Record<LineKind, StrokeStyle>> = {
  ...STROKE_STYLES,
  calibration: { widthMm: 0.18, grey: 0, dash: [] },
  trim: { widthMm: 0.15, grey: 0.45, dash: [] },
  join: { widthMm: 0.15, grey: 0.45, dash: [1, 1] },
  rule: { widthMm: 0.2, grey: 0.6, dash: [] },
  mapSheet: { widthMm: 0.25, grey: 0.15, dash: [] },
  mapBlank: { widthMm: 0.12, grey: 0.7, dash: [1, 1] },
  mapPanel: { widthMm: 0.18, grey: 0.5, dash: [] },
  grid: { widthMm: 0.2, grey: 0.7, dash: [] },
};

export const PAPER_STYLE: PageStyle = { line: (kind) => LINES[kind], background: 1, text: (grey) => grey };
