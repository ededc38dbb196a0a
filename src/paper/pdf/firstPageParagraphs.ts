// Paragraphs of the first page.

import {
  edgeName,
  formatLength,
  issueSentence,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  TURNED_HEM,
} from '../../document';
import { turnsHemUp } from '../../engine';
import type { PatternInput } from '../layout/layOut';
import type { PlanInput } from '../layout/planInput';
import { foldOf } from '../panel/panelLines';
import { DO_NOT_CUT, errorsOf } from '../remarks/errors';
import { ESTIMATED_HEADING, estimatedLines, MEASURE_FIRST } from '../remarks/estimates';
import { isTightlyLaced, tightLacingLines } from '../remarks/tightLacing';
import { zipSentences } from '../remarks/zips';
import { type Correction, correctionText } from '../sheets/correction';
import { isExact } from '../text/writable';
import type { Paragraph } from './blocks/drawParagraphs';

/** Most errors that are listed; the screen lists them all. */
const MOST_ERRORS = 6;

/** All paragraphs, the most important first, because those that do not fit are left out; `print` are those about the print. */
export function firstPageParagraphs(input: PlanInput, print: readonly Paragraph[]): Paragraph[] {
  return [
    ...errors(input),
    ...print,
    ...estimates(input),
    ...allowances(input),
    ...missingGlyphs(input),
    ...reduction(input),
  ];
}

/** How to print sheets, and what this print contains. */
export function sheetsParagraphs(
  { paper, client, correction, leftOut = [] }: PatternInput,
  sheetCount: number,
): Paragraph[] {
  const sheets = sheetCount === 0 ? 'no sheet' : sheetCount === 1 ? '1 sheet' : `${sheetCount} sheets`;
  return [
    ...PRINT_PARAGRAPHS,
    text(`Paper ${paper.name}, ${sheets} and this page. Lengths in ${unitName(client.unit)}.`),
    ...(leftOut.length > 0 ? [text(`Not printed this time: ${leftOut.join(', ')}.`)] : []),
    ...(correction ? [text(`Drawn ${correctionText(correction)} to make up for the printer.`)] : []),
    LINES_PARAGRAPH,
  ];
}

/** How to print the whole pattern on one page, and what this print contains. */
export const onePageParagraphs = ({ client }: PlanInput, correction: Correction | undefined): Paragraph[] => [
  ...PRINT_PARAGRAPHS,
  text(`All panels on one page. Lengths in ${unitName(client.unit)}.`),
  ...(correction ? [text(`Drawn ${correctionText(correction)} to make up for the printer.`)] : []),
  LINES_PARAGRAPH,
];

const unitName = (unit: PlanInput['client']['unit']): string => (unit === 'in' ? 'inches' : 'centimetres');

function errors({ draft, client, savedDraft }: PlanInput): Paragraph[] {
  const found = errorsOf(draft);
  if (found.length === 0) return [];
  const context = { unit: client.unit, style: savedDraft.style };
  const more = found.length - MOST_ERRORS;
  return [
    { kind: 'alarm', text: DO_NOT_CUT },
    ...found.slice(0, MOST_ERRORS).map((issue) => small(issueSentence(issue, context))),
    ...(more > 0 ? [small(`And ${more} more.`)] : []),
  ];
}

/** The estimated measurements of the client. */
function estimates({ client }: PlanInput): Paragraph[] {
  const lines = estimatedLines(client);
  if (lines.length === 0) return [];
  return [{ kind: 'heading', text: ESTIMATED_HEADING }, ...lines.map(text), small(MEASURE_FIRST)];
}

/** The allowances of the pieces, each with the edges that have it. */
function allowances({ draft, client, savedDraft }: PlanInput): Paragraph[] {
  const found = new Map<string, Set<string>>();
  for (const piece of draft.pieces)
    for (const edge of piece.edges) {
      if (edge === foldOf(piece) || edge.dart !== undefined) continue;
      const length =
        edge.allowance > 0 ? formatLength(edge.allowance, client.unit, { withUnit: true }) : 'none';
      const edges = found.get(length) ?? new Set();
      found.set(length, edges.add(edgeName(edge, piece)));
    }
  if (found.size === 0) return [];
  return [
    { kind: 'heading', text: 'Seam allowances, included' },
    ...[...found].map(([length, edges]) => text(`${length}: ${[...edges].join(', ')}`)),
    ...zipSentences(savedDraft.style).map(text),
    ...(turnsHemUp(savedDraft.style) ? [text(TURNED_HEM)] : []),
  ];
}

function reduction(input: PlanInput): Paragraph[] {
  const lines = tightLacingLines(input);
  if (lines.length === 0) return [];
  return [
    { kind: 'heading', text: 'Tight lacing' },
    ...lines.map(text),
    ...(isTightlyLaced(input)
      ? [small(SAFETY_STANDING), ...SAFETY_CAUTIONS.map((caution) => small(caution.text))]
      : []),
  ];
}

function missingGlyphs({ client, savedDraft, glyphs }: PlanInput): Paragraph[] {
  if (glyphs)
    return glyphs.missing.length > 0
      ? [small('Letters of a name that no font on hand has stand as empty boxes.')]
      : [];
  const lost = [client.name, savedDraft.name].some((name) => !isExact(name));
  return lost
    ? [
        small(
          'The letters of a name could not be loaded: what the page’s own font lacks stands without its marks or as a question mark.',
        ),
      ]
    : [];
}

const text = (content: string): Paragraph => ({ kind: 'text', text: content });
const small = (content: string): Paragraph => ({ kind: 'small', text: content });

const PRINT_PARAGRAPHS: readonly Paragraph[] = [
  { kind: 'heading', text: 'Print at 100 %, no fitting' },
  text('Choose “actual size” in the print dialogue, not “fit to page”.'),
  text(
    'Then measure both squares with a ruler, across and down, from centre of line to centre of line. If they are not 100 mm and 4 in, do not use the print.',
  ),
  { kind: 'heading', text: 'This print' },
];

const LINES_PARAGRAPH: Paragraph = text(
  'Cut line: thick. Sew line: thin, broken. Grain: line with two arrows. Balance marks cross the sew line.',
);
