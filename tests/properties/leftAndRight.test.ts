// Bodies that differ left to right: two half-bodies drafted, mated at the centres, and proved as one garment.

import { describe, expect, it } from 'vitest';
import {
  type BodySides,
  balancedWedge,
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  inches,
  LEVEL_NAMES,
  type Measurements,
  openWidth,
  SIDES,
  type Side,
  type Style,
  styleOfSide,
} from '../../src/engine';
import { checkBody } from '../../src/engine/body/body';
import { bodyOfSide } from '../../src/engine/body/sides';
import { drawBodies } from '../support/bodies/drawBodies';
import { expectAtMost } from '../support/expectAtMost';
import { DRAWN, howMany } from '../support/howMany';
import { broken, judge } from '../support/judges/judge';
import { areaSeen, lengthOf, ringOf, widthAcross } from '../support/judges/outline';
import { chance, type Random, randomFrom, uniform } from '../support/random';
import { randomStyle } from '../support/styles/randomStyle';

const SEED = 1313;
const COUNT = howMany({ few: 30, all: 200 });
const RIGHT_SIDE_UP = howMany({ few: 15, all: 60 });
const IN_A_MIRROR = howMany({ few: 15, all: 80 });
const AGAIN = howMany({ few: 5, all: 20 });

interface Case {
  readonly body: Measurements;
  readonly style: Style;
  readonly sides: BodySides;
  readonly name: string;
}

/** One wedge a block runs up to mid-shoulder; one shapes centre back. */
const SHOULDERED: Style = {
  ...DEFAULT_STYLE,
  // Clear of the over-bust line, so that no armhole cuts it.
  topAbove: 15,
  shoulders: { drop: inches(1), armholeIn: inches(0.5), intake: { front: inches(0.5), back: 6 } },
  wedges: [
    balancedWedge('front-bust', 'front', 0, 3),
    balancedWedge('back-curve', 'back', -1, 1),
    balancedWedge('back-centre', 'back', 0, 2),
  ],
};

function randomSides(random: Random): BodySides {
  const some = (value: () => number) =>
    Object.fromEntries(LEVEL_NAMES.filter(() => chance(random, 0.7)).map((level) => [level, value()]));
  const lower = uniform(random, -15, 15);
  return {
    leftShare: some(() => uniform(random, 0.47, 0.53)),
    rightLower: {
      bust: lower + uniform(random, -3, 3),
      underBust: lower + uniform(random, -3, 3),
      waist: lower + uniform(random, -3, 3),
      hip: lower,
    },
  };
}

const cases = (): Case[] => {
  const random = randomFrom(SEED);
  return drawBodies(COUNT, SEED).map((body, i) => {
    if (i % 5 === 4)
      return {
        body: { ...body, acrossShoulder: 150 + 0.25 * body.bust, backNeckToWaist: body.neckToWaist - 22 },
        style: SHOULDERED,
        sides: randomSides(random),
        name: `seed ${SEED}, case ${i}, shouldered`,
      };
    const plain = i % 2 === 0 ? DEFAULT_STYLE : randomStyle(random, 'tame');
    const own = randomStyle(random, 'tame').wedges.map((wedge) => ({ ...wedge, id: `right-${wedge.id}` }));
    const style = i % 3 === 0 ? { ...plain, rightWedges: own } : plain;
    return { body, style, sides: randomSides(random), name: `seed ${SEED}, case ${i}` };
  });
};

const halfBody = ({ body, sides }: Case, side: Side): Measurements => {
  const checked = checkBody(body).body;
  if (!checked) throw new Error('a drawn body is whole');
  return bodyOfSide(body, checked, sides, side);
};

/** Sum over both halves of the panels' widths at a level, each half's at its own height; NaN where one is missed. */
function sewnRound(made: Draft, level: string): number {
  return SIDES.reduce((sum, side) => {
    const y = made.halves?.[side].levels.find(({ name }) => name === level)?.y ?? Number.NaN;
    const own = made.pieces.filter((piece) => piece.side === side);
    return own.reduce((all, piece) => all + (widthAcross(ringOf(piece), y) ?? Number.NaN), sum);
  }, 0);
}

