// The step for darts: their points and the lengths of their legs.

import { DRAFTING_PANELS, DRAFTING_SHEET, pieceLabel, wedgePhrase, wedgePlaceOf } from '../../../document';
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
  const texts = DRAFTING_PANELS.darts;
  const { columns } = DRAFTING_SHEET;
  const points: string[][] = [];
  const legs: string[][] = [];
  let opens = false;
  for (const piece of draft.pieces) {
    for (const edge of piece.edges) drawing.line(piece.block, 'done', edge.points);
    for (const { wedge, inner, outer, open } of piece.darts) {
      const name = texts.dartOf({
        piece: pieceLabel(piece),
        wedge: wedgePhrase(wedgePlaceOf(wedge, savedDraft.style)),
      });
      drawing.line(piece.block, 'drawn', inner);
      drawing.line(piece.block, 'drawn', outer);
      const ends = [
        { which: texts.upperPoint, point: inner[0], mate: outer[0] },
        { which: texts.lowerPoint, point: inner.at(-1), mate: outer.at(-1) },
      ];
      for (const { which, point, mate } of ends) {
        // Where they are apart the dart opens at the edge.
        if (!point || !mate || distance(point, mate) > MEETING_MM) continue;
        drawing.spot(piece.block, point);
        points.push([which({ dart: name }), lengths.text(point.x), lengths.text(point.y)]);
      }
      legs.push([name, lengths.text(polylineLength(inner)), lengths.text(polylineLength(outer))]);
      opens ||= open;
    }
  }
  if (legs.length === 0) return [];
  return [
    {
      heading: texts.heading,
      sentences: [texts.meet, ...(opens ? [texts.fold] : [])],
      tables: [
        { columns: [columns.point, columns.fromCentre, columns.belowShoulder], rows: points },
        { columns: [columns.dart, columns.innerLeg, columns.outerLeg], rows: legs },
      ],
      figure: drawing.done(),
    },
  ];
}
