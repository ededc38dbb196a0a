// How the side line runs up to the armhole, and how wide a round neckline stays, measured on the finished edges.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../../src/document';
import { type Draft, draft, type Measurements, type Point, type Style } from '../../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../../support/bodies/drawBodies';
import { withShoulders } from '../../../support/bodies/sizedBodies';

const SHOULDERED = [...NAMED_STYLES].filter(
  ([, { style }]) => style.shoulders && style.shoulders.bandAbove === undefined,
);

/** A full bust close under the arm over small ribs: the girth falls by 140 mm within 35 mm of height. */
const STEEP: Measurements = {
  ...withShoulders(MEAN_BODY),
  bust: 1060,
  overBust: 920,
  underBust: 800,
  waist: 720,
  neckToBust: 290,
  neckToUnderBust: 365,
  neckToWaist: 425,
  neckToHip: 630,
  underarmToWaist: 170,
  bustPointWidth: 210,
};

/** A chest that widens by 40 mm from the bust to the arms within 25 mm of height. */
const FLAT: Measurements = {
  ...withShoulders(MEAN_BODY),
  bust: 760,
  overBust: 800,
  underBust: 710,
  waist: 640,
  underarmToWaist: 145,
};

interface SideOf {
  /** The front's and the back's side line from the armhole down to the bust line, and the armhole's lowest place below its end. */
  readonly line: readonly Point[];
  readonly hook: number;
}

function sidesOf({ pieces, levels }: Draft): SideOf[] {
  const bust = levels.find(({ name }) => name === 'bust')?.y ?? Number.NaN;
  const seams = pieces.flatMap((piece) =>
    piece.edges.flatMap((edge) => (edge.isSideSeam ? [{ piece, points: edge.points }] : [])),
  );
  expect(seams).toHaveLength(2);
  return seams.map(({ piece, points }) => {
    const armhole = piece.edges.filter(({ role }) => role === 'armhole').flatMap((edge) => edge.points);
    const end = Math.min(...points.map(({ y }) => y));
    const line = points.filter(({ y }) => y <= bust);
    expect(line.length).toBeGreaterThan(3);
    return { line, hook: Math.max(...armhole.map(({ y }) => y)) - end };
  });
}

const leanOf = (line: readonly Point[]): number => {
  const [up, down] = [...line]
    .sort((a, b) => a.y - b.y)
    .filter((_, i, all) => i === 0 || i === all.length - 1);
  return up && down ? Math.abs(up.x - down.x) / (down.y - up.y) : Number.NaN;
};

describe.each(SHOULDERED)('%s', (_, { style }) => {
  it.each([
    ['a full bust close under the arm', STEEP],
    ['a chest that widens to the arms', FLAT],
  ])('has an armhole without a hook at the side for %s', (__, body) => {
    const made = draft(body, style);
    expect(made.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    for (const { line, hook } of sidesOf(made)) {
      // Truing turns the end a little; the line itself leans at most .35 to 1.
      expect(leanOf(line)).toBeLessThan(0.4);
      expect(hook).toBeLessThan(6);
    }
  });
});

it('the side line heads for the width that the girths ask for where it leans little', () => {
  const { style } = NAMED_STYLES.get('princess-bodice') as { style: Style };
  for (const body of drawBodies(20, 12).map(withShoulders)) {
    const { blocks, levels } = draft(body, style);
    const [above, bust] = ['overBust', 'bust'].map((name) => levels.find((level) => level.name === name));
    if (!blocks || !above || !bust) continue;
    for (const { width, sideSeam } of Object.values(blocks)) {
      const asked = width.get('overBust') ?? 0;
      const lean = Math.abs(asked - (width.get('bust') ?? 0)) / (bust.y - above.y);
      const drawn = sideSeam.xs[sideSeam.ys.indexOf(above.y)] ?? Number.NaN;
      if (lean <= 0.35) expect(drawn).toBeCloseTo(asked, 9);
    }
  }
});

describe('a round neckline', () => {
  it.each(SHOULDERED)('of %s keeps three quarters of its width down to half its depth', (_, { style }) => {
    for (const neckWidth of [100, 114, 130]) {
      const made = draft({ ...withShoulders(MEAN_BODY), neckWidth }, style);
      const front = made.pieces.find(({ block, number }) => block === 'front' && number === 1);
      const points = front?.edges.filter(({ role }) => role === 'top').flatMap((edge) => edge.points) ?? [];
      const [top, foot] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
      const width = Math.max(...points.map(({ x }) => x));
      const half = points.reduce((best, point) =>
        Math.abs(point.y - (top + foot) / 2) < Math.abs(best.y - (top + foot) / 2) ? point : best,
      );
      expect(foot - top).toBeGreaterThan(120);
      expect(half.x / width).toBeGreaterThan(0.75);
    }
  });
});
