// Paragraphs of the first page.

import {
  countOutcomes,
  edgeName,
  FIRST_PAGE,
  formatLength,
  issueSentence,
  outcomesOf,
  RECORD,
  REMARKS,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  TURNED_HEM,
  type Unit,
} from '../../document';
import { type Draft, turnsHemUp } from '../../engine';
import type { Layout, PatternInput } from '../layout/layOut';
import type { PlanInput } from '../layout/planInput';
import { foldOf } from '../panel/panelLines';
import { DO_NOT_CUT, errorsOf } from '../remarks/errors';
import { estimatedLines } from '../remarks/estimates';
import { recordOf } from '../remarks/record';
import { isTightlyLaced, tightLacingLines } from '../remarks/tightLacing';
import { zipSentences } from '../remarks/zips';
import { type Correction, correctionText } from '../sheets/correction';
import { blankSheets, sheetName } from '../sheets/grid';
import { isExact } from '../text/writable';
import type { Paragraph } from './blocks/drawParagraphs';

/** Most errors that are listed; the screen lists them all. */
const MOST_ERRORS = 6;

/**
 * All paragraphs but the record, the most important first, because those that do not fit are left out; `print` are those about the
 * print.
 */
export function firstPageParagraphs(input: PlanInput, print: readonly Paragraph[]): Paragraph[] {
  return [
    ...errors(input),
    ...print,
    ...estimates(input),
    ...allowanceParagraphs(input),
    ...missingGlyphs(input),
    ...reduction(input),
  ];
}

/** How to print sheets, and what this print contains. */
export function sheetsParagraphs(
  input: PatternInput,
  { grid, sheets }: Pick<Layout, 'grid' | 'sheets'>,
): Paragraph[] {
  const { paper, client, correction, leftOut = [] } = input;
  const blank = blankSheets(grid, sheets).map(sheetName);
  return [
    ...printParagraphs(),
    ...mockupParagraphs(input),
    ...alteredParagraphs(input),
    text(FIRST_PAGE.sheets({ paper: paper.name, count: sheets.length, unit: client.unit })),
    ...(blank.length > 0 ? [text(FIRST_PAGE.blank({ sheets: blank }))] : []),
    ...(leftOut.length > 0 ? [text(FIRST_PAGE.leftOut({ sheets: leftOut }))] : []),
    ...(correction ? [text(FIRST_PAGE.corrected({ correction: correctionText(correction) }))] : []),
    ...lineParagraphs(input),
  ];
}

/** How to print the whole pattern on one page, and what this print contains. */
export const onePageParagraphs = (input: PlanInput, correction: Correction | undefined): Paragraph[] => [
  ...printParagraphs(),
  ...mockupParagraphs(input),
  ...alteredParagraphs(input),
  text(FIRST_PAGE.onePage({ unit: input.client.unit })),
  ...(correction ? [text(FIRST_PAGE.corrected({ correction: correctionText(correction) }))] : []),
  ...lineParagraphs(input),
];

/** How many alterations the pattern has, and how many that it was asked for it has not. */
function alteredParagraphs({ draft, savedDraft }: PlanInput): Paragraph[] {
  const { made, refused } = countOutcomes(outcomesOf(savedDraft.fittings ?? [], draft));
  return made + refused === 0 ? [] : [text(FIRST_PAGE.altered({ made, refused }))];
}

/** The record, which has a page of its own behind a pattern on sheets. */
export function recordParagraphs(input: PlanInput): Paragraph[] {
  const { parts, girths } = recordOf(input);
  return [
    ...parts.flatMap(({ heading, rows }) => [
      { kind: 'heading', text: heading } as const,
      small(RECORD.all({ items: rows.map(([what, amount]) => RECORD.item({ what, amount })) })),
    ]),
    { kind: 'heading', text: girths.heading },
    ...girths.rows.map(([level = '', ...cells]) =>
      small(
        RECORD.item({
          what: level,
          amount: RECORD.all({
            items: cells.map((amount, i) => RECORD.item({ what: girths.columns[i + 1] ?? '', amount })),
          }),
        }),
      ),
    ),
  ];
}

/** What a mock-up is for. */
const mockupParagraphs = ({ mockup, mockupNumber, date, savedDraft, client }: PlanInput): Paragraph[] =>
  mockup
    ? [
        text(
          FIRST_PAGE.mockup({
            date,
            number: mockupNumber ?? null,
            allowance: formatLength(savedDraft.style.allowances.seam, client.unit, { withUnit: true }),
          }),
        ),
      ]
    : [];

