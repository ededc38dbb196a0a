// Steps that draw shoulder bands. A band is drawn on the block with its wedges sewn, so it has a figure of its own.

import { edgeName, pieceLabel } from '../../../document';
import type { PlanInput } from '../../layout/planInput';
import { foldOf } from '../../panel/panelLines';
import type { DraftingStep } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import type { SheetLengths } from '../elements/sheetLengths';

/** A step for each band. */
export function bandSteps({ draft }: PlanInput, lengths: SheetLengths): DraftingStep[] {
  return draft.extras
    .filter(({ kind }) => kind === 'band')
    .map((band) => {
      // The levels of the draft are below a band; its figure shows the shoulder level only.
      const drawing = startDrawing({ ...draft, blocks: null, pieces: [band] }, [], [band.block], true);
      const rows = band.edges.flatMap((edge) => {
        const guides = guidesOn(fromCentre(edge.points), lengths);
        drawing.line(band.block, 'drawn', edge.points);
        for (const guide of guides) drawing.spot(band.block, guide);
        const allowance = edge.allowance > 0 ? lengths.text(edge.allowance) : 'none';
        const name = edge.role === 'seam' ? 'edge to the panels' : edgeName(edge, band);
        return guides.map(({ x, y }, i) => [
          i === 0 ? name : '',
          lengths.text(x),
          lengths.text(y),
          i > 0 ? '' : edge === foldOf(band) ? 'on the fold' : allowance,
        ]);
      });
      return {
        heading: pieceLabel(band),
        sentences: [
          `Draw it on paper of its own, from a centre line and a shoulder level squared across it, and cut ${band.cut.onFold ? `${band.cut.count} on the fold` : band.cut.count}. It is sewn to the top edge of the panels when their seams are closed.`,
          'Mark the points, draw each edge through its own as one smooth curve, and set the marks on the edge to the panels where their seams meet it.',
        ],
        tables: [
          { columns: ['Edge', 'From the centre line', 'Below the shoulder level', 'Allowance'], rows },
          ...(band.marks.length > 0
            ? [
                {
                  columns: ['Mark', 'From the centre line', 'Below the shoulder level'],
                  rows: band.marks.map(({ at }) => [
                    'Seam of the panels',
                    lengths.text(at.x),
                    lengths.text(at.y),
                  ]),
                },
              ]
            : []),
        ],
        figure: drawing.done(),
      };
    });
}
