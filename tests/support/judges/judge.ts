// The judge: measures a draft's finished outlines against the bounds of every draft. It takes nothing from the draft's
// own proof, only the pieces' points and marks, and says each bound that is broken, where and by how much.

import {
  type Draft,
  type Edge,
  type LevelName,
  type Measurements,
  openWidth,
  type Piece,
  type Point,
  type Style,
} from '../../../src/engine';
import {
  alongTo,
  areaSeen,
  cornerAngle,
  holds,
  isNear,
  legSpan,
  lengthOf,
  ringOf,
  selfMeeting,
  sewnAcross,
} from './outline';
import { bustPointOf, shutAtSide } from './sideDart';

type Bound = 'D1' | 'D2' | 'D3' | 'D4' | 'D5' | 'D6';

export interface Finding {
  readonly bound: Bound;
  readonly what: string;
  readonly pieces: readonly string[];
  /** mm, degrees or none, by the bound. */
  readonly amount: number;
  /** Within the bound; reported so that the worst can be known. */
  readonly held: boolean;
}

/** The bounds, as the draft's description states them. */
const BOUNDS = { girthMm: 0.1, mateMm: 0.05, runDeg: 0.5, leastPanelMm: 20, kinkDeg: 0.5 } as const;

/**
 * Everything measured on a draft. An empty list means there was nothing to measure.
 *
 * @param drafted the draft before it was altered: its lines go on as they were up to their old ends
 */
export function judge(
  measurements: Measurements,
  style: Style,
  made: Draft,
  drafted: Draft = made,
): Finding[] {
  // The cloth of a dart that cannot be sewn stays in; the draft is refused.
  const whole = wholeBlocks(style, made) && made.issues.every(({ code }) => code !== 'dartEndsAtEdge');
  // Levels and lines are drafted before a dart is turned into the side seam.
  const bustPoint = bustPointOf(measurements, style);
  const shut = made.pieces.map((piece) => shutAtSide(piece, bustPoint));
  const asDrafted = { ...made, pieces: shut };
  return [
    ...(whole ? girths(measurements, style, asDrafted) : []),
    ...mates(made.pieces),
    ...runs(made.pieces, style),
    ...made.pieces.flatMap((piece) => outlines(piece, hasNoCutLine(piece, made))),
    ...made.pieces.flatMap((piece) => widths(piece, made)),
    ...shut.flatMap((piece) => kinks(piece, asDrafted, style, drafted)),
  ];
}

/** What is broken, in words, for a test's message. */
export function broken(findings: readonly Finding[]): string[] {
  return findings
    .filter((each) => !each.held)
    .map(({ bound, what, amount }) => `${bound} ${what}: ${amount}`);
}

/** Panels a style asks for, by block: one more than the wedges that run through, of which one may shape the centre line. */
export function expectedPieces(style: Style): string[] {
  const [front, back] = (['front', 'back'] as const).map((block) => {
    const wedges = style.wedges.filter((wedge) => wedge.block === block);
    const centre = wedges.some(({ station }) => station === -1) ? 1 : 0;
    const through = wedges.filter(({ kind }) => kind === 'through');
    return Array.from({ length: through.length - centre + 1 }, (_, i) => `${block}-${i + 1}`);
  }) as [string[], string[]];
  return style.joinedSide ? [...front.slice(0, -1), 'side', ...back.slice(0, -1)] : [...front, ...back];
}

const wholeBlocks = (style: Style, made: Draft): boolean => {
  const ids = made.pieces.map((piece) => piece.id);
  return expectedPieces(style).every((id) => ids.includes(id));
};

