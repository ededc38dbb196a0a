// What the engine exports as a page, with the comments and shapes that stand in the code.

import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const ENGINE = fileURLToPath(new URL('../engine', import.meta.url));

interface Entry {
  readonly name: string;
  /** Path within the engine. */
  readonly file: string;
  readonly comment: string;
  /** The declaration without what it does. */
  readonly shape: string;
}

/** Where the code stands from lib/engine. */
const PLACE = '../../src/engine/';

const HEAD = `# What the engine exports

Made from the code by \`npm run tools\`. Lengths are millimetres, angles radians and areas mm² unless a comment says otherwise; nothing throws unless a comment says so. Words and folders are explained in [README.md](${PLACE}README.md).
`;

/** The page as Markdown: a part for each folder, in the order of the index. */
export function engineReference(): string {
  const folders = new Map<string, Entry[]>();
  for (const entry of entriesOf(join(ENGINE, 'index.ts'))) {
    const folder = entry.file.replace(/\/[^/]*$/, '');
    folders.set(folder, [...(folders.get(folder) ?? []), entry]);
  }
  const parts = [...folders].map(([folder, entries]) => `## ${folder}\n\n${entries.map(written).join('\n')}`);
  return `${HEAD}\n${parts.join('\n')}`;
}

function written({ name, file, comment, shape }: Entry): string {
  const said = comment === '' ? '' : `${comment}\n\n`;
  return `### ${name}\n\n${said}\`\`\`ts\n${shape}\n\`\`\`\n\n[${file}](${PLACE}${file})\n`;
}

function entriesOf(index: string): Entry[] {
  const program = ts.createProgram([index], {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(index);
  const module = source && checker.getSymbolAtLocation(source);
  if (!module) throw new Error('the engine has no index');
  return checker.getExportsOfModule(module).flatMap((exported) => {
    const isAlias = (exported.flags & ts.SymbolFlags.Alias) !== 0;
    const symbol = isAlias ? checker.getAliasedSymbol(exported) : exported;
    const [declaration] = symbol.declarations ?? [];
    if (!declaration) return [];
    const file = relative(ENGINE, declaration.getSourceFile().fileName).split(sep).join('/');
    return [
      {
        name: exported.name,
        file,
        comment: commentOf(symbol, checker),
        shape: shapeOf(declaration, checker),
      },
    ];
  });
}

function commentOf(symbol: ts.Symbol, checker: ts.TypeChecker): string {
  const text = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replace(/\s*\n\s*/g, ' ');
  const tags = symbol.getJsDocTags(checker).map(({ name, text: parts }) => {
    const said = ts.displayPartsToString(parts).replace(/\s*\n\s*/g, ' ');
    const [first = '', ...rest] = said.split(' ');
    if (name === 'param') return `- \`${first}\`: ${rest.join(' ')}`;
    return `- ${name === 'throws' ? 'throws' : name}: ${said}`;
  });
  return [text, tags.join('\n')]
    .filter((part) => part !== '')
    .join('\n\n')
    .replaceAll('<', '&lt;');
}

function shapeOf(declaration: ts.Declaration, checker: ts.TypeChecker): string {
  if (ts.isFunctionDeclaration(declaration)) {
    const from = declaration.getStart();
    const end = declaration.body?.getStart() ?? declaration.getEnd();
    return declaration
      .getSourceFile()
      .text.slice(from, end)
      .trim()
      .replace(/^export /, '');
  }
  if (ts.isVariableDeclaration(declaration)) {
    const type = checker.getTypeAtLocation(declaration);
    return `const ${declaration.name.getText()}: ${checker.typeToString(type, declaration, MOST_OF_A_TYPE)}`;
  }
  return declaration.getText().replace(/^export /, '');
}

const MOST_OF_A_TYPE = ts.TypeFormatFlags.UseAliasDefinedOutsideCurrentScope;
