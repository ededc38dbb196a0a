import type ts from 'typescript';

/** The line that a part of a source begins in, from 1. */
export const lineOf = (source: ts.SourceFile, node: ts.Node): number =>
  source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
