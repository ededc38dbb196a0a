// The girth ledger: what the tape would read round the sewn panels, against what it should, and where the difference went.

import type { Level, RaisedLevel } from '../block/lines/levels';
import type { Shaping } from '../block/shaping';
import type { LevelEdge } from '../edges/levelEdges';
import { crossingsAt } from '../geometry/polyline';
import type { Piece } from '../pieces/piece';
import type { LevelName } from '../terms/names';
import { alongEdge } from './alongEdge';
import { raisedPath, widthAlong } from './raisedWidth';

export interface LedgerRow {
  readonly level: LevelName;
  readonly y: number;
  readonly bodyGirth: number;
  readonly ease: number;
  /** What the cloth should measure: body + ease − lacing gap, mm. */
  readonly targetGirth: number;
  /** How much alterations after a fitting add to it, mm; taking in is less than nothing. */
  readonly alteredBy: number;
  /** What the panels measure, edge to edge, times two; null where the garment does not reach the level all round. */
  readonly sewnGirth: number | null;
  /** What the finished edge measures, as the sewn girth does, where the level lies at a level top edge or hem; else null. */
  readonly alongEdge: number | null;
  /** Width of each panel at the level, mm, by piece id; empty where it is not crossed from leg to leg. */
  readonly widths: Readonly<Record<string, number>>;
  readonly taken: Shaping;
}

/** What the cloth measures at a level, mm: along the edge where the garment ends there; null where it does not reach it all round. */
export const finishedCloth = ({
  sewnGirth,
  alongEdge,
}: Pick<LedgerRow, 'sewnGirth' | 'alongEdge'>): number | null => sewnGirth ?? alongEdge;

/** What alterations did to the levels. */
export interface AlteredLevels {
  /** mm by level. */
  readonly girths: ReadonlyMap<LevelName, number>;
  /** Levels that do not run level over a piece. */
  readonly raisedLevels: readonly RaisedLevel[];
}

/** One row a level, top down; widths are measured on the finished outlines. */
export function girthLedger(
  levels: readonly Level[],
  shapingAt: (level: LevelName) => Shaping,
  pieces: readonly Piece[],
  whole: boolean,
  edges: readonly LevelEdge[],
  altered: AlteredLevels | null = null,
): LedgerRow[] {
  const all = whole && pieces.length > 0;
  return levels.map((level) => {
    const widths: Record<string, number> = {};
    let half = 0;
    let reached = all;
    for (const piece of pieces) {
      const path = raisedPath(altered?.raisedLevels, piece, level.name);
      const width = path ? widthAlong(piece, path) : widthAt(piece, level.y);
      if (width === null) reached = false;
      else {
        widths[piece.id] = width;
        half += width;
      }
    }
    return {
      level: level.name,
      y: level.y,
      bodyGirth: level.bodyGirth,
      ease: level.ease,
      targetGirth: level.targetGirth,
      alteredBy: altered?.girths.get(level.name) ?? 0,
      sewnGirth: reached ? 2 * half : null,
      alongEdge: all ? alongEdge(level.y, edges, pieces) : null,
      widths,
      taken: shapingAt(level.name),
    };
  });
}

/**
 * Cloth of a piece at height `y` once its darts are sewn, mm: from its edge towards the centre to its edge towards the side,
 * without what lies between the legs of darts. Null when the line misses the piece, runs through its top edge, armhole or hem, or
 * leaves it between the ends of an open dart's legs, so that it crosses one leg and not the other.
 */
function widthAt(piece: Piece, y: number): number | null {
  const crossings: number[] = [];
  // The open darts of which so far one leg is crossed and not the other.
  const half = new Set<string>();
  for (const { role, at, dart, points } of piece.edges) {
    const met = crossingsAt(points, y);
    if (met.length > 0 && role !== 'seam' && role !== 'centre') return null;
    if (met.length % 2 === 0 && !dart && (at === 'inner' || at === 'outer')) return null;
    if (dart && met.length % 2 === 1 && !half.delete(dart.wedge)) half.add(dart.wedge);
    crossings.push(...met);
  }
  if (half.size > 0) return null;
  crossings.sort((a, b) => a - b);
  const shut = piece.darts.filter(({ open }) => !open).map(({ inner, outer }) => [inner, outer]);
  const taken = shut.map((legs) => legs.map((leg) => crossingsAt(leg, y)[0] ?? 0));
  return (
    crossings.reduce((sum, x, i) => sum + (i % 2 === 0 ? -x : x), 0) -
    taken.reduce((sum, [inner = 0, outer = 0]) => sum + outer - inner, 0)
  );
}
