// One client drafted into files.

import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { issueSentence } from '../document';
import type { Draft, Issue } from '../engine';
import type { PaperChoice, PatternInput } from '../paper';
import type { FileClient } from './clientFile';
import { type Read, refuse } from './fault';
import { fontFiles } from './fontFiles';
import { piecesFile } from './piecesFile';
import type { FileStyle } from './styleFile';

/** What is made of a draft that has pieces, in this order. */
const PATTERN_FILES: readonly {
  readonly name: string;
  readonly make: (paper: Paper, input: PatternInput) => string | Promise<Uint8Array>;
}[] = [
  { name: 'pattern.pdf', make: ({ patternPdf }, input) => patternPdf(input) },
  { name: 'pattern.svg', make: ({ patternSvg }, input) => patternSvg(input) },
  { name: 'pattern.dxf', make: ({ patternDxf }, input) => patternDxf(input) },
  { name: 'sheet.html', make: ({ sheetHtml }, input) => sheetHtml(input) },
];

type Paper = typeof import('../paper');

/** The files made, in the order they were made. */
export async function draftFiles(
  drafted: Draft,
  client: FileClient,
  { title, style }: FileStyle,
  paper: PaperChoice,
  out: string,
): Promise<Read<readonly string[]>> {
  const made: string[] = [];
  const write = async (name: string, content: string | Uint8Array): Promise<void> => {
    const path = join(out, name);
    await writeFile(path, content);
    made.push(path);
  };
  try {
    await mkdir(out, { recursive: true });
    await write('pieces.json', `${JSON.stringify(piecesFile(drafted, style, client.unit))}\n`);
    // A pattern of an earlier draft must not lie beside these pieces.
    for (const { name } of PATTERN_FILES) await rm(join(out, name), { force: true });
    if (drafted.pieces.length === 0) return { ok: true, value: made };
    const layer = await import('../paper');
    const unit = client.unit === 'in' ? 'in' : 'cm';
    const asked: PatternInput = {
      draft: drafted,
      client: { name: client.name, unit },
      sheet: { name: title, style, acknowledgedReduction: null },
      date: today(),
      making: layer.usualMaking(unit),
      paper,
    };
    const input = await layer.withLetters(asked, fontFiles);
    for (const { name, make } of PATTERN_FILES) await write(name, await make(layer, input));
    return { ok: true, value: made };
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return refuse('--out', `The files could not be written into ${out} (${error.code}).`);
  }
}

/** What a reading or writing call throws, as opposed to a fault of the program. */
export const isSystemError = (error: unknown): error is Error & { code: string } =>
  error instanceof Error && 'syscall' in error && 'code' in error && typeof error.code === 'string';

/** The day where the maker is, as 2026-11-25. */
function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** An issue on one line: how grave, where, what. */
export function issueLine(issue: Issue, { style }: FileStyle, { unit }: FileClient): string {
  const { piece, block, seam, level, wedge, field } = issue.at;
  const place = [piece ?? seam ?? block, level, wedge].filter((part) => part !== undefined).join(' ');
  return `${issue.severity} ${place || (field ?? 'draft')}: ${issueSentence(issue, { unit, style })}\n`;
}
