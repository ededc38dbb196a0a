import { describe, expect, it } from 'vitest';
import { NAMED_STYLES, turnIntakeTo } from '../../../src/document';
import {
  type Block,
  DEFAULT_STYLE,
  type Draft,
  dartAngle,
  draft,
  type LevelName,
  type Style,
  type Turn,
  turnIntake,
  withPoints,
  xAt,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { DRAWN, howMany } from '../../support/howMany';
import { broken, judge } from '../../support/judges/judge';

const COUNT = howMany({ few: 40, all: 300 });

const frontOf = (made: Draft): Block => {
  if (!made.blocks) throw new Error('not drafted');
  return made.blocks.front;
};
const intakeOf = (made: Draft, wedge: string, level: LevelName): number =>
  frontOf(made)
    .wedges.find(({ id }) => id === wedge)
    ?.intake.get(level) ?? Number.NaN;

/** From the bust point to a wedge's axis at a level, measured here. */
function depth(made: Draft, wedge: string, level: LevelName): number {
  const at = (name: LevelName): number => made.levels.find((each) => each.name === name)?.y ?? Number.NaN;
  const axis = frontOf(made).wedges.find(({ id }) => id === wedge)?.axis;
  const x = axis ? xAt(axis, at(level)) : Number.NaN;
  return Math.hypot(x - frontOf(made).bustLine, at(level) - at('bust'));
}

const turnedBy = (style: Style, made: Draft, turn: Turn): Style =>
  turnIntakeTo(style, frontOf(made), made.levels, turn);

describe('the angle of a dart', () => {
  it('of 2 cm at 13 cm is 8.82°', () => {
    // NIMI, "Sewing Technology" trade theory, 2024, p. 180: the angle stays when the dart is moved
    expect((dartAngle(20, 130) * 180) / Math.PI).toBeCloseTo(8.82, 2);
  });
});

describe('intake turned about the bust point', () => {
  const made = draft(MEAN_BODY, DEFAULT_STYLE);

  it('keeps the outside figure’s angle: 2 cm at 13 cm down the leg go elsewhere at 8.82°', () => {
    // The bust wedge runs down the bust-point line: with the waist so far below, its legs are 130 mm long.
    const neckToWaist = MEAN_BODY.neckToBust + Math.sqrt(130 ** 2 - 10 ** 2);
    const fit = draft({ ...MEAN_BODY, neckToWaist }, DEFAULT_STYLE);
    const turn: Turn = {
      from: { wedge: 'front-bust', level: 'waist' },
      to: { wedge: 'front-side', level: 'waist' },
      width: 20,
    };
    const turned = turnIntake(frontOf(fit), fit.levels, turn);
    // NIMI 2024 p. 180, as above
    expect(((turned?.angleRad ?? 0) * 180) / Math.PI).toBeCloseTo(8.82, 2);
    // At the other wedge: the same angle at legs as long as its own depth makes them.
    const far = depth(fit, 'front-side', 'waist');
    const wide = turned?.width ?? 0;
    expect(dartAngle(wide, Math.hypot(far, wide / 2))).toBeCloseTo(turned?.angleRad ?? 0, 12);
    expect(far).toBeGreaterThan(130);
    expect(wide).toBeGreaterThan(20);
  });

  it('moves the one wedge down and the other up, and leaves the others and all beyond alone', () => {
    const turn: Turn = {
      from: { wedge: 'front-bust', level: 'waist' },
      to: { wedge: 'front-side', level: 'overBust' },
      width: 20,
    };
    const after = draft(MEAN_BODY, turnedBy(DEFAULT_STYLE, made, turn));
    const change = (wedge: string, level: LevelName) =>
      intakeOf(after, wedge, level) - intakeOf(made, wedge, level);
    expect(change('front-bust', 'waist')).toBeCloseTo(-20, 9);
    const underBust = (-20 * depth(made, 'front-bust', 'underBust')) / depth(made, 'front-bust', 'waist');
    expect(change('front-bust', 'underBust')).toBeCloseTo(underBust, 9);
    const side = (20 * depth(made, 'front-side', 'overBust')) / depth(made, 'front-bust', 'waist');
    expect(change('front-side', 'overBust')).toBeCloseTo(side, 9);
    for (const [wedge, level] of [
      ['front-bust', 'hip'],
      ['front-bust', 'bust'],
      ['front-side', 'waist'],
      ['front-centre', 'waist'],
    ] as const)
      expect(change(wedge, level)).toBeCloseTo(0, 9);
    expect(after.blocks?.back).toEqual(made.blocks?.back);
  });

  it('there and back again is where it was', () => {
    const there: Turn = {
      from: { wedge: 'front-bust', level: 'waist' },
      to: { wedge: 'front-side', level: 'waist' },
      width: 15,
    };
    const once = turnedBy(DEFAULT_STYLE, made, there);
    const moved = draft(MEAN_BODY, once);
    const width = intakeOf(moved, 'front-side', 'waist') - intakeOf(made, 'front-side', 'waist');
    const back = draft(MEAN_BODY, turnedBy(once, moved, { from: there.to, to: there.from, width }));
    // The widened block moves the side-front axis by a little between the two turns.
    for (const wedge of ['front-bust', 'front-side'])
      for (const level of ['underBust', 'waist', 'hip'] as const)
        expect(Math.abs(intakeOf(back, wedge, level) - intakeOf(made, wedge, level))).toBeLessThan(0.6);
  });

  it.each<[string, Turn]>([
    ['more than it takes', { from: at('front-bust', 'waist'), to: at('front-side', 'waist'), width: 200 }],
    ['nothing', { from: at('front-bust', 'waist'), to: at('front-side', 'waist'), width: 0 }],
    ['no number', { from: at('front-bust', 'waist'), to: at('front-side', 'waist'), width: Number.NaN }],
    ['of the bust line', { from: at('front-bust', 'bust'), to: at('front-side', 'waist'), width: 1 }],
    ['to the bust line', { from: at('front-bust', 'waist'), to: at('front-side', 'bust'), width: 1 }],
    ['to itself', { from: at('front-bust', 'waist'), to: at('front-bust', 'waist'), width: 1 }],
    ['to the back', { from: at('front-bust', 'waist'), to: at('back-side', 'waist'), width: 1 }],
    [
      'to a level there is not',
      { from: at('front-bust', 'waist'), to: at('front-side', 'highHip'), width: 1 },
    ],
  ])('%s leaves the style as it is', (_, turn) => {
    expect(turnedBy(DEFAULT_STYLE, made, turn)).toBe(DEFAULT_STYLE);
  });

  it('goes to no dart that ends before the level, and passes its point on the way', () => {
    const style: Style = {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === 'front-side' ? withPoints(wedge, { upper: { from: 'bust', below: 95 } }) : wedge,
      ),
    };
    const darted = draft(MEAN_BODY, style);
    const turn = (level: LevelName): Turn => ({
      from: at('front-bust', 'waist'),
      to: at('front-side', level),
      width: 10,
    });
    expect(turnedBy(style, darted, turn('overBust'))).toBe(style);
    expect(turnedBy(style, darted, turn('underBust'))).toBe(style);
    const after = draft(MEAN_BODY, turnedBy(style, darted, turn('waist')));
    expect(intakeOf(after, 'front-side', 'waist')).toBeGreaterThan(
      intakeOf(darted, 'front-side', 'waist') + 9,
    );
    expect(intakeOf(after, 'front-side', 'underBust')).toBe(0);
  });

  it(`keeps every bound on ${COUNT} drawn bodies, seed 45`, DRAWN, () => {
    for (const [i, body] of drawBodies(COUNT, 45).entries()) {
      const before = draft(body, DEFAULT_STYLE);
      const width = intakeOf(before, 'front-bust', 'waist') / 2;
      const style = turnedBy(DEFAULT_STYLE, before, {
        from: at('front-bust', 'waist'),
        to: at('front-side', i % 2 === 0 ? 'waist' : 'overBust'),
        width,
      });
      expect(style, `body ${i}`).not.toBe(DEFAULT_STYLE);
      expect(broken(judge(body, style, draft(body, style))), `body ${i}`).toEqual([]);
    }
  });
});

