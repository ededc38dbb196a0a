// Steps for the panels: truing, top edge and hem, darts, drill marks, allowances and the proof.

import {
  DRAFTING_PANELS,
  DRAFTING_SHEET,
  edgeName,
  LEVEL_TITLES,
  LEVEL_WORDS,
  pieceLabel,
  TURNED_HEM,
} from '../../../document';
import {
  type Draft,
  type Edge,
  type EdgeReference,
  type Mark,
  type Piece,
  type Point,
  partingEnds,
  turnsHemUp,
} from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import { foldOf } from '../../panel/panelLines';
import { zipOn, zipSentences } from '../../remarks/zips';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import { heightsOf, lineAt } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';
import { dartSteps } from './dartSteps';
import { isShouldered, shoulderSteps } from './shoulderSteps';
import { beforeTurn, turnSteps } from './turnSteps';

const BOTH = ['front', 'back'] as const;
const COLUMNS = DRAFTING_SHEET.columns;
const CELLS = DRAFTING_SHEET.cells;

/** The steps of all panels, in the order of drawing. */
export function panelSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const flat = beforeTurn(input);
  return [
    truingStep(flat, lengths),
    ...shoulderSteps(flat, lengths),
    edgesStep(flat, lengths),
    ...dartSteps(flat, lengths),
    ...turnSteps(input, lengths),
    ...drillStep(input, lengths),
    allowanceStep(input, lengths),
    proofStep(input, lengths),
  ];
}

// ── truing ──

function truingStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const heights = heightsOf(draft, lengths);
  const drawing = startDrawing(draft, heights, BOTH);
  const texts = DRAFTING_PANELS.truing;
  const { lines } = DRAFTING_SHEET;
  const rows: string[][] = [];
  for (const { seam, a, b } of draft.proof.seams) {
    // These seams are not measured from the waist; each has a step of its own.
    if (seam.kind === 'shoulder' || seam.kind === 'dart' || seam.kind === 'joined') continue;
    const [first, second] = [sewn(draft, a), sewn(draft, b)];
    if (!first || !second) continue;
    for (const { piece, edge } of [first, second]) {
      drawing.line(piece.block, 'done', edge.points);
      for (const end of endsDown(edge)) drawing.spot(piece.block, end);
    }
    const names = { a: pieceLabel(first.piece), b: pieceLabel(second.piece) };
    const name = { seam: DRAFTING_PANELS.seamOf(names) };
    const [tops, feet] = [0, 1].map((i) => [first, second].map(({ edge }) => endsDown(edge)[i]?.y ?? 0)) as [
      number[],
      number[],
    ];
    const { top, hem } = draft.span ?? { top: 0, hem: 0 };
    const add = (what: string, line: string, ys: readonly number[], lineY: number): void => {
      if (ys.some((y) => lengths.belowLine(y, lineY) !== 0))
        rows.push([what, line, ...ys.map((y) => lengths.fromLine(y, lineY))]);
    };
    const { block, number } = first.piece;
    const edgesAbove = draft.blocks?.[block].upper;
    const upper = seam.kind === 'wedge' && edgesAbove ? partingEnds(edgesAbove)[number - 1] : undefined;
    const end = upper ? lineAt(heights, upper.at.point.y) : null;
    add(texts.upperEnd(name), end ? end.name.toLowerCase() : lines.top.name, tops, end ? end.y : top);
    for (const mark of marksOn(first))
      for (const mate of marksOn(second).filter(({ level }) => level === mark.level)) {
        if (mark.level === null) continue;
        const line = draft.levels.find((level) => level.name === mark.level)?.y ?? 0;
        add(texts.markAt(name), LEVEL_WORDS[mark.level], [mark.at.y, mate.at.y], line);
      }
    add(texts.lowerEnd(name), lines.hem.name, feet, hem);
  }
  return {
    heading: texts.heading,
    sentences: [texts.measure, rows.length > 0 ? texts.mark : texts.allStay],
    tables:
      rows.length > 0
        ? [{ columns: [COLUMNS.seam, COLUMNS.from, COLUMNS.firstMate, COLUMNS.secondMate], rows }]
        : [],
    figure: drawing.done(),
  };
}

interface Sewn {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly index: number;
}

function sewn({ pieces }: Draft, reference: EdgeReference): Sewn | null {
  const piece = pieces.find(({ id }) => id === reference.piece.id);
  const edge = piece?.edges[reference.edge];
  return piece && edge ? { piece, edge, index: reference.edge } : null;
}

const marksOn = ({ piece, index }: Sewn): Mark[] =>
  piece.marks
    .filter((mark) => mark.kind === 'balance' && mark.edge === index)
    .sort((a, b) => a.at.y - b.at.y);

/** Both ends of an edge, the higher one first. */
function endsDown({ points }: Edge): Point[] {
  const [first, last] = [points[0], points[points.length - 1]];
  return first && last ? [first, last].sort((a, b) => a.y - b.y) : [];
}

// ── top edge, hem and every other edge that is drawn freely ──

function edgesStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const drawing = startDrawing(draft, heightsOf(draft, lengths), BOTH);
  const tables = BOTH.flatMap((block): StepTable[] => {
    const pieces = draft.pieces.filter((piece) => piece.block === block);
    const rows = pieces.flatMap((piece) =>
      piece.edges.flatMap((edge): string[][] => {
        if (edge.role !== 'hem' && (edge.role !== 'top' || isShouldered(piece))) {
          drawing.line(block, 'done', edge.points);
          return [];
        }
        const guides = guidesOn(fromCentre(edge.points), lengths);
        drawing.line(block, 'drawn', edge.points);
        for (const guide of guides) drawing.spot(block, guide);
        return guides.map(({ x, y }, i) => [
          i === 0 ? DRAFTING_PANELS.edgeOf({ piece: pieceLabel(piece), edge: edgeName(edge, piece) }) : '',
          lengths.text(x),
          lengths.text(y),
        ]);
      }),
    );
    return rows.length > 0
      ? [{ columns: [COLUMNS.edge, COLUMNS.fromCentre, COLUMNS.belowShoulder], rows }]
      : [];
  });
  return {
    heading: draft.pieces.some(isShouldered)
      ? DRAFTING_PANELS.edges.hemHeading
      : DRAFTING_PANELS.edges.heading,
    sentences: [DRAFTING_PANELS.edges.mark],
    tables,
    figure: drawing.done(),
  };
}

// ── drill marks ──

function drillStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep[] {
  const drawing = startDrawing(draft, heightsOf(draft, lengths), BOTH);
  const rows = draft.pieces.flatMap((piece) => {
    for (const { points } of piece.edges) drawing.line(piece.block, 'done', points);
    return piece.marks
      .filter(({ kind }) => kind === 'drill')
      .map(({ at }) => {
        drawing.spot(piece.block, at);
        return [pieceLabel(piece), lengths.text(at.x), lengths.text(at.y)];
      });
  });
  if (rows.length === 0) return [];
  return [
    {
      heading: DRAFTING_PANELS.drill.heading,
      sentences: [DRAFTING_PANELS.drill.mark],
      tables: [{ columns: [COLUMNS.panel, COLUMNS.fromCentre, COLUMNS.belowShoulder], rows }],
      figure: drawing.done(),
    },
  ];
}

// ── allowances ──

function allowanceStep({ draft, savedDraft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const texts = DRAFTING_PANELS.allowances;
  const drawing = startDrawing(draft, heightsOf(draft, lengths), BOTH);
  const rows = draft.pieces.flatMap((piece) => {
    for (const { points } of piece.edges) drawing.line(piece.block, 'drawn', points);
    drawing.label(piece.block, String(piece.number), middleOf(piece), 'middle');
    const cut = piece.cut.onFold ? CELLS.cutOnFold({ count: piece.cut.count }) : String(piece.cut.count);
    const edges = piece.edges.flatMap((edge) => {
      // The edge between the legs of a dart is not cut out.
      if (edge.dart !== undefined) return [];
      const allowance = edge.allowance > 0 ? lengths.text(edge.allowance) : CELLS.noAllowance;
      const zip = zipOn(piece, edge, savedDraft.style);
      const finish =
        edge === foldOf(piece) ? CELLS.onFold : zip === null ? allowance : texts.zipped({ allowance, zip });
      const mate = edge.mate ? pieceLabel(edge.mate.piece) : null;
      return texts.edge({ edge: edgeName(edge, piece), mate, finish });
    });
    return [[pieceLabel(piece), cut, [...new Set(edges)].join('; ')]];
  });
  return {
    heading: texts.heading,
    sentences: [
      texts.trace,
      texts.draw,
      ...zipSentences(savedDraft.style),
      ...(turnsHemUp(savedDraft.style) ? [TURNED_HEM] : []),
    ],
    tables: [{ columns: [COLUMNS.panel, COLUMNS.cut, COLUMNS.allowanceOfEach], rows }],
    figure: drawing.done(),
  };
}

function middleOf({ grain: [top, foot] }: Piece): Point {
  return { x: (top.x + foot.x) / 2, y: (top.y + foot.y) / 2 };
}

// ── proof ──

function proofStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const rows = draft.proof.ledger
    .filter(({ sewnGirth }) => sewnGirth !== null)
    .map(({ level, widths, targetGirth }) => {
      const all = draft.pieces.flatMap(({ id }) => (widths[id] === undefined ? [] : [widths[id]]));
      const together = all.reduce((sum, width) => sum + lengths.round(width), 0);
      return [
        LEVEL_TITLES[level],
        all.map(lengths.text).join(' + '),
        lengths.text(together),
        lengths.text(targetGirth / 2),
      ];
    });
  return {
    heading: DRAFTING_PANELS.proof.heading,
    sentences: [DRAFTING_PANELS.proof.measure],
    tables: [{ columns: [COLUMNS.level, COLUMNS.panels, COLUMNS.together, COLUMNS.mustBe], rows }],
    figure: null,
  };
}
