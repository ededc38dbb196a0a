// No outline has two equal points in a row: a chord of no length has no direction, and some programs refuse to read one.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { type Draft, draft, type Piece, type Point } from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { SIZED_BODIES, withShoulders } from '../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../support/howMany';
import { randomFrom } from '../support/random';
import { randomStyle } from '../support/styles/randomStyle';

/** Files round coordinates to a millionth of a mm; points this far apart stay two. mm */
const APART_MM = 1e-5;

const isRepeated = (points: readonly Point[]): boolean =>
  points.some((p, i) => {
    const before = points[i - 1];
    return before !== undefined && Math.hypot(p.x - before.x, p.y - before.y) < APART_MM;
  });

/** The lines of a piece that have a chord of no length. */
function repeats({ id, edges, darts, cutLine }: Piece): string[] {
  return [
    ...edges.filter(({ points }) => isRepeated(points)).map(({ role }) => `${id} ${role}`),
    ...darts.filter(({ inner, outer }) => isRepeated(inner) || isRepeated(outer)).map(() => `${id} dart`),
    ...(isRepeated([...cutLine, ...cutLine.slice(0, 1)]) ? [`${id} cut line`] : []),
  ];
}

const found = ({ pieces, extras }: Draft): string[] => [...pieces, ...extras].flatMap(repeats);

describe('the outlines of every piece', () => {
  const bodies = [
    ...SIZED_BODIES.map(([, body]) => body),
    ...drawBodies(howMany({ few: 12, all: 60 }), 47).map(withShoulders),
  ];

  it.each([...NAMED_STYLES])('in the style %s have no chord of no length', (_, { style }) => {
    for (const body of bodies) expect(found(draft(body, style))).toEqual([]);
  });

  it('nor in styles drawn at random, with a level at or all but at an end', DRAWN, () => {
    const random = randomFrom(48);
    for (const body of drawBodies(howMany({ few: 60, all: 400 }), 48)) {
      const style = randomStyle(random);
      const { levels } = draft(body, style);
      const waist = levels.find(({ name }) => name === 'waist')?.y ?? 0;
      for (const { y } of levels)
        for (const gap of [0, 1e-7])
          expect(found(draft(body, { ...style, hemBelow: y - waist + gap }))).toEqual([]);
    }
  });
});
