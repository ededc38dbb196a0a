// Styles of the pattern's lines on paper. They differ in black and white: the cut line is thick and solid, the sew line thin and
// broken.

import type { StrokeKind } from './strokes';

export interface StrokeStyle {
  readonly widthMm: number;
  /** 0 black, 1 white. */
  readonly grey: number;
  /** Dash and gap, mm; empty for a solid line. */
  readonly dash: readonly number[];
}

export const STROKE_STYLES: Readonly<Record<StrokeKind, StrokeStyle>> = {
  cut: { widthMm: 0.5, grey: 0, dash: [] },
  sew: { widthMm: 0.25, grey: 0, dash: [3, 1.6] },
  fold: { widthMm: 0.4, grey: 0, dash: [8, 1.5, 1, 1.5] },
  grain: { widthMm: 0.25, grey: 0, dash: [] },
  mark: { widthMm: 0.35, grey: 0, dash: [] },
  bone: { widthMm: 0.2, grey: 0, dash: [0.7, 1.1] },
  level: { widthMm: 0.18, grey: 0.2, dash: [] },
  leader: { widthMm: 0.18, grey: 0.35, dash: [] },
};
