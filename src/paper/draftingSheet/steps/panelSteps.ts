// Steps for the panels: truing, top edge and hem, darts, drill marks, allowances and the proof.

import { edgeName, LEVEL_TITLES, LEVEL_WORDS, pieceLabel, TURNED_HEM } from '../../../document';
import {
  type Draft,
  type Edge,
  type EdgeReference,
  type Mark,
  type Piece,
  type Point,
  turnsHemUp,
} from '../../../engine';
import type { PlanInput } from '../../layout/planInput';
import { foldOf } from '../../panel/panelLines';
import { zipOn, zipSentences } from '../../remarks/zips';
import type { DraftingStep, StepTable } from '../elements/draftingStep';
import { fromCentre, guidesOn } from '../elements/edgeGuides';
import { startDrawing } from '../elements/figure';
import { heightsOf, lineAt } from '../elements/heights';
import { ON_THE_LINE, type SheetLengths } from '../elements/sheetLengths';
import { dartSteps } from './dartSteps';
import { isShouldered, shoulderSteps } from './shoulderSteps';

const BOTH = ['front', 'back'] as const;

export function panelSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  return [
    truingStep(input, lengths),
    ...shoulderSteps(input, lengths),
    edgesStep(input, lengths),
    ...dartSteps(input, lengths),
    ...drillStep(input, lengths),
    allowanceStep(input, lengths),
    proofStep(input, lengths),
  ];
}

// ── truing ──

function truingStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const heights = heightsOf(draft, lengths);
  const drawing = startDrawing(draft, heights, BOTH);
  const rows: string[][] = [];
  for (const { seam, a, b } of draft.proof.seams) {
    // These seams are not measured from the waist; each has a step of its own.
    if (seam.kind === 'shoulder' || seam.kind === 'dart') continue;
    const [first, second] = [sewn(draft, a), sewn(draft, b)];
    if (!first || !second) continue;
    for (const { piece, edge } of [first, second]) {
      drawing.line(piece.block, 'done', edge.points);
      for (const end of endsDown(edge)) drawing.spot(piece.block, end);
    }
    const name = `${pieceLabel(first.piece)} – ${pieceLabel(second.piece)}`;
    const [tops, feet] = [0, 1].map((i) => [first, second].map(({ edge }) => endsDown(edge)[i]?.y ?? 0)) as [
      number[],
      number[],
    ];
    const { top, hem } = draft.span ?? { top: 0, hem: 0 };
    const add = (what: string, line: string, ys: readonly number[], lineY: number): void => {
      const offsets = ys.map((y) => lengths.fromLine(y, lineY));
      if (offsets.some((each) => each !== ON_THE_LINE)) rows.push([`${name}, ${what}`, line, ...offsets]);
    };
    const { block, number } = first.piece;
    const upper = seam.kind === 'wedge' ? draft.blocks?.[block].upper?.ends[number - 1] : undefined;
    const end = upper ? lineAt(heights, upper.at.point.y) : null;
    if (end) add('upper end', end.name.toLowerCase(), tops, end.y);
    else add('upper end', 'top line', tops, top);
    for (const mark of marksOn(first))
      for (const mate of marksOn(second).filter(({ level }) => level === mark.level)) {
        const line = draft.levels.find((level) => level.name === mark.level)?.y ?? 0;
        add('mark', LEVEL_WORDS[mark.level], [mark.at.y, mate.at.y], line);
      }
    add('lower end', 'hem line', feet, hem);
  }
  return {
    heading: 'True the seams',
    sentences: [
      'Two edges that are sewn together must be equally long above and below the waist. Measure both along the curve from the waist line; where they differ, take the mean on both. That and the shape of top edge and hem move ends and balance marks off their lines by as much as stands here.',
      rows.length > 0
        ? 'Mark each on its own leg. Ends and balance marks that are not named stay on their lines.'
        : 'On this draft all ends and balance marks stay on their lines.',
    ],
    tables: rows.length > 0 ? [{ columns: ['Seam', 'From the', 'First mate', 'Second mate'], rows }] : [],
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
          i === 0 ? `${pieceLabel(piece)}, ${edgeName(edge, piece)}` : '',
          lengths.text(x),
          lengths.text(y),
        ]);
      }),
    );
    return rows.length > 0
      ? [{ columns: ['Edge', 'From the centre line', 'Below the shoulder level'], rows }]
      : [];
  });
  return {
    heading: draft.pieces.some(isShouldered) ? 'Hem' : 'Top edge and hem',
    sentences: [
      'Mark these points on each panel, the first and the last at the ends of its legs, and draw the edge through them as one smooth curve. Sewn, it runs on across each seam without a kink, but where the design has a corner.',
    ],
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
      heading: 'Drill marks',
      sentences: [
        'Mark where the awl goes through; it stands inside the point of the dart, so that sewing covers it.',
      ],
      tables: [{ columns: ['Panel', 'From the centre line', 'Below the shoulder level'], rows }],
      figure: drawing.done(),
    },
  ];
}

// ── allowances ──

function allowanceStep({ draft, savedDraft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const drawing = startDrawing(draft, heightsOf(draft, lengths), BOTH);
  const rows = draft.pieces.flatMap((piece) => {
    for (const { points } of piece.edges) drawing.line(piece.block, 'drawn', points);
    drawing.label(piece.block, String(piece.number), middleOf(piece), 'middle');
    const cut = piece.cut.onFold ? `${piece.cut.count} on the fold` : String(piece.cut.count);
    const edges = piece.edges.flatMap((edge) => {
      // The edge between the legs of a dart is not cut out.
      if (edge.dart !== undefined) return [];
      const to = edge.mate ? ` to ${pieceLabel(edge.mate.piece)}` : '';
      const allowance = edge.allowance > 0 ? lengths.text(edge.allowance) : 'none';
      const zip = zipOn(piece, edge, savedDraft.style);
      const finish =
        edge === foldOf(piece) ? 'on the fold' : zip === null ? allowance : `${allowance}, ${zip}`;
      return `${edgeName(edge, piece)}${to}: ${finish}`;
    });
    return [[pieceLabel(piece), cut, [...new Set(edges)].join('; ')]];
  });
  return {
    heading: 'Cut apart and add the allowances',
    sentences: [
      'Trace each panel onto its own paper with its number, its balance marks and its grain line, which runs with the centre line. The cloth of the wedges falls away between the panels.',
      'Draw the cut line outside the sew line by the allowance of each edge.',
      ...zipSentences(savedDraft.style),
      ...(turnsHemUp(savedDraft.style) ? [TURNED_HEM] : []),
    ],
    tables: [{ columns: ['Panel', 'Cut', 'Allowance of each edge'], rows }],
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
    heading: 'Prove it',
    sentences: [
      'Measure each panel from edge to edge along each level it crosses, front panels from the centre, then back panels. Together they must come to half of what the garment measures; rounding may leave a division or two of the tape.',
    ],
    tables: [{ columns: ['Level', 'Panels', 'Together', 'Must be'], rows }],
    figure: null,
  };
}
