// What a fitter asks for, one case after the other: on the demo style and a body at the means, measured on the finished pieces.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  type Alteration,
  balancedWedge,
  DEFAULT_STYLE,
  type Draft,
  draftWhole,
  type LevelName,
  type Point,
  type Style,
} from '../../../src/engine';
import { polylineLength } from '../../../src/engine/geometry/polyline';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { ringOf, widthAcross } from '../../support/judges/outline';
import { randomFrom } from '../../support/random';
import { at, landmark, seamOf, taken } from '../../support/styles/alterations';

const base = draftWhole(MEAN_BODY, DEFAULT_STYLE);

const alter = (list: readonly Alteration[], style: Style = DEFAULT_STYLE): Draft =>
  draftWhole(MEAN_BODY, style, null, list);

const heightOf = (level: LevelName, made: Draft = base): number =>
  made.levels.find(({ name }) => name === level)?.y ?? Number.NaN;

const pieceOf = (made: Draft, id: string) => {
  const piece = made.pieces.find((each) => each.id === id);
  if (!piece) throw new Error(`there is no ${id}`);
  return piece;
};

const edgeOf = (made: Draft, id: string, which: 'inner' | 'outer'): readonly Point[] =>
  pieceOf(made, id).edges.find((edge) => edge.at === which)?.points ?? [];

/** x of an edge at a height. */
function across(points: readonly Point[], y: number): number {
  const down = [...points].sort((a, b) => a.y - b.y);
  const i = down.findIndex((point) => point.y >= y);
  const [a, b] = [down[i - 1], down[i]];
  if (!a || !b) return Number.NaN;
  return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
}

const widthOf = (made: Draft, id: string, level: LevelName): number =>
  widthAcross(ringOf(pieceOf(made, id)), heightOf(level)) ?? Number.NaN;

const rowOf = (made: Draft, level: LevelName) => {
  const row = made.proof.ledger.find((each) => each.level === level);
  if (!row) throw new Error(`there is no ${level}`);
  return row;
};

const points = (made: Draft, ids: readonly string[]) =>
  ids.map((id) => pieceOf(made, id).edges.map((edge) => edge.points));

const BUST_SEAM = seamOf('front-1', 'front-2');
const SIDE_SEAM = seamOf('front-3', 'back-3');

