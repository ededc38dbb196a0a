// The waist seam of a skirt or trousers joined to a garment whose hem lies at the waist: how long the finished hem is there, front
// and back, and on each panel, so that the waist below can be made to match.

import { formatLength, MAKING_LIST, pieceLabel, type Unit } from '../../document';
import { type BlockName, type Draft, type PieceIdentity, polylineLength, type Style } from '../../engine';
import { timesCut } from './bones';

export interface WaistSeam {
  /** Round the whole garment, edge to edge, mm. */
  readonly lengthMm: number;
  /** Each panel's part, from the centre; the panels of one half, or of both where they differ. */
  readonly panels: readonly { readonly piece: PieceIdentity; readonly lengthMm: number }[];
}

/** A hem that leaves the waist line by more is no waist seam; our own bound, no source. mm */
const AT_WAIST_MM = 13;

/** The waist seam of each block, a side panel in one with the front; null where the hem does not lie at the waist all round. */
export function waistSeamOf(draft: Draft, style: Style): Readonly<Record<BlockName, WaistSeam>> | null {
  const { span, pieces } = draft;
  if (!span || style.turnedHem || pieces.length === 0) return null;
  const hems = pieces.map((piece) => ({
    piece,
    points: piece.edges.filter(({ role }) => role === 'hem').flatMap(({ points }) => points),
    lengthMm: piece.edges
      .filter(({ role }) => role === 'hem')
      .reduce((sum, { points }) => sum + polylineLength(points), 0),
  }));
  const isAtWaist = hems.every(({ points }) =>
    points.every(({ y }) => Math.abs(y - span.waist) <= AT_WAIST_MM),
  );
  if (!isAtWaist) return null;
  const of = (block: BlockName): WaistSeam => {
    const panels = hems.filter(({ piece }) => piece.block === block);
    return {
      lengthMm: timesCut(draft) * panels.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
      panels: panels.map(({ piece, lengthMm }) => ({ piece, lengthMm })),
    };
  };
  return { front: of('front'), back: of('back') };
}

/** The section of the making list; without lines where there is no such seam. */
export function waistSection(seam: Readonly<Record<BlockName, WaistSeam>> | null, unit: Unit) {
  const texts = MAKING_LIST.waistSeam;
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return {
    kind: 'waistSeam' as const,
    heading: texts.heading,
    lines: seam
      ? (['front', 'back'] as const).map((block) => ({
          item: texts.blocks[block],
          count: 1,
          lengthMm: seam[block].lengthMm,
          note: seam[block].panels
            .map(({ piece, lengthMm }) => texts.panel({ piece: pieceLabel(piece), length: inUnit(lengthMm) }))
            .join(', '),
        }))
      : [],
    remark: texts.remark,
    care: '',
  };
}
