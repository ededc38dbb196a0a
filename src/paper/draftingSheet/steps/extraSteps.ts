// The step for modesty panel, facings and straps: ruled by their sizes, with ends traced from the panels they lie behind.

import { DRAFTING_PANELS, DRAFTING_SHEET, pieceLabel } from '../../../document';
import { innerEdge, type Piece, polylineLength } from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import type { SheetLengths } from '../elements/sheetLengths';

const KINDS = ['modesty', 'facing', 'sleeve', 'strap'] as const;
type Kind = (typeof KINDS)[number];

const TEXTS = DRAFTING_PANELS.beside;

/** One step; none where the draft has no such pieces. */
export function extraSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const { extras } = input.draft;
  const found = KINDS.filter((kind) => extras.some((piece) => piece.kind === kind));
  if (found.length === 0) return [];
  return [
    {
      heading: TEXTS.heading,
      sentences: [...found.map((kind) => TEXTS[kind]), TEXTS.allowances],
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
  const { columns, cells } = DRAFTING_SHEET;
  const { closure, extras = {} } = savedDraft.style;
  const { modesty, facing, sleeve, straps } = extras;
  const lacedLength = (piece: Piece): string => {
    const panel = draft.pieces.find(({ block, number }) => block === piece.block && number === 1);
    return lengths.text(panel ? polylineLength(innerEdge(panel).points) : 0);
  };
  const allowances = ({ edges }: Piece): string =>
    edges.map(({ allowance }) => (allowance > 0 ? lengths.text(allowance) : cells.noAllowance)).join(', ');
  const sizes: Readonly<Record<Kind, (piece: Piece) => string[]>> = {
    modesty: (piece) => [
      lengths.text(closure.lacingGap + 2 * (modesty?.overlap ?? 0)),
      lacedLength(piece),
      lengths.text(modesty?.overlap ?? 0),
    ],
    facing: (piece) => [lengths.text(facing?.width ?? 0), lacedLength(piece)],
    sleeve: (piece) => [
      lengths.text(Math.max(...piece.edges.flatMap(({ points }) => points.map(({ x }) => x)))),
      lengths.text(sleeve?.depth ?? 0),
      sewnOn(piece, lengths),
    ],
    strap: () => [lengths.text(2 * (straps?.width ?? 0)), lengths.text(straps?.length ?? 0)],
  };
  return {
    columns: [
      columns.piece,
      columns.cut,
      columns.width,
      columns.length,
      ...(kind === 'modesty' ? [columns.lacedEdge] : []),
      ...(kind === 'sleeve' ? [columns.mark] : []),
      columns.allowances,
    ],
    rows: pieces.map((piece) => [
      pieceLabel(piece),
      String(piece.cut.count),
      ...sizes[kind](piece),
      allowances(piece),
    ]),
  };
}

/** How far the marks stand from the ends of a sleeve: that at the front, then that behind. */
const sewnOn = ({ edges, marks }: Piece, lengths: SheetLengths): string => {
  const width = Math.max(...edges.flatMap(({ points }) => points.map(({ x }) => x)));
  return marks.map(({ at }) => lengths.text(Math.min(at.x, width - at.x))).join(', ');
};
