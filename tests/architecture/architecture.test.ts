// Layers, folders and files import one way only. Read from the source itself; each breach is named by file, line and rule.

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FOLDER_POLICY, singleFilePolicy } from '../../src/release/policy';
import { brokenRules, linksOf, type Sources } from './rules';

const ROOT = join(import.meta.dirname, '../..');

function readSources(): Sources {
  const files = readdirSync(join(ROOT, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(tsx?|css)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
  return new Map(
    files.sort().map((file) => [relative(ROOT, file).split(sep).join('/'), readFileSync(file, 'utf8')]),
  );
}

describe('the policy of the page', () => {
  it.each([
    ['of the folder', FOLDER_POLICY],
    ['of the one file', singleFilePolicy(['sha256-a'], ['sha256-b'])],
  ])(
    '%s lets no text become code but WebAssembly, the shaping of letters, and names no host',
    (_, policy) => {
      expect(policy).toMatch(/script-src '[^']+' 'wasm-unsafe-eval';/);
      expect(policy.match(/'unsafe-[^']*'/g)).toBeNull();
      expect(policy).not.toMatch(/https?:|\*/);
      expect(policy).toContain("default-src 'none'");
    },
  );
});

describe('the source', () => {
  const sources = readSources();

  it('is read whole', () => {
    expect(sources.size).toBeGreaterThan(20);
    expect([...sources.keys()]).toEqual(
      expect.arrayContaining(['src/engine/index.ts', 'src/document/model/book.ts', 'src/main.tsx']),
    );
    const links = [...sources].flatMap(([file, text]) => (file.endsWith('.css') ? [] : linksOf(file, text)));
    expect(links.length).toBeGreaterThan(sources.size);
  });

  it('breaks no rule', () => {
    expect(brokenRules(sources)).toEqual([]);
  });
});

/** A small project that breaks no rule. */
const SOUND: readonly (readonly [string, string])[] = [
  ['src/engine/index.ts', "export { draft } from './draft/draft';\n"],
  [
    'src/engine/draft/draft.ts',
    "import { x } from 'clipper2-ts';\nimport type { Point } from '../geometry/point';\nexport const draft = (p: Point) => x(p);\n",
  ],
  [
    'src/engine/geometry/point.ts',
    'export interface Point { readonly document: number }\n// not a clock: Date, Math.random\n',
  ],
  ['src/engine/geometry/b.ts', "import type { Point } from './point';\nexport type b = Point;\n"],
  ['src/engine/panels/panel.ts', 'export interface Panel { readonly id: string }\n'],
  ['src/document/write.ts', 'export const write = 1;\n'],
  ['src/document/index.ts', "export { book } from './model/book';\n"],
  ['src/document/model/book.ts', "import { draft } from '../../engine';\nexport const book = draft;\n"],
  ['src/paper/index.ts', "export { book as sheet } from '../document';\n"],
  ['src/paper/panel/strokes.ts', 'export interface Stroke { readonly kind: string }\n'],
  ['src/paper/svg/patternSvg.ts', "export type { Stroke as Svg } from '../panel/strokes';\n"],
  ['src/table/index.ts', "export { draft as table } from '../engine';\n"],
  [
    'src/cli/main.ts',
    "import { sheet } from '../paper';\nimport { argv } from 'node:process';\nsheet(argv);\n",
  ],
  [
    'src/app/index.ts',
    "export { keep } from './storage/keep';\nexport const namespace = 'http://www.w3.org/2000/svg';\n",
  ],
  ['src/app/storage/keep.ts', 'export const keep = () => localStorage.clear();\n'],
  ['src/app/styles/base.css', 'p { color: red }\n'],
  ['src/main.tsx', "import { keep } from './app';\nimport './app/styles/base.css';\nkeep();\n"],
];

/** A file that breaks one rule, added to the sound project, and the message it must give. */
const BREACHES: readonly (readonly [string, string, string])[] = [
  [
    'src/engine/a.ts',
    "\nimport { book } from '../document';",
    'src/engine/a.ts:2: engine may not import document',
  ],
  [
    'src/document/a.ts',
    "import type { sheet } from '../paper';",
    'src/document/a.ts:1: document may not import paper',
  ],
  ['src/paper/a.ts', "export * from '../table';", 'src/paper/a.ts:1: paper may not import table'],
  [
    'src/table/a.ts',
    "const late = () => import('../paper');",
    'src/table/a.ts:1: table may not import paper',
  ],
  [
    'src/table/a.ts',
    "export type Sheet = import('../paper').Sheet;",
    'src/table/a.ts:1: table may not import paper',
  ],
  ['src/cli/a.ts', "import '../table';", 'src/cli/a.ts:1: cli may not import table'],
  ['src/app/a.tsx', "import '../cli/main';", 'src/app/a.tsx:1: app may not import cli'],
  ['src/cli/a.ts', "import { keep } from '../app';", 'src/cli/a.ts:1: cli may not import app'],
  [
    'src/app/a.ts',
    "import { draft } from '../engine/draft/draft';",
    'src/app/a.ts:1: engine is imported past its index',
  ],
  [
    'src/document/a.ts',
    "import { book } from './index';",
    'src/document/a.ts:1: document imports its own index',
  ],
  ['src/document/a.ts', "import { book } from '.';", 'src/document/a.ts:1: document imports its own index'],
  [
    'src/app/components/index.ts',
    'export {};',
    "src/app/components/index.ts:1: an index that is not at its layer's root",
  ],
  [
    'src/engine/a.ts',
    "import { useState } from 'react';",
    'src/engine/a.ts:1: the engine imports the package react',
  ],
  [
    'src/engine/a.ts',
    "import fs from 'node:fs';",
    'src/engine/a.ts:1: the engine imports the package node:fs',
  ],
  ['src/engine/a.ts', 'export const a = Math.random();', 'src/engine/a.ts:1: the engine uses Math.random'],
  ['src/engine/a.ts', 'export const a = Date.now();', 'src/engine/a.ts:1: the engine uses Date'],
  [
    'src/engine/a.ts',
    'export const a = performance.now();',
    'src/engine/a.ts:1: the engine uses performance',
  ],
  ['src/engine/a.ts', '\n\nconsole.log(1);', 'src/engine/a.ts:3: the engine uses console'],
  ['src/engine/a.ts', 'export const a = window;', 'src/engine/a.ts:1: the engine uses window'],
  ['src/engine/a.ts', 'document.title;', 'src/engine/a.ts:1: the engine uses document'],
  [
    'src/app/a.ts',
    "\nuseEffect(() => element?.scrollIntoView?.({ block: 'nearest' }), [element]);",
    'src/app/a.ts:2: an effect returns what a method of the page gives',
  ],
  [
    'src/paper/a.ts',
    "\nexport const a = (id: string) => id.startsWith('x');",
    'src/paper/a.ts:2: an id is taken apart',
  ],
  [
    'src/paper/a.ts',
    "export const a = (p: { id: string }) => p.id.split('/');",
    'src/paper/a.ts:1: an id is taken apart',
  ],
  [
    'src/table/a.ts',
    'export const a = (p: { id: string }) => /-band$/.test(p.id);',
    'src/table/a.ts:1: an id is taken apart',
  ],
  [
    'src/table/a.ts',
    "export const a = (piece: string) => piece.endsWith('-band');",
    'src/table/a.ts:1: an id is taken apart',
  ],
  [
    'src/app/a.ts',
    `\n\nexport const a = (seam: string, side: string) => seam.startsWith(\`\${side}-\`);`,
    'src/app/a.ts:3: an id is taken apart',
  ],
  [
    'src/engine/a.ts',
    'export const a = (p: { edges: number[] }) => p.edges[0];',
    'src/engine/a.ts:1: an edge is found by counting',
  ],
  [
    'src/engine/a.ts',
    'export const a = (edges: number[], i: number) => edges.length - i;',
    'src/engine/a.ts:1: an edge is found by counting',
  ],
  [
    'src/app/shell.ts',
    'window.localStorage.clear();',
    'src/app/shell.ts:1: localStorage outside src/app/storage',
  ],
  ['src/document/a.ts', 'const a = 1;\n'.repeat(301), 'src/document/a.ts:301: longer than 300 lines'],
  [
    'src/app/a.ts',
    "\nfetch('https://example.org/x');",
    'src/app/a.ts:2: an address of another host, https://example.org/x',
  ],
  ['src/paper/a.ts', "import './gone';", 'src/paper/a.ts:1: ./gone is not a file of the project'],
  ['src/attic/a.ts', 'export {};', 'src/attic/a.ts:1: is in no layer'],
  [
    'src/engine/geometry/point.ts',
    "import { a } from './line';",
    'src/engine/geometry/point.ts:1: ./line is not a file of the project',
  ],
  [
    'src/engine/geometry/a.ts',
    "import type { draft } from '../draft/draft';",
    'src/engine/geometry/a.ts:1: engine/geometry may not import draft',
  ],
  [
    'src/document/model/migrations/a.ts',
    "\nimport { book } from '../book';",
    'src/document/model/migrations/a.ts:2: document/model/migrations may not import model',
  ],
  [
    'src/engine/checks/a.ts',
    "import type { Panel } from '../panels/panel';",
    'src/engine/checks/a.ts:1: engine/checks may not import panels',
  ],
  [
    'src/document/model/a.ts',
    "import { book } from '../write';",
    'src/document/model/a.ts:1: document/model may not import from the root of its layer',
  ],
  [
    'src/paper/text/a.ts',
    "import type { Stroke } from '../panel/strokes';",
    'src/paper/text/a.ts:1: paper/text may not import panel',
  ],
  [
    'src/paper/pdf/a.ts',
    "import type { Svg } from '../svg/patternSvg';",
    'src/paper/pdf/a.ts:1: paper/pdf may not import svg',
  ],
  ['src/app/attic/a.ts', 'export {};', 'src/app/attic/a.ts:1: attic is no folder of app'],
  [
    'src/engine/geometry/point.ts',
    "import type { b } from './b';",
    'src/engine/geometry/point.ts:1: a cycle, src/engine/geometry/point.ts → src/engine/geometry/b.ts → src/engine/geometry/point.ts',
  ],
];

describe('the rules', () => {
  it('leave a sound project alone', () => {
    expect(brokenRules(new Map(SOUND))).toEqual([]);
  });

  it.each(BREACHES.map(([file, text, said]) => ({ file, text, said })))(
    'say: $said',
    ({ file, text, said }) => {
      expect(brokenRules(new Map([...SOUND, [file, text]]))).toEqual([said]);
    },
  );
});