describe('a seam at one level', () => {
  it('takes half an inch out there, and nothing else moves', () => {
    const made = alter([taken(BUST_SEAM, [at('waist', 6.35)])]);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    expect(widthOf(made, 'front-1', 'waist')).toBeCloseTo(widthOf(base, 'front-1', 'waist') - 6.35, 9);
    expect(widthOf(made, 'front-2', 'waist')).toBeCloseTo(widthOf(base, 'front-2', 'waist') - 6.35, 9);
    for (const level of ['bust', 'underBust'] as const)
      expect(widthOf(made, 'front-1', level)).toBeCloseTo(widthOf(base, 'front-1', level), 9);
    const others = ['front-3', 'back-1', 'back-2', 'back-3'];
    expect(points(made, others)).toStrictEqual(points(base, others));
    expect(edgeOf(made, 'front-1', 'inner')).toStrictEqual(edgeOf(base, 'front-1', 'inner'));
    expect(edgeOf(made, 'front-2', 'outer')).toStrictEqual(edgeOf(base, 'front-2', 'outer'));
    const { targetGirth, alteredBy, sewnGirth } = rowOf(made, 'waist');
    expect(alteredBy).toBeCloseTo(-25.4, 9);
    expect(sewnGirth).toBeCloseTo(targetGirth - 25.4, 6);
  });

  it('takes unequal amounts at its two edges, the first named first', () => {
    const one = alter([taken(SIDE_SEAM, [at('waist', 4, 1)])]);
    const other = alter([taken(seamOf('back-3', 'front-3'), [at('waist', 1, 4)])]);
    expect(widthOf(one, 'front-3', 'waist')).toBeCloseTo(widthOf(base, 'front-3', 'waist') - 4, 9);
    expect(widthOf(one, 'back-3', 'waist')).toBeCloseTo(widthOf(base, 'back-3', 'waist') - 1, 9);
    expect(other.pieces).toStrictEqual(one.pieces);
  });

  it('runs monotone to nothing at the next levels, and goes on past the last', () => {
    const made = alter([taken(SIDE_SEAM, [at('overBust', 5, 5)])]);
    const moved = (y: number): number =>
      across(edgeOf(base, 'front-3', 'outer'), y) - across(edgeOf(made, 'front-3', 'outer'), y);
    const [top, bust] = [heightOf('overBust'), heightOf('bust')];
    expect(moved(bust)).toBeCloseTo(0, 9);
    let before = 5;
    for (let y = Math.max(top, base.span?.top ?? 0) + 2; y < bust; y += 4) {
      expect(moved(y)).toBeLessThanOrEqual(before + 0.03);
      before = moved(y);
    }
    expect(before).toBeGreaterThanOrEqual(-0.03);
  });

  it('at the end of a seam follows the edge, however high that is', () => {
    const seam = seamOf('front-2', 'front-3');
    const taken8 = (end: 'top' | 'hem') => taken(seam, [{ height: { kind: 'end', end }, a: 8, b: 8 }]);
    for (const topAbove of [DEFAULT_STYLE.topAbove, DEFAULT_STYLE.topAbove + 25]) {
      const style = { ...DEFAULT_STYLE, topAbove };
      const plain = draftWhole(MEAN_BODY, style);
      for (const end of ['top', 'hem'] as const) {
        const made = alter([taken8(end)], style);
        expect(made.alterations).toEqual([{ applied: true, code: null }]);
        const ends = (of: Draft) => {
          const points = edgeOf(of, 'front-2', 'outer');
          const ys = points.map(({ y }) => y);
          const y = end === 'top' ? Math.min(...ys) : Math.max(...ys);
          return points.find((point) => point.y === y) as Point;
        };
        // Mates of one length end a little higher or lower than their edge was drafted.
        expect(Math.abs(ends(plain).x - ends(made).x - 8)).toBeLessThan(0.2);
        expect(widthOf(made, 'front-2', 'waist')).toBeCloseTo(widthOf(plain, 'front-2', 'waist'), 6);
      }
    }
  });

  it('at the top edge of a block with neckline and armhole is refused', () => {
    const princess = NAMED_STYLES.get('princess-bodice')?.style as Style;
    const list = [taken(seamOf('front-1', 'front-2'), [{ height: { kind: 'end', end: 'top' }, a: 3, b: 3 }])];
    const body = { ...MEAN_BODY, acrossShoulder: 385 };
    expect(draftWhole(body, princess, null, list).alterations).toEqual([
      { applied: false, code: 'edgeGone' },
    ]);
  });

  it('on the left only leaves the right as it was', () => {
    const made = alter([taken(BUST_SEAM, [at('waist', 6.35)], 'left')]);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    const both = alter([taken(BUST_SEAM, [at('waist', 6.35)])]);
    const [left, right] = [made.halves?.left, made.halves?.right];
    if (!left || !right) throw new Error('the halves differ');
    const panels = ['front-2', 'front-3', 'back-2', 'back-3'];
    expect(points(left, panels)).toStrictEqual(points(both, panels));
    expect(points(right, panels)).toStrictEqual(points(base, panels));
    expect(rowOf(made, 'waist').alteredBy).toBeCloseTo(-12.7, 9);
    expect(rowOf(made, 'waist').sewnGirth).toBeCloseTo(rowOf(base, 'waist').targetGirth - 12.7, 6);
  });

  it('let out past the allowance says that the mock-up has no cloth for it', () => {
    const { seam } = DEFAULT_STYLE.allowances;
    const let_ = alter([taken(BUST_SEAM, [at('waist', -seam - 2, -seam + 2)])]);
    const said = let_.issues.filter(({ code }) => code === 'letOutPastAllowance');
    expect(said.map(({ at: place, values }) => [place.piece?.id, values])).toEqual([
      ['front-1', { out: seam + 2, allowance: seam }],
    ]);
    expect(let_.alterations).toEqual([{ applied: true, code: null }]);
  });

  it('counts as reduction where the wearer is warned', () => {
    const codes = (made: Draft): string[] => made.issues.map(({ code }) => code);
    expect(codes(base)).not.toContain('waistReductionHigh');
    expect(codes(alter([taken(SIDE_SEAM, [at('waist', 15)])]))).toContain('waistReductionHigh');
  });

  it('of one half counts as reduction once, with what both halves come to', () => {
    const waist = base.levels.find(({ name }) => name === 'waist');
    const was = -(waist?.ease ?? 0);
    const made = alter([taken(SIDE_SEAM, [at('waist', 13)], 'right')]);
    const said = made.issues.filter(({ code }) => code.startsWith('waistReduction'));
    expect(said.map(({ values }) => (values as { reduction: number }).reduction)).toEqual([
      expect.closeTo(was + 26, 6),
    ]);
  });
});

