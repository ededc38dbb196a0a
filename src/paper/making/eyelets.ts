// Places of the eyelets. They are closer together at the waist, which lies midway between two of them where the row runs past it.

import {
  type Draft,
  distance,
  identityOf,
  type Piece,
  type PieceIdentity,
  type Point,
  polylineLength,
} from '../../engine';
import { offsetEdge, pointAt } from '../geometry/offsetEdge';
import { timesCut } from './bones';
import { lacedEdges } from './lacedEdges';
import type { MakingSettings } from './settings';

/** One row of eyelets. */
export interface EyeletRow {
  readonly piece: PieceIdentity;
  /** How many such rows the garment has: 2, left and right, unless the two are drafted apart. */
  readonly times: number;
  /** Centres from the top down, in the coordinates of the piece's block. */
  readonly points: readonly Point[];
  /** Distance of each centre from the upper end of the row's line, mm along it. */
  readonly fromTop: readonly number[];
  /** The least and the greatest distance of two neighbours, mm along the line. */
  readonly apart: { readonly least: number; readonly most: number };
  /** Where the waist lies: midway between two centres, at an end of the row, or not on its edge. */
  readonly waist: 'between' | 'end' | 'none';
}

/** A row for each laced edge of the draft that is long enough for two eyelets. */
export function eyeletsFor(draft: Draft, settings: MakingSettings): EyeletRow[] {
  return lacedEdges(draft).flatMap(({ piece, edge }) => {
    const { span } = (piece.side && draft.halves?.[piece.side]) ?? draft;
    const waist = span?.waist ?? null;
    const line = offsetEdge(piece, edge, settings.eyeletInset);
    const row = line && rowOn(line, piece, waist, settings, timesCut(draft));
    return row ? [row] : [];
  });
}

/** Where the waist lies on the rows that have it; midway between two centres only where it does on each of them. */
export function waistOn(rows: readonly EyeletRow[]): EyeletRow['waist'] {
  const places = rows.map(({ waist }) => waist).filter((waist) => waist !== 'none');
  return places.includes('end') ? 'end' : (places[0] ?? 'none');
}

function rowOn(
  line: readonly Point[],
  piece: Piece,
  waist: number | null,
  settings: MakingSettings,
  times: number,
): EyeletRow | null {
  const [first, last] = [settings.eyeletEnd, polylineLength(line) - settings.eyeletEnd];
  if (!(last - first >= settings.waistSpacing)) return null;
  const atWaist = waist === null ? null : alongAt(line, waist);
  const runsPast =
    atWaist !== null && atWaist - first > settings.waistSpacing && last - atWaist > settings.waistSpacing;
  const fromTop = runsPast
    ? [
        ...shared(atWaist, first, atWaist, settings, true).reverse(),
        ...shared(atWaist, last, atWaist, settings, true),
      ]
    : shared(first, last, atWaist, settings, false);
  const gaps = fromTop.slice(1).map((each, i) => each - (fromTop[i] as number));
  return {
    piece: identityOf(piece),
    times,
    points: fromTop.map((along) => pointAt(line, along)),
    fromTop,
    apart: { least: Math.min(...gaps), most: Math.max(...gaps) },
    waist: runsPast ? 'between' : atWaist === null ? 'none' : 'end',
  };
}

/**
 * Lengths along the line from `from` to `to`, no farther apart than the spacings of the settings. The last is `to`; the first is
 * `from` or, with `fromHalf`, half a gap past it.
 */
function shared(
  from: number,
  to: number,
  waist: number | null,
  settings: MakingSettings,
  fromHalf: boolean,
): number[] {
  const sign = Math.sign(to - from);
  const gapAt = (along: number): number =>
    waist !== null && Math.abs(along - waist) < settings.waistReach
      ? Math.min(settings.waistSpacing, settings.eyeletSpacing)
      : settings.eyeletSpacing;
  // The line is divided where the spacing changes; `gaps` is how many gaps it holds at those spacings.
  const bends = waist === null ? [] : [waist - settings.waistReach, waist + settings.waistReach];
  const stops = [from, ...bends.filter((each) => (each - from) * (each - to) < 0), to].sort(
    (a, b) => (a - b) * sign,
  );
  const spans = stops.slice(1).map((end, i) => {
    const start = stops[i] as number;
    return { start, end, gap: gapAt((start + end) / 2) };
  });
  const gaps = spans.reduce((sum, { start, end, gap }) => sum + Math.abs(end - start) / gap, 0);
  const offset = fromHalf ? 0.5 : 0;
  const steps = Math.max(fromHalf ? 0 : 1, Math.ceil(gaps - offset - 1e-9));
  const stretch = gaps / (steps + offset);
  const found: number[] = [];
  for (let i = 0; i < steps; i += 1) {
    let rest = (i + offset) * stretch;
    for (const { start, end, gap } of spans) {
      const held = Math.abs(end - start) / gap;
      if (rest <= held) {
        found.push(start + sign * rest * gap);
        break;
      }
      rest -= held;
    }
  }
  return [...found, to];
}

/** The length along a line at which it reaches height `y`, mm; null where it does not. */
function alongAt(line: readonly Point[], y: number): number | null {
  let walked = 0;
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = [line[i - 1] as Point, line[i] as Point];
    const length = distance(a, b);
    if (a.y <= y && b.y >= y && b.y > a.y) return walked + (length * (y - a.y)) / (b.y - a.y);
    walked += length;
  }
  return null;
}
