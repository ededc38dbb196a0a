// Names of panels on the assembly map, each inside its outline; a number where the name has no room.

import { isInside, type Point } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import type { PlacedText } from '../panel/strokes';
import { MM_PER_POINT, textWidth } from '../text/textWidth';

interface NamedRing {
  readonly name: string;
  /** Page mm; its first point is not repeated. */
  readonly ring: readonly Point[];
}

interface MapLabel {
  readonly text: PlacedText;
  readonly box: Box;
}

interface MapLabels {
  readonly labels: readonly MapLabel[];
  /** Names that have no room, by number: the first is 1. */
  readonly key: readonly string[];
}

const SIZES_PT = [7, 6.25, 5.5];
const NUMBER_PT = 7;

/** Room around a text. mm */
const CLEAR_MM = 0.4;

/**
 * Labels that keep clear of each other and of `taken`, and of the upright and level lines at `xs` and `ys` where there is room.
 * Panels of one name have one number.
 */
export function mapLabels(
  panels: readonly NamedRing[],
  taken: readonly Box[],
  xs: readonly number[],
  ys: readonly number[],
): MapLabels {
  const boxes = [...taken];
  const key: string[] = [];
  const labels = panels.flatMap(({ name, ring }): MapLabel[] => {
    const around = boxAround(ring);
    if (!around) return [];
    const spots = spotsIn(around);
    const isFree = (box: Box): boolean => !boxes.some((other) => overlap(box, other));
    const isWhole = (box: Box): boolean =>
      !xs.some((x) => x > box.left && x < box.right) && !ys.some((y) => y > box.top && y < box.bottom);
    const fits = (box: Box): boolean => isFree(box) && isWithin(box, ring);
    const label =
      nameAt(name, spots, around, (box) => isWhole(box) && fits(box)) ??
      nameAt(name, spots, around, fits) ??
      numberAt(
        numberOf(name, key),
        spots.filter((spot) => isInside(ring, spot)),
        isFree,
      );
    if (!label) return [];
    boxes.push(label.box);
    return [label];
  });
  return { labels, key };
}

/** Places all over a box, those in its middle first. */
function spotsIn({ left, top, right, bottom }: Box): Point[] {
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const [across, down] = [right - left, bottom - top];
  const spots: (Point & { readonly away: number })[] = [];
  for (let i = 1; i < STEPS; i += 1)
    for (let j = 1; j < STEPS; j += 1) {
      const [x, y] = [left + (across * i) / STEPS, top + (down * j) / STEPS];
      spots.push({ x, y, away: Math.hypot((x - middle.x) / across, (y - middle.y) / down) });
    }
  return spots.sort((a, b) => a.away - b.away);
}

const STEPS = 16;

/** The name where its box lies inside the one around its panel, and fits. */
function nameAt(
  name: string,
  spots: readonly Point[],
  around: Box,
  fits: (box: Box) => boolean,
): MapLabel | null {
  for (const sizePt of SIZES_PT) {
    const width = textWidth(name, sizePt, false);
    for (const isUpright of [false, true]) {
      const label = { text: name, sizePt, bold: false, width, isUpright };
      const { left, top, right, bottom } = boxAt(label, { x: 0, y: 0 });
      const isInBox = ({ x, y }: Point): boolean =>
        x + left > around.left &&
        x + right < around.right &&
        y + top > around.top &&
        y + bottom < around.bottom;
      for (const spot of spots) {
        if (!isInBox(spot)) continue;
        const box = boxAt(label, spot);
        if (fits(box)) return { text: textAt(label, spot), box };
      }
    }
  }
  return null;
}

/** A number may cross the outline where the panel is narrower than it. */
function numberAt(number: number, spots: readonly Point[], isFree: (box: Box) => boolean): MapLabel | null {
  const text = String(number);
  const width = textWidth(text, NUMBER_PT, true);
  const label = { text, sizePt: NUMBER_PT, bold: true, width, isUpright: false };
  const free = spots.find((spot) => isFree(boxAt(label, spot))) ?? spots[0];
  return free ? { text: textAt(label, free), box: boxAt(label, free) } : null;
}

function numberOf(name: string, key: string[]): number {
  if (!key.includes(name)) key.push(name);
  return key.indexOf(name) + 1;
}

interface SetLabel extends Pick<PlacedText, 'text' | 'sizePt' | 'bold'> {
  /** Of the text, mm. */
  readonly width: number;
  readonly isUpright: boolean;
}

/** The label centred at a spot. Capitals and figures are about 0.7 of the size high, and stand on the baseline. */
function textAt({ text, sizePt, bold, width, isUpright }: SetLabel, { x, y }: Point): PlacedText {
  const [along, down] = [width / 2, 0.35 * sizePt * MM_PER_POINT];
  const start = isUpright ? { x: x + down, y: y + along } : { x: x - along, y: y + down };
  return { text, start, turnRad: isUpright ? -Math.PI / 2 : 0, sizePt, bold };
}

function boxAt({ sizePt, width, isUpright }: SetLabel, { x, y }: Point): Box {
  const [long, short] = [width / 2 + CLEAR_MM, 0.55 * sizePt * MM_PER_POINT + CLEAR_MM];
  const [across, high] = isUpright ? [short, long] : [long, short];
  return { left: x - across, right: x + across, top: y - high, bottom: y + high };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Whether a box lies inside a ring: its corners do, and no corner of the ring lies in it. */
function isWithin({ left, top, right, bottom }: Box, ring: readonly Point[]): boolean {
  const corners = [left, (left + right) / 2, right].flatMap((x) =>
    [top, (top + bottom) / 2, bottom].map((y) => ({ x, y })),
  );
  return (
    corners.every((corner) => isInside(ring, corner)) &&
    !ring.some(({ x, y }) => x > left && x < right && y > top && y < bottom)
  );
}
