// One thing on the cutting table that can be pulled, and the number it is.

import type { DartEnd } from '../../document';
import type { BlockName, EdgeNodeName, LevelName, Point, Style } from '../../engine';

export interface Handle {
  readonly id: string;
  /** `edge`: the whole top edge or hem. `node`: one place of it. `point`: an end of a dart. `bend`: the axis at one level. */
  readonly kind: 'axis' | 'leg' | 'edge' | 'node' | 'point' | 'bend';
  /** The wedge it belongs to, if any. */
  readonly wedge: string | null;
  readonly block: BlockName | null;
  /** The level its number is taken at; for a dart's point, from. */
  readonly level: LevelName | null;
  readonly which: 'inner' | 'outer' | 'top' | 'hem' | DartEnd | null;
  readonly node: EdgeNodeName | null;
  /** Where it stands, table mm. */
  readonly at: Point;
  /** Where the draft ends the dart instead, at a level where it takes nothing; only where that is elsewhere. */
  readonly tip?: Point;
  /** The number it changes, mm, and how far it may go. */
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** Where less than this cannot stand but falls back to `least`: the first number after it, mm. */
  readonly firstAfterLeast?: number;
  /** Change of the value for one mm of travel on the table to the right and down. */
  readonly gain: Point;
  /** The style with the number set. */
  readonly set: (style: Style, value: number) => Style;
}
