// Asking for pieces beside the panels, and leaving them out again.

import type { Extras, Style } from '../../engine';

/** The style with one of them as given, or (null) without it. */
export function setExtra<Name extends keyof Extras>(
  style: Style,
  name: Name,
  asked: Extras[Name] | null,
): Style {
  const { extras, ...rest } = style;
  const { [name]: _, ...others } = extras ?? {};
  const next = asked ? { ...others, [name]: asked } : others;
  return Object.keys(next).length > 0 ? { ...rest, extras: next } : rest;
}
