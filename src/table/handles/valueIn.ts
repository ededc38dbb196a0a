// The value of a handle in a draft, which may differ from the value it was pulled to: an axis near the centre line is put on it.

import type { Draft, Style } from '../../engine';
import { layOut } from '../layout/layOut';
import type { Handle } from './handle';
import { handlesOf } from './handlesOf';

/** mm; null where the draft has no such handle any more. */
export function valueIn(draft: Draft, style: Style, { id, kind }: Handle): number | null {
  // Only the values are read, so any layout and any way to redraft will do.
  const layout = layOut(draft);
  const handles = layout ? handlesOf(draft, style, layout, kind === 'bend' ? () => draft : null) : [];
  return handles.find((handle) => handle.id === id)?.value ?? null;
}
