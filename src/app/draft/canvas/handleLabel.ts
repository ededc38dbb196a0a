// What a handle on the table is called, and how its number is read, for the eye, the ear and the history.

import {
  type Change,
  EDGE_NODE_WORDS,
  formatLength,
  LEVEL_WORDS,
  type Unit,
  wedgeNameOf,
  wedgePlaceOf,
} from '../../../document';
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

/** What is kept in the history when a handle was moved. */
export function handleChange({ kind, wedge: id, level, which, node }: Handle, style: Style): Change {
  if (kind === 'edge')
    return which === 'top' ? { code: 'topEdgeMoved', from: style.topFrom } : { code: 'hemMoved' };
  if (kind === 'node')
    return { code: 'edgeNodeSet', edge: which === 'top' ? 'top' : 'hem', node: node ?? 'centreFront' };
  const wedge = wedgePlaceOf(id ?? '', style);
  if (kind === 'axis') return { code: 'wedgeMoved', wedge };
  const end = which === 'upper' ? 'upper' : 'lower';
  if (kind === 'point') return { code: 'dartPointPulled', wedge, end };
  if (kind === 'leg') return { code: 'intakePulled', wedge, level: level ?? 'waist' };
  return level ? { code: 'axisBent', wedge, level } : { code: 'dartSlanted', wedge, end };
}

/** A length with its unit; for a dart's point also where it is taken from: "3⅛ in below the waist". */
export function handleValue({ kind, level, value }: Handle, unit: Unit): string {
  if (kind !== 'point') return formatLength(value, unit, { withUnit: true });
  const line = `the ${LEVEL_WORDS[level ?? 'waist']}`;
  const far = formatLength(Math.abs(value), unit);
  return far === '0' ? `on ${line} line` : `${far} ${unit} ${value < 0 ? 'above' : 'below'} ${line}`;
}
