// Draws one sheet of the pattern: its window of the plan, its joints with neighbours, and its name.

import { PATTERN, type Unit } from '../../document';
import { MM_PER_INCH, type Point } from '../../engine';
import { type Box, boxAround, moved } from '../geometry/box';
import { clipLine } from '../geometry/clip';
import type { Layout } from '../layout/layOut';
import { isClear, type Room } from '../panel/room';
import type { PlacedText, Stroke } from '../panel/strokes';
import { boxOf, boxOfText, cornersOf, setBlock, type TurnedBox, textsOfBlock } from '../panel/textBlock';
import {
  type Grid,
  type SheetPosition,
  STRIP_MM,
  sheetName,
  stepAcross,
  stepDown,
  windowOf,
} from '../sheets/grid';
import { type Joint, LABEL_MM } from '../sheets/joints';
import { shortened, textWidth } from '../text/textWidth';
import type { PdfCanvas } from './file/pdfCanvas';
import { drawPanelText } from './onePagePdf';

const JOINT_GREY = 0.35;
const MARK_MOST_MM = 2.4;

interface SheetCaption {
  /** Client, draft and date. */
  readonly what: string;
  /** Paper, scale and number of sheets; for a draft with errors, not to cut it. */
  readonly how: string;
  readonly howBold: boolean;
  /** The unit of the scale in the sheet's strip; null where it has none. */
  readonly scale: Unit | null;
}

/** Draws one sheet on a page. */
export type DrawSheet = (canvas: PdfCanvas, position: SheetPosition, caption: SheetCaption) => void;

/**
 * Makes a function that draws the sheets of a layout. Lines are clipped to a sheet's window. The boxes of lines and texts are
 * computed once for all sheets.
 */
export function sheetDrawer(layout: Layout): DrawSheet {
  const boxed = <T>(item: T, points: readonly Point[]): Boxed<T> => ({ item, box: boxAround(points) as Box });
  const lines = layout.panels.flatMap((panel) =>
    panel.lines.filter(({ points }) => points.length > 0).map((line) => boxed(line, line.points)),
  );
  const texts = layout.panels.flatMap((panel) =>
    panel.texts.map((text) => boxed(text, cornersOf(boxOfText(text)))),
  );
  const joints = new Map<string, Joint[]>();
  for (const joint of layout.joints)
    for (const sheet of joint.sheets) {
      const name = sheetName(sheet);
      joints.set(name, [...(joints.get(name) ?? []), joint]);
    }
  return (canvas, position, caption) =>
    drawSheet(canvas, { layout, lines, texts, joints }, position, caption);
}

interface Boxed<T> {
  readonly item: T;
  readonly box: Box;
}

interface Drawing {
  readonly layout: Layout;
  readonly lines: readonly Boxed<Stroke>[];
  readonly texts: readonly Boxed<PlacedText>[];
  /** By the name of a sheet: the joints that it is a part of. */
  readonly joints: ReadonlyMap<string, readonly Joint[]>;
}

const within = <T>(items: readonly Boxed<T>[], window: Box): T[] =>
  items
    .filter(
      ({ box }) =>
        box.right >= window.left &&
        box.left <= window.right &&
        box.bottom >= window.top &&
        box.top <= window.bottom,
    )
    .map(({ item }) => item);

function drawSheet(
  canvas: PdfCanvas,
  { layout, lines, texts, joints }: Drawing,
  position: SheetPosition,
  caption: SheetCaption,
): void {
  const { grid } = layout;
  const window = windowOf(grid, position);
  const toPage: Point = { x: grid.marginMm - window.left, y: grid.marginMm - window.top };
  const drawn: (readonly Point[])[] = [];
  for (const { kind, points, dash } of within(lines, window))
    for (const part of clipLine(points, window)) {
      const onPage = moved(part.points, toPage);
      drawn.push(onPage);
      canvas.line(kind, onPage, part.from, dash);
    }

  const shown = within(texts, window).map((text) => ({
    ...text,
    start: moved([text.start], toPage)[0] as Point,
  }));
  canvas.within(grid.marginMm, grid.marginMm, grid.windowWidthMm, grid.windowHeightMm, () => {
    for (const text of shown) drawPanelText(canvas, text);
  });

  const room: Room = {
    segments: drawn.flatMap((points) =>
      points.slice(1).map((point, i) => [points[i] as Point, point] as const),
    ),
    taken: shown.map(boxOfText),
  };
  for (const joint of joints.get(sheetName(position)) ?? [])
    drawJoint(canvas, grid, joint, position, toPage, room);
  drawStrip(canvas, grid, position, caption);
}

