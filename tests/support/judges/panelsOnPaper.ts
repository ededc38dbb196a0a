// Widths of the panels of a mock-up, measured on the printed page with a ruler's eye: from sew line to sew line along the levels.

import type { ReadPage, ReadPoint } from '../../paper/readPattern';
import { holds } from './outline';

const [CUT_MM, SEW_MM, LEVEL_MM] = [0.5, 0.25, 0.18];
const LEVELS = ['Bust', 'Under-bust', 'Waist'];

const isAs = (widthMm: number, style: number): boolean => Math.abs(widthMm - style) < 0.01;

/** The widths of the panel on which a name is written at the start of a text, mm, by what is written at its levels. */
export function widthsOnPaper({ lines, texts }: ReadPage, name: string): Record<string, number> {
  const written = texts.find(({ text }) => text.startsWith(name))?.at;
  const ring = lines.find(
    ({ widthMm, points }) => isAs(widthMm, CUT_MM) && written !== undefined && holds(points, written, 0),
  )?.points;
  if (!ring) throw new Error(`${name} is not on the page`);
  const middle = (points: readonly ReadPoint[]): ReadPoint => {
    const [a, b] = [points[0] as ReadPoint, points.at(-1) as ReadPoint];
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  const sewn = lines
    .filter(({ widthMm, dashed }) => dashed && isAs(widthMm, SEW_MM))
    .filter(({ points }) => points.every((point) => holds(ring, point, 0)));
  const labels = texts.filter(({ text, at }) => LEVELS.includes(text) && holds(ring, at, 0));
  const found = lines
    .filter(({ widthMm, dashed, points }) => !dashed && isAs(widthMm, LEVEL_MM) && points.length === 2)
    .filter(({ points }) => holds(ring, middle(points), 0))
    .map(({ points }): [string, number] => {
      const [from, to] = points as [ReadPoint, ReadPoint];
      const [nearest] = [...labels].sort((a, b) => off(from, to, a.at) - off(from, to, b.at));
      const crossed = sewn.flatMap((stroke) =>
        stroke.points.flatMap((point, i) => crossing(from, to, point, stroke.points[i + 1]) ?? []),
      );
      return [nearest?.text ?? '', Math.max(...crossed) - Math.min(...crossed)];
    });
  return Object.fromEntries(found);
}

/** How far a point lies off a straight line, mm. */
const off = (a: ReadPoint, b: ReadPoint, point: ReadPoint): number =>
  Math.abs((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);

/** How far along a line, mm, another stroke crosses it; null where it does not. */
function crossing(a: ReadPoint, b: ReadPoint, c: ReadPoint, d: ReadPoint | undefined): number | null {
  if (!d) return null;
  const [along, across] = [
    { x: b.x - a.x, y: b.y - a.y },
    { x: d.x - c.x, y: d.y - c.y },
  ];
  const turn = along.x * across.y - along.y * across.x;
  if (Math.abs(turn) < 1e-9) return null;
  const part = ((c.x - a.x) * across.y - (c.y - a.y) * across.x) / turn;
  const other = ((c.x - a.x) * along.y - (c.y - a.y) * along.x) / turn;
  return part >= 0 && part <= 1 && other >= 0 && other <= 1 ? part * Math.hypot(along.x, along.y) : null;
}
