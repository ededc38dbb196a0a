// What DEVELOPERS.md says of adding a measurement and a field of the style, followed on a copy of the source.

import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { styleField } from '../../src/document/messages/remarks/styleFields';
import { DEFAULT_STYLE } from '../../src/engine';
import { ADD_MEASUREMENT, ADD_STYLE_FIELD, type Edit, edited } from './additions';

const ROOT = join(import.meta.dirname, '../..');
/** For a process of its own on a busy machine. */
const SLOW = { timeout: 180_000 };

const EDITS = [...ADD_MEASUREMENT, ...ADD_STYLE_FIELD];

interface Ran {
  readonly code: number | null;
  readonly text: string;
}

let copy: string;
let compiled: Promise<Ran>;
let carried: Promise<Ran>;

function run(...words: readonly string[]): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, words, { cwd: copy });
    let text = '';
    child.stdout.setEncoding('utf8').on('data', (part: string) => (text += part));
    child.stderr.setEncoding('utf8').on('data', (part: string) => (text += part));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, text }));
  });
}

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'staywright-source-'));
  cpSync(join(ROOT, 'src'), join(copy, 'src'), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'), 'junction');
  const options = JSON.parse(readFileSync(join(ROOT, 'tsconfig.json'), 'utf8')) as object;
  writeFileSync(join(copy, 'tsconfig.json'), JSON.stringify({ ...options, include: ['src', 'tests'] }));
  writeFileSync(join(copy, 'package.json'), JSON.stringify({ type: 'module' }));
  mkdirSync(join(copy, 'tests/architecture'), { recursive: true });
  const reader = 'tests/architecture/readAdditions.tsx';
  cpSync(new URL('./readAdditions.tsx', import.meta.url), join(copy, reader));
  for (const edit of EDITS) {
    const file = join(copy, edit.file);
    writeFileSync(file, edited(readFileSync(file, 'utf8'), edit));
  }
  compiled = run('node_modules/typescript-7/bin/tsc', '-p', '.');
  carried = run('--import', 'tsx', reader);
});
afterAll(async () => {
  await Promise.allSettled([compiled, carried]);
  rmSync(copy, { recursive: true, force: true });
});

describe('what a developer is told to edit', () => {
  it('is at most six files for a measurement, eight for a field of the style', () => {
    const filesOf = (edits: readonly Edit[]): number => new Set(edits.map(({ file }) => file)).size;
    expect(filesOf(ADD_MEASUREMENT)).toBeLessThanOrEqual(6);
    expect(filesOf(ADD_STYLE_FIELD)).toBeLessThanOrEqual(8);
  });

  it('is named, file by file', () => {
    const told = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
    const paragraph = (start: string): string =>
      told.split('\n').find((line) => line.startsWith(`**${start}**`)) ?? '';
    const unnamed = (start: string, edits: readonly Edit[]): string[] =>
      edits
        .map(({ file }) => file.replace('src/', ''))
        .filter((file) => !paragraph(start).includes(`\`${file}\``));
    expect(unnamed('a measurement', ADD_MEASUREMENT)).toEqual([]);
    expect(unnamed('a field of the style', ADD_STYLE_FIELD)).toEqual([]);
  });

  it('is the whole of it: the compiler has nothing to add', SLOW, async () => {
    expect(await compiled).toEqual({ code: 0, text: '' });
  });

  it('brings them into form, figure, words, history, files, book and backup', SLOW, async () => {
    const { code, text } = await carried;
    expect({ code, text }).toEqual({ code: 0, text: expect.stringMatching(/^\{/) });
    const both = { thigh: 560, waistStay: 25 };
    expect(JSON.parse(text)).toEqual({
      thighInForm: '22 1/16',
      tape: 'M-20 350C-12 360 12 360 20 350',
      howToTakeIt: 'Round the thigh.',
      stayInHistory: 'waist stay',
      stayTyped: 50.8,
      nameOfStay: 'The waist stay',
      faultOfStay: ['waistStay'],
      book: both,
      backup: both,
      styleFile: 25,
      clientFile: 560,
      bookWithoutThem: { thigh: null },
    });
  });
});

describe('an edit that is forgotten is named', () => {
  const program = programs();

  it.each(
    [
      ...ADD_MEASUREMENT.map((edit) => ({ ...edit, added: 'thigh' })),
      ...ADD_STYLE_FIELD.map((edit) => ({ ...edit, added: 'waistStay' })),
    ].filter(({ namedIn }) => namedIn !== null),
  )('by the compiler: $file', ({ added, ...forgotten }) => {
    const errors = errorsIn(String(forgotten.namedIn), program, forgotten);
    expect(errors.join('\n')).toContain(added);
  });

  it('by the test of the fields of a style, which lets none be called by its path: its name', () => {
    expect(styleField('waistStay', DEFAULT_STYLE).name).toBe('waistStay');
  });
});

type MakeProgram = (root: string, forgotten: Edit) => ts.Program;

/** Makes programs of the edited source without one of the edits; what they have in common is parsed once. */
function programs(): MakeProgram {
  const parsed = new Map<string, ts.SourceFile | undefined>();
  return (root, forgotten) => {
    const config: unknown = JSON.parse(readFileSync(join(copy, 'tsconfig.json'), 'utf8'));
    const { options } = ts.parseJsonConfigFileContent(config, ts.sys, copy);
    const host = ts.createCompilerHost(options);
    const read = host.getSourceFile.bind(host);
    host.getSourceFile = (file, ...rest) => {
      if (file === join(copy, forgotten.file))
        return ts.createSourceFile(file, textWithout(forgotten), ts.ScriptTarget.ES2022, true);
      if (!parsed.has(file)) parsed.set(file, read(file, ...rest));
      return parsed.get(file);
    };
    return ts.createProgram([root], options, host);
  };
}

/** The compiler's errors in one file where an edit is forgotten. */
function errorsIn(file: string, program: MakeProgram, forgotten: Edit): string[] {
  const root = join(copy, file);
  const made = program(root, forgotten);
  return made
    .getSemanticDiagnostics(made.getSourceFile(root))
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
}

/** The text of a file with the edits of it that are not left out. */
function textWithout(forgotten: Edit): string {
  const text = readFileSync(join(ROOT, forgotten.file), 'utf8');
  return EDITS.filter(({ file, put }) => file === forgotten.file && put !== forgotten.put).reduce(
    edited,
    text,
  );
}