describe('a handbook’s case', () => {
  it('front side seams + 3 cm each and back + 1.5 cm each make 9 cm', () => {
    const made = alter([taken(SIDE_SEAM, [at('hip', -30, -15)])], { ...DEFAULT_STYLE, hemBelow: 250 });
    expect(rowOf(made, 'hip').alteredBy).toBeCloseTo(90, 9);
    expect(rowOf(made, 'hip').sewnGirth).toBeCloseTo(rowOf(made, 'hip').targetGirth + 90, 6);
  });

  it('3 cm less at the under-bust over two seams is 0.75 cm an edge', () => {
    const made = alter([
      taken(BUST_SEAM, [at('underBust', 3.75)]),
      taken(seamOf('front-2', 'front-3'), [at('underBust', 3.75)]),
    ]);
    expect(rowOf(made, 'underBust').alteredBy).toBeCloseTo(-30, 9);
  });
});

describe('a fold at centre back out to nothing at the side', () => {
  const fold: Alteration = {
    kind: 'length',
    between: ['underBust', 'waist'],
    side: 'both',
    at: [
      { place: landmark('centreBack'), by: 12.7 },
      { place: landmark('side'), by: 0 },
    ],
  };
  const made = alter([fold]);

  it('shortens centre back by half an inch and the side by nothing', () => {
    const length = (draft: Draft): number => {
      const ends = edgeOf(draft, 'back-1', 'inner').map(({ y }) => y);
      return Math.max(...ends) - Math.min(...ends);
    };
    expect(length(made)).toBeCloseTo(length(base) - 12.7, 9);
    expect(edgeOf(made, 'back-3', 'outer')).toStrictEqual(edgeOf(base, 'back-3', 'outer'));
    const fronts = ['front-1', 'front-2', 'front-3'];
    expect(points(made, fronts)).toStrictEqual(points(base, fronts));
  });

  it('raises each seam in between by its part, and its marks with it', () => {
    const waistMark = (draft: Draft, id: string): number =>
      pieceOf(draft, id).marks.find(
        ({ level, edge }) =>
          level === 'waist' && edge !== null && pieceOf(draft, id).edges[edge]?.at === 'outer',
      )?.at.y ?? Number.NaN;
    const [one, two] = ['back-1', 'back-2'].map((id) => waistMark(base, id) - waistMark(made, id));
    expect(one).toBeLessThan(12.7);
    expect(two).toBeGreaterThan(0);
    expect(two).toBeLessThan(one as number);
  });

  it('leaves mates of one length and the ledger with what it reads', () => {
    for (const { lengthA, lengthB } of made.proof.seams) expect(lengthA).toBeCloseTo(lengthB, 1);
    for (const { sewnGirth, targetGirth, alteredBy } of made.proof.ledger)
      if (sewnGirth !== null) expect(sewnGirth).toBeCloseTo(targetGirth + alteredBy, 6);
    expect(rowOf(made, 'bust').alteredBy).toBe(0);
  });

  it('is refused where too little would be left', () => {
    const deep = { ...fold, at: fold.at.map(({ place, by }) => ({ place, by: 4 * by })) };
    expect(alter([deep]).alterations).toEqual([{ applied: false, code: 'lengthUsedUp' }]);
    expect(alter([fold, deep]).alterations.map((each) => each?.code)).toEqual([
      'lengthUsedUp',
      'lengthUsedUp',
    ]);
  });
});

