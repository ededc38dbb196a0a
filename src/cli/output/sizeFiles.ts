// Writes the files of a range of sizes: each size's pieces, the nested print and the table.

import { join } from 'node:path';
import {
  CLI,
  COLUMNS,
  columnLabel,
  draftSize,
  errorsOf,
  type FileStyle,
  hasMeasurement,
  issueSentence,
  passedOver,
  type Read,
  readSizes,
  refuse,
  rowFaultSentence,
  SIZES,
  type SizedDraft,
  sizesCsv,
} from '../../document';
import type { NestedInput, WithFace } from '../../paper';
import type { Print } from '../input/paperNamed';
import { today } from './draftFiles';
import { fontFiles } from './fontFiles';
import { piecesFile, SEVERITY_IN_FILES } from './piecesFile';
import { type Content, type Written, writtenFiles } from './writtenFiles';

type Paper = typeof import('../../paper');

interface SizesMade {
  /** Paths in the order written. */
  readonly files: readonly string[];
  /** Lines for the error stream: rows left out, and what forbids cutting a size. */
  readonly said: readonly string[];
  /** Every row was drafted and can be cut. */
  readonly isWhole: boolean;
}

type Made = Written<SizesMade>;

const SIZES_FOLDER = 'sizes';
const NESTED_FILES = ['nested.pdf', 'nested.svg', 'nested.dxf'] as const;
const TABLE_FILE = 'sizes.csv';

/** Drafts each size of a table and writes its files; a row that cannot be read stops no other. */
export async function sizeFiles(text: string, style: FileStyle, print: Print, out: string): Promise<Made> {
  const read = readSizes(text, 'mm');
  if (read.columns.length === 0) return refuse('--sizes', SIZES.noRow);
  if (!hasMeasurement(read))
    return refuse('--sizes', COLUMNS.noMeasurement({ columns: read.columns.map(columnLabel) }));
  const rowFaults = read.faults.map((fault) => ({
    path: `row ${fault.row}`,
    message: rowFaultSentence(fault),
  }));
  if (read.bodies.length === 0)
    return rowFaults.length > 0 ? { ok: false, faults: rowFaults } : refuse('--sizes', SIZES.noRow);
  const sizes = read.bodies.map((body) => draftSize(body, style.style));
  const drafted = sizes.filter(({ draft }) => draft.pieces.length > 0);
  if (drafted.length === 0)
    return { ok: false, faults: [...rowFaults, ...sizes.flatMap((size) => faultsOf(size, style))] };
  const nested = await nestedContents(sizes, style, print);
  if (!nested.ok) return nested;
  const names = fileNames(drafted.map(({ name }) => name));
  const contents: Content[] = [
    ...drafted.map(
      ({ draft }, i): Content => [
        join(SIZES_FOLDER, `${names[i]}.json`),
        `${JSON.stringify(piecesFile(draft, style.style, 'mm'))}\n`,
      ],
    ),
    ...nested.value,
    [TABLE_FILE, sizesCsv(sizes)],
  ];
  const written = await writeAll(contents, out);
  if (!written.ok) return written;
  const unread = passedOver(read.columns);
  const said = [
    ...rowFaults.map(({ path, message }) => `warn ${path}: ${message}\n`),
    ...(unread.length > 0 ? [`note columns: ${COLUMNS.passedOver({ columns: unread })}\n`] : []),
    ...sizes.flatMap((size) => issueLines(size, style)),
  ];
  const isWhole = read.faults.length === 0 && sizes.every(({ canBeCut }) => canBeCut);
  return { ok: true, value: { files: written.value, said, isWhole } };
}

const faultsOf = ({ name, draft }: SizedDraft, { style }: FileStyle) =>
  errorsOf(draft).map((issue) => ({
    path: `${name} ${issue.at.field ?? 'draft'}`,
    message: issueSentence(issue, { unit: 'mm', style }),
  }));

/** Errors and warnings of a size, each on a line that begins with its severity and the size. */
const issueLines = ({ name, draft }: SizedDraft, { style }: FileStyle): string[] =>
  draft.issues
    .filter(({ severity }) => severity !== 'note')
    .map((issue) => {
      const { piece, block, seam, level, wedge, field } = issue.at;
      const place = [piece?.id ?? seam?.id ?? block, level, wedge].filter((part) => part !== undefined);
      const where = [name, place.join(' ') || (field ?? 'draft')].join(' ');
      return `${SEVERITY_IN_FILES[issue.severity]} ${where}: ${issueSentence(issue, { unit: 'mm', style })}\n`;
    });

async function nestedContents(
  sizes: readonly SizedDraft[],
  { title, style }: FileStyle,
  print: Print,
): Promise<Read<readonly Content[]>> {
  const cut = sizes.filter(({ canBeCut }) => canBeCut);
  if (cut.length === 0) return { ok: true, value: [] };
  const layer = await import('../../paper');
  const asked: NestedInput = {
    sizes: cut,
    leftOut: sizes.filter(({ canBeCut }) => !canBeCut).map(({ name }) => name),
    savedDraft: { name: title, style },
    unit: 'cm',
    date: today(),
    glyphs: await layer.glyphsFor([title, ...sizes.map(({ name }) => name)], fontFiles),
  };
  const input = await layer.withFace(asked, fontFiles);
  const printed = await printedOn(print, input, layer);
  if (!printed.ok) return printed;
  const [pdf, svg, dxf] = NESTED_FILES;
  return {
    ok: true,
    value: [
      [pdf, printed.value],
      [svg, layer.nestedSvg(input)],
      [dxf, layer.nestedDxf(input)],
    ],
  };
}

async function printedOn(
  print: Print,
  input: NestedInput & WithFace,
  { nestedPagePdf, nestedPdf, nestedProjectorPdf, onePageSentence }: Paper,
): Promise<Read<Uint8Array>> {
  if (print.kind === 'sheets') return { ok: true, value: await nestedPdf(input, print.paper) };
  if (print.kind === 'page') {
    const made = await nestedPagePdf(input, print.choice);
    return made.ok ? { ok: true, value: made.bytes } : refuse('--paper', onePageSentence(made.fault, 'mm'));
  }
  const picture = await nestedProjectorPdf(input, print.choice);
  return picture ? { ok: true, value: picture } : refuse('--paper', CLI.pictureTooLarge);
}

// Sizes of an earlier table must not stay beside these.
const writeAll = (contents: readonly Content[], out: string): Promise<Written> =>
  writtenFiles(contents, out, [SIZES_FOLDER, ...NESTED_FILES, TABLE_FILE], SIZES_FOLDER);

/** Names of sizes as names of files: signs that a system may not take become hyphens, and none comes twice. */
function fileNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const plain = name
      .normalize('NFC')
      .replace(/[^\p{L}\p{M}\p{N} ._+-]+/gu, '-')
      .replace(/^[ .]+|[ .]+$/g, '')
      .slice(0, 60);
    let own = plain === '' ? SIZES_FOLDER : plain;
    for (let count = 2; taken.has(own.toLowerCase()); count += 1) own = `${plain}-${count}`;
    taken.add(own.toLowerCase());
    return own;
  });
}
