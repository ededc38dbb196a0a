// The span of a number of a style or a wedge, by its path.

import type { Field, Fields, Span } from './fields';
import { STYLE } from './style';
import { WEDGE_FIELDS, type WedgeKind } from './wedgeFields';

type PathIn<Parts extends Fields> = {
  [Name in keyof Parts & string]: Parts[Name] extends { readonly span: Span }
    ? Name
    : Parts[Name] extends { readonly fields: infer Inner extends Fields }
      ? `${Name}.${PathIn<Inner>}`
      : never;
}[keyof Parts & string];

/** `ease` for all levels, `closure.lacingGap`, `extras.straps.width`, … */
export type StylePath = PathIn<(typeof STYLE)['fields']>;

/** `intake` and `stationAt` for all levels, `upper.below`, `cup.intake`, … */
type WedgePath = PathIn<(typeof WEDGE_FIELDS)['closed']['fields']>;

/** The least and the most a number of a style may be, in its own unit. */
export const styleSpan = (path: StylePath): Span => spanAt(STYLE, path);

/** The least and the most a number of a wedge of a kind may be, in its own unit. The kind has the field. */
export const wedgeSpan = (kind: WedgeKind, path: WedgePath): Span => spanAt(WEDGE_FIELDS[kind], path);

function spanAt(group: Field, path: string): Span {
  let field = group;
  for (const name of path.split('.')) field = (field as { readonly fields: Fields }).fields[name] as Field;
  return (field as { readonly span: Span }).span;
}
