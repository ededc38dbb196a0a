// Drafts a whole garment. Where left and right differ, each half is drafted for a body of its own, and the two are trued to one
// another at the centres; where they are alike, one half is drafted for both.

import type { HalfAlterations } from '../alterations/alterDraft';
import { type Alteration, refused } from '../alterations/terms/alteration';
import { alterationsOfSide, areAlike, outcomesOfHalves } from '../alterations/terms/alterationsOfSide';
import { napeOf } from '../block/shoulders/shoulderFrame';
import { type Body, checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { type BodySides, bodyOfSide, checkSides, differs, wholeSides } from '../body/sides';
import { reductions } from '../checks/cautions';
import type { LedgerRow } from '../checks/ledger';
import { extrasOfHalves } from '../extras/extras';
import { innerEdge } from '../pieces/edgeLookup';
import type { Piece } from '../pieces/piece';
import { centreReference, rightSideUp } from '../pieces/rightSideUp';
import { type Shoulders, STYLE, type Style } from '../style/style';
import { styleOfSide } from '../style/styleOfSide';
import { pieceOfSide, seamOfSide } from '../terms/identity';
import { type Issue, type IssueCode, issue } from '../terms/issue';
import { type BlockName, SIDES, type Side } from '../terms/names';
import { type Draft, draft, draftPanels } from './draft';
import { centreEdge, centreMarks, mateCentres, withCentresMoved } from './mateCentres';
import { topsAlike } from './topsAlike';
import { wholeProof } from './wholeChecks';

/**
 * Drafts a style for a body. Where left and right are alike this is {@link draft}. Else `halves` has both halves; the pieces are
 * those of both, right side up, each cut once and with the `side` it is cut for; the proof is that of the whole; no centre lies on
 * a fold. It never throws.
 *
 * @param style with `rightWedges` where the wedges of the right half are not those of the left
 * @param sides how the body differs left to right; null for not at all
 * @param alterations what fittings changed
 */
export function draftWhole(
  measurements: Measurements,
  style: Style,
  sides: BodySides | null = null,
  alterations: readonly Alteration[] = [],
): Draft {
  const own = wholeSides(sides);
  const faults = checkSides(own);
  const altered = bySide((side) => alterationsOfSide(alterations, side));
  if (faults.length > 0) {
    const alike = draft(measurements, style, altered.left);
    return { ...uncut(alike), pieces: [], extras: [], issues: [...alike.issues, ...faults] };
  }
  if (!differs(own) && !style.rightWedges && areAlike(altered.left, altered.right))
    return draft(measurements, style, altered.left);
  const onBoth = alterations.map((each, i) => (each.side === 'both' ? (altered.left[i] ?? null) : null));
  const alike = halfAlone(measurements, style, onBoth);
  const { body } = checkBody(measurements);
  if (!body || alike.issues.some(({ code }) => code === 'styleOutOfRange')) return uncut(alike);

  const bodiesBySide = bySide((side) => bodyOfSide(measurements, body, own, side));
  const { shoulders } = style;
  const nape = shoulders && shoulders.bandAbove === undefined ? napeShared(body, shoulders) : null;
  const bodies = bySide((side) => ({ ...bodiesBySide[side], ...nape }));
  const tops = topsAlike(style, bodies);
  const styles = bySide((side) => styleOfSide(tops[side], side));
  const apart = bySide((side) => halfAlone(bodies[side], styles[side], altered[side]));
  const moves = mateCentres(apart);
  const drafted = bySide((side) => {
    const { front, back } = moves[side];
    if ([front.top, front.hem, back.top, back.hem].every((move) => move === 0)) return apart[side];
    const raised = nape && { backNeckToWaist: nape.backNeckToWaist - back.top };
    return halfAlone(
      { ...bodies[side], ...raised },
      withCentresMoved(styles[side], moves[side]),
      altered[side],
    );
  });
  const { halves, drifts } = withMarksMated(drafted);
  return joined(alike, halves, apart, drifts, style);
}

/** A half without facings, modesty panel and straps, which are cut for both halves together. */
const halfAlone = (measurements: Measurements, style: Style, alterations: HalfAlterations): Draft =>
  draftPanels(measurements, style, alterations).panels;

/** A neckline ends at the nape, which both halves share: as far above the waist on either, mm. */
const napeShared = (body: Body, shoulders: Shoulders): { backNeckToWaist: number } => ({
  backNeckToWaist: body.neckToWaist - napeOf(body, shoulders),
});

/** A draft of which nothing can be cut, so that no alteration was made. */
const uncut = (alike: Draft): Draft => ({
  ...alike,
  alterations: alike.alterations.map(() => refused('notDrafted')),
});

const bySide = <T>(of: (side: Side) => T): Record<Side, T> => ({ left: of('left'), right: of('right') });

const BLOCK_NAMES: readonly BlockName[] = ['front', 'back'];

/** The halves with the balance marks of their centre edges set alike, and how far those moved, mm by block. */
function withMarksMated(drafted: Record<Side, Draft>): {
  halves: Record<Side, Draft>;
  drifts: Record<BlockName, number>;
} {
  const drifts = { front: 0, back: 0 };
  const halves = { ...drafted };
  for (const block of BLOCK_NAMES) {
    const [left, right] = [centreEdge(drafted.left, block), centreEdge(drafted.right, block)];
    if (!left || !right) continue;
    const { marks, drift } = centreMarks(left, right);
    drifts[block] = drift;
    for (const side of SIDES)
      halves[side] = {
        ...halves[side],
        pieces: halves[side].pieces.map((piece) =>
          piece.block === block && piece.number === 1 ? { ...piece, marks: marks[side] } : piece,
        ),
      };
  }
  return { halves, drifts };
}

function joined(
  alike: Draft,
  drafted: Record<Side, Draft>,
  apart: Record<Side, Draft>,
  drifts: Record<BlockName, number>,
  style: Style,
): Draft {
  const { left, right } = drafted;
  const closed = BLOCK_NAMES.filter((block) => styleOfSide(style, 'left').closure[block] === 'seam');
  const pieces = SIDES.flatMap((side) =>
    drafted[side].pieces.map((piece) =>
      withCentreMate(
        rightSideUp(side, piece, [...drafted[side].pieces, ...drafted[side].extras]),
        side,
        closed,
        drafted,
      ),
    ),
  );
  const proof = wholeProof(alike.levels, drafted, apart, drifts);
  const beside = extrasOfHalves(style, left.laced, { left: left.pieces, right: right.pieces });
  const issues = [
    ...issuesOf(alike, drafted, proof.ledger).filter(
      // One half's edge may be drafted from the waist for the sake of the other; the style has it from the under-bust.
      ({ code }) => code !== 'topOnBreast' || style.topFrom === 'waist',
    ),
    ...foldIssues(style),
    ...proof.issues,
    ...beside.issues,
  ];
  const [spanLeft, spanRight] = [left.span, right.span];
  return {
    levels: alike.levels,
    blocks: null,
    span:
      spanLeft && spanRight
        ? {
            top: Math.min(spanLeft.top, spanRight.top),
            hem: Math.max(spanLeft.hem, spanRight.hem),
            waist: spanLeft.waist,
            highest: Math.min(spanLeft.highest, spanRight.highest),
            lowest: Math.max(spanLeft.lowest, spanRight.lowest),
          }
        : null,
    laced: left.laced,
    nodes: [],
    pieces,
    extras: [...bandsOf(drafted), ...beside.pieces],
    proof: {
      ledger: proof.ledger,
      seams: proof.seams,
      closedDarts: proof.closedDarts,
      edges: proof.edges,
    },
    issues,
    alterations: outcomesOfHalves(left.alterations, right.alterations),
    halves: drafted,
  };
}

/** What lies above the panels is cut for each half, as they are. */
const bandsOf = (halves: Readonly<Record<Side, Draft>>): Piece[] =>
  SIDES.flatMap((side) => {
    const bands = halves[side].extras;
    return bands.map((band) => rightSideUp(side, band, [...bands, ...halves[side].pieces]));
  });

/** Where a centre is joined, each half's centre edge is the other's mate. */
function withCentreMate(
  piece: Piece,
  side: Side,
  closed: readonly BlockName[],
  halves: Readonly<Record<Side, Draft>>,
): Piece {
  const other = side === 'left' ? 'right' : 'left';
  const mate = halves[other].pieces.find((each) => each.block === piece.block && each.number === 1);
  const centre = innerEdge(piece);
  if (piece.number !== 1 || centre.role !== 'centre' || !mate || !closed.includes(piece.block)) return piece;
  const mated = { ...centre, mate: centreReference(other, mate) };
  return { ...piece, edges: piece.edges.map((edge) => (edge === centre ? mated : edge)) };
}

const foldIssues = ({ closure }: Style): Issue[] =>
  BLOCK_NAMES.filter((block) => closure[block] === 'fold').map((block) =>
    issue('halvesNotOnFold', {}, { block, field: `closure.${block}` }),
  );

/** Paths of the fields of the closure. */
const CLOSURE_FIELDS: ReadonlySet<string> = new Set(
  Object.keys(STYLE.fields.closure.fields).map((name) => `closure.${name}`),
);

const REDUCTIONS: ReadonlySet<IssueCode> = new Set([
  'waistReduction',
  'waistReductionHigh',
  'ribReductionHigh',
  'girthReductionHigh',
]);

/**
 * The issues of a garment whose halves differ. An issue of the body or of the garment as a whole is reported once, as it is of the
 * body as measured; one that stands at a block, panel, seam or wedge is reported of its half.
 */
function issuesOf(
  alike: Draft,
  halves: Readonly<Record<Side, Draft>>,
  ledger: readonly LedgerRow[],
): Issue[] {
  const isPlaced = ({ at }: Issue): boolean =>
    [at.block, at.piece, at.seam, at.wedge].some((part) => part !== undefined);
  // Each half tells how far it would be drawn in if both were like it; the wearer has what both come to.
  const isOfHalf = ({ code }: Issue): boolean => ledger.length > 0 && REDUCTIONS.has(code);
  const drawnIn = reductions(
    ledger.map(({ level, bodyGirth, ease, alteredBy }) => ({
      name: level,
      bodyGirth,
      ease: ease + alteredBy,
    })),
  );
  const large = [...drawnIn, ...alike.issues.filter((each) => !isPlaced(each) && !isOfHalf(each))];
  const known = new Set(large.map(({ code, at }) => `${code} ${at.field} ${at.level}`));
  const ofHalves = SIDES.flatMap((side) =>
    halves[side].issues.flatMap((each): Issue[] => {
      const { piece, seam } = each.at;
      const key = `${each.code} ${each.at.field} ${each.at.level}`;
      if (!isPlaced(each) && (known.has(key) || isOfHalf(each))) return [];
      if (!isPlaced(each)) known.add(key);
      const at = {
        ...each.at,
        ...(isPlaced(each) ? { side } : {}),
        ...(piece === undefined ? {} : { piece: pieceOfSide(side, piece) }),
        ...(seam === undefined ? {} : { seam: seamOfSide(side, seam) }),
      };
      return [{ ...each, at }];
    }),
  );
  // Both halves have the same issues of the closure; each is reported once.
  const once = new Set<string>();
  return [...large, ...ofHalves].filter((each) => {
    if (each.at.field === undefined || !CLOSURE_FIELDS.has(each.at.field)) return true;
    const key = `${each.code} ${each.at.field}`;
    return once.has(key) ? false : Boolean(once.add(key));
  });
}
