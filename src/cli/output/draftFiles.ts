// Writes the files of one client's draft.

import { CLI, type FileStyle, type Fitting, issueSentence, PROGRAM, type Read, refuse } from '../../document';
import type { Draft, Issue } from '../../engine';
import type { PlanInput, WithFace } from '../../paper';
import { type FileClient, paperUnit } from '../input/clientFile';
import type { LayOptions } from '../input/options';
import type { Print } from '../input/paperNamed';
import { fontFiles } from './fontFiles';
import { LAY_FILES, layFiles } from './layFiles';
import { piecesFile, SEVERITY_IN_FILES } from './piecesFile';
import { type Content, type Written, writtenFiles } from './writtenFiles';

type Paper = typeof import('../../paper');

/** How panels may lie: with a nap, all heads one way. And the cloth that they are laid on; null where none is asked for. */
interface Lay {
  readonly nap: boolean;
  readonly lay: LayOptions | null;
}

/** A style, and the fittings laid on its draft; null where no file of fittings was named. */
interface AskedStyle extends FileStyle {
  readonly fittings: readonly Fitting[] | null;
}

/** The files made beside pattern.pdf of a draft that has pieces, in this order. */
const DRAWN_FILES: readonly {
  readonly name: string;
  readonly make: (paper: Paper, input: PlanInput) => string;
}[] = [
  { name: 'pattern.svg', make: ({ patternSvg }, input) => patternSvg(input) },
  { name: 'pattern.dxf', make: ({ patternDxf }, input) => patternDxf(input) },
  { name: 'sheet.html', make: ({ draftingSheetHtml }, input) => draftingSheetHtml(input) },
];
const PRINTED_FILE = 'pattern.pdf';
const WORN_FILE = 'worn.json';

/**
 * Writes the files into a directory and returns their paths in the order written. Nothing is written where the pattern cannot be
 * printed on the paper asked for.
 *
 * @param worn the content of worn.json where there is one
 */
export async function draftFiles(
  drafted: Draft,
  client: FileClient,
  style: AskedStyle,
  print: Print & Lay,
  out: string,
  worn: string | null = null,
): Promise<Written> {
  const pattern = await patternContents(drafted, client, style, print);
  if (!pattern.ok) return pattern;
  const pieces = `${JSON.stringify(piecesFile(drafted, style.style, client.unit, style.fittings))}\n`;
  const contents: readonly Content[] = [
    ['pieces.json', pieces],
    ...pattern.value,
    ...(worn === null ? [] : [[WORN_FILE, worn] as const]),
  ];
  // A pattern of an earlier draft must not stay beside these pieces.
  const earlier = [PRINTED_FILE, WORN_FILE, ...LAY_FILES, ...DRAWN_FILES.map((file) => file.name)];
  return writtenFiles(contents, out, earlier);
}

async function patternContents(
  drafted: Draft,
  client: FileClient,
  { title, style, fittings }: AskedStyle,
  print: Print & Lay,
): Promise<Read<readonly Content[]>> {
  if (drafted.pieces.length === 0) return { ok: true, value: [] };
  const layer = await import('../../paper');
  const unit = paperUnit(client);
  const asked: PlanInput = {
    draft: drafted,
    client: { ...client, unit },
    savedDraft: { name: title, style, acknowledgedReduction: null, fittings: fittings ?? [] },
    date: today(),
    nap: print.nap || print.kind === 'projector',
    making: layer.usualMaking(unit),
    program: PROGRAM,
  };
  const input = await layer.withFace(await layer.withGlyphs(asked, fontFiles), fontFiles);
  const printed = await printedOn(print, input, layer, client.unit);
  if (!printed.ok) return printed;
  const laid = print.lay === null ? null : await layFiles({ ...input, nap: print.nap }, print.lay, layer);
  if (laid && !laid.ok) return laid;
  return {
    ok: true,
    value: [
      [PRINTED_FILE, printed.value],
      ...DRAWN_FILES.map(({ name, make }): Content => [name, make(layer, input)]),
      ...(laid?.value ?? []),
    ],
  };
}

async function printedOn(
  print: Print,
  input: PlanInput & WithFace,
  { layOutOnePage, onePagePdf, onePageSentence, patternPdf, projectorPdf }: Paper,
  unit: FileClient['unit'],
): Promise<Read<Uint8Array>> {
  if (print.kind === 'sheets') return { ok: true, value: await patternPdf({ ...input, paper: print.paper }) };
  if (print.kind === 'page') {
    const laid = layOutOnePage(input, print.choice);
    return laid.ok
      ? { ok: true, value: await onePagePdf(input, print.choice) }
      : refuse('--paper', onePageSentence(laid.fault, unit));
  }
  const picture = await projectorPdf(input, print.choice);
  return picture ? { ok: true, value: picture } : refuse('--paper', CLI.pictureTooLarge);
}

/** The local day, as 2026-11-25. */
export function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** An issue on one line: its severity, its place and its sentence. */
export function issueLine(issue: Issue, { style }: FileStyle, { unit }: FileClient): string {
  const { piece, block, seam, level, wedge, field } = issue.at;
  const place = [piece?.id ?? seam?.id ?? block, level, wedge].filter((part) => part !== undefined).join(' ');
  return `${SEVERITY_IN_FILES[issue.severity]} ${place || (field ?? 'draft')}: ${issueSentence(issue, { unit, style })}\n`;
}
