// How a block is drafted otherwise than its style asks, where the draft as asked could not be cut.

import type { Wedge } from '../style/wedgeFields';
import type { BlockName, LevelName } from '../terms/names';
import type { Extent } from './lines/extent';

export interface Amendments {
  /** Room that balanced wedges leave beside them over the usual, mm, by block and level. */
  readonly room: Readonly<Record<BlockName, ReadonlyMap<LevelName, number>>>;
  /** Stations of wedges that stand nearer the centre at a level than their own, by id of the wedge. */
  readonly stations: ReadonlyMap<string, Wedge['stationAt']>;
  /** Where darts run that would open too little at an edge, by id of the wedge: they are closed before it. */
  readonly extents: ReadonlyMap<string, Extent>;
  /** Ids of darts that take nothing which could be sewn. */
  readonly leftOut: ReadonlySet<string>;
}

export const NO_AMENDMENTS: Amendments = {
  room: { front: new Map(), back: new Map() },
  stations: new Map(),
  extents: new Map(),
  leftOut: new Set(),
};
