// Steps for neckline, shoulder and armhole of a shouldered block, and for its shoulder seam.

import { edgeName, pieceLabel, wedgeNameOf } from '../../../document';
import type { BlockName, Draft, Edge, Piece, Point } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import { heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

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
          i === 0 ? `${pieceLabel(piece)}, ${edgeName(edge, piece)}` : '',
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
      `${lengths.text(tip.x)}, ${lengths.text(tip.y)}`,
      { x: tip.x + 5, y: tip.y },
      'start',
    );
  return {
    heading: `${block === 'front' ? 'Front' : 'Back'}: neckline, shoulder and armhole`,
    sentences: [
      ...frameSentences(draft, block, tip, lengths),
      ...endSentences(draft, savedDraft, block, lengths),
      'Draw neckline and armhole as smooth curves through their points. Both meet the shoulder line square, so that they run on across the shoulder seam.',
    ],
    tables: [{ columns: ['Edge', 'From the centre line', 'Below the shoulder level'], rows }],
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
  const level = heightText(neck.y, lengths);
  const shoulder = lengths.text(Math.hypot(tip.x - neck.x, tip.y - neck.y));
  return [
    block === 'front'
      ? `The front hangs from its neck point: mark it ${level}, ${lengths.text(neck.x)} from the centre line. The neckline begins ${lengths.text(centre.point.y)} below the shoulder level at centre front.`
      : `The back hangs from a neck point of its own: mark it ${level}, ${lengths.text(neck.x)} from the centre line. The nape, where the neckline begins at centre back, lies ${lengths.text(centre.point.y - neck.y)} below it.`,
    `The shoulder line is ${shoulder} long and falls ${lengths.text(tip.y - neck.y)} to its tip${isParted ? ', its wedges sewn up' : ''}; on paper the tip lies ${lengths.text(flatTip.x)} from the centre line and ${heightText(flatTip.y, lengths)}.`,
    isParted
      ? 'Draw each part of the shoulder line straight, from the neck point to the inner leg of the wedge and from its outer leg on: sewn, they are one line.'
      : 'Draw the shoulder line straight from the neck point to the tip.',
    `Half way down, where it lies farthest in, the armhole is ${lengths.text(inward)} from the centre line, wedges sewn up; its base lies ${heightText(underarm.y, lengths)}, and there it meets the side.`,
  ];
}

/** A height as it is told from the shoulder level. */
function heightText(y: number, lengths: SheetLengths): string {
  const below = lengths.round(y);
  if (Math.abs(below) < lengths.divisionMm / 2) return 'on the shoulder level';
  return `${lengths.text(Math.abs(below))} ${below < 0 ? 'above' : 'below'} the shoulder level`;
}

/** Where each wedge ends above, and what it takes there. */
function endSentences(
  { blocks }: Draft,
  { style }: PlanInput['savedDraft'],
  block: BlockName,
  lengths: SheetLengths,
): string[] {
  return (blocks?.[block].upper?.ends ?? []).map(
    ({ wedge, edge, at, intake }) =>
      `${wedgeNameOf(wedge, style)}: its leg nearer the centre ends in the ${edge}, ${lengths.text(at.point.x)} from the centre line and ${heightText(at.point.y, lengths)}; level with it the other leg lies ${lengths.text(intake)} farther out. What lies beyond is turned with that leg, so that the ${edge} runs straight on across the sewn seam.`,
  );
}

/** What the back shoulder is longer. */
function easeSentence({ draft }: PlanInput, lengths: SheetLengths): string {
  const ease = draft.proof.seams.reduce((sum, seam) => sum + seam.ease, 0);
  return ease > 0
    ? `Measure the parts of the shoulder line that are sewn together: in all the back’s are ${lengths.text(ease)} longer, which is eased in.`
    : 'Measure the parts of the shoulder line that are sewn together: they must be equally long.';
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
      `${pieceLabel(a.piece)} – ${pieceLabel(b.piece)}`,
      lengths.text(lengthA),
      lengths.text(lengthB),
    ]);
  return rows.length > 0 ? [{ columns: ['Shoulder seam', 'Front’s length', 'Back’s length'], rows }] : [];
}
