// What a handle on the table is called, and how its number is read, for the eye, the ear and the history.

import {
  CANVAS,
  type Change,
  type Client,
  DRAFT,
  formatLength,
  type Unit,
  wedgeNameOf,
  wedgePlaceOf,
} from '../../../document';
import { type Style, topUnderLine } from '../../../engine';
import type { Handle } from '../../../table';

const TEXTS = CANVAS.handles;

type Measured = Pick<Client, 'measurements' | 'unit'>;

/** How far under its line the top edge's usual place is, with the unit; null at the line. */
export function usualTopUnder(style: Style, { measurements, unit }: Measured): string | null {
  const under = topUnderLine(measurements, style);
  return under === 0 ? null : formatLength(under, unit, { withUnit: true });
}

export function handleLabel(
  { kind, wedge: id, level, which, node }: Handle,
  style: Style,
  client: Measured,
): string {
  if (kind === 'edge')
    return which === 'top'
      ? TEXTS.topEdge({ level: style.topFrom, under: usualTopUnder(style, client) })
      : TEXTS.hem;
  if (kind === 'node')
    return DRAFT.edges[which === 'top' ? 'topShape' : 'hemShape'].at({ node: node ?? 'centreFront' });
  const wedge = wedgeNameOf(id ?? '', style);
  const end = which === 'lower' ? 'lower' : 'upper';
  if (kind === 'bend') return level ? TEXTS.axisAt({ wedge, level }) : TEXTS.pointAcross[end]({ wedge });
  if (kind === 'point') return TEXTS.point[end]({ wedge });
  if (kind === 'opening' || kind === 'short') return TEXTS[kind]({ wedge });
  return kind === 'axis' ? TEXTS.axis({ wedge }) : TEXTS.intake({ wedge, level: level ?? 'waist' });
}

/** What is kept in the history when a handle was moved. */
export function handleChange({ kind, wedge: id, level, which, node }: Handle, style: Style): Change {
  if (kind === 'edge')
    return which === 'top' ? { code: 'topEdgeMoved', from: style.topFrom } : { code: 'hemMoved' };
  if (kind === 'node')
    return { code: 'edgeNodeSet', edge: which === 'top' ? 'top' : 'hem', node: node ?? 'centreFront' };
  const wedge = wedgePlaceOf(id ?? '', style);
  if (kind === 'axis') return { code: 'wedgeMoved', wedge };
  if (kind === 'opening') return { code: 'upperEndSet', wedge };
  if (kind === 'short') return { code: 'dartPointPulled', wedge, end: 'lower' };
  const end = which === 'upper' ? 'upper' : 'lower';
  if (kind === 'point') return { code: 'dartPointPulled', wedge, end };
  if (kind === 'leg') return { code: 'intakePulled', wedge, level: level ?? 'waist' };
  return level ? { code: 'axisBent', wedge, level } : { code: 'dartSlanted', wedge, end };
}

/** A length with its unit; for a dart's point also where it is taken from: "3⅛ in below the waist". */
export function handleValue({ kind, level: from, value }: Handle, unit: Unit): string {
  if (kind !== 'point') return formatLength(value, unit, { withUnit: true });
  const level = from ?? 'waist';
  const far = formatLength(Math.abs(value), unit);
  if (far === '0') return TEXTS.onLevel({ level });
  const length = `${far} ${unit}`;
  return value < 0 ? TEXTS.aboveLevel({ length, level }) : TEXTS.belowLevel({ length, level });
}
