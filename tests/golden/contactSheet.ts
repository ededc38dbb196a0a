// All goldens on one page, to be looked at together. Made from the kept drawings alone, so that the page shows what is kept.

import type { Point } from '../../src/engine';
import { subset } from './subset';

export interface KeptDrawing {
  readonly style: string;
  readonly body: string;
  readonly svg: string;
}

/** Round the page, and over each drawing for its name. mm of the drawings */
const ROOM = { around: 40, title: 40 } as const;

/** The page is printed at a fifth of full size. */
const SCALE = 5;

/** Points that lie nearer than this to the line between their neighbours are left out. mm */
const THINNED_MM = 0.15;

/** The text of an SVG page: a row a style, a column a body; sew lines, levels and marks without cut lines. */
export function contactSheet(drawings: readonly KeptDrawing[]): string {
  const boxes = drawings.map(({ style, body, svg }) => ({ style, body, svg, ...boxOf(svg) }));
  const columns = placesOf(
    boxes,
    ({ body }) => body,
    ({ width }) => width,
  );
  const rows = placesOf(
    boxes,
    ({ style }) => style,
    ({ height }) => height + ROOM.title,
  );
  const [width, height] = [columns.whole + 2 * ROOM.around, rows.whole + 2 * ROOM.around].map(Math.ceil) as [
    number,
    number,
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width / SCALE}mm" height="${height / SCALE}mm" viewBox="${-ROOM.around} ${-ROOM.around} ${width} ${height}">`,
    '<title>Every style on a small, a middling and a large body</title>',
    '<style>path{fill:none;stroke:#000;stroke-width:1.5}.level{stroke:#9bd;stroke-width:1}text{font:28px sans-serif}</style>',
    `<rect x="${-ROOM.around}" y="${-ROOM.around}" width="${width}" height="${height}" fill="#fff"/>`,
    ...boxes.flatMap(({ style, body, svg, left, top }) => {
      const [x, y] = [columns.at.get(body) ?? 0, rows.at.get(style) ?? 0];
      return [
        `<text x="${tenths(x + ROOM.around)}" y="${tenths(y + 24)}">${style}, ${body}</text>`,
        `<g transform="translate(${tenths(x - left)} ${tenths(y + ROOM.title - top)})">`,
        ...svg.split('\n').flatMap(sheetLine),
        '</g>',
      ];
    }),
    '</svg>',
    '',
  ].join('\n');
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

function boxOf(svg: string): Box {
  const [left = 0, top = 0, width = 0, height = 0] =
    /viewBox="([^"]*)"/.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
  return { left, top, width, height };
}

/** Where each row or column starts, in the order in which it is first named, each as wide as its widest; and all together. */
function placesOf<T>(
  of: readonly T[],
  name: (each: T) => string,
  reach: (each: T) => number,
): { at: Map<string, number>; whole: number } {
  const at = new Map<string, number>();
  let whole = 0;
  for (const one of new Set(of.map(name))) {
    at.set(one, whole);
    whole += Math.max(...of.filter((each) => name(each) === one).map(reach));
  }
  return { at, whole };
}

/** A kept drawing's line as it is shown: groups as they are, cut lines and grain not at all. */
function sheetLine(line: string): string[] {
  if (/^<\/?g/.test(line)) return [line];
  const [, kind, numbers] = /^<path class="(\w+)[^"]*" d="M([^"]*)"/.exec(line) ?? [];
  if (!kind || !numbers || kind === 'cut' || kind === 'grain') return [];
  const look = kind === 'level' ? ' class="level"' : '';
  const points = subset(pointsOf(numbers), THINNED_MM).map(({ x, y }) => `${tenths(x)} ${tenths(y)}`);
  return [`<path${look} d="M${points.join(' ')}"/>`];
}

function pointsOf(numbers: string): Point[] {
  const all = numbers.split(' ').map(Number);
  return Array.from({ length: all.length / 2 }, (_, i) => ({ x: all[2 * i] ?? 0, y: all[2 * i + 1] ?? 0 }));
}

const tenths = (value: number): string => String(Math.round(value * 10) / 10 + 0);
