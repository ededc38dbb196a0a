import type { Point } from '../../src/engine';

/** The points that are needed to keep to the row by `within` mm, its ends among them (Douglas and Peucker 1973). */
export function subset(points: readonly Point[], within: number): Point[] {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  const [dx, dy] = [last.x - first.x, last.y - first.y];
  const chord = Math.hypot(dx, dy);
  // Of a closed row the ends are one point.
  const off = ({ x, y }: Point): number =>
    chord > 0
      ? Math.abs((x - first.x) * dy - (y - first.y) * dx) / chord
      : Math.hypot(x - first.x, y - first.y);
  let farthest = 0;
  for (let i = 1; i < points.length - 1; i += 1)
    if (off(points[i] as Point) > off(points[farthest] as Point)) farthest = i;
  if (farthest === 0 || off(points[farthest] as Point) <= within) return [first, last];
  return [
    ...subset(points.slice(0, farthest + 1), within),
    ...subset(points.slice(farthest), within).slice(1),
  ];
}
