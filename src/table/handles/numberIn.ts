// The number of a handle as the draft took it: a wedge pulled near the centre line, say, stands on it.

import type { Draft, Style } from '../../engine';
import { layOut } from '../layout/layout';
import type { Handle } from './handle';
import { handlesOf } from './handles';

/** mm; null where the draft has no such handle any more. */
export function numberIn(draft: Draft, style: Style, { id, kind }: Handle): number | null {
  // Where handles lie on the table, and what they would do, is not asked here.
  const layout = layOut(draft);
  const handles = layout ? handlesOf(draft, style, layout, kind === 'bend' ? () => draft : null) : [];
  return handles.find((handle) => handle.id === id)?.value ?? null;
}