describe('an edge', () => {
  it('is raised at one seam and nowhere else', () => {
    const made = alter([
      { kind: 'edge', edge: 'top', side: 'both', at: [{ place: seamOf('front-2', 'front-3'), by: 6.35 }] },
    ]);
    const top = (draft: Draft, id: string, which: 'inner' | 'outer'): number =>
      Math.min(...edgeOf(draft, id, which).map(({ y }) => y));
    expect(top(made, 'front-2', 'outer')).toBeCloseTo(top(base, 'front-2', 'outer') - 6.35, 1);
    expect(edgeOf(made, 'front-2', 'inner')).toStrictEqual(edgeOf(base, 'front-2', 'inner'));
    expect(edgeOf(made, 'front-3', 'outer')).toStrictEqual(edgeOf(base, 'front-3', 'outer'));
    expect(points(made, ['front-1', 'back-1'])).toStrictEqual(points(base, ['front-1', 'back-1']));
  });

  it.each([
    ['neckline', 'edgeGone'],
    ['armhole', 'edgeGone'],
  ] as const)('a strapless block has no %s', (edge, code) => {
    const made = alter([
      { kind: 'edge', edge, side: 'both', at: [{ place: landmark('centreFront'), by: 3 }] },
    ]);
    expect(made.alterations).toEqual([{ applied: false, code }]);
  });

  it('of a neckline is lowered at a centre, of an armhole at the side', () => {
    const style = NAMED_STYLES.get('armhole-bridal')?.style;
    if (!style) throw new Error('there is a shouldered style');
    const body = { ...MEAN_BODY, acrossShoulder: 380 };
    const plain = draftWhole(body, style);
    const made = draftWhole(body, style, null, [
      { kind: 'edge', edge: 'neckline', side: 'both', at: [{ place: landmark('centreFront'), by: -10 }] },
      { kind: 'edge', edge: 'armhole', side: 'both', at: [{ place: landmark('side'), by: -8 }] },
      { kind: 'edge', edge: 'top', side: 'both', at: [{ place: landmark('side'), by: -8 }] },
    ]);
    expect(made.alterations.map((each) => each?.code)).toEqual([null, null, 'edgeGone']);
    const upper = (draft: Draft, id: string, which: 'inner' | 'outer'): number =>
      Math.min(...edgeOf(draft, id, which).map(({ y }) => y));
    const lowered = (block: 'front' | 'back'): number => {
      const last = plain.pieces.filter((piece) => piece.block === block).at(-1)?.id ?? '';
      return upper(made, last, 'outer') - upper(plain, last, 'outer');
    };
    expect(upper(made, 'front-1', 'inner') - upper(plain, 'front-1', 'inner')).toBeCloseTo(10, 6);
    // Where front and back lean otherwise, truing shares the difference: one is lowered by as much more as the other is by less.
    expect((lowered('front') + lowered('back')) / 2).toBeCloseTo(8, 2);
    for (const block of ['front', 'back'] as const) expect(Math.abs(lowered(block) - 8)).toBeLessThan(0.1);
    // Along the seam both mates lose the same, and it is 8 mm aslant: the mean of what each leaning line has over that height.
    const lost = (block: 'front' | 'back'): { along: number; aslant: number } => {
      const last = plain.pieces.filter((piece) => piece.block === block).at(-1)?.id ?? '';
      const cut = edgeOf(plain, last, 'outer')
        .filter(({ y }) => y <= upper(plain, last, 'outer') + 8)
        .sort((a, b) => a.y - b.y);
      const [top, foot] = [cut[0], cut.at(-1)];
      if (!top || !foot) throw new Error('there is a side seam');
      const along =
        polylineLength(edgeOf(plain, last, 'outer')) - polylineLength(edgeOf(made, last, 'outer'));
      return { along, aslant: (8 * Math.hypot(foot.x - top.x, foot.y - top.y)) / (foot.y - top.y) };
    };
    const [front, back] = [lost('front'), lost('back')];
    expect(front.along).toBeCloseTo(back.along, 3);
    expect(front.along).toBeCloseTo((front.aslant + back.aslant) / 2, 2);
  });
});

