// What stands at the head of a nested print, and what is said on its first page.

import { FIRST_PAGE, LEVEL_WORDS, NESTED, SAFETY_CAUTIONS, SAFETY_STANDING, SIZES } from '../../../document';
import type { NestedInput } from '../../nested/nestedInput';
import { isTightlyLaced } from '../../remarks/tightLacing';
import { type Correction, correctionText } from '../../sheets/correction';
import { shortened } from '../../text/textWidth';
import { settable } from '../../text/writable';
import type { Paragraph } from '../blocks/drawParagraphs';
import { TITLE_MM } from '../file/pdfFile';
import { allowanceParagraphs, glyphParagraphs, printParagraphs } from '../firstPageParagraphs';

/** The range of the sizes in words. */
export const rangeOf = ({ sizes }: NestedInput): string =>
  NESTED.range({ first: sizes[0]?.name ?? '', last: sizes.at(-1)?.name ?? '' });

/** The style and the range, for the title of the file. */
export const nestedTitle = (input: NestedInput): string =>
  shortened(
    [input.savedDraft.name, rangeOf(input)].map((part) => settable(part)).join(', '),
    10,
    false,
    TITLE_MM,
  );

/** All that the file depends on, as text. */
export const seedOf = (input: NestedInput, print: unknown): string =>
  JSON.stringify([
    input.savedDraft.name,
    input.leftOut,
    input.unit,
    input.date,
    input.alignedAt,
    print,
    input.sizes.map(({ name, measurements, draft }) => [
      name,
      measurements,
      [...draft.pieces, ...draft.extras].map(({ cutLine }) => cutLine),
    ]),
  ]);

/** How to print, what the lines mean, and the allowances; `sheets` says how many sheets there are. */
export function nestedParagraphs(
  input: NestedInput,
  sheets: string,
  correction: Correction | undefined,
): Paragraph[] {
  const { sizes, leftOut, savedDraft, unit, alignedAt = 'waist', glyphs } = input;
  const text = (content: string): Paragraph => ({ kind: 'text', text: content });
  const [first] = sizes;
  return [
    ...(leftOut.length > 0 ? [{ kind: 'alarm', text: SIZES.left({ names: leftOut }) } as const] : []),
    ...printParagraphs(),
    text(sheets),
    text(NESTED.how({ count: sizes.length, level: LEVEL_WORDS[alignedAt] })),
    text(NESTED.lines),
    ...(correction ? [text(FIRST_PAGE.corrected({ correction: correctionText(correction) }))] : []),
    ...lacedParagraphs(input),
    ...(first ? allowanceParagraphs({ draft: first.draft, client: { unit }, savedDraft }) : []),
    ...glyphParagraphs([savedDraft.name, ...sizes.map(({ name }) => name)], glyphs),
  ];
}

/** The cautions, where any of the sizes is laced so far that they are to be read. */
function lacedParagraphs({ sizes }: NestedInput): Paragraph[] {
  const laced = sizes.filter(isTightlyLaced).map(({ name }) => name);
  if (laced.length === 0) return [];
  const small = (text: string): Paragraph => ({ kind: 'small', text });
  return [
    { kind: 'heading', text: FIRST_PAGE.tightLacing },
    { kind: 'text', text: NESTED.laced({ sizes: laced }) },
    small(SAFETY_STANDING),
    ...SAFETY_CAUTIONS.map((caution) => small(caution.text)),
  ];
}
