// The outline of a panel in rows of points, and how an open dart parts them.

import type { Point } from '../geometry/point';
import type { PanelDart } from '../panels/panel';
import type { ShoulderPart } from '../terms/identity';

/** A part of the top edge or hem that runs along one kind of edge. */
export interface EdgeRow {
  readonly role: 'top' | 'hem' | 'shoulder' | 'armhole';
  readonly points: readonly Point[];
  /** The part of the shoulder seam that it is. */
  readonly shoulder?: ShoulderPart | undefined;
  /** How much longer it is than its mate, mm. */
  readonly ease?: number | undefined;
  /**
   * Sewn distances of its two ends, as the panel's edge counts them, mm. Null for a shoulder, and for the part of a neckline or an
   * armhole that does not meet the edge as drafted; a neckline meets it at the centre only, an armhole at the underarm only.
   */
  readonly sewnDistance: readonly [number, number] | null;
}

/** An open dart on the outline: both legs from the top down. */
export interface DartLegs {
  readonly dart: PanelDart;
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
}

/** Whether a part of an outline is an open dart. */
export const isDartLegs = (part: EdgeRow | DartLegs): part is DartLegs => 'dart' in part;

/** Rows of points, all from the centre towards the side and from the top down. */
export interface Outline {
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** Top edge and hem from leg to leg, parted by the darts that are open there. */
  readonly top: readonly (EdgeRow | DartLegs)[];
  readonly hem: readonly (EdgeRow | DartLegs)[];
}
