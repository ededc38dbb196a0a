// A whole garment for a body that differs left to right: each half drafted from a body of its own, the two trued to one
// another at the centres. A body alike on both sides is drafted as ever, one half for both.

import { napeOf } from '../block/shoulders';
import { type Body, checkBody } from '../body/body';
import type { Measurements } from '../body/measurements';
import { type BodySides, bodyOfHand, checkSides, differs, wholeSides } from '../body/sides';
import { extrasOfHalves } from '../extras/extras';
import type { Piece } from '../pieces/piece';
import { ofHand, rightSideUp, seamOfHand } from '../pieces/rightSideUp';
import type { Style } from '../style/style';
import { styleOfHand } from '../style/styleOfHand';
import { type Issue, issue } from '../terms/issue';
import { HANDS, type Hand, type Side } from '../terms/names';
import { type Draft, draft, draftPanels } from './draft';
import { centreEdge, centreMarks, mateCentres, withCentresMoved } from './mateCentres';
import { wholeProof } from './wholeChecks';

/**
 * Drafts a style for a body, `sides` saying how it differs left to right (null for not at all) and `style.rightWedges` what
 * the style does otherwise on the right. Where nothing differs this is {@link draft}. Else `halves` holds both; the pieces
 * are those of both, right side up, each cut once, their ids beginning with `left-` or `right-`; the proof is that of the
 * whole; no centre lies on a fold. Never throws.
 */
export function draftWhole(measurements: Measurements, style: Style, sides: BodySides | null = null): Draft {
  const own = wholeSides(sides);
  const faults = checkSides(own);
  if (faults.length > 0) {
    const alike = draft(measurements, style);
    return { ...alike, pieces: [], extras: [], issues: [...alike.issues, ...faults] };
  }
  if (!differs(own) && !style.rightWedges) return draft(measurements, style);
  const alike = halfAlone(measurements, style);
  const { body } = checkBody(measurements);
  if (!body || alike.issues.some(({ code }) => code === 'styleOutOfRange')) return alike;

  const ofHands = byHand((hand) => bodyOfHand(measurements, body, own, hand));
  const hasNape = style.shoulders !== undefined && style.shoulders.bandAbove === undefined;
  const nape = hasNape ? napeShared(body, ofHands) : null;
  const bodies = byHand((hand) => ({ ...ofHands[hand], ...nape }));
  const styles = byHand((hand) => styleOfHand(style, hand));
  const apart = byHand((hand) => halfAlone(bodies[hand], styles[hand]));
  const moves = mateCentres(apart);
  const drafted = byHand((hand) => {
    const { front, back } = moves[hand];
    if ([front.top, front.hem, back.top, back.hem].every((move) => move === 0)) return apart[hand];
    const raised = nape && { backNeckToWaist: nape.backNeckToWaist - back.top };
    return halfAlone({ ...bodies[hand], ...raised }, withCentresMoved(styles[hand], moves[hand]));
  });
  const { halves, drifts } = withMarksMated(drafted);
  return joined(alike, halves, apart, drifts, style);
}

/** What lies behind a lacing is cut of both halves at once, and straps for the whole. */
const halfAlone = (measurements: Measurements, style: Style): Draft =>
  draftPanels(measurements, style).panels;

/** The nape lies at least so far below the shoulder level on either half, so that truing has room to move it. mm */
const NAPE_BELOW_MM = 8;

/** A neckline ends at the nape, which both halves share: as far above the waist on either. */
function napeShared(body: Body, ofHands: Readonly<Record<Hand, Measurements>>): { backNeckToWaist: number } {
  const most = HANDS.map((hand) => (ofHands[hand].neckToWaist ?? body.neckToWaist) - NAPE_BELOW_MM);
  return { backNeckToWaist: Math.min(body.neckToWaist - napeOf(body), ...most) };
}

const byHand = <T>(of: (hand: Hand) => T): Record<Hand, T> => ({ left: of('left'), right: of('right') });

const SIDES: readonly Side[] = ['front', 'back'];

