// Sew lines of drafts on one page, few points each: kept to be looked at, and held against what is drawn anew by how far apart the two lie.

import type { BlockName, Draft, Piece, Point } from '../../src/engine';
import { subset } from './subset';

/** A line of a draft under its name: a piece's outline, closed, or a leg of a dart within it. */
export interface DrawnLine {
  readonly name: string;
  readonly block: BlockName;
  readonly points: readonly Point[];
}

/** A line as it is read from the page. */
type KeptLine = Omit<DrawnLine, 'block'>;

/** Points are left out that lie nearer than this to the line between their neighbours. mm */
export const OUTLINE_MM = 0.25;

/** Numbers on the page are tenths of a mm. */
const TENTHS = 10;

/** Between two drafts on the page, round it, above a draft for its name, and between panels and a band. mm */
const ROOM = { between: 60, around: 40, title: 60, underBand: 30 } as const;
const COLUMNS = 5;

/** The outlines and darts of a draft, each in its own block's places; those of bands among them. */
export function linesOf({ pieces, extras }: Draft): DrawnLine[] {
  const all = [...pieces, ...extras.filter(({ kind }) => kind === 'band')];
  return all.flatMap((piece) => [
    { name: piece.id, block: piece.block, points: ringOf(piece) },
    ...piece.darts
      .filter(({ open }) => !open)
      .flatMap(({ wedge, inner, outer }) => [
        { name: `${piece.id} ${wedge} inner`, block: piece.block, points: inner },
        { name: `${piece.id} ${wedge} outer`, block: piece.block, points: outer },
      ]),
  ]);
}

const ringOf = ({ edges }: Piece): Point[] => {
  const points = edges.flatMap(({ points: own }) => own.slice(0, -1));
  return points[0] ? [...points, points[0]] : [];
};

/** The page: each body's draft under its name, front and turned-over back beside it. */
export function outlinePage(
  title: string,
  drafts: readonly (readonly [body: string, draft: Draft])[],
): string {
  const boxes = drafts.map(([body, drafted]) => ({ body, ...boxOf(drafted), lines: drawn(drafted) }));
  const width = Math.max(...boxes.map((box) => box.front + box.back + 2 * ROOM.between));
  const height = Math.max(...boxes.map((box) => box.height + ROOM.title + ROOM.between));
  const [across, down] = [
    COLUMNS * width + ROOM.around,
    Math.ceil(boxes.length / COLUMNS) * height + ROOM.around,
  ];
  const shift = (x: number, y: number): string => `${tenths(x)} ${tenths(y)}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${Math.round(across / 4)}mm" height="${Math.round(down / 4)}mm" viewBox="0 0 ${tenths(across)} ${tenths(down)}">`,
    `<title>${title}</title>`,
    '<style>path{fill:none;stroke:#000;stroke-width:15}text{font:260px sans-serif}</style>',
    `<rect width="${tenths(across)}" height="${tenths(down)}" fill="#fff"/>`,
    ...boxes.flatMap(({ body, front, back, top, lines }, i) => {
      const [x, y] = [ROOM.around + (i % COLUMNS) * width, ROOM.around + Math.floor(i / COLUMNS) * height];
      const at = y + ROOM.title - top;
      return [
        `<text x="${tenths(x)}" y="${tenths(y + 24)}">${body}</text>`,
        `<g id="${body}">`,
        ...(['front', 'back'] as const).flatMap((block) => [
          block === 'front'
            ? `<g transform="translate(${shift(x, at)})">`
            : `<g transform="translate(${shift(x + front + ROOM.between + back, at)}) scale(-1 1)">`,
          ...lines.filter((line) => line.block === block).map(pathOf),
          '</g>',
        ]),
        '</g>',
      ];
    }),
    '</svg>',
    '',
  ].join('\n');
}

/** The lines of each body on a page, mm. */
export function readPage(page: string): Map<string, KeptLine[]> {
  const bodies = new Map<string, KeptLine[]>();
  let lines: KeptLine[] = [];
  for (const line of page.split('\n')) {
    const [, body] = /^<g id="([^"]*)">/.exec(line) ?? [];
    if (body) {
      lines = [];
      bodies.set(body, lines);
    }
    const [, name, numbers] = /^<path class="([^"]*)" d="M([^"]*)"/.exec(line) ?? [];
    if (name && numbers) lines.push({ name, points: pointsOf(name, numbers) });
  }
  return bodies;
}

function pointsOf(name: string, numbers: string): Point[] {
  const all = numbers.split(' ').map((number) => Number(number) / TENTHS);
  const lift = name.includes('band') ? ROOM.underBand : 0;
  return Array.from({ length: all.length / 2 }, (_, i) => ({
    x: all[2 * i] ?? NaN,
    y: (all[2 * i + 1] ?? NaN) + lift,
  }));
}

const pathOf = ({ name, points }: DrawnLine): string =>
  `<path class="${name}" d="M${points.map(({ x, y }) => `${tenths(x)} ${tenths(y)}`).join(' ')}"/>`;

const tenths = (mm: number): number => Math.round(mm * TENTHS) + 0;

/** What is drawn on the page: few points, a band lifted off the panels it lies above. */
const drawn = (of: Draft): DrawnLine[] =>
  linesOf(of).map(({ name, block, points }) => ({
    name,
    block,
    points: subset(points, OUTLINE_MM).map(({ x, y }) => ({
      x,
      y: name.includes('band') ? y - ROOM.underBand : y,
    })),
  }));

function boxOf(of: Draft): { front: number; back: number; top: number; height: number } {
  const lines = drawn(of);
  const xs = (block: BlockName): number[] =>
    lines.filter((line) => line.block === block).flatMap(({ points }) => points.map(({ x }) => x));
  const ys = lines.flatMap(({ points }) => points.map(({ y }) => y));
  const top = Math.min(...ys);
  return {
    front: Math.max(0, ...xs('front')),
    back: Math.max(0, ...xs('back')),
    top,
    height: Math.max(...ys) - top,
  };
}

/** How far a point lies from a row of points joined by straight lines. */
function offLine({ x, y }: Point, row: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < row.length; i += 1) {
    const [a, b] = [row[i - 1] as Point, row[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const part = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
    const [ex, ey] = [x - a.x - part * dx, y - a.y - part * dy];
    least = Math.min(least, ex * ex + ey * ey);
  }
  return Math.sqrt(least);
}

/** The farthest that a point of either row lies from the other. mm */
export const apart = (a: readonly Point[], b: readonly Point[]): number =>
  Math.max(...a.map((point) => offLine(point, b)), ...b.map((point) => offLine(point, a)));
