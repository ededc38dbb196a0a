// What a handle on the table is called, for the eye, the ear and the history.

import { EDGE_NODE_WORDS, LEVEL_WORDS, wedgeNameOf } from '../../document';
import type { Style } from '../../engine';
import type { Handle } from '../../table';

export function handleLabel({ kind, wedge, level, which, node }: Handle, style: Style): string {
  if (kind === 'edge')
    return which === 'top'
      ? `Top edge above the ${LEVEL_WORDS[style.topFrom]} line`
      : 'Hem below the waist line';
  if (kind === 'node')
    return `${which === 'top' ? 'Top edge' : 'Hem'} at ${EDGE_NODE_WORDS[node ?? 'centreFront']}`;
  const name = wedgeNameOf(wedge ?? '', style);
  return kind === 'axis'
    ? `${name}: distance from the centre line`
    : `${name}: intake at the ${LEVEL_WORDS[level ?? 'waist']}`;
}
