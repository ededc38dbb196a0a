// Identity is data: ids are compared, not taken apart, and edges are found by what they are, not by counting.

import ts from 'typescript';
import { lineOf } from './lineOf';

/** Methods of a string that take it apart, and those of a pattern that do. */
const TAKE_APART: readonly string[] = [
  ...['startsWith', 'endsWith', 'split', 'match', 'matchAll', 'replace', 'replaceAll'],
  ...['slice', 'substring', 'indexOf', 'includes', 'at', 'charAt'],
];
const PATTERN_READS: readonly string[] = ['test', 'exec'];

/** The parts that ids of pieces and seams are made of: "-band", "left-", "/dart:"; in a template a value and a dash. */
const PART_OF_ID = /^-[a-z]|[a-z]-$|^\/?dart:/;
const PART_IN_TEMPLATE = /^-|-$/;

/** A line for each breach: file, line, rule. */
export function identityRules(file: string, source: ts.SourceFile): string[] {
  const broken: string[] = [];
  const add = (node: ts.Node, rule: string): void => {
    broken.push(`${file}:${lineOf(source, node)}: ${rule}`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name, expression } = node.expression;
      const [given] = node.arguments;
      const isRead =
        (TAKE_APART.includes(name.text) && nameOf(expression) === 'id') ||
        (PATTERN_READS.includes(name.text) && given !== undefined && nameOf(given) === 'id');
      const isSought = ['startsWith', 'endsWith'].includes(name.text) && given && isPartOfId(given);
      if (isRead || isSought) add(node, 'an id is taken apart');
    }
    if (
      ts.isElementAccessExpression(node) &&
      nameOf(node.expression) === 'edges' &&
      ts.isNumericLiteral(node.argumentExpression)
    )
      add(node, 'an edge is found by counting');
    if (
      ts.isBinaryExpression(node) &&
      ARITHMETIC.includes(node.operatorToken.kind) &&
      [node.left, node.right].some(isCountOfEdges)
    )
      add(node, 'an edge is found by counting');
    ts.forEachChild(node, visit);
  };
  visit(source);
  return broken;
}

const ARITHMETIC: readonly ts.SyntaxKind[] = [
  ts.SyntaxKind.PlusToken,
  ts.SyntaxKind.MinusToken,
  ts.SyntaxKind.PercentToken,
];

const isCountOfEdges = (node: ts.Node): boolean =>
  ts.isPropertyAccessExpression(node) && node.name.text === 'length' && nameOf(node.expression) === 'edges';

/** The last name of an expression: `id` of `piece.id` and of `at.piece?.id`. */
function nameOf(node: ts.Node): string | null {
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPropertyAccessExpression(node)) return node.name.text;
  return ts.isNonNullExpression(node) ? nameOf(node.expression) : null;
}

function isPartOfId(node: ts.Node): boolean {
  if (ts.isStringLiteralLike(node)) return PART_OF_ID.test(node.text);
  return (
    ts.isTemplateExpression(node) &&
    PART_IN_TEMPLATE.test(
      [node.head, ...node.templateSpans.map(({ literal }) => literal)].map(textOf).join(''),
    )
  );
}

const textOf = ({ text }: { readonly text: string }): string => text;
