// Steps for neckline, shoulder and armhole of a shouldered block, and for its shoulder seam.

import { edgeName, pieceLabel } from '../../../document';
import type { BlockName, Edge, Piece, Point } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import { heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

/** Whether a panel has a shoulder edge, and so neckline and armhole instead of a top edge. */
export const isShouldered = ({ edges }: Piece): boolean => edges.some(({ role }) => role === 'shoulder');

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
      sentences: [
        ...step.sentences,
        'Measure the parts of the shoulder line that are sewn together: they must be equally long.',
      ],
      tables: [...step.tables, ...seamTable(input, lengths)],
    };
  });
}

function blockStep(
  { draft }: PlanInput,
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
  const parted = pieces.length > 1;
  return {
    heading: `${block === 'front' ? 'Front' : 'Back'}: neckline, shoulder and armhole`,
    sentences: [
      ...(neck && tip
        ? [
            `Mark the neck point on the shoulder level, ${lengths.text(neck.x)} from the centre line, and the tip of the shoulder ${lengths.text(tip.x)} from it and ${lengths.text(tip.y)} below.`,
            parted
              ? 'Draw each part of the shoulder line straight, from the neck point to the inner leg of the wedge and from its outer leg to the tip: sewn, they are one line.'
              : 'Draw the shoulder line straight from the neck point to the tip.',
          ]
        : []),
      'Draw neckline and armhole as smooth curves through their points. Both meet the shoulder line square, so that they run on across the shoulder seam.',
    ],
    tables: [{ columns: ['Edge', 'From the centre line', 'Below the shoulder level'], rows }],
    figure: drawing.done(),
  };
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
