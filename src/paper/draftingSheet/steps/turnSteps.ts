// The step that turns a bust dart into the side seam, by slash and turn about the bust point.

import { DRAFTING_PANELS, DRAFTING_SHEET, wedgePhrase, wedgePlaceOf } from '../../../document';
import { distance, type Edge, type Point } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep } from '../elements/draftingStep';
import { startDrawing } from '../elements/figure';
import { heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

/** The draft with its bust dart where it is drafted, before it is turned; itself where none is. */
export function beforeTurn(input: PlanInput): PlanInput {
  const { draft } = input;
  const { before } = draft.turnedDart ?? {};
  if (!before) return input;
  return {
    ...input,
    draft: { ...draft, pieces: before.pieces, proof: { ...draft.proof, seams: before.seams } },
  };
}

/** One step; none where no dart is turned. */
export function turnSteps({ draft, savedDraft }: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const { turnedDart } = draft;
  const piece = draft.pieces.find(({ id }) => id === turnedDart?.piece);
  if (!turnedDart || !piece) return [];
  const { bustPoint, lower, upper, point, below } = turnedDart;
  const texts = DRAFTING_PANELS.turn;
  const { columns } = DRAFTING_SHEET;
  const drawing = startDrawing(draft, heightsOf(draft, lengths), ['front'], true);
  for (const { points } of piece.edges) drawing.line('front', 'done', points);
  for (const end of [lower, upper]) drawing.line('front', 'drawn', [point, end]);
  drawing.line('front', 'drawn', [bustPoint, lower]);
  const underarm = endOf(piece.edges.find(({ sidePart }) => sidePart === 'aboveDart'));
  const rows: [string, Point][] = [
    [texts.lowerEnd, lower],
    [texts.upperEnd, upper],
    [texts.point, point],
    ...(underarm ? [[texts.underarm, underarm] as [string, Point]] : []),
  ];
  for (const [, place] of rows) drawing.spot('front', place);
  return [
    {
      heading: texts.heading,
      sentences: [
        texts.slash({
          below: lengths.text(below),
          across: lengths.text(lower.x),
          down: lengths.text(lower.y),
        }),
        texts.close({ wedge: wedgePhrase(wedgePlaceOf(turnedDart.wedge, savedDraft.style)) }),
        texts.opens({
          width: lengths.text(distance(lower, upper)),
          short: lengths.text(distance(point, bustPoint)),
          leg: lengths.text(distance(point, lower)),
        }),
        texts.fold,
      ],
      tables: [
        {
          columns: [columns.point, columns.fromCentre, columns.belowShoulder],
          rows: rows.map(([name, { x, y }]) => [name, lengths.text(x), lengths.text(y)]),
        },
      ],
      figure: drawing.done(),
    },
  ];
}

/** The upper end of the side seam, which is walked up. */
const endOf = (edge: Edge | undefined): Point | undefined => edge?.points.at(-1);
