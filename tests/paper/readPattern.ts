// Reads a printed pattern back with an independent PDF library (Mozilla's pdf.js): what is stroked and written on each page,
// in millimetres from its top left corner.

import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPoint {
  readonly x: number;
  readonly y: number;
}

interface ReadLine {
  readonly points: readonly ReadPoint[];
  readonly widthMm: number;
  readonly dashed: boolean;
}

interface ReadText {
  readonly text: string;
  readonly at: ReadPoint;
  readonly widthMm: number;
  readonly sizePt: number;
  /** Read from left to right, not turned. */
  readonly level: boolean;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly ReadLine[];
  readonly texts: readonly ReadText[];
}

export interface ReadPattern {
  readonly pages: readonly ReadPage[];
  readonly title: string;
  readonly printScaling: string | undefined;
}

// ISO 32000-1, 8.3.2.3: the unit of default user space is 1/72 in.
const MM = 25.4 / 72;

type Matrix = readonly [number, number, number, number, number, number];

let lastRead: Promise<unknown> = Promise.resolve();

/** One file at a time: without a worker of its own pdf.js mixes up the pages of two that are read at once. */
export function readPattern(bytes: Uint8Array): Promise<ReadPattern> {
  const read = lastRead.then(() => readAlone(bytes));
  lastRead = read.catch(() => undefined);
  return read;
}

async function readAlone(bytes: Uint8Array): Promise<ReadPattern> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const preferences: unknown = await document.getViewerPreferences();
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left, bottom, right, top] = page.view as [number, number, number, number];
    const toMm = (x: number, y: number): ReadPoint => ({ x: (x - left) * MM, y: (top - y) * MM });
    const operators = await page.getOperatorList();
    const content = await page.getTextContent();
    const texts = content.items.flatMap((item): ReadText[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as unknown as Matrix;
      return [
        {
          text: item.str,
          at: toMm(x, y),
          widthMm: item.width * MM,
          sizePt: Math.hypot(a, b),
          level: b === 0 && a > 0,
        },
      ];
    });
    pages.push({
      widthMm: (right - left) * MM,
      heightMm: (top - bottom) * MM,
      lines: strokes(operators.fnArray, operators.argsArray, toMm),
      texts,
    });
  }
  const title = String((info as Record<string, unknown>).Title ?? '');
  const scaling = (preferences as Record<string, unknown> | null)?.PrintScaling;
  return { pages, title, printScaling: typeof scaling === 'string' ? scaling : undefined };
}

function strokes(
  operators: readonly number[],
  args: readonly unknown[],
  toMm: (x: number, y: number) => ReadPoint,
): ReadLine[] {
  const lines: ReadLine[] = [];
  let state = { matrix: [1, 0, 0, 1, 0, 0] as Matrix, width: 1, dashed: false };
  const kept: (typeof state)[] = [];
  for (const [i, operator] of operators.entries()) {
    const arg = args[i] as never[] | null;
    if (operator === OPS.save) kept.push(state);
    else if (operator === OPS.restore) state = kept.pop() ?? state;
    else if (operator === OPS.transform && arg)
      state = { ...state, matrix: times(state.matrix, arg as unknown as Matrix) };
    else if (operator === OPS.setLineWidth && arg) state = { ...state, width: Number(arg[0]) };
    else if (operator === OPS.setDash && arg)
      state = { ...state, dashed: (arg[0] as unknown as number[]).length > 0 };
    else if (operator === OPS.constructPath && arg && Number(arg[0]) === OPS.stroke) {
      const data = (arg[1] as unknown as (Float32Array | null)[])[0];
      const scale = Math.sqrt(
        Math.abs(state.matrix[0] * state.matrix[3] - state.matrix[1] * state.matrix[2]),
      );
      for (const points of subpaths(data ?? new Float32Array()))
        lines.push({
          points: points.map(({ x, y }) => {
            const [a, b, c, d, e, f] = state.matrix;
            return toMm(a * x + c * y + e, b * x + d * y + f);
          }),
          widthMm: state.width * scale * MM,
          dashed: state.dashed,
        });
    }
  }
  return lines;
}

/** pdf.js writes a path as numbers: 0 x y moves, 1 x y draws a line, 4 closes; curves (2, 3) are not expected here. */
function subpaths(data: Float32Array): ReadPoint[][] {
  const paths: ReadPoint[][] = [];
  let path: ReadPoint[] = [];
  for (let i = 0; i < data.length; ) {
    const kind = data[i];
    if (kind === 0 || kind === 1) {
      if (kind === 0) {
        path = [];
        paths.push(path);
      }
      path.push({ x: data[i + 1] as number, y: data[i + 2] as number });
      i += 3;
    } else if (kind === 4) {
      if (path[0]) path.push(path[0]);
      i += 1;
    } else throw new Error(`a path of kind ${kind} is not expected in a pattern`);
  }
  return paths;
}

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

/** Straight distance from a point to a segment. */
function toSegment(point: ReadPoint, a: ReadPoint, b: ReadPoint): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t =
    square === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - a.x) * dx + (point.y - a.y) * dy) / square));
  return Math.hypot(point.x - a.x - dx * t, point.y - a.y - dy * t);
}

/** Distance from a point to the nearest of some rows of points. */
export function toLines(point: ReadPoint, lines: readonly (readonly ReadPoint[])[]): number {
  let least = Infinity;
  for (const line of lines)
    for (let i = 1; i < line.length; i += 1)
      least = Math.min(least, toSegment(point, line[i - 1] as ReadPoint, line[i] as ReadPoint));
  return least;
}

/** Points about a millimetre apart along a row of points, corners in. */
export function sampled(points: readonly ReadPoint[], stepMm = 1): ReadPoint[] {
  const out: ReadPoint[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as ReadPoint, points[i] as ReadPoint];
    const parts = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / stepMm));
    for (let part = 0; part <= parts; part += 1)
      out.push({ x: a.x + ((b.x - a.x) * part) / parts, y: a.y + ((b.y - a.y) * part) / parts });
  }
  return out;
}