function girths(measurements: Measurements, style: Style, made: Draft): Finding[] {
  const findings: Finding[] = [];
  const bust = made.levels.find(({ name }) => name === 'bust')?.y ?? 0;
  const isTurned = made.pieces.some(({ darts, edges }) =>
    darts.some(({ wedge, open }) => open && edges.every(({ dart }) => dart?.wedge !== wedge)),
  );
  for (const { name, y } of made.levels) {
    // Above the bust the cloth of a front that was turned runs level on neither side of the bust point.
    if (isTurned && y < bust) continue;
    if (!made.pieces.every((piece) => y > legSpan(piece).from + 1e-9 && y < legSpan(piece).to - 1e-9))
      continue;
    const sewn = 2 * made.pieces.reduce((sum, piece) => sum + (sewnAcross(piece, y) ?? Number.NaN), 0);
    const body = bodyGirth(measurements, name);
    if (body === null) continue;
    const off = Math.abs(sewn - (body + style.ease[name] - openWidth(style.closure)));
    findings.push({
      bound: 'D1',
      what: `sewn girth at ${name}`,
      pieces: [],
      amount: off,
      held: off <= BOUNDS.girthMm,
    });
  }
  return findings;
}

function bodyGirth(measurements: Measurements, level: LevelName): number | null {
  return measurements[level] ?? null;
}

function mates(pieces: readonly Piece[]): Finding[] {
  const findings: Finding[] = [];
  const find = (what: string, names: string[], amount: number): void => {
    findings.push({ bound: 'D2', what, pieces: names, amount, held: amount <= BOUNDS.mateMm });
  };
  for (const { id, darts } of pieces)
    for (const { wedge, open, inner, outer } of darts)
      if (!open) find(`legs of dart ${wedge}`, [id], Math.abs(lengthOf(inner) - lengthOf(outer)));
  for (const piece of pieces)
    for (const [i, edge] of piece.edges.entries()) {
      if (!edge.mate) continue;
      const other = pieces.find(({ id }) => id === edge.mate?.piece.id);
      const mate = other?.edges[edge.mate.edge];
      if (!other || !mate) continue;
      const names = [piece.id, other.id];
      const back = mate.mate?.piece.id === piece.id && mate.mate.edge === i;
      find(`${names.join(' and ')} are each other's mates`, names, back ? 0 : Number.POSITIVE_INFINITY);
      find(
        `length of ${names.join(' against ')}`,
        names,
        // What an edge is longer and eased by is asked for.
        Math.abs(lengthOf(edge.points) - (edge.ease ?? 0) - lengthOf(mate.points) + (mate.ease ?? 0)),
      );
      const [mine, theirs] = [marksAlong(piece, i), marksAlong(other, edge.mate.edge)];
      find(`number of marks of ${names.join(' against ')}`, names, Math.abs(mine.length - theirs.length));
      for (const [k, mark] of mine.entries())
        find(
          `mark ${k + 1} of ${names.join(' against ')}`,
          names,
          Math.max(Math.abs(mark.along - (theirs[k]?.along ?? Number.NaN)), mark.off),
        );
    }
  return findings;
}

/** Marks of an edge by their distance from its upper end, but those where two edges beside each other meet. */
function marksAlong(piece: Piece, i: number): { along: number; off: number }[] {
  const { points } = piece.edges[i] as Edge;
  const down = (points[0] as Point).y < (points.at(-1) as Point).y ? points : [...points].reverse();
  return piece.marks
    .filter((mark) => mark.edge === i && mark.level !== null)
    .map((mark) => alongTo(down, mark.at))
    .sort((a, b) => a.along - b.along);
}

/** An edge with a corner somewhere may turn at a seam; tests of their own hold it to the turn it was given. */
function runs(pieces: readonly Piece[], style: Style): Finding[] {
  const cornered = {
    top: Object.values(style.topShape).some(({ kind }) => kind === 'corner'),
    hem: Object.values(style.hemShape).some(({ kind }) => kind === 'corner'),
  };
  const findings: Finding[] = [];
  for (const piece of pieces)
    for (const [i, edge] of piece.edges.entries()) {
      if (edge.role !== 'seam' && edge.role !== 'centre') continue;
      const other = edge.mate ? pieces.find(({ id }) => id === edge.mate?.piece.id) : piece;
      if (!other || (edge.role === 'seam' && !edge.mate)) continue;
      for (const where of ['top', 'hem'] as const) {
        if (cornered[where] || !isBeside(piece, i, where)) continue;
        const angle = cornerTo(piece, i, where) + cornerTo(other, edge.mate?.edge ?? i, where);
        const off = Math.abs(angle - 180);
        findings.push({
          bound: 'D3',
          what: `${where} edge across ${piece.id} and ${other.id}`,
          pieces: [piece.id, other.id],
          amount: off,
          held: off <= BOUNDS.runDeg,
        });
      }
    }
  return findings;
}

