// What cannot be sewn is told by seam or panel; usual bodies in the styles there are hear nothing of it.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  balancedWedge,
  DEFAULT_STYLE,
  type Draft,
  draft,
  type Issue,
  type Measurements,
  type Style,
} from '../../../src/engine';
import { bandIssues, bandWalk } from '../../../src/engine/checks/bandWalk';
import { bendTighterThan, leanOver } from '../../../src/engine/geometry/bend';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { SIZED_BODIES, withShoulders } from '../../support/bodies/sizedBodies';
import { tipsAtArmhole } from '../../support/judges/cutter';

/** A quarter of a circle as a polyline of short chords. */
const quarter = (radius: number, count = 2 * radius) =>
  Array.from({ length: count + 1 }, (_, i) => {
    const angle = (Math.PI / 2) * (i / count);
    return { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
  });

describe('the tightest bend', () => {
  it.each([12, 20, 60, 400])('of a circle is its radius, %d mm', (radius) => {
    const bend = bendTighterThan(quarter(radius), Number.POSITIVE_INFINITY);
    expect(bend?.value).toBeGreaterThan(0.95 * radius);
    expect(bend?.value).toBeLessThan(1.05 * radius);
  });

  it('of a corner between straight lines is none, and of a line as short as a chord is not read', () => {
    const corner = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 60, y: 30 },
    ];
    expect(bendTighterThan(corner, Number.POSITIVE_INFINITY)?.value).toBeGreaterThan(1e6);
    expect(bendTighterThan(quarter(3), Number.POSITIVE_INFINITY)).toBeNull();
  });

  it('is told only where it is tighter than asked, in an S as in a circle', () => {
    expect(bendTighterThan(quarter(20), 15)).toBeNull();
    expect(bendTighterThan(quarter(12), 15)?.value).toBeCloseTo(12, 0);
  });

  it('is the same whether looser bends are asked for or not, on lines that bend both ways', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 3, maxLength: 60 }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        (turns, chord) => {
          const line = [{ x: 0, y: 0 }];
          let heading = Math.PI / 2;
          for (const turn of turns) {
            heading += turn;
            const { x, y } = line[line.length - 1] as { x: number; y: number };
            line.push({ x: x + chord * Math.cos(heading), y: y + chord * Math.sin(heading) });
          }
          const bend = bendTighterThan(line, Number.POSITIVE_INFINITY);
          expect(bendTighterThan(line, 15)).toEqual(bend && bend.value < 15 ? bend : null);
          const lean = leanOver(line, 0);
          expect(leanOver(line, Math.PI / 4)).toEqual(lean && lean.value > Math.PI / 4 ? lean : null);
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });

  it('leans as far as its steepest chord', () => {
    const line = [
      { x: 0, y: 0 },
      { x: 30, y: 30 },
      { x: 30, y: 90 },
    ];
    expect(leanOver(line, 0)?.value).toBeCloseTo(Math.PI / 4, 9);
  });
});

const said = (body: Measurements, style: Style, ...codes: readonly Issue['code'][]): Issue[] =>
  draft(body, style).issues.filter(({ code }) => codes.includes(code));

describe('drafts of usual bodies', () => {
  it.each([...NAMED_STYLES])('in the style %s bend and lean nowhere too far', (name, { style }) => {
    for (const [, body] of SIZED_BODIES)
      expect(
        said(
          body,
          style,
          'seamBendsTightly',
          'edgeBendsTightly',
          'seamLeansFar',
          'underarmBeak',
          'armholeTip',
          'bandUneven',
        ),
        name,
      ).toEqual([]);
  });
});

describe('a seam', () => {
  const pinched = { ...DEFAULT_STYLE.ease, waist: -250 };

  it('that leans more than 45° or bends below 15 mm is named with the level', () => {
    const style = { ...DEFAULT_STYLE, wedges: [], ease: { ...pinched, underBust: 120 } };
    const close = { ...MEAN_BODY, neckToUnderBust: MEAN_BODY.neckToWaist - 24 };
    const issues = said(close, style, 'seamLeansFar', 'seamBendsTightly');
    const side = issues.filter(({ at }) => at.seam?.kind === 'sideSeam');
    expect(side.map(({ code, severity, at }) => [code, severity, at.level])).toEqual([
      ['seamBendsTightly', 'warn', expect.stringMatching(/underBust|waist/)],
      ['seamLeansFar', 'warn', expect.stringMatching(/underBust|waist/)],
    ]);
    for (const issue of side) {
      if (issue.code === 'seamLeansFar') expect(issue.values.angle).toBeGreaterThan(Math.PI / 4);
      if (issue.code === 'seamBendsTightly') expect(issue.values.radius).toBeLessThan(15);
    }
  });
});

