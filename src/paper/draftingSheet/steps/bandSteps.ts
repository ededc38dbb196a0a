// Steps that draw shoulder bands. A band is drawn on the block with its wedges sewn, so it has a figure of its own.

import { DRAFTING_PANELS, DRAFTING_SHEET, edgeName, pieceLabel } from '../../../document';
import type { PlanInput } from '../../layout/planInput';
import { foldOf } from '../../panel/panelLines';
import type { DraftingStep } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import type { SheetLengths } from '../elements/sheetLengths';

/** A step for each band. */
export function bandSteps({ draft }: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const texts = DRAFTING_PANELS.band;
  const { columns, cells } = DRAFTING_SHEET;
  return draft.extras
    .filter(({ kind }) => kind === 'band')
    .map((band) => {
      // The levels of the draft are below a band; its figure shows the shoulder level only.
      const drawing = startDrawing({ ...draft, blocks: null, pieces: [band] }, [], [band.block], true);
      const rows = band.edges.flatMap((edge) => {
        const guides = guidesOn(fromCentre(edge.points), lengths);
        drawing.line(band.block, 'drawn', edge.points);
        for (const guide of guides) drawing.spot(band.block, guide);
        const allowance = edge.allowance > 0 ? lengths.text(edge.allowance) : cells.noAllowance;
        const name =
          edge.role !== 'seam'
            ? edgeName(edge, band)
            : edge.mate
              ? texts.edgeToPanel({ panel: pieceLabel(edge.mate.piece) })
              : texts.edgeToPanels;
        return guides.map(({ x, y }, i) => [
          i === 0 ? name : '',
          lengths.text(x),
          lengths.text(y),
          i > 0 ? '' : edge === foldOf(band) ? cells.onFold : allowance,
        ]);
      });
      return {
        heading: pieceLabel(band),
        sentences: [
          texts.draw({
            cut: band.cut.onFold ? cells.cutOnFold({ count: band.cut.count }) : String(band.cut.count),
          }),
          texts.mark,
        ],
        tables: [
          { columns: [columns.edge, columns.fromCentre, columns.belowShoulder, columns.allowance], rows },
          ...(band.marks.length > 0
            ? [
                {
                  columns: [columns.mark, columns.fromCentre, columns.belowShoulder],
                  rows: band.marks.map(({ at }) => [texts.seam, lengths.text(at.x), lengths.text(at.y)]),
                },
              ]
            : []),
        ],
        figure: drawing.done(),
      };
    });
}
