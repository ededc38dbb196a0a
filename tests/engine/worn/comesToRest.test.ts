// A garment comes to rest in one place whatever it starts from, and says so where it does not.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draftWhole, type FitFigures, type Measurements, type Style, UNMEASURED } from '../../../src/engine';
import { sewGarment, sewing } from '../../../src/engine/worn/sewGarment';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor, DISTURBED, energyOf, farthestApart, wear } from '../../support/bodies/wornBodies';

const styleNamed = (name: string): Style => {
  const style = NAMED_STYLES.get(name)?.style;
  if (!style) throw new Error(`no style ${name}`);
  return style;
};

describe('coming to rest', () => {
  it('ends in one place from above, twisted and with noise', () => {
    for (const { measurements, name, ways } of [
      { measurements: MEAN_BODY, name: 'default', ways: ['high'] },
      { measurements: drawBodies(1, 3)[0] ?? MEAN_BODY, name: 'under-bust', ways: ['twisted', 'noisy'] },
      { measurements: drawBodies(12, 1988)[11] ?? MEAN_BODY, name: 'under-bust', ways: ['high'] },
    ]) {
      const body = bodyFor(measurements);
      const style = styleNamed(name);
      const usual = wear(measurements, style, body).draped;
      expect(usual.rest.atRest).toBe(true);
      for (const way of ways) {
        const disturb = DISTURBED.get(way);
        if (!disturb) throw new Error(`no way ${way}`);
        const other = wear(measurements, style, body, { disturb }).draped;
        expect(other.rest.atRest).toBe(true);
        expect(farthestApart(other, usual)).toBeLessThan(0.5);
      }
    }
  });

  it('finds the rest of less energy whatever it starts from, and tells the other', () => {
    // Half an inch above the under-bust line the edge lies on the breast or under it.
    const style = { ...styleNamed('under-bust'), topAbove: 12.7 };
    for (const [woman, way] of [
      [8, 'off'],
      [15, 'low'],
    ] as const) {
      const measurements = drawBodies(woman + 1, 1988)[woman] ?? MEAN_BODY;
      const body = bodyFor(measurements);
      const usual = wear(measurements, style, body).draped;
      const other = wear(measurements, style, body, { disturb: DISTURBED.get(way) }).draped;
      for (const { other: second } of [usual, other]) expect(second?.apart).toBeGreaterThan(10);
      expect(farthestApart(other, usual)).toBeLessThan(0.5);
      // One start alone, which nothing pushes, comes to the rest of more energy.
      const coarse = wear(measurements, style, body, { width: 24 }).draped;
      const alone = wear(measurements, style, body, { from: coarse }).draped;
      expect(farthestApart(alone, usual)).toBeCloseTo(usual.other?.apart ?? 0, 0);
      expect(energyOf(alone)).toBeGreaterThan(energyOf(usual));
    }
  });

  it('stands off on a mesh of 12 mm as on one of 4.5 mm, within 0.2 mm', () => {
    const [woman = MEAN_BODY] = drawBodies(1, 1988);
    const [coarse, fine] = [12, 4.5].map(
      (width) => wear(woman, styleNamed('default'), bodyFor(woman), { width }).figures,
    ) as [FitFigures, FitFigures];
    expect(Math.abs(coarse.standOff - fine.standOff)).toBeLessThan(0.2);
    expect(Math.abs(coarse.stretch - fine.stretch)).toBeLessThan(0.05);
    expect(Math.abs(coarse.score - fine.score)).toBeLessThan(0.1);
  });

  it('is the same to the bit each time', () => {
    const [one, two] = [0, 1].map(() =>
      sewGarment(draftWhole(MEAN_BODY, styleNamed('cincher')), MEAN_BODY, styleNamed('cincher')),
    );
    expect(one?.halves[0]?.draped.places).toEqual(two?.halves[0]?.draped.places);
    expect(one?.halves[0]?.figures).toEqual(two?.halves[0]?.figures);
  });

  it('pauses between its steps, and stops where the caller asks for no more', () => {
    const style = styleNamed('under-bust');
    const work = sewing(draftWhole(MEAN_BODY, style), MEAN_BODY, style);
    for (let i = 0; i < 3; i += 1) expect(work.next()).toEqual({ done: false, value: undefined });
    expect(work.return({ notJudged: 'notAtRest', halves: [], leftOut: [] }).done).toBe(true);
    expect(work.next().done).toBe(true);
  });

  it('starts from an earlier rest with fewer factors', () => {
    const style = styleNamed('under-bust');
    const drafted = draftWhole(MEAN_BODY, style);
    const first = sewGarment(drafted, MEAN_BODY, style);
    const changed = draftWhole({ ...MEAN_BODY, waist: MEAN_BODY.waist - 6 }, style);
    const again = sewGarment(changed, MEAN_BODY, style, null, {
      from: first.halves.map(({ draped }) => draped),
    });
    expect(again.notJudged).toBeNull();
    expect(again.halves[0]?.draped.rest.factors).toBeLessThan(first.halves[0]?.draped.rest.factors ?? 0);
  });
});

describe('a garment that is not judged', () => {
  const judge = (style: Style, measurements: Measurements = MEAN_BODY) =>
    sewGarment(draftWhole(measurements, style), measurements, style);

  it('hangs from shoulders', () => {
    const measurements = { ...MEAN_BODY, acrossShoulder: 374 };
    expect(judge(styleNamed('princess-bodice'), measurements)).toMatchObject({
      notJudged: 'shouldered',
      halves: [],
    });
  });

  it('cannot be sewn', () => {
    expect(judge(styleNamed('default'), UNMEASURED)).toMatchObject({ notJudged: 'cannotBeSewn', halves: [] });
  });

  it('is not at rest, and then has no figures', () => {
    const style = styleNamed('default');
    const far = { ...MEAN_BODY, waist: 400, hip: 1400 };
    const worn = sewGarment(draftWhole(MEAN_BODY, style), far, style);
    for (const half of worn.halves) expect(half.figures === null).toBe(!half.draped.rest.atRest);
  });

  it('leaves out what lies beside the panels, and says so', () => {
    const style = styleNamed('off-shoulder-bridal');
    const measurements = { ...MEAN_BODY, acrossShoulder: 374 };
    const worn = judge(style, measurements);
    expect(worn.notJudged).toBeNull();
    expect(worn.leftOut.map(({ kind }) => kind)).toContain('band');
  });

  it('is sewn half by half where the sides differ', () => {
    const style = styleNamed('default');
    const sides = { leftShare: { waist: 0.52 }, rightLower: {} };
    const worn = sewGarment(draftWhole(MEAN_BODY, style, sides), MEAN_BODY, style, sides);
    expect(worn.notJudged).toBeNull();
    expect(worn.halves.map(({ side }) => side)).toEqual(['left', 'right']);
    const [left, right] = worn.halves.map(
      ({ body }) => body.levels.find(({ name }) => name === 'waist')?.girth ?? 0,
    );
    expect((left ?? 0) / (right ?? 1)).toBeCloseTo(0.52 / 0.48, 6);
  });
});
