// The span of a number of a style, by its path.

import type { Field, Fields, Span } from './fields';
import { STYLE } from './style';

/** `ease` for all levels, `closure.lacingGap`, `extras.straps.width`, … */
export type StylePath = PathIn<(typeof STYLE)['fields']>;

type PathIn<Parts extends Fields> = {
  [Name in keyof Parts & string]: Parts[Name] extends { readonly span: Span }
    ? Name
    : Parts[Name] extends { readonly fields: infer Inner extends Fields }
      ? `${Name}.${PathIn<Inner>}`
      : never;
}[keyof Parts & string];

/** The least and the most a number of a style may be, in its own unit. */
export function styleSpan(path: StylePath): Span {
  let field: Field = STYLE;
  for (const name of path.split('.')) field = (field as { readonly fields: Fields }).fields[name] as Field;
  return (field as { readonly span: Span }).span;
}
