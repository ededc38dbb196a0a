// What must not matter does not: running again, freezing the input, the order of wedges, inches or mm, front or back.

import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  draft,
  LEVEL_EDGE,
  type Measurements,
  MM_PER_INCH,
  type Piece,
  type Style,
  type Wedge,
} from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { DRAWN, howMany } from '../support/howMany';
import { areaSeen, lengthOf, ringOf, widthAcross } from '../support/judges/outline';
import { randomFrom } from '../support/random';
import { randomStyle } from '../support/styles/randomStyle';

const SEED = 271;
const COUNT = howMany({ few: 30, all: 150 });
const TURNED = howMany({ few: 20, all: 60 });

const cases = (): { body: Measurements; style: Style; name: string }[] => {
  const random = randomFrom(SEED);
  return drawBodies(COUNT, SEED).map((body, i) => ({
    body,
    style: i % 3 === 0 ? DEFAULT_STYLE : randomStyle(random, i % 3 === 1 ? 'tame' : 'wild'),
    name: `seed ${SEED}, case ${i}`,
  }));
};

/** Every number of a draft, in order, whatever it belongs to. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value instanceof Map) return numbersIn([...value]);
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

function expectNear(actual: unknown, wanted: unknown, name: string): void {
  const [p, q] = [numbersIn(actual), numbersIn(wanted)];
  expect(p.length, name).toBe(q.length);
  const worst = p.reduce((most, value, i) => Math.max(most, Math.abs(value - (q[i] as number))), 0);
  expect(worst, name).toBeLessThanOrEqual(1e-6);
}

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(freeze);
  return value;
}

describe('the same input', () => {
  it('gives the same output to the bit, and is left as it was', DRAWN, () => {
    for (const { body, style, name } of cases()) {
      const first = draft(freeze(structuredClone(body)), freeze(structuredClone(style)));
      expect(draft(body, style), name).toStrictEqual(first);
    }
  });

  it('in inches and back gives the same pieces', DRAWN, () => {
    for (const { body, style, name } of cases()) {
      const typed = Object.fromEntries(
        Object.entries(body).map(([key, mm]) => [key, mm === null ? null : (mm / MM_PER_INCH) * MM_PER_INCH]),
      ) as unknown as Measurements;
      expectNear(draft(typed, style).pieces, draft(body, style).pieces, name);
    }
  });

  it('with wedges in another order gives the same draft', DRAWN, () => {
    for (const { body, style, name } of cases()) {
      const turned = { ...style, wedges: [...style.wedges.slice(2), ...style.wedges.slice(0, 2)].reverse() };
      const [p, q] = [draft(body, style), draft(body, turned)];
      expectNear(p.pieces, q.pieces, name);
      expect(p.issues, name).toEqual(q.issues);
    }
  });

  it('with other names for its wedges gives the same pieces', DRAWN, () => {
    for (const { body, style, name } of cases()) {
      const renamed = {
        ...style,
        wedges: style.wedges.map((wedge) => ({ ...wedge, id: `its ${wedge.id}` })),
      };
      expectNear(draft(body, renamed).pieces, draft(body, style).pieces, name);
    }
  });
});

describe('mirroring', () => {
  const mirrored = (piece: Piece): Piece => ({
    ...piece,
    edges: piece.edges
      .map((edge) => ({ ...edge, points: edge.points.map(({ x, y }) => ({ x: -x, y })).reverse() }))
      .reverse(),
  });

  it('a piece changes no length, area or width', DRAWN, () => {
    for (const { body, style, name } of cases().slice(0, TURNED))
      for (const piece of draft(body, style).pieces) {
        const [here, there] = [ringOf(piece), ringOf(mirrored(piece))];
        const y = (piece.grain[0].y + piece.grain[1].y) / 2;
        expect(areaSeen(there), name).toBeCloseTo(areaSeen(here), 6);
        expect(widthAcross(there, y), name).toBeCloseTo(widthAcross(here, y) as number, 6);
        for (const [i, edge] of mirrored(piece).edges.entries())
          expect(lengthOf(edge.points)).toBeCloseTo(
            lengthOf(piece.edges[piece.edges.length - 1 - i]?.points ?? []),
            6,
          );
      }
  });

  it('a style that is the same in front and behind drafts the same pieces on both', {
    timeout: 60_000,
  }, () => {
    const half = { overBust: 0.5, bust: 0.5, underBust: 0.5, waist: 0.5, highHip: 0.5, hip: 0.5 };
    for (const { body, style, name } of cases()) {
      const front = style.wedges.filter((wedge) => wedge.block === 'front');
      const back = front.map(
        (wedge): Wedge => ({ ...wedge, id: wedge.id.replace('front', 'back'), block: 'back' }),
      );
      // Bust points where the back's line may stand as well: at a quarter of its width at the bust.
      const bustPointWidth = (body.bust ?? 0) / 8 + 1;
      const both = draft(
        // Below the waist a body grows otherwise in front than behind: this one does not grow.
        { ...body, bustPointWidth, highHip: null, hip: body.waist },
        {
          ...style,
          frontShare: half,
          ease: { ...DEFAULT_STYLE.ease, hip: DEFAULT_STYLE.ease.waist },
          topShape: LEVEL_EDGE,
          hemShape: LEVEL_EDGE,
          closure: { front: 'seam', back: 'lacing', lacingGap: 0 },
          wedges: [...front, ...back],
        },
      );
      const of = (block: string) =>
        both.pieces
          .filter((piece) => piece.block === block)
          .map(({ edges }) => edges.map((edge) => edge.points));
      expectNear(of('back'), of('front'), name);
    }
  });
});