describe(`bodies that differ left to right, ${COUNT} of them, seed ${SEED}`, () => {
  it('keep every bound in each half and, where the two meet, in the whole', DRAWN, () => {
    let measured = 0;
    for (const each of cases()) {
      const { body, style, sides, name } = each;
      const made = draftWhole(body, style, sides);
      const halves = made.halves;
      expect(halves, name).toBeDefined();
      if (!halves || made.pieces.length === 0) continue;
      for (const side of SIDES)
        expect(
          broken(judge(halfBody(each, side), styleOfSide(style, side), halves[side])),
          `${name} ${side}`,
        ).toEqual([]);
      // Widths and kinks were judged in each half, whose levels have heights of their own.
      const whole = judge(body, style, made).filter(({ bound }) => bound !== 'D6' && bound !== 'D5');
      expect(broken(whole), name).toEqual([]);
      for (const { level, sewnGirth, targetGirth } of made.proof.ledger) {
        if (sewnGirth === null) continue;
        measured += 1;
        const wanted = (body[level] ?? Number.NaN) + style.ease[level] - openWidth(style.closure);
        expect(targetGirth, name).toBeCloseTo(wanted, 9);
        const off = Math.abs(sewnRound(made, level) - wanted);
        expectAtMost(off, 0.1, `${name} ${level}`);
      }
      for (const { seam, lengthA, lengthB } of made.proof.seams) {
        if (seam.kind !== 'centre') continue;
        const edges = SIDES.map(
          (side) =>
            made.pieces.find(
              (piece) => piece.side === side && piece.block === seam.block && piece.number === 1,
            )?.edges[0],
        );
        const lengths = edges.map((edge) => lengthOf(edge?.points ?? []));
        expect(lengths[0], name).toBeCloseTo(lengthA, 9);
        expect(lengths[1], name).toBeCloseTo(lengthB, 9);
        const off = Math.abs(lengthA - lengthB);
        expectAtMost(off, 0.05, `${name} ${seam.id}`);
      }
    }
    expect(measured).toBeGreaterThan(2 * COUNT);
  });

  it('have pieces right side up, cut once, that run the same way round as ever', DRAWN, () => {
    for (const { body, style, sides, name } of cases().slice(0, RIGHT_SIDE_UP)) {
      const made = draftWhole(body, style, sides);
      for (const piece of made.pieces) {
        expect(piece.cut, name).toEqual({ count: 1, onFold: false });
        expect(areaSeen(ringOf(piece)), `${name} ${piece.id}`).toBeGreaterThan(0);
        const mirrored = (piece.side === 'right') === (piece.block === 'front');
        const x = ringOf(piece).reduce((sum, point) => sum + point.x, 0);
        expect(Math.sign(x), `${name} ${piece.id}`).toBe(mirrored ? -1 : 1);
      }
    }
  });

  it('seen in a mirror have the two halves’ pieces exchanged', DRAWN, () => {
    for (const { body, style, sides, name } of cases().slice(0, IN_A_MIRROR)) {
      const { rightWedges: _, ...plain } = style;
      const exchanged: BodySides = {
        leftShare: Object.fromEntries(
          Object.entries(sides.leftShare).map(([level, share]) => [level, 1 - share]),
        ),
        rightLower: Object.fromEntries(
          Object.entries(sides.rightLower).map(([level, lower]) => [level, -lower]),
        ),
      };
      const { rightLower: lower } = sides;
      const down = (mm: number | null, by = 0): number | null => (mm === null ? null : mm + by);
      const turned = {
        ...body,
        neckToBust: down(body.neckToBust, lower.bust),
        neckToUnderBust: down(body.neckToUnderBust, lower.underBust),
        neckToWaist: down(body.neckToWaist, lower.waist),
        neckToHip: down(body.neckToHip, lower.hip),
      };
      const [here, there] = [draftWhole(body, plain, sides), draftWhole(turned, plain, exchanged)];
      const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');
      for (const side of SIDES)
        expect(there.pieces.filter((piece) => piece.side === side).length, name).toBe(
          here.pieces.filter((piece) => piece.side === other(side)).length,
        );
      for (const piece of here.pieces) {
        const id = piece.id.replace(/^left|^right/, (hand) => other(hand as Side));
        const twin = there.pieces.find((each) => each.id === id);
        const points = (twin?.cutLine ?? []).map(({ x, y }) => ({ x: -x, y })).reverse();
        expect(points.length, `${name} ${id}`).toBe(piece.cutLine.length);
        for (const [i, { x, y }] of piece.cutLine.entries()) {
          expectAtMost(Math.abs(x - (points[i]?.x ?? Number.NaN)), 1e-6, `${name} ${id}`);
          expectAtMost(Math.abs(y - (points[i]?.y ?? Number.NaN)), 1e-6, `${name} ${id}`);
        }
      }
    }
  });

  it('draft the same to the bit again, whatever else was drafted between', DRAWN, () => {
    for (const { body, style, sides } of cases().slice(0, AGAIN)) {
      const first = draftWhole(body, style, sides);
      draft(body, style);
      expect(draftWhole(body, style, sides)).toStrictEqual(first);
    }
  });
});
