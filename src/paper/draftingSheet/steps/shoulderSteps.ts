// Steps for neckline, shoulder and armhole of a shouldered block, and for its shoulder seam.

import { DRAFTING_PANELS, DRAFTING_SHEET, edgeName, pieceLabel, wedgeNameOf } from '../../../document';
import type { BlockName, Draft, Edge, Piece, Point } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import { heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

const TEXTS = DRAFTING_PANELS.shoulder;
const COLUMNS = DRAFTING_SHEET.columns;

/** Whether a panel has its part of neckline, shoulder and armhole instead of a top edge. */
export const isShouldered = ({ edges }: Piece): boolean =>
  edges.some(({ role }) => role === 'shoulder' || role === 'armhole');

/** A step for each shouldered block, the last one with the shoulder seam; none where the draft is strapless. */
export function shoulderSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const pieces = input.draft.pieces.filter(isShouldered);
  const blocks = (['front', 'back'] as const).filter((name) => pieces.some(({ block }) => block === name));
  return blocks.map((name, i) => {
    const own = pieces.filter(({ block }) => block === name);
    const step = blockStep(input, name, own, lengths);
    if (i < blocks.length - 1) return step;
    return {
      ...step,
      sentences: [...step.sentences, easeSentence(input, lengths)],
      tables: [...step.tables, ...seamTable(input, lengths)],
    };
  });
}

function blockStep(
  { draft, savedDraft }: PlanInput,
  block: BlockName,
  pieces: readonly Piece[],
  lengths: SheetLengths,
): DraftingStep {
  const drawing = startDrawing(draft, heightsOf(draft, lengths), [block], true);
  const rows: string[][] = [];
  // Edges are listed from the centre outwards; at the top a piece's edges run the other way.
  for (const piece of pieces)
    for (const edge of [...piece.edges].reverse()) {
      if (!ABOVE.includes(edge.role)) {
        drawing.line(block, 'done', edge.points);
        continue;
      }
      const guides = guidesOn(fromCentre(edge.points), lengths);
      drawing.line(block, 'drawn', edge.points);
      for (const guide of guides) drawing.spot(block, guide);
      rows.push(
        ...guides.map(({ x, y }, i) => [
          i === 0 ? DRAFTING_PANELS.edgeOf({ piece: pieceLabel(piece), edge: edgeName(edge, piece) }) : '',
          lengths.text(x),
          lengths.text(y),
        ]),
      );
    }
  const { neck, tip } = endsOfShoulder(pieces);
  if (neck) drawing.label(block, lengths.text(neck.x), { x: neck.x, y: -5 }, 'end');
  if (tip)
    drawing.label(
      block,
      TEXTS.tip({ across: lengths.text(tip.x), down: lengths.text(tip.y) }),
      { x: tip.x + 5, y: tip.y },
      'start',
    );
  return {
    heading: TEXTS.heading[block],
    sentences: [
      ...frameSentences(draft, block, tip, lengths),
      ...endSentences(draft, savedDraft, block, lengths),
      TEXTS.curves,
    ],
    tables: [{ columns: [COLUMNS.edge, COLUMNS.fromCentre, COLUMNS.belowShoulder], rows }],
    figure: drawing.done(),
  };
}

/** How the block hangs and how its shoulder and armhole are set out, with this client's lengths. */
function frameSentences(
  { blocks }: Draft,
  block: BlockName,
  flatTip: Point | undefined,
  lengths: SheetLengths,
): string[] {
  const upper = blocks?.[block].upper;
  if (!upper || !flatTip) return [];
  const { neck, tip, centre, inward, underarm } = upper.frame;
  const isParted = upper.ends.some(({ edge }) => edge !== 'armhole');
  return [
    TEXTS[block]({
      height: heightText(neck.y, lengths),
      neck: lengths.text(neck.x),
      depth: lengths.text(centre.point.y - neck.y),
    }),
    TEXTS.tipAt({
      long: lengths.text(Math.hypot(tip.x - neck.x, tip.y - neck.y)),
      falls: lengths.text(tip.y - neck.y),
      across: lengths.text(flatTip.x),
      height: heightText(flatTip.y, lengths),
    }),
    isParted ? TEXTS.parts : TEXTS.line,
    TEXTS.armhole({ inward: lengths.text(inward), height: heightText(underarm.y, lengths) }),
  ];
}

/** A height in words, as a distance from the shoulder level. */
function heightText(y: number, lengths: SheetLengths): string {
  const below = lengths.round(y);
  if (Math.abs(below) < lengths.divisionMm / 2) return TEXTS.height.on;
  const length = lengths.text(Math.abs(below));
  return below < 0 ? TEXTS.height.above({ length }) : TEXTS.height.below({ length });
}

/** Where each wedge ends above, and what it takes there. */
const endSentences = (
  { blocks }: Draft,
  { style }: PlanInput['savedDraft'],
  block: BlockName,
  lengths: SheetLengths,
): string[] =>
  (blocks?.[block].upper?.ends ?? []).map(({ wedge, edge, at, intake }) =>
    TEXTS.wedgeEnd({
      wedge: wedgeNameOf(wedge, style),
      edge,
      across: lengths.text(at.point.x),
      height: heightText(at.point.y, lengths),
      takes: lengths.text(intake),
    }),
  );

/** What the back shoulder is longer. */
function easeSentence({ draft }: PlanInput, lengths: SheetLengths): string {
  const ease = draft.proof.seams.reduce((sum, seam) => sum + seam.ease, 0);
  return ease > 0 ? TEXTS.measureEased({ ease: lengths.text(ease) }) : TEXTS.measure;
}

const ABOVE: readonly Edge['role'][] = ['top', 'shoulder', 'armhole'];

/** The two ends of a block's shoulder line. */
function endsOfShoulder(pieces: readonly Piece[]): { neck: Point | undefined; tip: Point | undefined } {
  const points = pieces
    .flatMap(({ edges }) => edges.filter(({ role }) => role === 'shoulder'))
    .flatMap((edge) => edge.points)
    .sort((a, b) => a.x - b.x);
  return { neck: points[0], tip: points.at(-1) };
}

function seamTable({ draft }: PlanInput, lengths: SheetLengths): StepTable[] {
  const rows = draft.proof.seams
    .filter(({ seam }) => seam.kind === 'shoulder')
    .map(({ a, b, lengthA, lengthB }) => [
      DRAFTING_PANELS.seamOf({ a: pieceLabel(a.piece), b: pieceLabel(b.piece) }),
      lengths.text(lengthA),
      lengths.text(lengthB),
    ]);
  return rows.length > 0
    ? [{ columns: [COLUMNS.shoulderSeam, COLUMNS.frontLength, COLUMNS.backLength], rows }]
    : [];
}
