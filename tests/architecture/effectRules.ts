// What an effect returns is called as its end. Some browsers return a promise from methods of the page that others return nothing
// from, so an effect never returns what such a method gives.

import ts from 'typescript';
import { lineOf } from './lineOf';

const EFFECTS: readonly string[] = ['useEffect', 'useLayoutEffect'];

/** Methods of elements and windows that are called for what they do. */
const PAGE_METHODS: readonly string[] = [
  ...['focus', 'blur', 'select', 'click', 'scroll', 'scrollTo', 'scrollBy', 'scrollIntoView'],
  ...['play', 'pause', 'animate', 'showModal', 'showPopover', 'close', 'requestFullscreen'],
];

/** A line for each breach: file, line, rule. */
export function effectRules(file: string, source: ts.SourceFile): string[] {
  const broken: string[] = [];
  const visit = (node: ts.Node): void => {
    if (
      ts.isCallExpression(node) &&
      ts.isIdentifier(node.expression) &&
      EFFECTS.includes(node.expression.text)
    ) {
      const [effect] = node.arguments;
      if (effect && ts.isArrowFunction(effect) && isCallOfPage(effect.body))
        broken.push(`${file}:${lineOf(source, node)}: an effect returns what a method of the page gives`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return broken;
}

const isCallOfPage = (node: ts.Node): boolean =>
  ts.isCallExpression(node) &&
  ts.isPropertyAccessExpression(node.expression) &&
  PAGE_METHODS.includes(node.expression.name.text);
