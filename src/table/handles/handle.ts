// A handle of the drawing: a place that can be pulled, and the number of the style that it changes.

import type { BlockName, DartEnd, EdgeNodeName, LevelName, Point, Style } from '../../engine';

export interface Handle {
  readonly id: string;
  /**
   * `edge`: the whole top edge or hem. `node`: one node of it. `point`: an end of a dart. `bend`: the axis at one level. `opening`:
   * where a dart opens in the side seam. `short`: how far the point of that dart ends short of the bust point.
   */
  readonly kind: 'axis' | 'leg' | 'edge' | 'node' | 'point' | 'bend' | 'opening' | 'short';
  /** The id of the wedge it belongs to, if any. */
  readonly wedge: string | null;
  readonly block: BlockName | null;
  /** The level at which its value is measured; for a point of a dart, the level from which. */
  readonly level: LevelName | null;
  readonly which: 'inner' | 'outer' | 'top' | 'hem' | DartEnd | null;
  readonly node: EdgeNodeName | null;
  /** Its position, canvas mm. */
  readonly at: Point;
  /**
   * Where the draft ends the dart instead, canvas mm: at a level where its intake is 0. Present only where that differs from `at`.
   */
  readonly tip?: Point;
  /** The number it changes, mm. */
  readonly value: number;
  /** The range of the value, mm. */
  readonly least: number;
  readonly most: number;
  /** The smallest possible value above `least`, mm, where the values between are not possible. */
  readonly firstAfterLeast?: number;
  /** Change of the value, mm, for 1 mm of travel on the canvas to the right (x) and down (y). */
  readonly gain: Point;
  /** The style with a new value, mm. */
  readonly set: (style: Style, value: number) => Style;
}
