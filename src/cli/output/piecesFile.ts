// Writes a draft as plain data for other programs: the content of pieces.json, and of each line of the stream.

import { edgeName, type FileUnit, type Fitting, issueSentence, outcomesOf, pieceLabel } from '../../document';
import {
  type DartLines,
  type Draft,
  type Edge,
  type EdgeReference,
  type Issue,
  type LevelName,
  type Mark,
  openWidth,
  type Piece,
  type Point,
  type Style,
} from '../../engine';
import { rounded } from './rounded';

type Place = readonly [number, number];

/**
 * The draft in mm: x from the centre line, y down from the shoulder level, for every piece alike. Lengths and
 * coordinates are rounded to 1e-6 mm; an edge's first point is the last point of the edge before it. Levels are those
 * the garment reaches all round; where the body differs left to right, `y` is the left's and `rightY` the right's, and the
 * pieces of both lie right side up, a right front and a left back on negative x. Sentences of issues give lengths in `unit`.
 * With fittings each level says what they add to its girth, sewnGirth = targetGirth + alteredBy, and each alteration what
 * became of it.
 */
export function piecesFile(
  draft: Draft,
  style: Style,
  unit: FileUnit,
  fittings: readonly Fitting[] | null = null,
) {
  const { proof, pieces, extras, issues, halves } = draft;
  return {
    unit: 'mm',
    lacingGap: rounded(openWidth(style.closure)),
    levels: proof.ledger
      .filter(({ sewnGirth }) => sewnGirth !== null)
      .map(({ level, y, bodyGirth, ease, targetGirth, alteredBy, sewnGirth }) => ({
        name: level,
        y: rounded(y),
        ...rightHeight(halves, level),
        bodyGirth: rounded(bodyGirth),
        ease: rounded(ease),
        targetGirth: rounded(targetGirth),
        ...(fittings ? { alteredBy: rounded(alteredBy) } : {}),
        sewnGirth: rounded(sewnGirth ?? 0),
      })),
    pieces: [...pieces, ...extras].map(pieceOf),
    seams: proof.seams.map(({ a, b, lengthA, lengthB, ease, markDrift }) => ({
      a: nameOf(a),
      b: nameOf(b),
      lengthA: rounded(lengthA),
      lengthB: rounded(lengthB),
      markDrift: rounded(markDrift),
      // Of mates that are meant to differ: lengthB − lengthA as asked.
      ...(ease === 0 ? {} : { ease: rounded(ease) }),
    })),
    ...(fittings ? { alterations: outcomesOf(fittings, draft) } : {}),
    issues: issues.map((issue) => issueOf(issue, style, unit)),
  };
}

/** The height of a level on the right half, where the halves differ. */
function rightHeight(halves: Draft['halves'], name: LevelName): { rightY?: number } {
  const level = halves?.right.levels.find((each) => each.name === name);
  return level ? { rightY: rounded(level.y) } : {};
}

export type PiecesFile = ReturnType<typeof piecesFile>;

const pieceOf = (piece: Piece) => ({
  id: piece.id,
  label: pieceLabel(piece),
  block: piece.block,
  cut: piece.cut,
  edges: piece.edges.map((edge) => edgeOf(edge, piece)),
  cutLine: piece.cutLine.map(placeOf),
  grain: piece.grain.map(placeOf),
  marks: piece.marks.map(markOf),
  // The stitching lines of darts closed at both ends; an open dart's legs are edges.
  ...(piece.darts.some(({ open }) => !open)
    ? { darts: piece.darts.filter(({ open }) => !open).map(dartOf) }
    : {}),
});

const edgeOf = (edge: Edge, piece: Piece) => ({
  name: edgeName(edge, piece),
  role: edge.role,
  mate: edge.mate && nameOf(edge.mate),
  allowance: rounded(edge.allowance),
  points: edge.points.map(placeOf),
});

const dartOf = ({ inner, outer }: DartLines) => ({ legs: [inner.map(placeOf), outer.map(placeOf)] });

const markOf = ({ kind, level, at }: Mark) => ({ kind, level, at: placeOf(at) });

const issueOf = (issue: Issue, style: Style, unit: FileUnit) => ({
  code: issue.code,
  severity: SEVERITY_IN_FILES[issue.severity],
  message: issueSentence(issue, { unit, style }),
  at: placeInFile(issue.at),
});

/** How serious an issue is, as files and the error stream spell it. */
export const SEVERITY_IN_FILES = { error: 'block', warn: 'warn', note: 'note' } as const;

/**
 * Pieces and seams stand by their ids. The half an issue stands on is called `hand` in files, since `side` is the id of a
 * piece there.
 */
function placeInFile(at: Issue['at']): Record<string, string> {
  return Object.fromEntries(
    Object.entries(at).map(([part, place]) => [
      part === 'side' ? 'hand' : part,
      typeof place === 'string' ? place : place.id,
    ]),
  );
}

const nameOf = ({ piece, edge }: EdgeReference): string => `${piece.id}/${edge}`;

const placeOf = ({ x, y }: Point): Place => [rounded(x), rounded(y)];
