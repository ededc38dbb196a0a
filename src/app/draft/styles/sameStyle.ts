// Whether two styles ask for the same garment, though one was read from a file and the other pulled there and back.

import type { Style, Wedge } from '../../../engine';

/** Two numbers nearer to each other than this draft the same: mm, or the share of a width. */
const SAME = 1e-6;

/**
 * Same in every number and word, in whatever order they stand. What is left out is as what is not asked for, and what
 * nobody reads, the intake of a wedge that is balanced, may differ.
 */
export const sameStyle = (a: Style, b: Style): boolean => a === b || alike(asRead(a), asRead(b));

function asRead(style: Style): Style {
  const { rightWedges } = style;
  return {
    ...style,
    wedges: style.wedges.map(wedgeAsRead),
    ...(rightWedges ? { rightWedges: rightWedges.map(wedgeAsRead) } : {}),
  };
}

const wedgeAsRead = (wedge: Wedge): Wedge => (wedge.sizing === 'balanced' ? { ...wedge, intake: {} } : wedge);

function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= SAME;
  if (!isObject(a) || !isObject(b)) return (a ?? false) === (b ?? false);
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => alike(a[name], b[name]));
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