describe('an edge', () => {
  it('that bends below 10 mm is named with its panel, and a corner there is none', () => {
    const dipped = (kind: 'smooth' | 'corner'): Style => ({
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.filter(({ block }) => block === 'back'),
      hemShape: {
        ...DEFAULT_STYLE.hemShape,
        bustLine: { beyond: 0, kind },
        sideFront: { beyond: 260, kind },
      },
    });
    const issues = said(MEAN_BODY, dipped('smooth'), 'edgeBendsTightly');
    expect(issues.map(({ at }) => [at.piece?.id, at.edge])).toEqual([['front-1', 'hem']]);
    expect(said(MEAN_BODY, dipped('corner'), 'edgeBendsTightly')).toEqual([]);
  });
});

describe('the tip of a panel at the armhole', () => {
  const endingAt = (part: number): Draft => {
    const { style } = NAMED_STYLES.get('armhole-bridal') ?? {};
    if (!style) throw new Error('there is no such style');
    const wedges = style.wedges.map((wedge) =>
      wedge.id === 'front-side' ? { ...wedge, endsAt: { edge: 'armhole', part } as const } : wedge,
    );
    return draft(withShoulders(MEAN_BODY), { ...style, wedges });
  };

  it('is told under 25 degrees, with its angle', () => {
    const angles = [0.6, 0.63, 0.66, 0.7, 0.75].map((part) => {
      const made = endingAt(part);
      const tip = tipsAtArmhole(made).find(({ piece }) => piece === 'front-3')?.angle ?? Number.NaN;
      const told = made.issues.filter(({ code }) => code === 'armholeTip');
      expect(told.map(({ at }) => at.piece?.id)).toEqual(tip < 25 ? ['front-3'] : []);
      for (const { values } of told) expect(((values.angle ?? 0) * 180) / Math.PI).toBeCloseTo(tip, 0);
      return tip;
    });
    expect(Math.min(...angles)).toBeLessThan(25);
    expect(Math.max(...angles)).toBeGreaterThan(40);
  });
});

describe('the underarm', () => {
  it('of a top edge that rises to a corner there makes a beak, and of a usual one does not', () => {
    const { topShape } = DEFAULT_STYLE;
    const risingBy = (beyond: number): Issue[] =>
      said(
        MEAN_BODY,
        { ...DEFAULT_STYLE, topShape: { ...topShape, underarm: { beyond, kind: 'corner' } } },
        'underarmBeak',
      );
    expect(risingBy(0)).toEqual([]);
    expect(risingBy(-60)).toEqual([]);
    const beaks = risingBy(60);
    expect(beaks.map(({ at }) => at.piece?.id)).toEqual(['front-3', 'back-3']);
    for (const { values } of beaks) expect(values.angle).toBeLessThan((75 * Math.PI) / 180);
  });
});

describe('wedges set by hand', () => {
  const by = (waist: number, sizing: 'manual' | 'balanced'): Style => ({
    ...DEFAULT_STYLE,
    wedges: [{ ...balancedWedge('hand', 'front', 0.3, 1), sizing, intake: { waist } }],
  });

  it('push the side seam out where they take more than the block is smaller', () => {
    const issues = said(MEAN_BODY, by(120, 'manual'), 'sidePushedOut');
    expect(issues.map(({ severity, at }) => [severity, at.block, at.level])).toEqual([
      ['note', 'front', 'waist'],
    ]);
    const [issue] = issues;
    const { blocks } = draft(MEAN_BODY, by(120, 'manual'));
    const outwards = (blocks?.front.width.get('waist') ?? 0) - (blocks?.front.width.get('bust') ?? 0);
    expect(issue?.values.by).toBeCloseTo(outwards, 9);
    expect(said(MEAN_BODY, by(20, 'manual'), 'sidePushedOut')).toEqual([]);
    expect(said(MEAN_BODY, by(120, 'balanced'), 'sidePushedOut')).toEqual([]);
  });
});

describe('off-shoulder bands', () => {
  const style = NAMED_STYLES.get('off-shoulder-bridal')?.style as Style;
  // Its side seams differ by far more than can be eased in, and its panels lean.
  const uneven: Style = {
    ...style,
    joinedSide: false,
    wedges: style.wedges.filter(({ block }) => block === 'back'),
    frontShare: { ...style.frontShare, bust: 0.58, overBust: 0.47, underBust: 0.47 },
  };
  const made = draft(withShoulders(MEAN_BODY), uneven);

  it('are as long as the panels even where the side seams differ, which is told of', () => {
    expect(made.issues.map(({ code }) => code)).toContain('seamTooUneven');
    const [row] = bandWalk(made);
    expect(row?.bands).toBeCloseTo(row?.panels ?? Number.NaN, 3);
  });

  it('that do not fit the panels are told with both lengths', () => {
    const extras = made.extras.map((band) => ({
      ...band,
      edges: band.edges.map((edge) => ({
        ...edge,
        points: edge.points.map(({ x, y }) => ({ x: 1.1 * x, y })),
      })),
    }));
    const [found] = bandIssues({ pieces: made.pieces, extras });
    expect(found?.severity).toBe('warn');
    expect(found?.values.bands).toBeGreaterThan((found?.values.panels ?? Number.NaN) + 6.35);
  });
});