describe('a bust point', () => {
  it('half an inch out corrects the measurement', () => {
    const made = alter([{ kind: 'bustPoint', side: 'both', out: 12.7, down: 5 }]);
    const typed = draftWhole(
      {
        ...MEAN_BODY,
        bustPointWidth: (MEAN_BODY.bustPointWidth ?? 0) + 25.4,
        neckToBust: MEAN_BODY.neckToBust + 5,
      },
      DEFAULT_STYLE,
    );
    expectMarksOf(made, typed, 'front');
  });

  it('half an inch out leaves the back as it was, and makes the first front panel so much wider', () => {
    const made = alter([{ kind: 'bustPoint', side: 'both', out: 12.7, down: 0 }]);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    expectMarksOf(made, base, 'back');
    const [now, was] = [made, base].map(({ pieces }) =>
      Math.max(...(pieces[0]?.marks.map(({ at: { x } }) => x) ?? [])),
    );
    expect((now ?? 0) - (was ?? 0)).toBeCloseTo(12.7, 6);
  });

  /** The balance marks of a block are those of another draft, but for what the top edge's run across the side seam asks. */
  function expectMarksOf(made: Draft, other: Draft, block: 'front' | 'back'): void {
    const marksOf = ({ pieces }: Draft) =>
      pieces
        .filter((each) => each.block === block)
        .flatMap(({ marks }) => marks.map(({ at: { x, y } }) => [x, y]));
    const [own, others] = [marksOf(made).flat(), marksOf(other).flat()];
    expect(own.length).toBeGreaterThan(20);
    expect(own).toHaveLength(others.length);
    for (const [i, mm] of own.entries()) expect(Math.abs(mm - (others[i] ?? 0))).toBeLessThan(0.02);
  }

  it('that cannot be drafted is refused, and the draft stays', () => {
    const made = alter([{ kind: 'bustPoint', side: 'both', out: 149, down: 149 }]);
    expect(made.alterations).toEqual([{ applied: false, code: 'bustPointOutOfSpan' }]);
    expect(made.pieces).toStrictEqual(base.pieces);
  });
});

