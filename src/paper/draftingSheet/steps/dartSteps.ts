// The step for darts: their points and the lengths of their legs.

import { pieceLabel, wedgeNameOf } from '../../../document';
import { distance, polylineLength } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep } from '../elements/draftingStep';
import { startDrawing } from '../elements/figure';
import { heightsOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

/** Legs nearer than this have met. mm */
const MEETING_MM = 0.1;

/** One step; none where the draft has no darts. */
export function dartSteps({ draft, savedDraft }: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const drawing = startDrawing(draft, heightsOf(draft, lengths), ['front', 'back']);
  const points: string[][] = [];
  const legs: string[][] = [];
  let opens = false;
  for (const piece of draft.pieces) {
    for (const edge of piece.edges) drawing.line(piece.block, 'done', edge.points);
    for (const { wedge, inner, outer, open } of piece.darts) {
      const name = `${pieceLabel(piece)}, ${wedgeNameOf(wedge, savedDraft.style).toLowerCase()}`;
      drawing.line(piece.block, 'drawn', inner);
      drawing.line(piece.block, 'drawn', outer);
      const ends = [
        { which: 'upper point', point: inner[0], mate: outer[0] },
        { which: 'lower point', point: inner.at(-1), mate: outer.at(-1) },
      ];
      for (const { which, point, mate } of ends) {
        // Where they are apart the dart opens at the edge.
        if (!point || !mate || distance(point, mate) > MEETING_MM) continue;
        drawing.spot(piece.block, point);
        points.push([`${name}, ${which}`, lengths.text(point.x), lengths.text(point.y)]);
      }
      legs.push([name, lengths.text(polylineLength(inner)), lengths.text(polylineLength(outer))]);
      opens ||= open;
    }
  }
  if (legs.length === 0) return [];
  return [
    {
      heading: 'Darts',
      sentences: [
        'Both legs of a dart meet in each of these points. Sewn together they must be equally long: measure both from the point, and where they differ, take the mean on both.',
        ...(opens
          ? [
              'Fold an open dart shut before its edge is cut: unfolded, the cut line rises to a peak between its legs.',
            ]
          : []),
      ],
      tables: [
        { columns: ['Point', 'From the centre line', 'Below the shoulder level'], rows: points },
        { columns: ['Dart', 'Inner leg', 'Outer leg'], rows: legs },
      ],
      figure: drawing.done(),
    },
  ];
}