function at(wedge: string, level: LevelName) {
  return { wedge, level };
}

describe('intake turned under shoulders', () => {
  const SHOULDERED = ['princess-bodice', 'armhole-bridal', 'basque-bodice'].map(
    (name) => [name, (NAMED_STYLES.get(name) as { style: Style }).style] as const,
  );
  const bodies = [MEAN_BODY, ...drawBodies(6, 31)].map(withShoulders);

  /** The angle at the bust point between the upper ends of the seam beside the centre front panel, off the finished panels, rad. */
  function opening(made: Draft): number {
    const apex = {
      x: frontOf(made).bustLine,
      y: made.levels.find(({ name }) => name === 'bust')?.y ?? Number.NaN,
    };
    const [inner, outer] = ([1, 2] as const).map((number) => {
      const panel = made.pieces.find((piece) => piece.block === 'front' && piece.number === number);
      const seam = panel?.edges.find(({ at, dart }) => at === (number === 1 ? 'outer' : 'inner') && !dart);
      const end = [...(seam?.points ?? [])].sort((a, b) => a.y - b.y)[0];
      return end ? Math.atan2(end.x - apex.x, apex.y - end.y) : Number.NaN;
    });
    return (outer as number) - (inner as number);
  }

  it.each(SHOULDERED)(
    'leaves %s as open above where it goes from one waist dart to the other',
    (_, style) => {
      for (const body of bodies) {
        const made = draft(body, style);
        const turn: Turn = {
          from: { wedge: 'front-bust', level: 'waist' },
          to: { wedge: 'front-side', level: 'waist' },
          width: 5,
        };
        if (intakeOf(made, 'front-bust', 'waist') < 5) continue;
        const after = draft(body, turnedBy(style, made, turn));
        expect(opening(after)).toBeCloseTo(opening(made), 2);
      }
    },
  );

  it.each(SHOULDERED)('opens %s above by the angle that it takes from the waist', (_, style) => {
    for (const body of bodies) {
      const made = draft(body, style);
      const turn: Turn = {
        from: { wedge: 'front-bust', level: 'waist' },
        to: { wedge: 'front-bust', level: 'overBust' },
        width: 6,
      };
      if (intakeOf(made, 'front-bust', 'waist') < 6 || opening(made) > 0.5) continue;
      const angle = turnIntake(frontOf(made), made.levels, turn)?.angleRad ?? Number.NaN;
      const after = draft(body, turnedBy(style, made, turn));
      // Truing sets the upper ends at equal lengths along both edges, which brings them a little nearer on a seam that slants.
      const opened = (opening(after) - opening(made)) / angle;
      expect(opened).toBeGreaterThan(0.75);
      expect(opened).toBeLessThan(1.05);
    }
  });
});
