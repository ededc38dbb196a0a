// A plan at full size as panels: the lines of each piece as it lies on the cloth, with its name, for a roll or a projector.

import { LAY_PLAN } from '../../document';
import type { Piece, Point } from '../../engine';
import type { PlacedPanel } from '../layout/placePanels';
import type { Plan } from '../layout/planPanels';
import { foldOf, panelLines } from '../panel/panelLines';
import type { PlacedText, Stroke } from '../panel/strokes';
import { MM_PER_POINT, shortened, textWidth } from '../text/textWidth';
import { settable } from '../text/writable';
import { laidAt } from './affine';
import { laidWidth } from './cloth';
import { labelAt } from './labelAt';
import { placedName } from './layTexts';
import type { LayPlan, Placed } from './plan';

/** Around the cloth, for its edges and what is written on them. mm */
const RIM_MM = 12;

/**
 * The plan with the length of the cloth running down the page and its selvedge or fold at the right, as it comes off the roll.
 *
 * @param textScale factor on the sizes of texts
 */
export function planOfCloth(plan: LayPlan, textScale = 1): Plan {
  const width = laidWidth(plan.cloth);
  const onPage = ({ x, y }: Point): Point => ({ x: RIM_MM + width - y, y: RIM_MM + x });
  const panels = plan.placed.map((placed) => panelOf(placed, plan, onPage, textScale));
  const edges = clothEdges(plan, onPage, textScale);
  const [first, ...others] = panels;
  return {
    panels: first
      ? [
          {
            ...first,
            lines: [...first.lines, ...edges.lines],
            texts: [...first.texts, ...edges.texts],
          },
          ...others,
        ]
      : [],
    widthMm: width + 2 * RIM_MM,
    heightMm: plan.lengthMm + 2 * RIM_MM,
  };
}

function panelOf(
  placed: Placed,
  plan: LayPlan,
  onPage: (point: Point) => Point,
  textScale: number,
): PlacedPanel {
  const { piece, outline, onto } = placed;
  const cutLine = outline.map(onPage);
  const lines = linesOf(piece, plan.cloth.folded).map(({ points, ...line }) => ({
    ...line,
    points: points.map((point) => onPage(laidAt(onto, point))),
  }));
  const [first] = cutLine;
  const isWhole = foldOf(piece) !== null && !plan.cloth.folded;
  return {
    piece: { ...piece, cutLine },
    turns: 0,
    offset: { x: 0, y: 0 },
    lines: isWhole && first ? [{ kind: 'cut', points: [...cutLine, first] }, ...lines] : lines,
    texts: [nameOn(cutLine, placedName(placed, plan), textScale)],
  };
}

/** The lines of a piece; of one that lies whole, the lines of both halves inside its cut line. */
function linesOf(piece: Piece, isFolded: boolean): Stroke[] {
  const fold = foldOf(piece);
  const lines = panelLines(piece);
  if (!fold || isFolded) return lines;
  const x = fold.points[0]?.x ?? 0;
  const inner = lines.filter(({ kind }) => kind !== 'cut' && kind !== 'fold' && kind !== 'grain');
  const other = inner.map(
    (line): Stroke => ({ ...line, points: line.points.map((point) => ({ ...point, x: 2 * x - point.x })) }),
  );
  return [...inner, ...other, { kind: 'fold', points: fold.points }];
}

const [MOST_PT, LEAST_PT] = [16, 6];

function nameOn(ring: readonly Point[], name: string, textScale: number): PlacedText {
  const { at, roomMm } = labelAt(ring);
  const written = settable(name);
  const fits = (0.9 * roomMm) / textWidth(written, 1, true);
  const sizePt = Math.max(LEAST_PT, Math.min(MOST_PT, fits)) * textScale;
  const text = shortened(written, sizePt, true, Math.max(roomMm, 20));
  return { ...centred(text, at, sizePt, true), onLine: true };
}

const centred = (text: string, at: Point, sizePt: number, bold: boolean): PlacedText => ({
  text,
  start: { x: at.x - textWidth(text, sizePt, bold) / 2, y: at.y + 0.35 * sizePt * MM_PER_POINT },
  turnRad: 0,
  sizePt,
  bold,
});

/** The edges of the cloth that is used, and what each is. */
function clothEdges(
  { cloth, lengthMm }: LayPlan,
  onPage: (point: Point) => Point,
  textScale: number,
): { readonly lines: Stroke[]; readonly texts: PlacedText[] } {
  const width = laidWidth(cloth);
  const line = (kind: Stroke['kind'], from: Point, to: Point): Stroke => ({
    kind,
    points: [onPage(from), onPage(to)],
  });
  const [start, end] = [
    { x: 0, y: 0 },
    { x: lengthMm, y: 0 },
  ];
  const [otherStart, otherEnd] = [
    { x: 0, y: width },
    { x: lengthMm, y: width },
  ];
  const sizePt = 9 * textScale;
  const pageMm = width + 2 * RIM_MM;
  /** Written above an edge, and not past the page. */
  const above = (text: string, y: number): PlacedText => {
    const room = textWidth(text, sizePt, false);
    const left = onPage({ x: 0, y }).x - room / 2;
    const start = { x: Math.max(1, Math.min(left, pageMm - room - 1)), y: RIM_MM - 3 };
    return { text, start, turnRad: 0, sizePt, bold: false };
  };
  const { edges } = LAY_PLAN;
  return {
    lines: [
      line(cloth.folded ? 'fold' : 'leader', start, end),
      line('leader', otherStart, otherEnd),
      line('leader', start, otherStart),
      line('leader', end, otherEnd),
    ],
    texts: [
      above(cloth.folded ? edges.fold : edges.selvedge, 0),
      above(edges.selvedge, width),
      above(edges.start, width / 2),
    ],
  };
}
