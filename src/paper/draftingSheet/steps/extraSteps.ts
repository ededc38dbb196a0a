// The step for modesty panel, facings and straps: ruled by their sizes, with ends traced from the panels they lie behind.

import { pieceLabel } from '../../../document';
import { innerEdge, type Piece, polylineLength } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import type { SheetLengths } from '../elements/sheetLengths';

const KINDS = ['modesty', 'facing', 'strap'] as const;
type Kind = (typeof KINDS)[number];

const SENTENCES: Readonly<Record<Kind, string>> = {
  modesty:
    'Modesty panel: rule a rectangle, its length that of the laced edge, and in it a line for each laced edge, as far from the long edges as is written. Lay the panel’s laced edge along each line, from end to end of the rectangle, and trace its top edge and hem out to the long edge; between the lines the ends run straight across.',
  facing:
    'Facing: trace the laced edge from its panel with its balance marks, and from both its ends the top edge and the hem. Draw the inner edge parallel to the laced edge at the width; where the panel is narrower, top edge and hem run on straight.',
  strap: 'Straps: rule each as a rectangle; it is folded along its middle and sewn.',
};

export function extraSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const { extras } = input.draft;
  const found = KINDS.filter((kind) => extras.some((piece) => piece.kind === kind));
  if (found.length === 0) return [];
  return [
    {
      heading: 'Beside the panels',
      sentences: [
        ...found.map((kind) => SENTENCES[kind]),
        'The grain runs upright. Add the allowances outside: first that of the edge on the left (of a facing, the laced one), then those of the lower end, of the edge across from it and of the upper end.',
      ],
      tables: found.map((kind) =>
        tableOf(
          kind,
          extras.filter((piece) => piece.kind === kind),
          input,
          lengths,
        ),
      ),
      figure: null,
    },
  ];
}

function tableOf(
  kind: Kind,
  pieces: readonly Piece[],
  { draft, savedDraft }: PlanInput,
  lengths: SheetLengths,
): StepTable {
  const { closure, extras = {} } = savedDraft.style;
  const { modesty, facing, straps } = extras;
  const lacedLength = (piece: Piece): string => {
    const panel = draft.pieces.find(({ block, number }) => block === piece.block && number === 1);
    return lengths.text(panel ? polylineLength(innerEdge(panel).points) : 0);
  };
  const allowances = ({ edges }: Piece): string =>
    edges.map(({ allowance }) => (allowance > 0 ? lengths.text(allowance) : 'none')).join(', ');
  const sizes: Readonly<Record<Kind, (piece: Piece) => string[]>> = {
    modesty: (piece) => [
      lengths.text(closure.lacingGap + 2 * (modesty?.overlap ?? 0)),
      lacedLength(piece),
      lengths.text(modesty?.overlap ?? 0),
    ],
    facing: (piece) => [lengths.text(facing?.width ?? 0), lacedLength(piece)],
    strap: () => [lengths.text(2 * (straps?.width ?? 0)), lengths.text(straps?.length ?? 0)],
  };
  return {
    columns: [
      'Piece',
      'Cut',
      'Width',
      'Length',
      ...(kind === 'modesty' ? ['Laced edge from the long edge'] : []),
      'Allowances',
    ],
    rows: pieces.map((piece) => [
      pieceLabel(piece),
      String(piece.cut.count),
      ...sizes[kind](piece),
      allowances(piece),
    ]),
  };
}
