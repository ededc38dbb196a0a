// Points of the plane in which pieces are drafted.

/** A point on the paper, mm: x from the centre line towards the side, y down from the shoulder level. Also a vector. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Straight distance between two points, mm. */
export const distance = (a: Point, b: Point): number => {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  // Many times quicker than Math.hypot, and no length here comes near its limits.
  return Math.sqrt(dx * dx + dy * dy);
};

/** The point at fraction `t` of the way from `a` to `b` (linear interpolation); 0 gives `a`, and beyond 0 to 1 it extrapolates. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** Turns points about a centre by so many rad; as seen on paper counter-clockwise is less than 0. */
export function turnAbout(centre: Point, turnRad: number): (point: Point) => Point {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return ({ x, y }) => ({
    x: centre.x + (x - centre.x) * cos - (y - centre.y) * sin,
    y: centre.y + (x - centre.x) * sin + (y - centre.y) * cos,
  });
}
