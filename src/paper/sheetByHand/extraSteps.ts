// Modesty panel, facings and straps by numbers: strips that are ruled, not drafted.

import { pieceLabel } from '../../document';
import { distance, type Piece, type Point } from '../../engine';
import type { PlanInput } from '../placePanels';
import { isBand } from './bandSteps';
import type { HandStep } from './handStep';
import type { Tape } from './tape';

export function extraSteps({ draft }: PlanInput, tape: Tape): HandStep[] {
  const strips = draft.extras.filter((piece) => !isBand(piece));
  if (strips.length === 0) return [];
  return [
    {
      heading: 'Strips beside the panels',
      sentences: [
        'Rule each as a rectangle, its grain along its length, and add the allowances outside it: first that of one long edge, then of the lower end, of the other long edge and of the upper end.',
        'A strap is folded along its middle and sewn; modesty panel and facings are as long as the laced edge they lie behind, and take the run of its top edge and hem when they are laid to it.',
      ],
      tables: [
        {
          columns: ['Strip', 'Cut', 'Width', 'Length', 'Allowances'],
          rows: strips.map((piece) => [
            pieceLabel(piece),
            String(piece.cut.count),
            tape.said(alongEdge(piece, 1)),
            tape.said(alongEdge(piece, 0)),
            piece.edges.map(({ allowance }) => (allowance > 0 ? tape.said(allowance) : 'none')).join(', '),
          ]),
        },
      ],
      figure: null,
    },
  ];
}

function alongEdge({ edges }: Piece, i: number): number {
  const points = edges[i]?.points ?? [];
  return distance(points[0] as Point, points.at(-1) as Point);
}
