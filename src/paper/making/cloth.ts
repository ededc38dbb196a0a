// Lengths of cloth to buy: panels laid in rows on cloth of each usual width, all grains along the cloth.

import { inches, type Piece, type Point } from '../../engine';
import type { MakingSettings } from './settings';

/** Usual widths of cloth: 36, 44–45, 54, 60 in; 112, 135–145 cm. */
const CLOTH_WIDTHS: readonly { readonly unit: 'in' | 'cm'; readonly mm: number }[] = [
  { unit: 'in', mm: inches(36) },
  { unit: 'in', mm: inches(45) },
  { unit: 'in', mm: inches(54) },
  { unit: 'in', mm: inches(60) },
  { unit: 'cm', mm: 1120 },
  { unit: 'cm', mm: 1400 },
];

export interface ClothLength {
  readonly widthMm: number;
  readonly unit: 'in' | 'cm';
  /** Folded lengthwise, selvedge on selvedge, or open in one layer. */
  readonly lay: 'folded' | 'open';
  /** Length for one layer of the garment, `clothSpare` included, mm; null where a panel is wider than the cloth. */
  readonly lengthMm: number | null;
}

/** Gap between two panels, for the shears; common practice, no source. mm */
const BETWEEN_MM = 10;

/** The length of cloth for one layer, for each width, in the shorter of the two lays. */
export function clothFor(pieces: readonly Piece[], settings: MakingSettings): ClothLength[] {
  return CLOTH_WIDTHS.map(({ unit, mm }) => {
    const usable = mm - 2 * settings.selvedge;
    const folded = rowsLength(pieces.map(foldedBox), usable / 2);
    const open = rowsLength(pieces.flatMap(openBoxes), usable);
    const lay = folded !== null && (open === null || folded <= open) ? 'folded' : 'open';
    const rowsMm = lay === 'folded' ? folded : open;
    return { widthMm: mm, unit, lay, lengthMm: rowsMm === null ? null : rowsMm * (1 + settings.clothSpare) };
  });
}

interface Box {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Its centre lies on the fold of the cloth, so it starts a row. */
  readonly atFold: boolean;
}

/** Box of a piece on folded cloth, where one outline cuts both pieces of a pair. */
const foldedBox = (piece: Piece): Box => ({ ...sizeOf(piece.cutLine), atFold: piece.cut.onFold });

/** Boxes of a piece on open cloth: one for each time it is cut; a piece cut on the fold is laid out whole. */
function openBoxes({ cutLine, cut }: Piece): Box[] {
  const size = sizeOf(cutLine);
  const whole = { ...size, widthMm: cut.onFold ? 2 * size.widthMm : size.widthMm, atFold: false };
  return Array.from({ length: cut.count }, () => whole);
}

/** Length of all rows, mm; null where a box is wider than the cloth. Boxes go, by height, into the first row with room. */
function rowsLength(boxes: readonly Box[], widthMm: number): number | null {
  if (boxes.some((box) => box.widthMm > widthMm)) return null;
  const rows: { left: number; readonly heightMm: number }[] = [];
  const byHeight = [...boxes].sort(
    (a, b) => Number(b.atFold) - Number(a.atFold) || b.heightMm - a.heightMm || b.widthMm - a.widthMm,
  );
  for (const box of byHeight) {
    const row = box.atFold
      ? undefined
      : rows.find((each) => each.left >= box.widthMm + BETWEEN_MM && each.heightMm >= box.heightMm);
    if (row) row.left -= box.widthMm + BETWEEN_MM;
    else rows.push({ left: widthMm - box.widthMm, heightMm: box.heightMm });
  }
  return rows.reduce((sum, row) => sum + row.heightMm + BETWEEN_MM, 0);
}

function sizeOf(ring: readonly Point[]): { widthMm: number; heightMm: number } {
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  return {
    widthMm: Math.max(0, Math.max(...xs) - Math.min(...xs)),
    heightMm: Math.max(0, Math.max(...ys) - Math.min(...ys)),
  };
}
