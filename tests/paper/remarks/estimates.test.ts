// What nobody measured is said on everything that is printed or saved.

import { describe, expect, it } from 'vitest';
import { type Client, DEMO_CLIENT, expectedOf } from '../../../src/document';
import {
  draftingSheetHtml,
  draftingSheetPdf,
  estimatedLines,
  makingCsv,
  makingList,
  makingNames,
  makingSections,
  makingText,
  onePagePdf,
  patternDxf,
  patternPdf,
  patternSvg,
  projectorPdf,
  usualMaking,
} from '../../../src/paper';
import { type PrintInput, quickPattern } from '../demoPattern';
import { readPattern } from '../readPattern';

const MAKING = usualMaking('in');
const given = (estimated: Client['estimated']): PrintInput => ({
  ...quickPattern(),
  making: MAKING,
  client: { ...DEMO_CLIENT, estimated },
});
const pdfWords = async (bytes: Uint8Array | null): Promise<string[]> =>
  (await readPattern(bytes as Uint8Array)).pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
const listed = (input: PrintInput) =>
  makingSections(makingList(input.draft, input.savedDraft.style, MAKING), MAKING, 'in');

/** Everything that can be printed or saved, as the words in it. */
const PRINTS: readonly (readonly [string, (input: PrintInput) => string | Promise<string>])[] = [
  ['first page', async (input) => (await pdfWords(await patternPdf(input)))[0] ?? ''],
  ['making pages', async (input) => (await pdfWords(await patternPdf(input))).at(-1) ?? ''],
  [
    'one page',
    async (input) =>
      (await pdfWords(await onePagePdf(input, { widthMm: 914.4, heightMm: null, marginMm: 10 }))).join(),
  ],
  [
    'projector',
    async (input) => (await pdfWords(await projectorPdf(input, { widthMm: 914.4, lineMm: 1 }))).join(),
  ],
  ['drafting sheet', async (input) => (await pdfWords(await draftingSheetPdf(input, input.paper)))[0] ?? ''],
  ['drafting sheet as a web page', draftingSheetHtml],
  ['SVG', (input) => patternSvg(input).replaceAll(/<[^>]*>/g, ' ')],
  ['DXF', patternDxf],
  ['making list as text', (input) => makingText(listed(input), makingNames(input))],
  ['making list as CSV', (input) => makingCsv(listed(input), makingNames(input))],
];

describe('a length that was estimated', () => {
  it('is told with how far off it may be', () => {
    expect(estimatedLines(given([]).client)).toEqual([]);
    // Nineteen in twenty of a normal distribution lie within 1.96 SDs, here to the nearest ⅛ in; 7¾ in is the client's own.
    const { measurements } = DEMO_CLIENT;
    const sd = expectedOf('underarmToWaist', measurements, ['underarmToWaist'])?.sd ?? 0;
    expect(Math.abs(1.96 * sd - 0.75 * 25.4)).toBeLessThanOrEqual(25.4 / 16);
    expect(estimatedLines(given(['underarmToWaist']).client)).toEqual([
      'Underarm to waist: estimated, 7¾ in ± ¾ in',
    ]);
    expect(estimatedLines({ ...given(['underarmToWaist']).client, unit: 'cm' })).toEqual([
      `Underarm to waist: estimated, 19.7 cm ± ${Number((0.196 * sd).toFixed(1))} cm`,
    ]);
    // The survey does not know this one.
    expect(estimatedLines(given(['waistToLap']).client)).toEqual(['Waist to lap, seated: estimated, 5½ in']);
    // Neither a name given twice nor one without a number tells anything.
    expect(estimatedLines(given(['waistToLap', 'waistToLap', 'neckWidth']).client)).toHaveLength(1);
  });

  it.each(PRINTS)('stands on: %s', async (_, words) => {
    const said = (text: string): string => text.replaceAll(/\s+/g, ' ').toLowerCase();
    const marked = said(await words(given(['underarmToWaist', 'waistToLap'])));
    expect(marked).toContain('estimated');
    expect(marked).toMatch(/underarm to waist:? ?(estimated, )?7( ?3\/4|¾)/);
    expect(marked).toMatch(/waist to lap, seated:? ?(estimated, )?5( ?1\/2|½)/);
    expect(said(await words(given([])))).not.toContain('estimated');
  });
});
