// The styles by name on bodies of every size, and the hand method's arithmetic.

import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { type DartLines, draft, inches, type Point, type Style, xAt } from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { SIZED_BODIES, withShoulders } from '../../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, expectedPieces, judge } from '../../support/judges/judge';

const COUNT = howMany({ few: 10, all: 100 });

describe.each([...NAMED_STYLES])('%s', (_, { style, title }) => {
  it.each([...SIZED_BODIES, ['demo client’s', DEMO_CLIENT.measurements]] as const)(
    'is whole on the %s body',
    (__, body) => {
      const made = draft(body, style);
      expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(made.pieces.map(({ id }) => id)).toEqual(expect.arrayContaining(expectedPieces(style)));
      expect(broken(judge(body, style, made))).toEqual([]);
    },
  );

  it(`is right on ${COUNT} drawn bodies, and refuses at most one in a hundred`, DRAWN, () => {
    let refused = 0;
    for (const [i, body] of drawBodies(COUNT, 77).map(withShoulders).entries()) {
      const made = draft(body, style);
      expect(broken(judge(body, style, made)), `body ${i}`).toEqual([]);
      if (made.issues.some(({ severity }) => severity === 'error')) refused += 1;
    }
    expect(refused).toBeLessThanOrEqual(COUNT / 100);
  });

  it('has a title of its own', () => {
    expect([...NAMED_STYLES.values()].filter((other) => other.title === title)).toHaveLength(1);
  });
});

describe('the hand method', () => {
  // common practice, no source: half of the finished girth to front and back alike, and every wedge put back at the side
  it('makes the front at the waist a quarter of the finished waist and all its wedges', () => {
    const style = NAMED_STYLES.get('hand-method')?.style;
    if (!style) throw new Error('no such style');
    const waist = inches(30);
    const made = draft({ ...MEAN_BODY, waist }, style);
    const taken = (block: 'front' | 'back'): number =>
      style.wedges
        .filter((wedge) => wedge.block === block)
        .reduce((sum, { intake }) => sum + (intake.waist ?? 0), 0);
    const flat = made.blocks?.front.width.get('waist') ?? Number.NaN;
    expect(taken('front')).toBeGreaterThan(inches(1.5));
    expect(flat).toBeCloseTo((waist - inches(2)) / 4 + taken('front'), 9);
    const back = made.blocks?.back.width.get('waist') ?? Number.NaN;
    expect(back).toBeCloseTo((waist - inches(2)) / 4 - style.closure.lacingGap / 2 + taken('back'), 9);
  });

  it('lets the side lines lean in from bust to waist, and not out again, for nearly all drawn bodies', () => {
    const style = NAMED_STYLES.get('hand-method')?.style;
    if (!style) throw new Error('no such style');
    const swings = drawBodies(60, 21).flatMap((body) => {
      const { blocks, levels } = draft(body, style);
      const heights = levels.filter(({ name }) => name === 'bust' || name === 'waist').map(({ y }) => y);
      const [bust = 0, waist = 0] = heights;
      return Object.values(blocks ?? {}).map(({ sideSeam }) => {
        let [least, out] = [Number.POSITIVE_INFINITY, 0];
        for (let y = bust; y <= waist; y += 1) {
          const x = xAt(sideSeam, y);
          least = Math.min(least, x);
          out = Math.max(out, x - least);
        }
        return out;
      });
    });
    swings.sort((a, b) => a - b);
    expect(swings[Math.floor(0.8 * swings.length)]).toBeLessThan(3);
    expect(swings[Math.floor(0.95 * swings.length)]).toBeLessThan(8);
  });
});

describe('a waist dart of the front', () => {
  /** The angle at a dart's upper point, over 10 mm of its legs, degrees. */
  function tipOf({ inner, outer }: DartLines): number {
    const [a, b] = [inner, outer].map((leg) => {
      let left = 10;
      for (let i = 1; i < leg.length; i += 1) {
        const [from, to] = [leg[i - 1], leg[i]] as [Point, Point];
        const length = Math.hypot(to.x - from.x, to.y - from.y);
        if (left <= length)
          return {
            x: from.x + ((to.x - from.x) * left) / length,
            y: from.y + ((to.y - from.y) * left) / length,
          };
        left -= length;
      }
      throw new Error('the leg is shorter than 10 mm');
    }) as [Point, Point];
    return (2 * Math.asin(Math.hypot(a.x - b.x, a.y - b.y) / 20) * 180) / Math.PI;
  }

  it.each(['princess-bodice', 'darted-bodice', 'basque-bodice'])(
    'of %s ends in a point of 48° at the most for nineteen of twenty drawn bodies',
    (name) => {
      const { style } = NAMED_STYLES.get(name) as { style: Style };
      const tips = drawBodies(60, 33).flatMap((body) =>
        draft(withShoulders(body), style).pieces.flatMap(({ block, darts }) =>
          block === 'front' ? darts.filter(({ wedge }) => wedge !== 'front-armhole').map(tipOf) : [],
        ),
      );
      tips.sort((a, b) => a - b);
      expect(tips.length).toBeGreaterThan(50);
      expect(tips[Math.floor(0.95 * tips.length)]).toBeLessThan(48);
    },
  );
});