/** What the lines of the pattern mean. */
const lineParagraphs = ({ making, across, mockup }: PlanInput): Paragraph[] => [
  text(
    [
      FIRST_PAGE.lines,
      ...(making ? [FIRST_PAGE.bones] : []),
      ...(making && !mockup ? [FIRST_PAGE.eyelets] : []),
      ...(across ? [FIRST_PAGE.across] : []),
    ].join(' '),
  ),
];

function errors({ draft, client, savedDraft }: PlanInput): Paragraph[] {
  const found = errorsOf(draft);
  if (found.length === 0) return [];
  const context = { unit: client.unit, style: savedDraft.style };
  const more = found.length - MOST_ERRORS;
  return [
    { kind: 'alarm', text: DO_NOT_CUT },
    ...found.slice(0, MOST_ERRORS).map((issue) => small(issueSentence(issue, context))),
    ...(more > 0 ? [small(FIRST_PAGE.moreFaults({ count: more }))] : []),
  ];
}

/** The estimated measurements of the client. */
function estimates({ client }: PlanInput): Paragraph[] {
  const lines = estimatedLines(client);
  if (lines.length === 0) return [];
  return [
    { kind: 'heading', text: REMARKS.estimates.heading },
    ...lines.map(text),
    small(REMARKS.estimates.measureFirst),
  ];
}

/** The allowances of the pieces, each with the edges that have it. */
export function allowanceParagraphs({
  draft,
  client,
  savedDraft,
}: {
  readonly draft: Draft;
  readonly client: { readonly unit: Unit };
  readonly savedDraft: Pick<PlanInput['savedDraft'], 'style'>;
}): Paragraph[] {
  const found = new Map<string, Set<string>>();
  for (const piece of draft.pieces)
    for (const edge of piece.edges) {
      if (edge === foldOf(piece) || edge.dart !== undefined) continue;
      const length =
        edge.allowance > 0
          ? formatLength(edge.allowance, client.unit, { withUnit: true })
          : FIRST_PAGE.allowances.none;
      const edges = found.get(length) ?? new Set();
      found.set(length, edges.add(edgeName(edge, piece)));
    }
  if (found.size === 0) return [];
  return [
    { kind: 'heading', text: FIRST_PAGE.allowances.heading },
    ...[...found].map(([length, edges]) =>
      text(FIRST_PAGE.allowances.line({ allowance: length, edges: [...edges] })),
    ),
    ...zipSentences(savedDraft.style).map(text),
    ...(turnsHemUp(savedDraft.style) ? [text(TURNED_HEM)] : []),
  ];
}

function reduction(input: PlanInput): Paragraph[] {
  const lines = tightLacingLines(input);
  if (lines.length === 0) return [];
  return [
    { kind: 'heading', text: FIRST_PAGE.tightLacing },
    ...lines.map(text),
    ...(isTightlyLaced(input)
      ? [small(SAFETY_STANDING), ...SAFETY_CAUTIONS.map((caution) => small(caution.text))]
      : []),
  ];
}

const missingGlyphs = ({ client, savedDraft, glyphs }: PlanInput): Paragraph[] =>
  glyphParagraphs([client.name, savedDraft.name], glyphs);

/** What is said of names whose letters could not be loaded, or that no font has. */
export function glyphParagraphs(names: readonly string[], glyphs: PlanInput['glyphs']): Paragraph[] {
  if (glyphs) return glyphs.missing.length > 0 ? [small(FIRST_PAGE.missingGlyphs)] : [];
  return names.some((name) => !isExact(name)) ? [small(FIRST_PAGE.glyphsNotLoaded)] : [];
}

const text = (content: string): Paragraph => ({ kind: 'text', text: content });
const small = (content: string): Paragraph => ({ kind: 'small', text: content });

/** How to print, and the heading of what a print contains. */
export const printParagraphs = (): Paragraph[] => [
  { kind: 'heading', text: FIRST_PAGE.print.heading },
  text(FIRST_PAGE.print.actualSize),
  text(FIRST_PAGE.print.measure),
  { kind: 'heading', text: FIRST_PAGE.thisPrint },
];
