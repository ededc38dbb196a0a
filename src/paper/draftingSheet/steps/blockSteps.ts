// Steps that draw one half block: the bust-point line, the legs of each wedge, and the side seam.

import { DRAFTING_BLOCKS, DRAFTING_SHEET, type LegEnds, wedgePhrase, wedgePlaceOf } from '../../../document';
import {
  type BlockName,
  type Draft,
  type DraftedWedge,
  isThrough,
  type UpperEnd,
  xAt,
} from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep } from '../elements/draftingStep';
import { type Drawing, startDrawing } from '../elements/figure';
import { type DraftingHeight, heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';
import { beforeTurn } from './turnSteps';

const COLUMNS = DRAFTING_SHEET.columns;

/** The steps of one block, in the order of drawing; none where the draft has no blocks. */
export function blockSteps(asked: PlanInput, name: BlockName, lengths: SheetLengths): DraftingStep[] {
  const input = beforeTurn(asked);
  const { draft } = input;
  const block = draft.blocks?.[name];
  if (!block) return [];
  const heights = heightsOf(draft, lengths);
  const wedges = block.wedges.filter(isDrawn);
  const ends = block.upper?.ends ?? [];
  const onBlock = (drawn: readonly DraftedWedge[], fromShoulder = false): Drawing => {
    const drawing = startDrawing(draft, heights, [name], fromShoulder);
    for (const wedge of drawn) {
      const along = within(heights, wedge, ends);
      drawing.down(name, 'done', wedge.innerLeg, along);
      drawing.down(name, 'done', wedge.outerLeg, along);
    }
    return drawing;
  };
  return [
    bustLineStep(name, block.bustLine, onBlock([], true), heights, lengths),
    ...wedges.map((wedge, i) =>
      wedgeStep(input, name, wedge, onBlock(wedges.slice(0, i)), within(heights, wedge, ends), lengths),
    ),
    sideStep(input, name, onBlock(wedges), alongSideSeam(draft, name, heights), lengths),
  ];
}

/** Whether a wedge is drawn: a dart without intake is not. */
const isDrawn = ({ extent, intake }: DraftedWedge): boolean =>
  isThrough(extent) || [...intake.values()].some((taken) => taken > 0);

/** A dart's point nearer to a line than this is marked on it. mm */
const ON_LINE_MM = 1;

/**
 * The heights at which a wedge is open or has its point, without the ends of other wedges. Of those above its end in neckline,
 * shoulder or armhole the nearest one stays, because truing may raise a leg above that end.
 */
function within(
  heights: readonly DraftingHeight[],
  { id, extent: { upper, lower } }: DraftedWedge,
  ends: readonly UpperEnd[],
): DraftingHeight[] {
  const end = ends.find(({ wedge, isDart }) => wedge === id && !isDart)?.at.point.y ?? null;
  const isAtEnd = (y: number): boolean => end !== null && Math.abs(y - end) < ON_LINE_MM;
  const open = heights.filter(
    ({ y, endOf }) =>
      (upper === null || y > upper - ON_LINE_MM) &&
      (lower === null || y < lower + ON_LINE_MM) &&
      (endOf === undefined || endOf === id || isAtEnd(y)),
  );
  const first = end === null ? 0 : open.findIndex(({ y }) => y > end - ON_LINE_MM);
  return open.slice(Math.max(0, first - 1));
}

/** The heights of the side seam, from the level at or next above its upper end. */
function alongSideSeam(
  { pieces }: Draft,
  block: BlockName,
  heights: readonly DraftingHeight[],
): readonly DraftingHeight[] {
  const seam = pieces
    .filter((piece) => piece.block === block)
    .flatMap(({ edges }) => edges.filter((edge) => edge.isSideSeam));
  const top = Math.min(...seam.flatMap(({ points }) => points.map(({ y }) => y)));
  const above = heights.filter(({ y }) => y < top + ON_LINE_MM);
  // Only from a level on is the curve through the marks that of the engine.
  const from = above.filter(({ level }) => level !== null).at(-1) ?? above.at(-1);
  return from && Number.isFinite(top) ? heights.slice(heights.indexOf(from)) : heights;
}

function bustLineStep(
  block: BlockName,
  bustLine: number,
  drawing: Drawing,
  heights: readonly DraftingHeight[],
  lengths: SheetLengths,
): DraftingStep {
  const texts = DRAFTING_BLOCKS.bustLine;
  const foot = heights[heights.length - 1]?.y ?? 0;
  drawing.line(block, 'drawn', [
    { x: bustLine, y: 0 },
    { x: bustLine, y: foot },
  ]);
  drawing.label(block, lengths.text(bustLine), { x: bustLine, y: -4 }, 'middle');
  return {
    heading: texts.heading[block],
    sentences: [texts.draw[block]],
    tables: [
      {
        columns: [COLUMNS.line, COLUMNS.fromCentre],
        rows: [[DRAFTING_SHEET.lines.bustPoint, lengths.text(bustLine)]],
      },
    ],
    figure: drawing.done(),
  };
}

function wedgeStep(
  { savedDraft }: PlanInput,
  block: BlockName,
  wedge: DraftedWedge,
  drawing: Drawing,
  heights: readonly DraftingHeight[],
  lengths: SheetLengths,
): DraftingStep {
  const { axis, innerLeg, outerLeg, onCentre, extent } = wedge;
  drawing.down(block, 'drawn', innerLeg, heights);
  drawing.down(block, 'drawn', outerLeg, heights);
  let overlaps = false;
  const rows = heights.map(({ name, y, level }) => {
    const [inner, outer] = [xAt(innerLeg, y), xAt(outerLeg, y)];
    overlaps ||= lengths.round(outer) < lengths.round(inner);
    for (const x of onCentre ? [outer] : [inner, outer]) drawing.spot(block, { x, y });
    if (level !== null)
      drawing.label(block, lengths.text(outer - inner), { x: outer + 4, y: y - 2 }, 'start');
    const legs = onCentre ? [outer] : [xAt(axis, y), inner, outer];
    return [name, lengths.text(outer - inner), ...legs.map(lengths.text)];
  });
  const texts = DRAFTING_BLOCKS.wedge;
  const name = wedgePhrase(wedgePlaceOf(wedge.id, savedDraft.style));
  return {
    heading: texts.heading[block]({ wedge: name }),
    sentences: [
      onCentre ? texts.onCentre : texts.legs,
      texts.draw({ ends: endsOf(extent, heights) }),
      ...(overlaps ? [texts.overlap] : []),
    ],
    tables: [
      {
        columns: onCentre
          ? [COLUMNS.line, COLUMNS.intake, COLUMNS.outerLeg]
          : [COLUMNS.line, COLUMNS.intake, COLUMNS.axis, COLUMNS.innerLeg, COLUMNS.outerLeg],
        rows,
      },
    ],
    figure: drawing.done(),
  };
}

/** What the legs do at their two ends. Where a dart's point is not among the heights, the dart is open at the edge. */
function endsOf({ upper, lower }: DraftedWedge['extent'], heights: readonly DraftingHeight[]): LegEnds {
  const isPoint = (point: number | null): boolean =>
    point !== null && heights.some(({ y }) => Math.abs(y - point) < ON_LINE_MM);
  const [above, below] = [isPoint(upper), isPoint(lower)];
  if (above && below) return 'bothPoints';
  if (above) return 'upperPoint';
  if (below) return 'lowerPoint';
  return 'through';
}

function sideStep(
  { draft }: PlanInput,
  block: BlockName,
  drawing: Drawing,
  heights: readonly DraftingHeight[],
  lengths: SheetLengths,
): DraftingStep {
  const texts = DRAFTING_BLOCKS.sideSeam;
  const own = draft.blocks?.[block];
  const rows: string[][] = [];
  let isHeld = false;
  if (own) {
    const { sideSeam: seam, width } = own;
    drawing.down(block, 'drawn', seam, heights);
    for (const { name, y, level } of heights) {
      const x = xAt(seam, y);
      drawing.spot(block, { x, y });
      if (level !== null) drawing.label(block, lengths.text(x), { x: x + 5, y: y - 2 }, 'start');
      const sum = level === null ? undefined : width.get(level);
      const isSum = sum !== undefined && Math.abs(sum - x) < ON_LINE_MM;
      isHeld ||= sum !== undefined && !isSum;
      const net = isSum ? draft.levels.find((each) => each.name === level)?.net[block] : undefined;
      // The intake is the difference of the rounded lengths, so that the sum is right as it is read.
      rows.push(
        net === undefined
          ? [name, '', '', lengths.text(x)]
          : [name, lengths.text(net), lengths.text(lengths.round(x) - lengths.round(net)), lengths.text(x)],
      );
    }
  }
  return {
    heading: texts.heading[block],
    sentences: [texts.putBack, ...(isHeld ? [texts.held] : []), texts.draw],
    tables: [{ columns: [COLUMNS.line, COLUMNS.closedHalf, COLUMNS.allWedges, COLUMNS.sideSeam], rows }],
    figure: drawing.done(),
  };
}