/** The halves with the balance marks of their centre edges set alike, and how far those moved, mm by block. */
function withMarksMated(drafted: Record<Hand, Draft>): {
  halves: Record<Hand, Draft>;
  drifts: Record<Side, number>;
} {
  const drifts = { front: 0, back: 0 };
  const halves = { ...drafted };
  for (const side of SIDES) {
    const [left, right] = [centreEdge(drafted.left, side), centreEdge(drafted.right, side)];
    if (!left || !right) continue;
    const { marks, drift } = centreMarks(left, right);
    drifts[side] = drift;
    for (const hand of HANDS)
      halves[hand] = {
        ...halves[hand],
        pieces: halves[hand].pieces.map((piece) =>
          piece.block === side && piece.number === 1 ? { ...piece, marks: marks[hand] } : piece,
        ),
      };
  }
  return { halves, drifts };
}

function joined(
  alike: Draft,
  drafted: Record<Hand, Draft>,
  apart: Record<Hand, Draft>,
  drifts: Record<Side, number>,
  style: Style,
): Draft {
  const { left, right } = drafted;
  const closed = SIDES.filter((side) => styleOfHand(style, 'left').closure[side] === 'seam');
  const pieces = HANDS.flatMap((hand) =>
    drafted[hand].pieces.map((piece) =>
      withCentreMate(rightSideUp(hand, piece, drafted[hand].pieces), hand, closed, drafted),
    ),
  );
  const proof = wholeProof(alike.levels, drafted, apart, drifts);
  const beside = extrasOfHalves(style, left.laced, { left: left.pieces, right: right.pieces });
  const issues = [...issuesOf(alike, drafted), ...foldIssues(style), ...proof.issues, ...beside.issues];
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
    halves: drafted,
  };
}

/** What lies above the panels is cut for each half, as they are. */
const bandsOf = (halves: Readonly<Record<Hand, Draft>>): Piece[] =>
  HANDS.flatMap((hand) => {
    const bands = halves[hand].extras;
    return bands.map((band) => rightSideUp(hand, band, bands));
  });

/** Where a centre is joined, each half's centre edge is the other's mate. */
function withCentreMate(
  piece: Piece,
  hand: Hand,
  closed: readonly Side[],
  halves: Readonly<Record<Hand, Draft>>,
): Piece {
  const other = hand === 'left' ? 'right' : 'left';
  const mate = halves[other].pieces.find((each) => each.block === piece.block && each.number === 1);
  const [centre, ...edges] = piece.edges;
  if (piece.number !== 1 || centre?.role !== 'centre' || !mate || !closed.includes(piece.block)) return piece;
  return { ...piece, edges: [{ ...centre, mate: { piece: ofHand(other, mate.id), edge: 0 } }, ...edges] };
}

const foldIssues = ({ closure }: Style): Issue[] =>
  SIDES.filter((side) => closure[side] === 'fold').map((side) =>
    issue('halvesNotOnFold', 'note', { block: side, field: `closure.${side}` }),
  );

/**
 * What there is to say of body and garment at large is said once, of the body as it was measured; what stands at a block,
 * panel, seam or wedge of a half, of that half.
 */
function issuesOf(alike: Draft, halves: Readonly<Record<Hand, Draft>>): Issue[] {
  const isPlaced = ({ at }: Issue): boolean =>
    [at.block, at.piece, at.seam, at.wedge].some((part) => part !== undefined);
  const large = alike.issues.filter((each) => !isPlaced(each));
  const known = new Set(large.map(({ code, at }) => `${code} ${at.field} ${at.level}`));
  const ofHalves = HANDS.flatMap((hand) =>
    halves[hand].issues.flatMap((each): Issue[] => {
      const { piece, seam } = each.at;
      const key = `${each.code} ${each.at.field} ${each.at.level}`;
      if (!isPlaced(each) && known.has(key)) return [];
      if (!isPlaced(each)) known.add(key);
      const at = {
        ...each.at,
        ...(isPlaced(each) ? { hand } : {}),
        ...(piece === undefined ? {} : { piece: ofHand(hand, piece) }),
        ...(seam === undefined ? {} : { seam: seamOfHand(hand, seam) }),
      };
      return [{ ...each, at }];
    }),
  );
  // What closes the garment is said of both halves in the same words.
  const once = new Set<string>();
  return [...large, ...ofHalves].filter((each) => {
    if (each.at.field?.startsWith('closure.') !== true) return true;
    const key = `${each.code} ${each.at.field}`;
    return once.has(key) ? false : Boolean(once.add(key));
  });
}
