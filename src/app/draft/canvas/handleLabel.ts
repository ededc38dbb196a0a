// What a handle on the table is called, and how its number is read, for the eye, the ear and the history.

import { EDGE_NODE_WORDS, formatLength, LEVEL_WORDS, type Unit, wedgeNameOf } from '../../../document';
import type { Style } from '../../../engine';
import type { Handle } from '../../../table';

export function handleLabel({ kind, wedge, level, which, node }: Handle, style: Style): string {
  if (kind === 'edge')
    return which === 'top'
      ? `Top edge above the ${LEVEL_WORDS[style.topFrom]} line`
      : 'Hem below the waist line';
  if (kind === 'node')
    return `${which === 'top' ? 'Top edge' : 'Hem'} at ${EDGE_NODE_WORDS[node ?? 'centreFront']}`;
  const name = wedgeNameOf(wedge ?? '', style);
  if (kind === 'bend')
    return level
      ? `${name}: axis from the centre line at the ${LEVEL_WORDS[level]}`
      : `${name}, ${which} point: distance from the centre line`;
  if (kind === 'point') return `${name}, ${which} point`;
  return kind === 'axis'
    ? `${name}: distance from the centre line`
    : `${name}: intake at the ${LEVEL_WORDS[level ?? 'waist']}`;
}

/** A length with its unit; for a dart's point also where it is taken from: "3⅛ in below the waist". */
export function handleValue({ kind, level, value }: Handle, unit: Unit): string {
  if (kind !== 'point') return formatLength(value, unit, { withUnit: true });
  const line = `the ${LEVEL_WORDS[level ?? 'waist']}`;
  const far = formatLength(Math.abs(value), unit);
  return far === '0' ? `on ${line} line` : `${far} ${unit} ${value < 0 ? 'above' : 'below'} ${line}`;
}
