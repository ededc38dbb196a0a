// The assembly map: the sheets with their names over the outlines of the panels, drawn small.

import { FIRST_PAGE, pieceLabel } from '../../document';
import type { Point } from '../../engine';
import type { Box } from '../geometry/box';
import { simplified } from '../geometry/simplified';
import type { Layout } from '../layout/layOut';
import { blankSheets, ownPartOf, type SheetPosition, sheetName, stepAcross, stepDown } from '../sheets/grid';
import { MM_PER_POINT, textWidth, wrapped } from '../text/textWidth';
import type { PdfCanvas } from './file/pdfCanvas';
import { mapLabels } from './mapLabels';

/** Scale at which the sheets fit into a box of the page; 0 or less where they do not. */
export function mapScale({ grid }: Layout, box: Box): number {
  const width = grid.columns * stepAcross(grid) + grid.overlapMm;
  const height = grid.rows * stepDown(grid) + grid.overlapMm;
  return Math.min((box.right - box.left) / width, (box.bottom - box.top) / height);
}

/**
 * Draws the map as large as it fits at the top left of a box of the page. Each panel has its name, or a number where there is no
 * room for it; a key below the map says whose numbers they are.
 */
export function drawMap(canvas: PdfCanvas, layout: Layout, box: Box): void {
  const whole = planMap(layout, box);
  const width = box.right - box.left;
  const lines = keyLines(whole.key, width);
  // The key takes its room from the map, which may leave a name or two more without room.
  const room = (lines.length + (lines.length > 0 ? 1 : 0)) * KEY_LINE_MM;
  const map = lines.length > 0 ? planMap(layout, { ...box, bottom: box.bottom - room }) : whole;
  drawPlan(canvas, map);
  for (const [i, text] of keyLines(map.key, width).entries()) {
    const start = { x: box.left, y: map.bottom + (i + 1) * KEY_LINE_MM + 1 };
    canvas.text({ text, start, turnRad: 0, sizePt: KEY_PT, bold: false });
  }
}

const [KEY_PT, KEY_LINE_MM] = [7, 3];

const keyLines = (key: readonly string[], width: number): string[] =>
  key.length === 0 ? [] : wrapped(FIRST_PAGE.mapKey({ names: key }), KEY_PT, false, width);

/** A sheet's frame and name on the map. */
interface MapSheet {
  readonly frame: readonly Point[];
  readonly name: string;
  readonly patch: Box;
}

interface MapPlan extends ReturnType<typeof mapLabels> {
  readonly sheets: readonly MapSheet[];
  /** Sheets of the grid that nothing is printed on. */
  readonly blanks: readonly (readonly Point[])[];
  readonly rings: readonly (readonly Point[])[];
  readonly nameSize: number;
  readonly bottom: number;
}

function planMap(layout: Layout, box: Box): MapPlan {
  const { grid, panels, sheets } = layout;
  const scale = mapScale(layout, box);
  const onMap = ({ x, y }: Point): Point => ({ x: box.left + x * scale, y: box.top + y * scale });
  const frameOf = (position: SheetPosition): Point[] => {
    const { left, top, right, bottom } = ownPartOf(grid, position);
    const [start, ...rest] = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ].map(onMap) as [Point, ...Point[]];
    return [start, ...rest, start];
  };
  const nameSize = Math.min(13, (0.3 * Math.min(stepAcross(grid), stepDown(grid)) * scale) / MM_PER_POINT);
  const named = sheets.map((position): MapSheet => {
    const [frame, name] = [frameOf(position), sheetName(position)];
    const { x, y } = frame[0] as Point;
    const [width, height] = [textWidth(name, nameSize, true), nameSize * MM_PER_POINT];
    const patch = { left: x + 0.3, top: y + 0.3, right: x + 1.7 + width, bottom: y + 0.5 + height };
    return { frame, name, patch };
  });
  const rings = panels.map(({ piece, offset }) =>
    simplified(piece.cutLine, SIMPLER_MM).map(({ x, y }) => onMap({ x: x + offset.x, y: y + offset.y })),
  );
  return {
    ...mapLabels(
      panels.map(({ piece }, i) => ({ name: pieceLabel(piece), ring: rings[i] ?? [] })),
      named.map(({ patch }) => patch),
      Array.from({ length: grid.columns }, (_, i) => box.left + i * stepAcross(grid) * scale),
      Array.from({ length: grid.rows }, (_, i) => box.top + i * stepDown(grid) * scale),
    ),
    sheets: named,
    blanks: blankSheets(grid, sheets).map(frameOf),
    rings,
    nameSize,
    bottom: box.top + (grid.rows * stepDown(grid) + grid.overlapMm) * scale,
  };
}

/** A line of the map may be so far from the panel's, mm at full size. */
const SIMPLER_MM = 0.5;

function drawPlan(canvas: PdfCanvas, { sheets, blanks, rings, labels, nameSize }: MapPlan): void {
  for (const frame of blanks) canvas.line('mapBlank', frame);
  for (const ring of rings) if (ring[0]) canvas.line('mapPanel', [...ring, ring[0]]);
  for (const { frame } of sheets) canvas.line('mapSheet', frame);
  // White patches keep outlines out of names and numbers.
  for (const { name, patch } of sheets) {
    canvas.blank(patch.left, patch.top, patch.right - patch.left, patch.bottom - patch.top);
    const start = { x: patch.left + 0.7, y: patch.top + 0.9 * nameSize * MM_PER_POINT - 0.3 };
    canvas.text({ text: name, start, turnRad: 0, sizePt: nameSize, bold: true });
  }
  for (const { text, box } of labels) {
    if (text.bold) canvas.blank(box.left, box.top, box.right - box.left, box.bottom - box.top);
    canvas.text(text, text.bold ? 0 : 0.3);
  }
}