/** Shoulder and armhole stand for the top edge of a shouldered block. */
const isAt = (role: Edge['role'] | undefined, where: 'top' | 'hem'): boolean =>
  role === where || (where === 'top' && (role === 'shoulder' || role === 'armhole'));

/** Whether edge `i` meets the top edge or hem; a dart's leg meets one of them, at its point neither. */
function isBeside(piece: Piece, i: number, where: 'top' | 'hem'): boolean {
  const n = piece.edges.length;
  return [piece.edges[(i + 1) % n], piece.edges[(i + n - 1) % n]].some((edge) => isAt(edge?.role, where));
}

/** Interior angle between edge `i` and the top edge or hem of its piece. */
function cornerTo(piece: Piece, i: number, where: 'top' | 'hem'): number {
  const n = piece.edges.length;
  return isAt(piece.edges[(i + 1) % n]?.role, where)
    ? cornerAngle(piece, i)
    : cornerAngle(piece, (i + n - 1) % n);
}

/** A piece whose cut line could not be made is refused, and shown with its sew line alone. */
const hasNoCutLine = (piece: Piece, made: Draft): boolean =>
  made.issues.some(({ code, at }) => code === 'cutLineUnsure' && at.piece?.id === piece.id);

function outlines(piece: Piece, hasNoCutLine: boolean): Finding[] {
  const findings: Finding[] = [];
  const find = (what: string, held: boolean): void => {
    findings.push({
      bound: 'D4',
      what: `${piece.id}: ${what}`,
      pieces: [piece.id],
      amount: held ? 0 : 1,
      held,
    });
  };
  const sew = ringOf(piece);
  const cut = piece.cutLine;
  find(
    'edges join',
    piece.edges.every(({ points }, i) =>
      joined(points, (piece.edges[(i + 1) % piece.edges.length] as Edge).points),
    ),
  );
  find('sew line simple', selfMeeting(sew) === null);
  find('cut line simple', selfMeeting(cut) === null);
  find('sew line counter-clockwise', areaSeen(sew) > 0);
  find('cut line counter-clockwise', areaSeen(cut) > 0);
  find(
    'cut line holds the sew line',
    sew.every((point) => holds(cut, point, 1e-4)),
  );
  const allowances = piece.edges.map((edge) => edge.allowance);
  const [least, most] = [Math.min(...allowances), Math.max(...allowances)];
  find(
    'cut line no nearer than the least allowance',
    hasNoCutLine || least < 0.05 || !sew.some((point) => isNear(cut, point, least - 0.05)),
  );
  find(
    'cut line no farther than its longest corner',
    cut.every((point) => isNear(sew, point, 4 * most + opening(piece) + 1e-6)),
  );
  return findings;
}

/** The widest open dart, mm: its fold may stand out so far, as no sew line runs across it. */
const opening = ({ darts }: Piece): number =>
  Math.max(
    0,
    ...darts
      .filter(({ open }) => open)
      .flatMap(({ inner, outer }) =>
        [0, -1].map((end) => Math.abs((outer.at(end)?.x ?? 0) - (inner.at(end)?.x ?? 0))),
      ),
  );

const joined = (edge: readonly Point[], next: readonly Point[]): boolean =>
  edge.at(-1)?.x === next[0]?.x && edge.at(-1)?.y === next[0]?.y;

