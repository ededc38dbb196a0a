// The rules as a function of the source text, so that they can be run over a project made to break them.

import { posix } from 'node:path';
import ts from 'typescript';
import { effectRules } from './effectRules';
import { identityRules } from './identityRules';
import { lineOf } from './lineOf';

/** Source text by path from the project's root, with forward slashes: `src/engine/index.ts`. */
export type Sources = ReadonlyMap<string, string>;

/** Which layers a layer may import; its own files are always open to it. `main` is src/main.tsx; `release` builds what is given away. */
const ARROWS: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  document: ['engine'],
  paper: ['engine', 'document'],
  table: ['engine', 'document'],
  app: ['engine', 'document', 'paper', 'table'],
  cli: ['engine', 'document', 'paper'],
  main: ['app'],
  release: ['document'],
};

/**
 * The folders of a layer, lowest first: a file may import its own folder and those before it. Files at a layer's root are
 * above all its folders. A layer that is not listed is one folder.
 */
const FOLDERS: Readonly<Record<string, readonly string[]>> = {
  engine: [
    ...[
      'terms',
      'geometry',
      'geometry/offset',
      'style',
      'body',
      'block/lines',
      'block/shoulders',
      'block',
      'edges',
      'panels',
      'alterations/terms',
      'alterations/closed',
      'alterations/moves',
      'alterations',
      'pieces',
      'pieces/turn',
      'extras',
      'checks',
      'draft',
    ],
    ...['worn/body', 'worn/mesh', 'worn/cloth', 'worn/solve', 'worn/measure', 'worn'],
  ],
  document: [
    'units',
    'statistics',
    'model/migrations',
    'model',
    'model/kept',
    'messages',
    'messages/words',
    'messages/remarks',
    'messages/book',
    'messages/screens/draft',
    'messages/screens/fit',
    'messages/screens/cut',
    'messages/screens/clients',
    'messages/screens',
    'messages/help',
    'messages/paper',
    'presets',
    'edit/wedges',
    'edit/clients',
    'edit',
    'files',
    'sizes',
  ],
  paper: [
    ...[
      'geometry',
      'text',
      'glyphs',
      'remarks',
      'making',
      'panel',
      'sheets',
      'cloth/pairs',
      'cloth',
      'packing',
      'layout',
    ],
    ...['nested', 'svg', 'dxf', 'pdf/file', 'pdf/blocks', 'pdf', 'pdf/nested', 'layPlan'],
    ...['draftingSheet/elements', 'draftingSheet/steps', 'draftingSheet'],
  ],
  cli: ['input', 'output'],
  table: ['layout', 'handles', 'gestures', 'view/lines', 'view', 'view/closedUp'],
  app: [
    ...[
      'store',
      'storage/records',
      'storage/device',
      'storage/aside',
      'storage/book',
      'storage/windows',
      'storage',
    ],
    ...['offline', 'components/files', 'components/awaited', 'components/fields', 'components/links'],
    ...['components', 'components/later'],
    ...['styles/window', 'styles/measure', 'styles/draft', 'styles'],
    ...['measure/figure', 'help', 'measure/rows', 'measure'],
    ...['worn/view', 'worn'],
    ...['draft/wedges', 'draft/styles', 'draft/canvas', 'draft/strip', 'draft'],
    ...['fit/fittings/forms', 'fit/fittings', 'fit'],
    ...['cut/choices', 'cut/print', 'cut/lay', 'cut/media', 'cut/sizes', 'cut'],
    ...['shell/book', 'shell/notices', 'shell'],
  ],
};

/**
 * Folders that may not be imported although they stand lower: the checks measure finished pieces, as an outsider would; one
 * kind of file is not made from another.
 */
const CLOSED_TO: Readonly<Record<string, readonly string[]>> = {
  'engine/checks': ['panels', 'extras'],
  'engine/worn/mesh': ['panels', 'extras'],
  'engine/worn/solve': ['panels', 'extras'],
  'paper/dxf': ['svg'],
  'paper/pdf': ['svg', 'dxf'],
  'paper/draftingSheet': ['svg', 'dxf', 'pdf'],
};

const MOST_LINES = 300;

/** Packages the engine may use: arithmetic on paths, triangles of points and the style's schema, nothing that knows of a screen, a clock or a disk. */
const ENGINE_PACKAGES: readonly string[] = ['clipper2-ts', 'delaunator', 'zod'];

const ENGINE_ABSENT: readonly string[] = [
  'Date',
  'performance',
  'console',
  'window',
  'document',
  'localStorage',
  'process',
  'globalThis',
  'crypto',
  'setTimeout',
  'fetch',
];

/** Every broken rule as `file:line: rule`. */
export function brokenRules(sources: Sources): string[] {
  const broken: string[] = [];
  const links = new Map<string, readonly Link[]>();
  for (const [file, text] of sources) {
    broken.push(...wholeFile(file, text));
    if (!isCode(file)) continue;
    const source = parse(file, text);
    const own = linksIn(source);
    links.set(file, own);
    for (const link of own) broken.push(...linkRules(file, link, sources));
    broken.push(...nameRules(file, source), ...identityRules(file, source), ...effectRules(file, source));
  }
  return [...broken, ...cycles(sources, links)];
}

interface Link {
  readonly line: number;
  readonly to: string;
}

/** Everything a file takes from elsewhere: imports, type imports, exports from, and imports at run time. */
export const linksOf = (file: string, text: string): Link[] => linksIn(parse(file, text));

