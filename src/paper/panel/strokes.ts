// Lines and texts of a pattern, independent of the paper: mm, x to the right, y down.

import type { Point } from '../../engine';

export type StrokeKind = 'cut' | 'sew' | 'fold' | 'grain' | 'mark' | 'leader' | 'bone' | 'level';

export interface Stroke {
  readonly kind: StrokeKind;
  /** A closed line has its first point again at its end. */
  readonly points: readonly Point[];
  /** Dash and gap, mm, instead of those of its kind: the line of one size among others. */
  readonly dash?: readonly number[];
}

export interface PlacedText {
  readonly text: string;
  /** Left end of the baseline. */
  readonly start: Point;
  /** Clockwise as seen on paper, rad; 0 reads from left to right. */
  readonly turnRad: number;
  readonly sizePt: number;
  readonly bold: boolean;
  /** It stands on a line, which is covered under it. */
  readonly onLine?: boolean;
}

/** An upright cross at a point, as two strokes; `arm` is half the length of each, mm. */
export const cross = ({ x, y }: Point, arm: number): Stroke[] => [
  {
    kind: 'mark',
    points: [
      { x: x - arm, y },
      { x: x + arm, y },
    ],
  },
  {
    kind: 'mark',
    points: [
      { x, y: y - arm },
      { x, y: y + arm },
    ],
  },
];
