// Which way up a text stands on a line.

/** Turned so that it is never read upside down; edges that run nearly upright read from the foot up. */
export function readable(turnRad: number): number {
  let turn = turnRad;
  while (turn > Math.PI / 2 - NEARLY_UPRIGHT) turn -= Math.PI;
  while (turn <= -Math.PI / 2 - NEARLY_UPRIGHT) turn += Math.PI;
  return turn;
}

const NEARLY_UPRIGHT = Math.PI / 9;
