// Puts the number of each size on its cut line, where the lines of the sizes lie farthest apart.

import { distance, distanceToChord, type Point } from '../../engine';
import type { Box } from '../geometry/box';
import { nearSegments, type Segment } from '../geometry/nearSegments';
import { isClear, type Room } from '../panel/room';
import type { PlacedText } from '../panel/strokes';
import { boxOf, readable, setBlock, type TurnedBox, textsOfBlock } from '../panel/textBlock';

/** A cut line with the number that goes on it. */
export interface NumberedLine {
  /** Closed, its first point not repeated. */
  readonly ring: readonly Point[];
  readonly number: string;
}

const NUMBER_PT = 6;

/** A number stands in each of so many equal stretches of the outline. */
const STRETCHES = 3;

/** Distance of the places that are tried. mm */
const STEP_MM = 6;

/** Farther from all other lines than this one place is as good as another. mm */
const FAR_MM = 4;

/** The line under a number turns by no more. rad */
const MOST_TURN = 0.2;

interface Place {
  readonly at: Point;
  readonly turnRad: number;
  readonly clear: number;
}

/** Three numbers on each line, clear of each other and of the texts that took their room before. */
export function numbersOnLines(lines: readonly NumberedLine[], taken: readonly TurnedBox[]): PlacedText[] {
  const near = lines.map(({ ring }) => nearSegments([closed(ring)]));
  const room: Room = { segments: [], taken: [...taken] };
  return lines.flatMap(({ ring, number }, own) => {
    const block = setBlock([{ text: number, sizePt: NUMBER_PT, bold: true }]);
    const clearance = (at: Point): number =>
      near.reduce((least, find, i) => (i === own ? least : Math.min(least, awayFrom(at, find))), FAR_MM);
    const stretches = placesOn(ring, block.widthMm, clearance);
    return stretches.flatMap((places) => {
      const found = places
        .sort((a, b) => b.clear - a.clear)
        .map(({ at, turnRad }) => boxOf(block, at, turnRad))
        .find((box) => isClear(room, box, 0.4));
      if (!found) return [];
      room.taken.push(found);
      return textsOfBlock(block, found).map((text) => ({ ...text, onLine: true }));
    });
  });
}

/** Places for a number all along a ring, by stretches. */
function placesOn(ring: readonly Point[], widthMm: number, clearance: (at: Point) => number): Place[][] {
  const points = closed(ring);
  const whole = points.slice(1).reduce((sum, point, i) => sum + distance(points[i] as Point, point), 0);
  const at = walker(points);
  const stretches: Place[][] = Array.from({ length: STRETCHES }, () => []);
  const half = widthMm / 2 + 0.6;
  for (let along = half; along < whole - half; along += STEP_MM) {
    const [before, middle, after] = [at(along - half), at(along), at(along + half)];
    const [first, second] = [directionOf(before, middle), directionOf(middle, after)];
    const turn = Math.abs(Math.atan2(Math.sin(second - first), Math.cos(second - first)));
    if (turn > MOST_TURN) continue;
    const turnRad = readable(directionOf(before, after));
    stretches[Math.floor((along / whole) * STRETCHES)]?.push({
      at: middle,
      turnRad,
      clear: clearance(middle),
    });
  }
  return stretches;
}

const directionOf = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x);

/** Gives the point at a length along a polyline, mm. */
function walker(points: readonly Point[]): (along: number) => Point {
  const ends = [0];
  for (let i = 1; i < points.length; i += 1)
    ends.push((ends[i - 1] as number) + distance(points[i - 1] as Point, points[i] as Point));
  return (along) => {
    let [low, high] = [1, points.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((ends[middle] as number) < along) low = middle + 1;
      else high = middle;
    }
    const [a, b] = [points[low - 1] as Point, points[low] as Point];
    const [from, to] = [ends[low - 1] as number, ends[low] as number];
    const t = to > from ? Math.min(1, Math.max(0, (along - from) / (to - from))) : 0;
    return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
  };
}

function awayFrom(at: Point, find: (box: Box) => readonly Segment[]): number {
  const box = { left: at.x - FAR_MM, right: at.x + FAR_MM, top: at.y - FAR_MM, bottom: at.y + FAR_MM };
  return find(box).reduce((least, [a, b]) => Math.min(least, distanceToChord(a, b, at)), FAR_MM);
}

const closed = (ring: readonly Point[]): Point[] => (ring[0] ? [...ring, ring[0]] : []);