/** A narrow place must be told by a blocking issue that names piece, wedge (where there is one) and level. */
function widths(piece: Piece, made: Draft): Finding[] {
  const { from, to } = legSpan(piece);
  // Where the top edge dips below the hem's highest place, no height crosses both legs.
  if (from >= to) return [];
  let least = Number.POSITIVE_INFINITY;
  for (let step = 1; step < 60; step += 1)
    least = Math.min(least, sewnAcross(piece, from + ((to - from) * step) / 60) ?? least);
  const told = made.issues.some(
    ({ severity, code, at }) =>
      severity === 'error' &&
      code === 'panelTooNarrow' &&
      at.piece?.id === piece.id &&
      at.level !== undefined,
  );
  return [
    {
      bound: 'D5',
      what: `least width of ${piece.id}`,
      pieces: [piece.id],
      amount: least,
      held: told || least >= BOUNDS.leastPanelMm,
    },
  ];
}

/** A line that was turned there and back has its points so far from where they were, mm. */
const ROUNDING = 1e-9;

/** Legs and side seams at each level: the tangent above against the tangent below. */
function kinks(piece: Piece, made: Draft, style: Style, drafted: Draft): Finding[] {
  const findings: Finding[] = [];
  // A line is one cubic from stop to stop: the levels, where a cup's fullness begins, where a wedge ends above, and where lines
  // are rounded off at the bust line and past the over-bust line.
  const bust = made.levels.find(({ name }) => name === 'bust')?.y ?? 0;
  const levels = [
    ...made.levels.map(({ y }) => y),
    ...style.wedges.flatMap(({ cup }) => (cup ? [bust + cup.below] : [])),
    ...[made, drafted]
      .flatMap(({ blocks }) => [blocks?.front, blocks?.back])
      .flatMap((block) => (block?.upper?.ends ?? []).map(({ at }) => at.point.y)),
  ];
  const overBust = made.levels.find(({ name }) => name === 'overBust')?.y ?? bust;
  const rounded = [
    ...[15, 20, 25, 0.45 * (bust - overBust)].map((round) => bust - round),
    ...[12.5, 37.5].map((past) => overBust - past),
  ];
  for (const { role, points } of piece.edges) {
    if (role !== 'seam' && role !== 'centre') continue;
    const down = [...points].sort((a, b) => a.y - b.y);
    // A line that is not rounded off has no point there.
    const stops = [
      ...levels,
      ...rounded.filter((stop) => points.some((point) => Math.abs(point.y - stop) < 1e-6)),
    ];
    for (const { name, y } of made.levels) {
      const from = Math.max(...stops.filter((stop) => stop < y));
      const to = Math.min(...stops.filter((stop) => stop > y));
      const above = down.filter((p) => p.y <= y + ROUNDING && p.y >= from - ROUNDING).slice(-4);
      const below = down.filter((p) => p.y >= y - ROUNDING && p.y <= to + ROUNDING).slice(0, 4);
      if (above.length < 2 || below.length < 2) continue;
      const [before, after] = [leanAt(above.reverse()), leanAt(below)];
      const jump = Math.abs(before.deg - after.deg);
      const slack = before.slackDeg + after.slackDeg;
      findings.push({
        bound: 'D6',
        what: `edge of ${piece.id} at ${name}`,
        pieces: [piece.id],
        amount: Math.max(0, jump - slack),
        held: jump - slack <= BOUNDS.kinkDeg,
      });
    }
  }
  return findings;
}

/**
 * Lean from the vertical in degrees at the first of a few points of one span, by the polynomial through them. The
 * lines are cubics: four points give it exactly; of fewer, the flattening leaves a doubt.
 */
function leanAt(points: readonly Point[]): { deg: number; slackDeg: number } {
  const first = points[0] as Point;
  let slope = 0;
  for (const [i, p] of points.entries()) {
    if (i === 0) continue;
    let weight = 1;
    for (const [j, q] of points.entries()) if (j !== 0 && j !== i) weight *= (first.y - q.y) / (p.y - q.y);
    slope += ((p.x - first.x) / (p.y - first.y)) * weight;
  }
  const span = Math.abs((points.at(-1) as Point).y - first.y);
  const slackDeg = points.length >= 4 ? 0 : (Math.atan((4 * 0.02) / span) * 180) / Math.PI;
  return { deg: (Math.atan(slope) * 180) / Math.PI, slackDeg };
}
