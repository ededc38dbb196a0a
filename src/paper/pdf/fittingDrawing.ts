// The small drawing of a fitting form: the panels laid open with their seams numbered and the levels across, to mark pins on.

import { FITTING_FORM, LEVEL_TITLES, pieceLabel } from '../../document';
import { type Draft, type Piece, type Point, SIDES } from '../../engine';
import { textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import type { PdfCanvas } from './file/pdfCanvas';

/** A seam or dart of the form's table; `pieces` it joins, or the wedge of the dart. */
export interface NumberedSeam {
  readonly label: string;
  readonly pieces: readonly string[];
  readonly wedge: string | null;
}

const SIZE_PT = 6.5;
/** Room for the names of the levels, between panels, above them and below, mm. */
const [NAMES_MM, GAP_MM, ABOVE_MM, BELOW_MM] = [24, 2.6, 5, 9];
const MOST_HEIGHT_MM = 62;

/** A panel with x from its edge nearer to centre front outwards, from 0. */
interface Laid {
  readonly piece: Piece;
  readonly ring: readonly Point[];
  readonly darts: readonly { readonly wedge: string; readonly legs: readonly (readonly Point[])[] }[];
  readonly width: number;
}

/**
 * Draws both halves outside up, the wearer's right on the left of the page, from `corner` over `widthMm`; `seams` have the numbers
 * 1, 2, … of their places in the list. Gives the height it takes, mm.
 */
export function drawForFitting(
  canvas: PdfCanvas,
  corner: Point,
  widthMm: number,
  draft: Draft,
  seams: readonly NumberedSeam[],
): number {
  const halves = SIDES.map((side) => ({ side, laid: laidOpen(draft.halves?.[side] ?? draft) }));
  const points = halves.flatMap(({ laid }) => laid.flatMap(({ ring }) => ring));
  if (points.length === 0) return 0;
  const top = Math.min(...points.map(({ y }) => y));
  const foot = Math.max(...points.map(({ y }) => y));
  const mostPanels = Math.max(...halves.map(({ laid }) => laid.length));
  const widest = Math.max(...halves.map(({ laid }) => laid.reduce((sum, { width }) => sum + width, 0)));
  const room = (widthMm - NAMES_MM) / 2 - (mostPanels + 1) * GAP_MM;
  const scale = Math.min(room / widest, MOST_HEIGHT_MM / (foot - top));
  const centre = corner.x + NAMES_MM + (widthMm - NAMES_MM) / 2;
  const down = (y: number): number => corner.y + ABOVE_MM + (y - top) * scale;
  const write = textWriter(canvas);
  for (const { name, y } of draft.levels) {
    if (y <= top || y >= foot) continue;
    const line = [centre - (widthMm - NAMES_MM) / 2, corner.x + widthMm].map((x) => ({ x, y: down(y) }));
    canvas.line('rule', line, 0, [1.2, 1]);
    write(LEVEL_TITLES[name], { x: corner.x, y: down(y) + 0.8 }, 'start');
  }
  for (const { side, laid } of halves) {
    const way = side === 'left' ? 1 : -1;
    let from = GAP_MM / 2;
    const at = ({ x, y }: Point): Point => ({ x: centre + way * (from + x * scale), y: down(y) });
    const numberAt = (x: number, y: number, pieces: readonly string[], wedge: string | null = null): void => {
      const found = seams.findIndex((seam) =>
        wedge === null ? joins(seam, pieces) : seam.wedge === wedge && joins(seam, pieces),
      );
      if (found >= 0) write(FITTING_FORM.number({ number: found + 1 }), { x: centre + way * x, y }, 'middle');
    };
    for (const [i, { piece, ring, darts, width }] of laid.entries()) {
      const placed = ring.map(at);
      canvas.line('mapPanel', [...placed, ...placed.slice(0, 1)]);
      for (const { wedge, legs } of darts) {
        for (const leg of legs) canvas.line('mapPanel', leg.map(at));
        const head = legs.flat().reduce((least, point) => (point.y < least.y ? point : least));
        numberAt(from + head.x * scale, down(head.y) - 0.6, [piece.id], wedge);
      }
      const name = pieceLabel(piece);
      const hasRoom = textWidth(settable(name), SIZE_PT, true) < width * scale + GAP_MM / 2;
      const short = hasRoom ? name : FITTING_FORM.number({ number: piece.number });
      write(short, at({ x: width / 2, y: foot + 3.2 / scale }), 'middle', true);
      const next = laid[i + 1];
      if (next)
        numberAt(from + width * scale + GAP_MM / 2, corner.y + ABOVE_MM - 1.6, [piece.id, next.piece.id]);
      from += width * scale + GAP_MM;
    }
    const ofSide = FITTING_FORM.sides[side];
    write(ofSide, { x: centre + (way * from) / 2, y: down(foot) + BELOW_MM - 1.5 }, 'middle');
  }
  return down(foot) + BELOW_MM - corner.y;
}

const joins = (seam: NumberedSeam, pieces: readonly string[]): boolean =>
  seam.pieces.length === pieces.length && pieces.every((id) => seam.pieces.includes(id));

/** The panels of a half from centre front to centre back. */
function laidOpen({ pieces }: Pick<Draft, 'pieces'>): Laid[] {
  const panels = pieces.filter(({ kind }) => kind === 'panel' || kind === 'sidePanel');
  const place = ({ kind, block, number }: Piece): number =>
    kind === 'sidePanel' ? 100 : block === 'front' ? number : 200 - number;
  return [...panels].sort((a, b) => place(a) - place(b)).map(outwards);
}

function outwards(piece: Piece): Laid {
  const outline = piece.edges.flatMap(({ points }) => points.slice(0, -1));
  // A right half that is drafted by itself lies mirrored; on the back x runs from centre back towards the side.
  const isMirrored = outline.reduce((sum, { x }) => sum + x, 0) < 0;
  const isBack = piece.kind === 'panel' && piece.block === 'back';
  const way = isMirrored === isBack ? 1 : -1;
  const least = Math.min(...outline.map(({ x }) => way * x));
  const turned = ({ x, y }: Point): Point => ({ x: way * x - least, y });
  return {
    piece,
    ring: outline.map(turned),
    darts: piece.darts.map(({ wedge, inner, outer }) => ({
      wedge,
      legs: [inner, outer].map((leg) => leg.map(turned)),
    })),
    width: Math.max(...outline.map(({ x }) => way * x)) - least,
  };
}

const textWriter =
  (canvas: PdfCanvas) =>
  (text: string, { x, y }: Point, anchor: 'start' | 'middle', bold = false): void => {
    const set = settable(text);
    const left = anchor === 'start' ? x : x - textWidth(set, SIZE_PT, bold) / 2;
    canvas.text({ text: set, start: { x: left, y }, turnRad: 0, sizePt: SIZE_PT, bold }, 0.2);
  };