function linksIn(source: ts.SourceFile): Link[] {
  const links: Link[] = [];
  const add = (node: ts.Node, to: ts.Node | undefined): void => {
    if (to && ts.isStringLiteralLike(to)) links.push({ line: lineOf(source, node), to: to.text });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) add(node, node.moduleSpecifier);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node, node.arguments[0]);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      add(node, node.argument.literal);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return links;
}

/** The package an import comes from, whichever of its modules is named. */
const packageOf = (to: string): string => to.split('/', to.startsWith('@') ? 2 : 1).join('/');

function linkRules(file: string, { line, to }: Link, sources: Sources): string[] {
  const from = layerOf(file);
  const say = (rule: string): string[] => [`${file}:${line}: ${rule}`];
  if (!to.startsWith('.')) {
    if (from === 'engine' && !ENGINE_PACKAGES.includes(packageOf(to)))
      return say(`the engine imports the package ${to}`);
    return [];
  }
  const target = resolved(file, to, sources);
  if (target === null) return say(`${to} is not a file of the project`);
  const into = layerOf(target);
  const isIndex = /^src\/\w+\/index\.tsx?$/.test(target);
  if (into === from)
    return isIndex ? say(`${from} imports its own index`) : folderRules(from, file, target).flatMap(say);
  if (!ARROWS[from]?.includes(into)) return say(`${from} may not import ${into}`);
  if (!isIndex && !(from === 'main' && target.endsWith('.css')))
    return say(`${into} is imported past its index`);
  return [];
}

/** What forbids an import from one folder of a layer to another. */
function folderRules(layer: string, file: string, target: string): string[] {
  const folders = FOLDERS[layer];
  const [own, other] = [folderOf(file), folderOf(target)];
  if (!folders || own === other || own === '') return [];
  if (folders.indexOf(other) > folders.indexOf(own) || other === '')
    return [`${layer}/${own} may not import ${other === '' ? 'from the root of its layer' : other}`];
  return CLOSED_TO[`${layer}/${own}`]?.includes(other) ? [`${layer}/${own} may not import ${other}`] : [];
}

/** The folder of a file within its layer: `model/migrations`; empty at the layer's root. */
const folderOf = (file: string): string => file.split('/').slice(2, -1).join('/');

function wholeFile(file: string, text: string): string[] {
  const broken: string[] = [];
  const lines = text.replace(/\n$/, '').split('\n');
  if (lines.length > MOST_LINES) broken.push(`${file}:${lines.length}: longer than ${MOST_LINES} lines`);
  if (/\/index\.tsx?$/.test(file) && !/^src\/\w+\/index\.tsx?$/.test(file))
    broken.push(`${file}:1: an index that is not at its layer's root`);
  const layer = layerOf(file);
  if (ARROWS[layer] === undefined) broken.push(`${file}:1: is in no layer`);
  const folder = folderOf(file);
  if (folder !== '' && FOLDERS[layer]?.includes(folder) === false)
    broken.push(`${file}:1: ${folder} is no folder of ${layer}`);
  for (const [i, line] of lines.entries())
    for (const [url] of line.matchAll(/https?:\/\/[^\s'"`)]*/g))
      if (!/^https?:\/\/www\.w3\.org\//.test(url))
        broken.push(`${file}:${i + 1}: an address of another host, ${url}`);
  return broken;
}

function nameRules(file: string, source: ts.SourceFile): string[] {
  const broken: string[] = [];
  const inEngine = layerOf(file) === 'engine';
  const visit = (node: ts.Node): void => {
    const line = (): number => lineOf(source, node);
    if (ts.isPropertyAccessExpression(node) && inEngine && node.getText(source) === 'Math.random')
      broken.push(`${file}:${line()}: the engine uses Math.random`);
    if (ts.isIdentifier(node)) {
      if (node.text === 'localStorage' && !file.startsWith('src/app/storage/'))
        broken.push(`${file}:${line()}: localStorage outside src/app/storage`);
      else if (inEngine && ENGINE_ABSENT.includes(node.text) && !isMemberName(node))
        broken.push(`${file}:${line()}: the engine uses ${node.text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return broken;
}

/** Whether a name only names a part of something: `draft.document`, `{ document: 1 }`. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) ||
      ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent)) &&
    parent.name === node
  );
}

function cycles(sources: Sources, links: ReadonlyMap<string, readonly Link[]>): string[] {
  const broken: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) {
      broken.push(`${file}:1: a cycle, ${[...path.slice(start), file].join(' → ')}`);
      return;
    }
    if (done.has(file)) return;
    for (const { to } of links.get(file) ?? []) {
      const target = to.startsWith('.') ? resolved(file, to, sources) : null;
      if (target !== null) visit(target, [...path, file]);
    }
    done.add(file);
  };
  for (const file of sources.keys()) visit(file, []);
  return broken;
}

const isCode = (file: string): boolean => /\.tsx?$/.test(file);

function layerOf(file: string): string {
  const [, first = '', ...rest] = file.split('/');
  return rest.length === 0 ? first.replace(/\.tsx?$/, '') : first;
}

function resolved(file: string, to: string, sources: Sources): string | null {
  const path = posix.join(posix.dirname(file), to.replace(/\?.*$/, ''));
  const places = [path, `${path}.ts`, `${path}.tsx`, `${path}/index.ts`, `${path}/index.tsx`];
  return places.find((place) => sources.has(place)) ?? null;
}

const parse = (file: string, text: string): ts.SourceFile =>
  ts.createSourceFile(
    file,
    text,
    ts.ScriptTarget.ES2022,
    true,
    file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
