// What proves a draft, as tables: mates walked along each other, edges run across seams, girths measured in the cloth.

import { formatLength, LEVEL_WORDS, PROOFS, seamLabel, type Unit, wedgeNameOf } from '../../document';
import {
  type Closure,
  type DartWalkRow,
  type Draft,
  type EdgeContinuityRow,
  openWidth,
  type SeamIdentity,
  type SeamWalkRow,
  type Style,
} from '../../engine';
import type { PointedOut } from '../../table';
import { differenceWritten } from '../components/differenceWritten';
import { alteredWritten, type FinishedGirth, finishedGirth, whereOutside } from '../components/girthWords';

/** What a press shows on the drawing; `key` tells it from all others. */
export interface Pointer {
  readonly key: string;
  readonly text: string;
  readonly place: PointedOut;
}

interface ProofRow {
  readonly key: string;
  readonly head: string | Pointer;
  readonly cells: readonly (string | Pointer)[];
  /** It does not hold here. */
  readonly off: boolean;
}

interface Column {
  readonly head: string;
  /** As it is written within a sentence; left out where no cell of the column is pressed. */
  readonly name?: string;
}

export interface Proof {
  readonly title: string;
  readonly says: string;
  readonly columns: readonly Column[];
  readonly rows: readonly ProofRow[];
  /** How many seams, crossings or girths were measured. */
  readonly count: number;
  /** The same in words. */
  readonly counted: string;
  /** The widest difference of mates, what is eased left aside, mm; 0 where none are compared. */
  readonly widest: number;
}

/** Less than this nobody can cut or sew. mm */
const SEAM_MM = 0.05;
const KINK_DEGREES = 0.5;

/** Degrees in a radian. */
const DEGREES = 180 / Math.PI;

export function seamWalk({ proof }: Draft, unit: Unit, style: Style): Proof {
  const { seamWalk: words } = PROOFS;
  const darts = proof.closedDarts.length > 0 || proof.seams.some(({ seam }) => seam.kind === 'dart');
  const name = namesOf(proof, style);
  const row = (
    seam: SeamIdentity,
    place: PointedOut,
    one: number,
    other: number,
    marksMoved: string,
    ease = 0,
  ): ProofRow => ({
    key: seam.id,
    head: { key: seam.id, text: name(seam), place },
    cells: [
      formatLength(one, unit),
      formatLength(other, unit),
      ease === 0
        ? differenceWritten(one - other, unit)
        : words.eased({ length: formatLength(other - one, unit) }),
      marksMoved,
    ],
    off: Math.abs(one + ease - other) > SEAM_MM,
  });
  const count = proof.seams.length + proof.closedDarts.length;
  return {
    title: words.title,
    count,
    counted: PROOFS.counted.seams({ count }),
    widest: Math.max(
      0,
      ...proof.seams.map(({ lengthA, lengthB, ease }) => Math.abs(lengthA + ease - lengthB)),
      ...proof.closedDarts.map(({ lengthInner, lengthOuter }) => Math.abs(lengthInner - lengthOuter)),
    ),
    says: darts ? words.whatSeamsAndDarts : words.whatSeams,
    columns: [words.seam, words.oneEdge, words.mate, words.differ, words.marksMoved].map((head) => ({
      head,
    })),
    rows: [
      ...proof.seams.map((walk) =>
        row(
          walk.seam,
          placeOfSeam(walk),
          walk.lengthA,
          walk.lengthB,
          differenceWritten(walk.markDrift, unit),
          walk.ease,
        ),
      ),
      // Between its points a closed dart has no balance marks.
      ...proof.closedDarts.map((dart) =>
        row(dart.seam, placeOfDart(dart), dart.lengthInner, dart.lengthOuter, ''),
      ),
    ],
  };
}

export const placeOfSeam = ({ a, b }: SeamWalkRow): PointedOut => ({
  kind: 'seam',
  pieces: [a.piece.id, b.piece.id],
  edges: [a.edge, b.edge],
});

export const placeOfDart = ({ seam }: DartWalkRow): PointedOut => ({
  kind: 'dart',
  piece: seam.piece.id,
  wedge: seam.wedge,
});

