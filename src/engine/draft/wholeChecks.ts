// The proof of a garment whose halves differ: both halves' rows, the seams that join left to right, and girths summed.

import type { Level } from '../block/levels';
import type { EdgeRunRow } from '../checks/edgeContinuity';
import type { LedgerRow } from '../checks/ledger';
import type { DartWalkRow, SeamWalkRow } from '../checks/seamWalk';
import { polylineLength } from '../geometry/polyline';
import { ofHand, pointOfHand, referenceOfHand, seamOfHand } from '../pieces/rightSideUp';
import { type Issue, issue } from '../terms/issue';
import { HANDS, type Hand, type LevelName, type Side } from '../terms/names';
import type { Draft } from './draft';
import { centreEdge } from './mateCentres';

type Halves = Readonly<Record<Hand, Draft>>;

interface WholeProof {
  readonly ledger: readonly LedgerRow[];
  readonly seams: readonly SeamWalkRow[];
  readonly closedDarts: readonly DartWalkRow[];
  readonly edges: readonly EdgeRunRow[];
  readonly issues: readonly Issue[];
}

/** Centre edges that differ by more than this after truing cannot be sewn to each other. mm */
const MOST_APART_MM = 0.05;

/**
 * @param levels of the body as it was measured
 * @param apart the halves before their centres were trued, for how far those differed
 * @param drifts how far balance marks of the centre edges moved, mm
 */
export function wholeProof(
  levels: readonly Level[],
  halves: Halves,
  apart: Halves,
  drifts: Readonly<Record<Side, number>>,
): WholeProof {
  const centres = (['front', 'back'] as const).flatMap((side) =>
    centreRow(side, halves, apart, drifts[side]),
  );
  return {
    ledger: levels.flatMap((level) => ledgerRow(level, halves)),
    seams: [
      ...centres.filter(({ id }) => id === 'front-centre'),
      ...HANDS.flatMap((hand) => seamsOf(hand, halves[hand])),
      ...centres.filter(({ id }) => id === 'back-centre'),
    ],
    closedDarts: HANDS.flatMap((hand) =>
      halves[hand].proof.closedDarts.map((row) => ({
        ...row,
        id: seamOfHand(hand, row.id),
        piece: ofHand(hand, row.piece),
      })),
    ),
    edges: edgesOf(halves),
    issues: centres
      .filter(({ lengthA, lengthB }) => Math.abs(lengthA - lengthB) > MOST_APART_MM)
      .map(({ id, lengthA, lengthB }) =>
        issue('centresUneven', 'block', { seam: id }, { apart: Math.abs(lengthA - lengthB) }),
      ),
  };
}

function seamsOf(hand: Hand, { proof, pieces }: Draft): SeamWalkRow[] {
  return proof.seams.map((row) => ({
    ...row,
    id: seamOfHand(hand, row.id),
    a: referenceOfHand(hand, row.a, pieces),
    b: referenceOfHand(hand, row.b, pieces),
  }));
}

function centreRow(side: Side, halves: Halves, apart: Halves, markDrift: number): SeamWalkRow[] {
  const [left, right] = [centreEdge(halves.left, side), centreEdge(halves.right, side)];
  if (!left || !right) return [];
  const before = HANDS.map((hand) => polylineLength(centreEdge(apart[hand], side)?.edge.points ?? []));
  return [
    {
      id: `${side}-centre`,
      kind: 'centre',
      a: { piece: ofHand('left', left.piece.id), edge: 0 },
      b: { piece: ofHand('right', right.piece.id), edge: 0 },
      lengthA: polylineLength(left.edge.points),
      lengthB: polylineLength(right.edge.points),
      natural: (before[0] ?? 0) - (before[1] ?? 0),
      markDrift,
    },
  ];
}

/** Rows of both halves; at a centre, the left half's angle and the right half's make one crossing. */
function edgesOf(halves: Halves): EdgeRunRow[] {
  const isCentre = ({ seam }: EdgeRunRow): boolean => seam === 'front-centre' || seam === 'back-centre';
  return HANDS.flatMap((hand) => {
    const { proof, pieces } = halves[hand];
    return proof.edges.flatMap((row): EdgeRunRow[] => {
      const piece = pieces.find(({ id }) => id === row.at.piece);
      const at = { piece: ofHand(hand, row.at.piece), point: pointOfHand(hand, row.at.point, piece) };
      if (!isCentre(row)) return [{ ...row, seam: seamOfHand(hand, row.seam), at }];
      const other = halves.right.proof.edges.find(({ seam, edge }) => seam === row.seam && edge === row.edge);
      // Each half told it with its own mirror image: half of that is its own angle.
      return hand === 'left' && other
        ? [{ ...row, at, angle: (row.angle + other.angle) / 2, asked: (row.asked + other.asked) / 2 }]
        : [];
    });
  });
}

/** Girths are the mean of the halves', as each was measured as if both were like it. */
function ledgerRow({ name, bodyGirth, ease, targetGirth }: Level, halves: Halves): LedgerRow[] {
  const [left, right] = HANDS.map((hand) => rowOf(name, halves[hand]));
  if (!left || !right) return [];
  const mean = (a: number | null, b: number | null): number | null =>
    a === null || b === null ? null : (a + b) / 2;
  const ids = new Set([...Object.keys(left.taken.wedges), ...Object.keys(right.taken.wedges)]);
  const wedges = [...ids].map((id): [string, number] => [
    id,
    ((left.taken.wedges[id] ?? 0) + (right.taken.wedges[id] ?? 0)) / 2,
  ]);
  return [
    {
      level: name,
      y: left.y,
      bodyGirth,
      ease,
      targetGirth,
      sewnGirth: mean(left.sewnGirth, right.sewnGirth),
      alongEdge: mean(left.alongEdge, right.alongEdge),
      widths: { ...widthsOf('left', left), ...widthsOf('right', right) },
      taken: {
        wedges: Object.fromEntries(wedges),
        side: {
          front: (left.taken.side.front + right.taken.side.front) / 2,
          back: (left.taken.side.back + right.taken.side.back) / 2,
        },
      },
    },
  ];
}

const rowOf = (name: LevelName, { proof }: Draft): LedgerRow | undefined =>
  proof.ledger.find(({ level }) => level === name);

const widthsOf = (hand: Hand, { widths }: LedgerRow): Record<string, number> =>
  Object.fromEntries(Object.entries(widths).map(([id, width]) => [ofHand(hand, id), width]));
