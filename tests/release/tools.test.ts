// The package as another project gets it: the drafter and the engine without anything that only building and testing need.

import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as engine from '../../src/engine';
import { buildTools } from '../../src/release/buildTools';

let project: string;
let own: string;
const manifest = JSON.parse(readFileSync('package.json', 'utf8'));

beforeAll(async () => {
  project = realpathSync(mkdtempSync(join(tmpdir(), 'staywright-tools-')));
  own = join(project, 'node_modules/staywright');
  mkdirSync(own, { recursive: true });
  await buildTools(join(own, 'lib'));
  for (const name of manifest.files.filter((each: string) => each !== 'lib'))
    cpSync(name, join(own, name), { recursive: true });
  cpSync('package.json', join(own, 'package.json'));
  for (const name of Object.keys(manifest.dependencies)) {
    const place = join(project, 'node_modules', name);
    mkdirSync(dirname(place), { recursive: true });
    symlinkSync(realpathSync(join('node_modules', name)), place, 'junction');
  }
  writeFileSync(join(project, 'package.json'), '{ "type": "module" }');
}, 240_000);
afterAll(() => rmSync(project, { recursive: true, force: true }));

const run = (...words: readonly string[]) =>
  spawnSync(process.execPath, words, { cwd: project, encoding: 'utf8', timeout: 120_000 });

describe('the drafter', () => {
  const drafter = (...words: readonly string[]) => run(join(own, manifest.bin.staywright), ...words);

  it('tells its version', () => {
    expect(drafter('--version')).toMatchObject({
      status: 0,
      stderr: '',
      stdout: expect.stringContaining(manifest.version),
    });
    expect(readFileSync(join(own, manifest.bin.staywright), 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
  });

  it('drafts and prints for a name in letters of its own', () => {
    const { measurements } = JSON.parse(run('--input-type=module', '--eval', WRITE_CLIENT).stdout);
    const client = { name: '王芳 שרה', unit: 'mm', measurements };
    writeFileSync(join(project, 'client.json'), JSON.stringify(client));
    expect(drafter('--client', 'client.json', '--out', 'made')).toMatchObject({ status: 0, stderr: '' });
    expect(readdirSync(join(project, 'made'))).toContain('pattern.pdf');
  }, 120_000);
});

/** The measurements of the README's example, from the example itself. */
const WRITE_CLIENT = `
  import { readFileSync } from 'node:fs';
  const readme = readFileSync('node_modules/staywright/src/engine/README.md', 'utf8');
  const [numbers] = /overBust:[^}]*/.exec(readme);
  console.log(JSON.stringify({ measurements: Function('return {' + numbers + '}')() }));
`;

describe('the engine', () => {
  it('runs the example of its README, and has types for it', () => {
    const readme = readFileSync('src/engine/README.md', 'utf8');
    const [, code = ''] = /```ts\n(import [\s\S]*?)```/.exec(readme) ?? [];
    expect(code).toContain(`from 'staywright/engine'`);
    const told = 'console.log(pieces.length, proof.ledger.length, issues.length);';
    writeFileSync(join(project, 'example.js'), `${code}\n${told}`);
    expect(run('example.js')).toMatchObject({
      status: 0,
      stderr: '',
      stdout: expect.stringMatching(/^6 5 \d+\n$/),
    });
    writeFileSync(join(project, 'example.ts'), `${code}\nexport const count: number = pieces.length;\n`);
    writeFileSync(join(project, 'wrong.ts'), `${code}\nexport const count: string = pieces.length;\n`);
    const program = ts.createProgram([join(project, 'example.ts'), join(project, 'wrong.ts')], {
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      types: [],
      lib: ['lib.es2022.d.ts'],
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
    });
    const faults = ts
      .getPreEmitDiagnostics(program)
      .map(({ file, messageText }) => [
        file?.fileName.replace(/.*\//, ''),
        ts.flattenDiagnosticMessageText(messageText, ' '),
      ]);
    expect(faults).toEqual([['wrong.ts', expect.stringMatching(/is not assignable to type 'string'/)]]);
  }, 120_000);

  it('has a page of everything it exports', () => {
    const page = readFileSync(join(own, 'lib/engine/REFERENCE.md'), 'utf8');
    for (const name of Object.keys(engine)) expect(page).toContain(`### ${name}\n`);
    expect(page).toMatch(/### draft\n\n[A-Z][^`]+```ts\nfunction draft\(/);
  });
});