export function edgeContinuity({ proof }: Draft, style: Style): Proof {
  const { edgeRun: words } = PROOFS;
  const name = namesOf(proof, style);
  // A dart meets one of the edges only.
  const seams = new Map(proof.edges.map(({ seam }) => [seam.id, seam]));
  const bendAt = (row: EdgeContinuityRow | undefined, angle: number): boolean =>
    row !== undefined && Math.abs(angle - row.asked) > KINK_DEGREES / DEGREES;
  const cell = (row: EdgeContinuityRow | undefined): string | Pointer => {
    if (!row) return '';
    const angle = `${(row.angle * DEGREES).toFixed(1)}°`;
    return {
      key: `${row.seam.id} ${row.edge}`,
      text: bendAt(row, Math.PI) ? words.corner({ angle }) : angle,
      place: { kind: 'crossing', piece: row.at.piece.id, at: row.at.point },
    };
  };
  const count = proof.edges.length;
  return {
    title: words.title,
    count,
    counted: PROOFS.counted.crossings({ count }),
    widest: 0,
    says: words.what,
    columns: [{ head: words.crossing }, words.top, words.hem],
    rows: [...seams]
      .flatMap(([id, seam]) => {
        const own = proof.edges.filter((row) => row.seam.id === id);
        const [top, hem] = (['top', 'hem'] as const).map((edge) => own.find((row) => row.edge === edge));
        const across = own.flatMap((row) =>
          row.edge === 'neckline' || row.edge === 'armhole' ? [{ row, edge: row.edge }] : [],
        );
        return [
          ...(top || hem ? [{ key: id, head: name(seam), top, hem }] : []),
          // Both are parts of the top edge; a row each keeps them apart.
          ...across.map(({ row, edge }) => ({
            key: `${id} ${edge}`,
            head: words[edge]({ seam: name(seam) }),
            top: row,
            hem: undefined,
          })),
        ];
      })
      .map(({ key, head, top, hem }) => ({
        key,
        head,
        cells: [cell(top), cell(hem)],
        off: [top, hem].some((row) => bendAt(row, row?.angle ?? 0)),
      })),
  };
}

export function girthProof({ proof, span }: Draft, unit: Unit, closure: Closure): Proof {
  const gap = openWidth(closure);
  const { girths: words } = PROOFS;
  const isAltered = proof.ledger.some((row) => alteredWritten(row, unit) !== '');
  const count = proof.ledger.filter((row) => finishedGirth(row, closure) !== null).length;
  return {
    title: words.title,
    count,
    counted: PROOFS.counted.girths({ count }),
    widest: 0,
    says: gap > 0 ? words.whatLaced({ gap: formatLength(gap, unit, { withUnit: true }) }) : words.whatClosed,
    columns: [
      words.level,
      words.asked,
      ...(isAltered ? [words.altered] : []),
      gap > 0 ? words.laced : words.sewn,
      words.differ,
    ].map((head) => ({ head })),
    rows: proof.ledger.map((row) => {
      const finished = finishedGirth(row, closure);
      // An edge is not the level line: what it differs by is said where it tells.
      const differ =
        row.sewnGirth === null ? finished?.off || null : row.sewnGirth - row.targetGirth - row.alteredBy;
      return {
        key: row.level,
        head: { key: row.level, text: LEVEL_WORDS[row.level], place: { kind: 'level', level: row.level } },
        cells: [
          formatLength(row.targetGirth + gap, unit),
          ...(isAltered ? [alteredWritten(row, unit) || words.unaltered] : []),
          finished ? girthWritten(finished, unit) : whereOutside(row, span),
          differ === null ? '' : differenceWritten(differ, unit),
        ],
        off: finished !== null && finished.off !== 0,
      };
    }),
  };
}

function girthWritten({ girth, along }: FinishedGirth, unit: Unit): string {
  const length = formatLength(girth, unit);
  return along ? PROOFS.girths.alongEdge({ girth: length }) : length;
}

/** Names for the heads of rows; where a panel has more than one dart, each is told by the wedge it is. */
function namesOf({ seams, closedDarts }: Draft['proof'], style: Style): (seam: SeamIdentity) => string {
  const darts = [...seams, ...closedDarts].flatMap(({ seam }) =>
    seam.kind === 'dart' ? [seam.piece.id] : [],
  );
  return (seam) =>
    seam.kind === 'dart' && darts.filter((id) => id === seam.piece.id).length > 1
      ? seamLabel(seam, wedgeNameOf(seam.wedge, style))
      : seamLabel(seam);
}
