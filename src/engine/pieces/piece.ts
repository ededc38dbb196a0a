// A finished piece: a closed outline of named edges with everything that is written on cloth.

import type { Point } from '../geometry/point';
import type { PieceIdentity, ShoulderPart, SidePart } from '../terms/identity';
import type { LevelName } from '../terms/names';

type EdgeRole = 'seam' | 'top' | 'hem' | 'centre' | 'armhole' | 'shoulder';

/** Which edge of its piece an edge is. */
export interface EdgePlace {
  /**
   * Towards the centre, at the hem, towards the side, at the top. One edge lies `inner`; each of the others may be more than one, as an
   * open dart parts it with its legs.
   */
  readonly at: 'inner' | 'hem' | 'outer' | 'top';
  /** The leg of an open dart that it is: that towards the centre or that towards the side. */
  readonly dart?: { readonly wedge: string; readonly leg: 'inner' | 'outer' } | undefined;
  /** The part of the shoulder seam that it is. */
  readonly shoulder?: ShoulderPart | undefined;
  /** The part of the side seam that it is, where a dart opens in that seam. */
  readonly sidePart?: SidePart | undefined;
}

/** An edge of a piece by its index among the piece's edges. */
export interface EdgeReference {
  readonly piece: PieceIdentity;
  readonly edge: number;
}

export interface Edge extends EdgePlace {
  readonly role: EdgeRole;
  /** The side seam is a seam with an allowance and a name of its own. */
  readonly isSideSeam: boolean;
  /** The edge it is sewn to. */
  readonly mate: EdgeReference | null;
  /** How much longer it is cut than its mate, to which it is eased, mm; left out where the two are of one length. */
  readonly ease?: number | undefined;
  /** Seam allowance, mm. */
  readonly allowance: number;
  /** The sew line with both its ends; its last point is the first of the next edge. */
  readonly points: readonly Point[];
}

/** Where something is set on the cloth: a balance mark on an edge, or a drill mark inside the panel. */
export interface Mark {
  readonly kind: 'balance' | 'drill';
  /** The level it marks; for a drill mark, the nearest one; null for a balance mark where two edges beside each other meet. */
  readonly level: LevelName | null;
  readonly at: Point;
  /** Index of the edge it stands on; null for a drill mark. */
  readonly edge: number | null;
}

/** A dart to be stitched: both legs, from the top down; of one that opens in the side seam from its point outwards. */
export interface DartLines {
  /** Id of the wedge it is. */
  readonly wedge: string;
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** Whether it opens at an edge, so that its legs are edges of the outline as well. */
  readonly open: boolean;
}

export interface Piece extends PieceIdentity {
  readonly cut: { readonly count: number; readonly onFold: boolean };
  /**
   * Counter-clockwise as seen on paper: edge towards the centre, hem, edge towards the side, top edge. An open dart parts
   * hem, side seam or top edge with its legs.
   */
  readonly edges: readonly Edge[];
  readonly darts: readonly DartLines[];
  /** Closed ring, not repeated at its end. */
  readonly cutLine: readonly Point[];
  readonly grain: readonly [Point, Point];
  readonly marks: readonly Mark[];
}
