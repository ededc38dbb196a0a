// A place on the paper: x from the centre line to the side, y down from the shoulder level, both in mm.

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Straight distance between two points, mm. */
export const distance = (a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  // Many times quicker than Math.hypot, and no length here comes near its limits.
  return Math.sqrt(dx * dx + dy * dy);
};

/** The point a fraction `t` of the way from `a` to `b`; 0 gives `a`, 1 gives `b`. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});
