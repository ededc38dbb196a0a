// Pages of a PDF as dots, the way a printer gets them, made by an independent library (Mozilla's pdf.js); what is measured on
// them is measured in dots.

import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A part of a page, mm from its top left corner. */
interface Part {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Dots of one part of a page. */
export interface Raster {
  readonly columns: number;
  readonly rows: number;
  /** Dots to the millimetre. */
  readonly perMm: number;
  /** From 0 white to 1 black. */
  readonly ink: (column: number, row: number) => number;
}

export interface RasteredPdf {
  readonly pages: readonly { readonly widthMm: number; readonly heightMm: number }[];
  /** `number` counts from 1. */
  readonly raster: (number: number, part: Part, dpi: number) => Promise<Raster>;
  readonly close: () => Promise<void>;
}

const MM_PER_INCH = 25.4;
// ISO 32000-1, 8.3.2.3: the unit of default user space is 1/72 in.
const UNITS_PER_MM = 72 / MM_PER_INCH;

interface Surface {
  readonly canvas: { readonly width: number; readonly height: number };
  readonly context: CanvasRenderingContext2D;
}

/** Of `strokes` alone nothing is drawn that is written or filled, so that no letter is taken for a line. */
export async function rasteredPdf(
  bytes: Uint8Array,
  what: 'everything' | 'strokes' = 'everything',
): Promise<RasteredPdf> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: document.numPages }, async (_, i) => {
      const [left = 0, bottom = 0, right = 0, top = 0] = (await document.getPage(i + 1)).view;
      return { widthMm: (right - left) / UNITS_PER_MM, heightMm: (top - bottom) / UNITS_PER_MM };
    }),
  );
  return {
    pages,
    raster: (number, part, dpi) => rasterOf(document, number, part, dpi, what === 'strokes'),
    close: () => document.loadingTask.destroy(),
  };
}

async function rasterOf(
  document: PDFDocumentProxy,
  number: number,
  part: Part,
  dpi: number,
  strokesOnly: boolean,
): Promise<Raster> {
  const perMm = dpi / MM_PER_INCH;
  const [columns, rows] = [Math.ceil(part.width * perMm), Math.ceil(part.height * perMm)];
  const page = await document.getPage(number);
  const viewport = page.getViewport({
    scale: perMm / UNITS_PER_MM,
    offsetX: -part.left * perMm,
    offsetY: -part.top * perMm,
  });
  // The library's own canvas, which it takes from the package that came with it.
  const factory = document.canvasFactory as { create: (width: number, height: number) => Surface };
  const { canvas, context } = factory.create(columns, rows);
  await page.render({
    canvas: null,
    canvasContext: context,
    viewport,
    background: '#fff',
    ...(strokesOnly ? { operationsFilter: await strokesOf(page) } : {}),
  }).promise;
  const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
  return {
    columns,
    rows,
    perMm,
    ink: (column, row) => 1 - (data[4 * (row * columns + column)] ?? 255) / 255,
  };
}

const WRITING: readonly number[] = [
  OPS.showText,
  OPS.showSpacedText,
  OPS.nextLineShowText,
  OPS.nextLineSetSpacingShowText,
];
const FILLING: readonly number[] = [OPS.fill, OPS.eoFill];

/** Whether an operation of the page, by its place among them, neither writes nor fills. */
async function strokesOf(page: PDFPageProxy): Promise<(operation: number) => boolean> {
  const { fnArray, argsArray } = await page.getOperatorList();
  return (operation) => {
    const kind = fnArray[operation] as number;
    const paints: unknown = kind === OPS.constructPath ? argsArray[operation]?.[0] : kind;
    return !WRITING.includes(kind) && !FILLING.includes(Number(paints));
  };
}

/** A stroke that a row of dots crosses. */
export interface Crossing {
  /** Its middle, weighed by ink, mm from the first dot's near edge. */
  readonly at: number;
  /** How much of it there is, mm of full ink. */
  readonly width: number;
}

/** The strokes along a row of dots, each a run of dots with ink. */
export function crossings(inks: readonly number[], perMm: number): Crossing[] {
  const found: { sum: number; weighed: number }[] = [];
  let run: { sum: number; weighed: number } | null = null;
  for (const [i, ink] of inks.entries()) {
    if (ink < 0.02) {
      run = null;
      continue;
    }
    if (!run) {
      run = { sum: 0, weighed: 0 };
      found.push(run);
    }
    run.sum += ink;
    run.weighed += ink * (i + 0.5);
  }
  return found.map(({ sum, weighed }) => ({ at: weighed / sum / perMm, width: sum / perMm }));
}

export const rowOf = ({ columns, ink }: Raster, row: number): number[] =>
  Array.from({ length: columns }, (_, column) => ink(column, row));

export const columnOf = ({ rows, ink }: Raster, column: number): number[] =>
  Array.from({ length: rows }, (_, row) => ink(column, row));
