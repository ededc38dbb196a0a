// Tags of a DXF file: pairs of lines with a group code and its value, as in the R12 reference of the format.

import type { Point } from '../../engine';

/** Lines of the file, alternately code and value. */
export type Tags = readonly string[];

/** A pair of lines. Coordinates are written to the millionth of a mm. */
export const tag = (code: number, value: string | number): Tags => [
  String(code).padStart(3),
  typeof value === 'number' && isReal(code) ? real(value) : String(value),
];

/** Group codes from 10 to 59 hold floating-point values. */
const isReal = (code: number): boolean => code >= 10 && code <= 59;

function real(value: number): string {
  const text = (Math.round(value * 1e6) / 1e6 + 0).toString();
  return /[.e]/.test(text) ? text : `${text}.0`;
}

/** The tags of a point on paper; y is down on paper and up in the file. */
export const pointTags = ({ x, y }: Point, code = 10): Tags => [
  ...tag(code, x),
  ...tag(code + 10, -y),
  ...tag(code + 20, 0),
];

/** A point. */
export const pointEntity = (layer: string, at: Point): Tags => [
  ...tag(0, 'POINT'),
  ...tag(8, layer),
  ...pointTags(at),
];

/** A straight line. */
export const lineEntity = (layer: string, a: Point, b: Point): Tags => [
  ...tag(0, 'LINE'),
  ...tag(8, layer),
  ...pointTags(a),
  ...pointTags(b, 11),
];

/** A closed ring; its first point is not repeated. */
export const ringEntity = (layer: string, ring: readonly Point[]): Tags => polyline(layer, ring, 1);

/** An open polyline. */
export const rowEntity = (layer: string, points: readonly Point[]): Tags => polyline(layer, points, 0);

const polyline = (layer: string, points: readonly Point[], closedFlag: 0 | 1): Tags => [
  ...tag(0, 'POLYLINE'),
  ...tag(8, layer),
  ...tag(66, 1),
  ...pointTags({ x: 0, y: 0 }),
  ...tag(70, closedFlag),
  ...points.flatMap((point) => [...tag(0, 'VERTEX'), ...tag(8, layer), ...pointTags(point)]),
  ...tag(0, 'SEQEND'),
  ...tag(8, layer),
];

/** A text in ASCII, turned counter-clockwise. It is cut off at 255 characters, the limit of R12. */
export const textEntity = (
  layer: string,
  at: Point,
  heightMm: number,
  text: string,
  turnDegrees = 0,
): Tags => [
  ...tag(0, 'TEXT'),
  ...tag(8, layer),
  ...pointTags(at),
  ...tag(40, heightMm),
  ...tag(1, text.slice(0, 255)),
  ...(turnDegrees === 0 ? [] : tag(50, turnDegrees)),
];

export const section = (name: string, content: Tags): Tags => [
  ...tag(0, 'SECTION'),
  ...tag(2, name),
  ...content,
  ...tag(0, 'ENDSEC'),
];
