// What the first page has to say beside the squares and the map.

import { edgeName, formatLength, issueSentence, SAFETY_CAUTIONS, SAFETY_STANDING } from '../../document';
import { DO_NOT_CUT, faultsOf } from '../faults';
import type { PatternInput } from '../layOut';
import { foldOf } from '../panel/panelLines';
import { writable } from '../text/writable';

export interface Paragraph {
  readonly kind: 'heading' | 'text' | 'small' | 'alarm';
  readonly text: string;
}

/** Faults past this many are told on the screen. */
const MOST_FAULTS = 6;

/** All paragraphs in the order of their weight: what does not fit is cut from the end. */
export function firstPageWords(input: PatternInput, sheetCount: number): Paragraph[] {
  return [
    ...faults(input),
    ...printing(input, sheetCount),
    ...allowances(input),
    ...lostLetters(input),
    ...reduction(input),
  ];
}

function faults({ draft, client, sheet }: PatternInput): Paragraph[] {
  const found = faultsOf(draft);
  if (found.length === 0) return [];
  const context = { unit: client.unit, style: sheet.style };
  const more = found.length - MOST_FAULTS;
  return [
    { kind: 'alarm', text: DO_NOT_CUT },
    ...found.slice(0, MOST_FAULTS).map((issue) => small(issueSentence(issue, context))),
    ...(more > 0 ? [small(`And ${more} more.`)] : []),
  ];
}

function printing({ paper, client }: PatternInput, sheetCount: number): Paragraph[] {
  const unit = client.unit === 'in' ? 'inches' : 'centimetres';
  const sheets = sheetCount === 0 ? 'no sheet' : sheetCount === 1 ? '1 sheet' : `${sheetCount} sheets`;
  return [
    { kind: 'heading', text: 'Print at 100 %, no fitting' },
    text('Choose “actual size” in the print dialogue, not “fit to page”.'),
    text(
      'Then measure both squares with a ruler, across and down, from centre of line to centre of line. If they are not 100 mm and 4 in, do not use the print.',
    ),
    { kind: 'heading', text: 'This print' },
    text(`Paper ${paper.name}, ${sheets} and this page. Lengths in ${unit}.`),
    text(
      'Cut line: thick. Sew line: thin, broken. Grain: line with two arrows. Balance marks cross the sew line.',
    ),
  ];
}

/** The allowances that the pieces carry, each with the edges that have it. */
function allowances({ draft, client }: PatternInput): Paragraph[] {
  const found = new Map<string, Set<string>>();
  for (const piece of draft.pieces)
    for (const edge of piece.edges) {
      if (edge === foldOf(piece)) continue;
      const length =
        edge.allowance > 0 ? formatLength(edge.allowance, client.unit, { withUnit: true }) : 'none';
      const edges = found.get(length) ?? new Set();
      found.set(length, edges.add(edgeName(edge, piece.block)));
    }
  if (found.size === 0) return [];
  return [
    { kind: 'heading', text: 'Seam allowances, included' },
    ...[...found].map(([length, edges]) => text(`${length}: ${[...edges].join(', ')}`)),
  ];
}

function reduction({ draft, client, sheet }: PatternInput): Paragraph[] {
  const written = (mm: number): string => formatLength(mm, client.unit, { withUnit: true });
  const { acknowledgedReduction } = sheet;
  const high = draft.issues.find((issue) => issue.code === 'waistReductionHigh');
  const read: Paragraph[] =
    acknowledgedReduction === null
      ? []
      : [
          text(
            `The cautions for a waist reduction of ${written(acknowledgedReduction)} were read and acknowledged.`,
          ),
        ];
  if (!high) return read.length > 0 ? [{ kind: 'heading', text: 'Waist reduction' }, ...read] : [];
  const covered =
    acknowledgedReduction !== null && acknowledgedReduction >= (high.values.reduction ?? 0) - 0.01;
  return [
    { kind: 'heading', text: 'Waist reduction' },
    text(issueSentence(high, { unit: client.unit, style: sheet.style })),
    ...read,
    ...(covered ? [] : [text('The cautions for this reduction have not been acknowledged.')]),
    small(SAFETY_STANDING),
    ...SAFETY_CAUTIONS.map((caution) => small(caution.text)),
  ];
}

function lostLetters({ client, sheet }: PatternInput): Paragraph[] {
  const lost = writable(client.name).lost || writable(sheet.name).lost;
  return lost
    ? [small('Letters of a name that the printed page has no sign for stand as question marks.')]
    : [];
}

const text = (words: string): Paragraph => ({ kind: 'text', text: words });
const small = (words: string): Paragraph => ({ kind: 'small', text: words });
