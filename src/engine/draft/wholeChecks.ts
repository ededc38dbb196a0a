// The proof of a garment whose halves differ: both halves' rows, the seams that join left to right, and girths summed.

import type { Level } from '../block/lines/levels';
import type { EdgeContinuityRow } from '../checks/edgeContinuity';
import type { LedgerRow } from '../checks/ledger';
import type { DartWalkRow, SeamWalkRow } from '../checks/seamWalk';
import { polylineLength } from '../geometry/polyline';
import { centreReference, pointOfSide, referenceOfSide } from '../pieces/rightSideUp';
import { dartOfSide, identifyCentre, pieceOfSide, seamOfSide } from '../terms/identity';
import { type Issue, issue } from '../terms/issue';
import { type BlockName, type LevelName, SIDES, type Side } from '../terms/names';
import type { Draft } from './draft';
import { centreEdge } from './mateCentres';

type Halves = Readonly<Record<Side, Draft>>;

interface WholeProof {
  readonly ledger: readonly LedgerRow[];
  readonly seams: readonly SeamWalkRow[];
  readonly closedDarts: readonly DartWalkRow[];
  readonly edges: readonly EdgeContinuityRow[];
  readonly issues: readonly Issue[];
}

/** Centre edges that differ by more than this after truing cannot be sewn to each other. mm */
const MOST_APART_MM = 0.05;

/**
 * What the checks measure on both halves together.
 *
 * @param levels of the body as it was measured
 * @param apart the halves before their centres were trued, for how far those differed
 * @param drifts how far balance marks of the centre edges moved, mm
 */
export function wholeProof(
  levels: readonly Level[],
  halves: Halves,
  apart: Halves,
  drifts: Readonly<Record<BlockName, number>>,
): WholeProof {
  const [front, back] = (['front', 'back'] as const).map((block) =>
    centreRow(block, halves, apart, drifts[block]),
  ) as [SeamWalkRow[], SeamWalkRow[]];
  return {
    ledger: levels.flatMap((level) => ledgerRow(level, halves)),
    seams: [...front, ...SIDES.flatMap((side) => seamsOf(side, halves[side])), ...back],
    closedDarts: SIDES.flatMap((side) =>
      halves[side].proof.closedDarts.map((row) => ({
        ...row,
        seam: dartOfSide(side, row.seam),
      })),
    ),
    edges: edgesOf(halves),
    issues: [...front, ...back]
      .filter(({ lengthA, lengthB }) => Math.abs(lengthA - lengthB) > MOST_APART_MM)
      .map(({ seam, lengthA, lengthB }) =>
        issue('centresUneven', { apart: Math.abs(lengthA - lengthB) }, { seam }),
      ),
  };
}

function seamsOf(side: Side, { proof, pieces, extras }: Draft): SeamWalkRow[] {
  const all = [...pieces, ...extras];
  return proof.seams.map((row) => ({
    ...row,
    seam: seamOfSide(side, row.seam),
    a: referenceOfSide(side, row.a, all),
    b: referenceOfSide(side, row.b, all),
  }));
}

function centreRow(block: BlockName, halves: Halves, apart: Halves, markDrift: number): SeamWalkRow[] {
  const [left, right] = [centreEdge(halves.left, block), centreEdge(halves.right, block)];
  if (!left || !right) return [];
  const before = SIDES.map((side) => polylineLength(centreEdge(apart[side], block)?.edge.points ?? []));
  return [
    {
      seam: identifyCentre(block),
      a: centreReference('left', left.piece),
      b: centreReference('right', right.piece),
      lengthA: polylineLength(left.edge.points),
      lengthB: polylineLength(right.edge.points),
      ease: 0,
      lengthDifference: (before[0] ?? 0) - (before[1] ?? 0),
      markDrift,
    },
  ];
}

/** Rows of both halves; at a centre, the left half's angle and the right half's make one crossing. */
function edgesOf(halves: Halves): EdgeContinuityRow[] {
  return SIDES.flatMap((side) => {
    const { proof, pieces } = halves[side];
    return proof.edges.flatMap((row): EdgeContinuityRow[] => {
      const piece = pieces.find(({ id }) => id === row.at.piece.id);
      const at = { piece: pieceOfSide(side, row.at.piece), point: pointOfSide(side, row.at.point, piece) };
      if (row.seam.kind !== 'centre') return [{ ...row, seam: seamOfSide(side, row.seam), at }];
      const other = halves.right.proof.edges.find(
        ({ seam, edge }) => seam.id === row.seam.id && edge === row.edge,
      );
      // Each half told it with its own mirror image: half of that is its own angle.
      return side === 'left' && other
        ? [{ ...row, at, angle: (row.angle + other.angle) / 2, asked: (row.asked + other.asked) / 2 }]
        : [];
    });
  });
}

/** Girths are the mean of the halves', as each was measured as if both were like it. */
function ledgerRow({ name, bodyGirth, ease, targetGirth }: Level, halves: Halves): LedgerRow[] {
  const [left, right] = SIDES.map((side) => rowOf(name, halves[side]));
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
      alteredBy: (left.alteredBy + right.alteredBy) / 2,
      sewnGirth: mean(left.sewnGirth, right.sewnGirth),
      alongEdge: mean(left.alongEdge, right.alongEdge),
      widths: { ...widthsOf('left', left, halves), ...widthsOf('right', right, halves) },
      taken: {
        wedges: Object.fromEntries(wedges),
        sideSeam: {
          front: (left.taken.sideSeam.front + right.taken.sideSeam.front) / 2,
          back: (left.taken.sideSeam.back + right.taken.sideSeam.back) / 2,
        },
      },
    },
  ];
}

const rowOf = (name: LevelName, { proof }: Draft): LedgerRow | undefined =>
  proof.ledger.find(({ level }) => level === name);

/** Widths of one half by the ids its pieces have in the whole. */
const widthsOf = (side: Side, { widths }: LedgerRow, halves: Halves): Record<string, number> =>
  Object.fromEntries(
    halves[side].pieces.flatMap((piece) => {
      const width = widths[piece.id];
      return width === undefined ? [] : [[pieceOfSide(side, piece).id, width]];
    }),
  );