describe('what cannot be applied', () => {
  it('a seam that a new style no longer has is refused and kept, and all others are made', () => {
    const fewer = { ...DEFAULT_STYLE, wedges: DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-side') };
    const list = [taken(seamOf('front-2', 'front-3'), [at('waist', 5)]), taken(BUST_SEAM, [at('waist', 3)])];
    expect(alter(list, fewer).alterations).toEqual([
      { applied: false, code: 'seamGone' },
      { applied: true, code: null },
    ]);
    expect(alter(list).alterations.every((each) => each?.applied)).toBe(true);
  });

  it.each([
    ['panelCrossed', taken(BUST_SEAM, [at('waist', 120, 0)]), DEFAULT_STYLE],
    ['levelGone', taken(BUST_SEAM, [at('highHip', 3)]), DEFAULT_STYLE],
    ['amountOutOfSpan', taken(BUST_SEAM, [at('waist', Number.NaN)]), DEFAULT_STYLE],
    ['seamGone', taken({ kind: 'dart', wedge: 'none' }, [at('waist', 3)]), DEFAULT_STYLE],
    [
      'centreStraight',
      taken(seamOf('front-1', 'front-1'), [at('waist', 3)]),
      {
        ...DEFAULT_STYLE,
        wedges: [balancedWedge('b', 'front', 0, 2)],
        closure: { ...DEFAULT_STYLE.closure, front: 'busk' },
      } as Style,
    ],
  ] as const)('%s', (code, alteration, style) => {
    expect(alter([alteration], style).alterations).toEqual([{ applied: false, code }]);
    expect(alter([alteration], style).pieces).toStrictEqual(draftWhole(MEAN_BODY, style).pieces);
  });

  it('nothing is made where the body cannot be drafted', () => {
    const made = draftWhole({ ...MEAN_BODY, waist: null }, DEFAULT_STYLE, null, [
      taken(BUST_SEAM, [at('waist', 3)], 'left'),
      taken(BUST_SEAM, [at('waist', 3)]),
    ]);
    expect(made.alterations.map((each) => each?.code)).toEqual(['notDrafted', 'notDrafted']);
  });
});

describe('a centre seam', () => {
  it('is taken in by one amount on either half', () => {
    const hooked = {
      ...DEFAULT_STYLE,
      closure: { ...DEFAULT_STYLE.closure, back: 'hooks', lacingGap: 0 },
    } as Style;
    const made = alter([taken(seamOf('back-1', 'back-1'), [at('waist', 4, 2)])], hooked);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    expect(rowOf(made, 'waist').alteredBy).toBeCloseTo(-6, 9);
    const lengths = made.proof.seams.find(({ seam }) => seam.id === 'back-centre');
    expect(lengths?.lengthA).toBeCloseTo(lengths?.lengthB ?? 0, 2);
  });
});

describe('a dart', () => {
  const style = NAMED_STYLES.get('princess-bodice')?.style as Style;
  const body = { ...MEAN_BODY, acrossShoulder: 380 };

  it('closed at both ends is widened with legs of one length, and let out no further than shut', () => {
    const plain = draftWhole(body, style);
    const wedge = plain.pieces.flatMap(({ darts }) => darts)[0]?.wedge ?? '';
    const dart = { kind: 'dart', wedge } as const;
    const made = draftWhole(body, style, null, [taken(dart, [at('waist', 3, 2)])]);
    expect(made.alterations).toEqual([{ applied: true, code: null }]);
    expect(rowOf(made, 'waist').alteredBy).toBeCloseTo(-10, 6);
    expect(rowOf(made, 'waist').sewnGirth).toBeCloseTo(rowOf(plain, 'waist').targetGirth - 10, 1);
    const row = made.proof.closedDarts.find(({ seam }) => seam.wedge === wedge);
    expect(row?.lengthInner).toBeCloseTo(row?.lengthOuter ?? 0, 1);
    const shut = draftWhole(body, style, null, [taken(dart, [at('waist', -90, -90)])]);
    expect(shut.alterations).toEqual([{ applied: false, code: 'dartClosed' }]);
  });
});

describe('twenty alterations over three fittings', () => {
  const seams = [
    BUST_SEAM,
    seamOf('front-2', 'front-3'),
    SIDE_SEAM,
    seamOf('back-2', 'back-3'),
    seamOf('back-1', 'back-2'),
  ];
  const levels = ['waist', 'underBust', 'bust', 'hip'] as const;
  const twenty = Array.from({ length: 20 }, (_, i): Alteration => {
    if (i % 5 === 4)
      return {
        kind: 'length',
        between: ['underBust', 'waist'],
        side: 'both',
        at: [
          { place: landmark('centreBack'), by: i / 6 },
          { place: landmark('side'), by: 0 },
        ],
      };
    return taken(seams[i % 5] as typeof BUST_SEAM, [
      at(levels[i % 4] as LevelName, 0.3 * (i % 7) - 0.8, 0.4),
    ]);
  });

  it('switched in any order come to a fresh draft with those that are on', () => {
    const random = randomFrom(7);
    const on = new Set<number>();
    for (let step = 0; step < 12; step += 1) {
      const i = Math.floor(random() * twenty.length);
      if (!on.delete(i)) on.add(i);
      const switched = [...on].map((k) => twenty[k] as Alteration);
      const fresh = twenty.filter((_, k) => on.has(k));
      expect(alter(switched).pieces).toStrictEqual(alter(fresh).pieces);
    }
    expect(alter(twenty).alterations.every((each) => each?.applied)).toBe(true);
    expect(alter([]).pieces).toStrictEqual(base.pieces);
  });
});
