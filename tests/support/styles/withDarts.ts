// A style with some of its wedges made darts at random, and at times its side panels in one.

import { DART_LEVELS, type DartPoint, type Style, type Wedge, withPoints } from '../../../src/engine';
import { chance, pick, type Random, uniform } from '../random';

export function withDarts(style: Style, random: Random, wild: boolean): Style {
  const end = (level: DartPoint['from'], [least, most]: readonly [number, number]): DartPoint =>
    wild
      ? { from: pick(random, DART_LEVELS), below: uniform(random, -200, 200) }
      : { from: level, below: uniform(random, least, most) };
  const wedges = style.wedges.map((wedge): Wedge => {
    if (chance(random, 0.5)) return wedge;
    const upper = { upper: end('bust', [10, 50]) };
    const lower = { lower: end('waist', [30, 110]) };
    return withPoints(wedge, pick(random, [upper, lower, { ...upper, ...lower }]));
  });
  return { ...style, wedges, ...(chance(random, 0.2) ? { joinedSide: true } : {}) };
}