function drawJoint(
  canvas: PdfCanvas,
  grid: Grid,
  joint: Joint,
  position: SheetPosition,
  toPage: Point,
  room: Room,
): void {
  const which = joint.sheets.findIndex((sheet) => sheetName(sheet) === sheetName(position));
  const [first, second] = joint.sheets;
  const across = joint.direction === 'across';
  const { marginMm, windowWidthMm, windowHeightMm, overlapMm } = grid;
  const [right, bottom] = [marginMm + windowWidthMm, marginMm + windowHeightMm];
  // The same line of the plan on both sheets: where the second sheet is cut off, and where it lies on the first.
  const at = marginMm + (which === 1 ? 0 : across ? stepAcross(grid) : stepDown(grid));
  canvas.line(
    which === 1 ? 'trim' : 'join',
    across
      ? [
          { x: at, y: marginMm },
          { x: at, y: bottom },
        ]
      : [
          { x: marginMm, y: at },
          { x: right, y: at },
        ],
  );
  const radius = Math.min(MARK_MOST_MM, overlapMm / 2 - 0.3);
  const side = (which === 0 ? -1 : 1) * (overlapMm / 2 + LABEL_MM);
  for (const mark of joint.joinMarks) {
    const centre = { x: mark.x + toPage.x, y: mark.y + toPage.y };
    drawJoinMark(canvas, centre, radius);
    const block = setBlock([{ text: String(joint.number), sizePt: 9, bold: true }]);
    // The number is beside the overlap, where it stays visible; or along the joint, where a line is in its way.
    const spots = [
      ...[side, side * 1.25].map((sideways) => (across ? [sideways, 0] : [0, sideways])),
      ...[-1, 1].map((sign) => (across ? [0, sign * (radius + 3)] : [sign * (radius + 3), 0])),
    ].map(([dx = 0, dy = 0]) => boxOf(block, { x: centre.x + dx, y: centre.y + dy }, 0));
    const box = spots.find((each) => isClear(room, each, 0.5)) ?? (spots[0] as TurnedBox);
    room.taken.push(box, boxOf({ ...block, widthMm: 2 * radius, heightMm: 2 * radius }, centre, 0));
    for (const text of textsOfBlock(block, box)) canvas.text(text, JOINT_GREY);
  }
  const hint =
    which === 1
      ? PATTERN.sheet.cutOff({ sheet: sheetName(first) })
      : PATTERN.sheet.liesUpTo({ sheet: sheetName(second) });
  const block = setBlock([{ text: hint, sizePt: 6, bold: false }]);
  const span = across ? bottom - marginMm : right - marginMm;
  // The hint is inside the overlap, next to its line, where the pattern leaves room.
  for (let t = 0.06; t < 0.95; t += 0.04) {
    const along = marginMm + t * span;
    const beside = at + 0.8 + block.heightMm / 2;
    const centre = across ? { x: beside, y: along } : { x: along, y: beside };
    const box = boxOf(block, centre, across ? -Math.PI / 2 : 0);
    if (!isClear(room, box, 1.2) || !isOnSheet(cornersOf(box), marginMm, right, bottom)) continue;
    room.taken.push(box);
    for (const text of textsOfBlock(block, box)) canvas.text(text, JOINT_GREY);
    break;
  }
}

const isOnSheet = (corners: readonly Point[], margin: number, right: number, bottom: number): boolean =>
  corners.every(({ x, y }) => x >= margin && x <= right && y >= margin && y <= bottom);

/** Draws a joining mark: a circle with a cross, whose centre is the same point of the plan on both sheets. */
function drawJoinMark(canvas: PdfCanvas, { x, y }: Point, radius: number): void {
  canvas.line('mark', [
    { x: x - radius, y },
    { x: x + radius, y },
  ]);
  canvas.line('mark', [
    { x, y: y - radius },
    { x, y: y + radius },
  ]);
  const ring: Point[] = [];
  for (let i = 0; i <= 24; i += 1) {
    const turn = (i * Math.PI) / 12;
    ring.push({ x: x + 0.6 * radius * Math.cos(turn), y: y + 0.6 * radius * Math.sin(turn) });
  }
  canvas.line('trim', ring);
}

function drawStrip(canvas: PdfCanvas, grid: Grid, position: SheetPosition, caption: SheetCaption): void {
  const { marginMm, windowWidthMm, windowHeightMm } = grid;
  const baseline = marginMm + windowHeightMm + STRIP_MM - 1;
  const write = (text: string, x: number, sizePt: number, bold: boolean): void =>
    canvas.text({ text, start: { x, y: baseline }, turnRad: 0, sizePt, bold });
  const name = sheetName(position);
  write(name, marginMm, 13, true);
  const howWidth = textWidth(caption.how, 7.5, caption.howBold);
  write(caption.how, marginMm + windowWidthMm - howWidth, 7.5, caption.howBold);
  const afterName = marginMm + textWidth(name, 13, true) + 4;
  const left = caption.scale ? drawScale(canvas, { x: afterName, y: baseline }, caption.scale) : afterName;
  const room = marginMm + windowWidthMm - howWidth - 4 - left;
  write(shortened(caption.what, 7.5, false, room), left, 7.5, false);
}

/** Draws a scale from a point to the right, with a tick at each inch or centimetre and its length behind it. Returns where it ends, mm. */
function drawScale(canvas: PdfCanvas, { x, y }: Point, unit: Unit): number {
  const { stepMm, steps } = SCALES[unit];
  const end = x + steps * stepMm;
  canvas.line('calibration', [
    { x, y },
    { x: end, y },
  ]);
  for (let i = 0; i <= steps; i += 1) {
    const at = x + i * stepMm;
    canvas.line('calibration', [
      { x: at, y },
      { x: at, y: y - (i % steps === 0 ? 2.6 : 1.6) },
    ]);
  }
  const label = PATTERN.scale[unit];
  canvas.text({ text: label, start: { x: end + 1.5, y }, turnRad: 0, sizePt: 7, bold: false });
  return end + 1.5 + textWidth(label, 7, false) + 4;
}

const SCALES: Readonly<Record<Unit, { readonly stepMm: number; readonly steps: number }>> = {
  in: { stepMm: MM_PER_INCH, steps: 2 },
  cm: { stepMm: 10, steps: 5 },
};
