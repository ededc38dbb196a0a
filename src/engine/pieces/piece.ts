// A finished piece: a closed outline of named edges with everything that is written on cloth.

import type { Point } from '../geometry/point';
import type { BlockName, LevelName } from '../terms/names';

type EdgeRole = 'seam' | 'top' | 'hem' | 'centre' | 'armhole' | 'shoulder';

/** Which edge an edge is sewn to. */
export interface EdgeReference {
  readonly piece: string;
  readonly edge: number;
}

export interface Edge {
  readonly role: EdgeRole;
  /** The side seam is a seam with an allowance and a name of its own. */
  readonly isSideSeam: boolean;
  readonly mate: EdgeReference | null;
  /** Id of the wedge whose leg it is, where it is the leg of a dart. */
  readonly dart?: string;
  /** Seam allowance, mm. */
  readonly allowance: number;
  /** The sew line, both ends in; the last point is the first of the next edge. */
  readonly points: readonly Point[];
}

/** Where something is set on the cloth: a balance mark on an edge, or a drill mark inside the panel. */
export interface Mark {
  readonly kind: 'balance' | 'drill';
  /** The level it marks; for a drill mark, the nearest one. */
  readonly level: LevelName;
  readonly at: Point;
  /** Index of the edge it stands on; null for a drill mark. */
  readonly edge: number | null;
}

/** A dart to be stitched: both legs, from the top down. */
export interface DartLines {
  readonly wedge: string;
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** Whether it opens at an edge, so that its legs are edges of the outline as well. */
  readonly open: boolean;
}

export interface Piece {
  readonly id: string;
  readonly block: BlockName;
  /** Counted from the centre line, from 1; 0 for a piece beside the panels. */
  readonly number: number;
  readonly cut: { readonly count: number; readonly onFold: boolean };
  /**
   * Counter-clockwise as seen on paper: edge towards the centre, hem, edge towards the side, top edge. An open dart parts
   * hem or top edge with its legs.
   */
  readonly edges: readonly Edge[];
  /** Index of the edge towards the side; the edge towards the centre is the first. */
  readonly outer: number;
  readonly darts: readonly DartLines[];
  /** Closed ring, not repeated at its end. */
  readonly cutLine: readonly Point[];
  readonly grain: readonly [Point, Point];
  readonly marks: readonly Mark[];
}
