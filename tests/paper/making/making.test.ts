// The making list: bones by rule, eyelets in their places, cloth that holds the pieces, and files that other programs read.

import { polygonArea } from 'd3-polygon';
import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  draftWhole,
  type Edge,
  inches,
  type Piece,
  type Point,
  polylineLength,
  SIDES,
  type Style,
} from '../../../src/engine';
import { identifyPiece } from '../../../src/engine/terms/identity';
import { belowHeight } from '../../../src/paper/geometry/belowHeight';
import { offsetEdge } from '../../../src/paper/geometry/offsetEdge';
import { boneLength, casingWidth, lacingPlaces } from '../../../src/paper/making/bones';
import { channelsOf } from '../../../src/paper/making/channels';
import { clothFor } from '../../../src/paper/making/cloth';
import { eyeletsFor } from '../../../src/paper/making/eyelets';
import { makingCsv } from '../../../src/paper/making/makingCsv';
import { makingList } from '../../../src/paper/making/makingList';
import { makingSections, WORKSHOP_CARE } from '../../../src/paper/making/makingSections';
import { makingText } from '../../../src/paper/making/makingText';
import {
  checkMaking,
  MAKING_FIELDS,
  type MakingSettings,
  usualMaking,
} from '../../../src/paper/making/settings';
import { drawBodies } from '../../support/bodies/drawBodies';
import { lengthOf } from '../../support/judges/outline';
import { randomFrom } from '../../support/random';
import { randomStyle } from '../../support/styles/randomStyle';
import { toLines } from '../readPattern';

const USUAL = usualMaking('in');
const DEMO = draft(DEMO_CLIENT.measurements, DEFAULT_STYLE);

/** A style of the shelf on the demo client. */
function worn(name: string, change: Partial<Style> = {}): { made: Draft; style: Style } {
  const shelf = NAMED_STYLES.get(name)?.style;
  if (!shelf) throw new Error(`no style ${name}`);
  const style = { ...shelf, ...change };
  return { made: draft(DEMO_CLIENT.measurements, style), style };
}

const BODIES = drawBodies(40, 2026);
const STYLES = randomFrom(411);
const DRAFTS: readonly { name: string; made: Draft; style: Style }[] = BODIES.map((body, i) => {
  const style = i % 2 === 0 ? DEFAULT_STYLE : { ...DEFAULT_STYLE, ...randomStyle(STYLES) };
  return { name: `body ${i}`, made: draft(body, style), style };
});

/** A closed outline with straight edges, counter-clockwise as seen on paper, as a piece of no particular garment. */
function pieceOf(corners: readonly Point[], count = 2, onFold = false): Piece {
  const places = [
    { role: 'centre', at: 'inner' },
    { role: 'hem', at: 'hem' },
    { role: 'seam', at: 'outer' },
    { role: 'top', at: 'top' },
  ] as const;
  return {
    ...identifyPiece('panel', 'back', 1),
    cut: { count, onFold },
    darts: [],
    edges: corners.map((corner, i) => ({
      ...(places[i] ?? places[3]),
      isSideSeam: false,
      mate: null,
      allowance: 0,
      points: [corner, corners[(i + 1) % corners.length] as Point],
    })),
    cutLine: corners,
    grain: [corners[0] as Point, corners[0] as Point],
    marks: [],
  };
}

const rectangle = (width: number, height: number, count = 2, onFold = false): Piece =>
  pieceOf(
    [
      { x: 0, y: 0 },
      { x: 0, y: height },
      { x: width, y: height },
      { x: width, y: 0 },
    ],
    count,
    onFold,
  );

describe('bones', () => {
  it('are shorter than the channel by either published rule, then rounded down to a step', () => {
    // McCunn: 1/2 in shorter than the distance between the bindings: 12 less twice 1/4 less 1/2.
    expect(boneLength(inches(12), USUAL)).toBeCloseTo(inches(11), 6);
    expect(boneLength(inches(12.2), USUAL)).toBeCloseTo(inches(11), 6);
    // A maker's published page: 3 cm shorter than the channel.
    const byChannel: MakingSettings = { ...usualMaking('cm'), rule: 'channel' };
    expect(boneLength(300, byChannel)).toBeCloseTo(270, 6);
    expect(boneLength(304.9, byChannel)).toBeCloseTo(270, 6);
    expect(boneLength(305, byChannel)).toBeCloseTo(275, 6);
    expect(boneLength(31, byChannel)).toBeNull();
  });

  it('run in channels of the published widths', () => {
    expect(casingWidth(inches(1 / 4))).toBeCloseTo(inches(3 / 8), 6);
    expect(casingWidth(inches(3 / 8))).toBeCloseTo(inches(7 / 16), 6);
    for (const bone of [3, 5, 8, 12, 20]) expect(casingWidth(bone)).toBeGreaterThan(bone + 1.5);
  });

  it('stand on each seam twice, at centre front once and on both sides of the eyelets', () => {
    const { bones } = makingList(DEMO, DEFAULT_STYLE, USUAL);
    expect(bones.map(({ place, count }) => [place.kind, count])).toEqual([
      ['centreFront', 1],
      ...DEMO.proof.seams.map(() => ['seam', 2]),
      ['lacing', 2],
      ['lacing', 2],
    ]);
    for (const [i, row] of DEMO.proof.seams.entries())
      expect(bones[i + 1]?.channelMm).toBeCloseTo(row.lengthA, 6);
  });

  it('end at the over-bust line on a shouldered block, whatever runs on above it', () => {
    const laced = { front: 'fold', back: 'lacing', lacingGap: 30 } as const;
    for (const { made, style } of [
      worn('princess-bodice'),
      worn('darted-bodice'),
      worn('princess-bodice', { closure: laced }),
    ]) {
      expect(made.pieces.length).toBeGreaterThan(0);
      const y = made.levels.find(({ name }) => name === 'overBust')?.y ?? Number.NaN;
      const { bones } = makingList(made, style, USUAL);
      const seams = made.proof.seams.filter(({ seam }) => seam.kind === 'wedge' || seam.kind === 'sideSeam');
      expect(bones.filter(({ place }) => place.kind === 'seam')).toHaveLength(seams.length);
      expect(bones.some(({ place }) => place.kind === 'centreFront')).toBe(true);
      for (const { place, channelMm } of bones) {
        const ids = (place.kind === 'seam' ? place.pieces : [place.piece]).map(({ id }) => id);
        const lowest = Math.max(
          ...made.pieces
            .filter(({ id }) => ids.includes(id))
            .flatMap(({ edges }) => edges.flatMap(({ points }) => points.map((point) => point.y))),
        );
        // A seam slants and curves by a few per cent of its height, not more.
        expect(channelMm).toBeLessThan(1.05 * (lowest - y));
      }
    }
  });

  it('are as long as their own half lets them be where left and right differ', () => {
    const sides = { leftShare: { waist: 0.52 }, rightLower: { bust: 12, underBust: 12, waist: 15, hip: 18 } };
    const body = { ...DEMO_CLIENT.measurements, acrossShoulder: inches(15) };
    for (const { style } of [{ style: DEFAULT_STYLE }, worn('princess-bodice')]) {
      const made = draftWhole(body, style, sides);
      const shouldered = style.shoulders !== undefined;
      const heights = SIDES.map(
        (side) => made.halves?.[side].levels.find(({ name }) => name === 'overBust')?.y ?? Number.NaN,
      );
      expect(Math.abs((heights[0] as number) - (heights[1] as number))).toBeGreaterThan(5);
      const { bones } = makingList(made, style, USUAL);
      const own = made.proof.seams.filter(({ seam }) => seam.kind === 'wedge' || seam.kind === 'sideSeam');
      const found = bones.filter(({ place }) => place.kind === 'seam');
      expect(found.map(({ place }) => place)).toEqual(
        own.map(({ a, b }) => ({ kind: 'seam', pieces: [a.piece, b.piece] })),
      );
      for (const [i, { a }] of own.entries()) {
        const seam = made.pieces.find(({ id }) => id === a.piece.id)?.edges[a.edge]?.points ?? [];
        const highest = shouldered ? heights[a.piece.side === 'right' ? 1 : 0] : -Infinity;
        expect(found[i]?.channelMm, a.piece.id).toBeCloseTo(
          polylineLength(belowHeight(seam, highest as number)),
          9,
        );
      }
    }
  });

  it('take of a line what lies below a height, from either end', () => {
    const line = [
      { x: 0, y: 0 },
      { x: 30, y: 40 },
      { x: 30, y: 100 },
    ];
    for (const points of [line, [...line].reverse()]) {
      expect(polylineLength(belowHeight(points, 20))).toBeCloseTo(25 + 60, 6);
      expect(polylineLength(belowHeight(points, -5))).toBeCloseTo(110, 6);
      expect(belowHeight(points, 101)).toEqual([]);
    }
    expect(belowHeight([], 0)).toEqual([]);
  });

  it('leave the front to a busk where it closes with one', () => {
    const wedges = DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-centre');
    const style: Style = { ...DEFAULT_STYLE, wedges, closure: { ...DEFAULT_STYLE.closure, front: 'busk' } };
    const made = draft(DEMO_CLIENT.measurements, style);
    const { bones, busk } = makingList(made, style, USUAL);
    expect(bones.some(({ place }) => place.kind === 'centreFront')).toBe(false);
    const centre = made.pieces[0]?.edges.find(({ role }) => role === 'centre');
    expect(busk?.edgeMm).toBeCloseTo(polylineLength(centre?.points ?? []), 6);
    const length = busk?.lengthMm ?? 0;
    expect(length).toBeLessThanOrEqual((busk?.edgeMm ?? 0) - inches(1));
    expect(length).toBeGreaterThan((busk?.edgeMm ?? 0) - inches(1.5));
    expect((length / inches(0.5)) % 1).toBeCloseTo(0, 6);
  });

  it('always fit their channels, within a step of the most that the rule gives', () => {
    for (const { name, made, style } of DRAFTS)
      for (const { channelMm, lengthMm } of makingList(made, style, USUAL).bones) {
        const most = channelMm - inches(1);
        if (lengthMm === null) expect(most, name).toBeLessThan(USUAL.boneStep + 1e-6);
        else {
          expect(lengthMm, name).toBeLessThanOrEqual(most + 1e-3);
          expect(lengthMm, name).toBeGreaterThan(most - USUAL.boneStep - 1e-3);
        }
      }
  });
});

describe('a line beside an edge', () => {
  it('is cut off where it leaves the panel', () => {
    const slanted = pieceOf([
      { x: 0, y: 0 },
      { x: 0, y: 200 },
      { x: 100, y: 250 },
      { x: 100, y: 100 },
    ]);
    const line = offsetEdge(slanted, slanted.edges[0] as Edge, 20) as Point[];
    // The top edge falls by 1 in 1, the hem by 1 in 2: at 20 mm inside, from 20 to 210 down.
    expect(line[0]).toEqual({ x: 20, y: expect.closeTo(20, 6) });
    expect(line.at(-1)).toEqual({ x: 20, y: expect.closeTo(210, 6) });
    const other = offsetEdge(slanted, slanted.edges[2] as Edge, 20) as Point[];
    expect(other[0]).toEqual({ x: 80, y: expect.closeTo(80, 6) });
    expect(other.at(-1)).toEqual({ x: 80, y: expect.closeTo(240, 6) });
  });

  it('is none where it lies past the panel', () => {
    const narrow = rectangle(30, 200);
    expect(offsetEdge(narrow, narrow.edges[0] as Edge, 40)).toBeNull();
  });
});

describe('eyelets', () => {
  it('keep within the published bounds on every draft', () => {
    let rows = 0;
    for (const { name, made } of DRAFTS)
      for (const row of eyeletsFor(made, USUAL)) {
        rows += 1;
        const piece = made.pieces.find(({ id }) => id === row.piece.id) as Piece;
        const centre = piece.edges.find(({ role }) => role === 'centre') as Edge;
        for (const point of row.points) {
          // Published: centres within 15 mm of the edge.
          const away = toLines(point, [centre.points]);
          expect(away, name).toBeLessThanOrEqual(15);
          expect(away, name).toBeCloseTo(USUAL.eyeletInset, 0);
        }
        // Published: at most 3 cm apart.
        expect(row.apart.most, name).toBeLessThanOrEqual(Math.min(30, USUAL.eyeletSpacing) + 1e-6);
        const heights = row.points.map(({ y }) => y);
        expect([...heights].sort((a, b) => a - b)).toEqual(heights);
      }
    // Some of the styles close otherwise.
    expect(rows).toBeGreaterThan(20);
  });

  it('stand closer at the waist, which lies midway between two of them', () => {
    const [row] = eyeletsFor(DEMO, USUAL);
    const waist = DEMO.span?.waist as number;
    const heights = row?.points.map(({ y }) => y) ?? [];
    const below = heights.findIndex((y) => y > waist);
    const [above, under] = [heights[below - 1] as number, heights[below] as number];
    expect((above + under) / 2).toBeCloseTo(waist, 0);
    const gaps = (row?.fromTop ?? []).slice(1).map((mm, i) => mm - (row?.fromTop[i] as number));
    for (const [i, gap] of gaps.entries()) {
      const middle = ((heights[i] as number) + (heights[i + 1] as number)) / 2;
      if (Math.abs(middle - waist) < 40) expect(gap).toBeLessThanOrEqual(20 + 1e-6);
    }
    expect(row?.fromTop[0]).toBeCloseTo(USUAL.eyeletEnd, 6);
  });

  it('are said to have the waist between two of them only where the row runs past it', () => {
    const remarkOf = (made: Draft, style: Style): string =>
      makingSections(makingList(made, style, USUAL), USUAL, 'in').find(({ kind }) => kind === 'eyelets')
        ?.remark ?? '';
    expect(remarkOf(DEMO, DEFAULT_STYLE)).toMatch(/within .* of the waist, which lies midway between two\./);
    const { style } = NAMED_STYLES.get('bridal-bodice') ?? { style: DEFAULT_STYLE };
    const toWaist = remarkOf(draft(DEMO_CLIENT.measurements, style), style);
    expect(toWaist).toMatch(/within .* of the waist\. Their flanges/);
    // Its hem lies above the waist.
    const short = { ...DEFAULT_STYLE, hemBelow: -30 };
    expect(remarkOf(draft(DEMO_CLIENT.measurements, short), short)).toMatch(/apart\. Their flanges/);
  });

  it('stand no farther apart at the waist than elsewhere, whatever is asked for there', () => {
    const settings = { ...USUAL, eyeletSpacing: 18, waistSpacing: 30 };
    const [row] = eyeletsFor(DEMO, settings);
    expect(row?.apart.most).toBeLessThanOrEqual(18 + 1e-6);
    expect(row?.apart.least).toBeGreaterThan(9);
  });

  it('lie with their flanges clear of the bones on both sides, in either unit and with any bone', () => {
    for (const unit of ['in', 'cm'] as const)
      for (const boneWidth of [5, usualMaking(unit).boneWidth]) {
        const settings = { ...usualMaking(unit), boneWidth };
        const [edge, beyond] = lacingPlaces(settings).map(({ awayMm }) => ({
          from: awayMm - casingWidth(boneWidth) / 2,
          to: awayMm + casingWidth(boneWidth) / 2,
        }));
        expect(edge?.from).toBeCloseTo(0, 9);
        expect(settings.eyeletInset - settings.eyeletFlange / 2).toBeGreaterThanOrEqual(
          (edge?.to ?? 99) - 1e-6,
        );
        expect(settings.eyeletInset + settings.eyeletFlange / 2).toBeLessThanOrEqual(
          (beyond?.from ?? 0) + 1e-6,
        );
      }
  });

  it('are said to lie on a bone where the figures put them there, with the least distance that is clear', () => {
    const lacing = (settings: MakingSettings): string =>
      makingSections(makingList(DEMO, DEFAULT_STYLE, settings), settings, 'in').find(
        ({ kind }) => kind === 'eyelets',
      )?.care ?? '';
    expect(lacing(USUAL)).not.toContain('lie on the channel');
    expect(lacing({ ...USUAL, eyeletInset: inches(1 / 2) })).toContain('at least ⁹⁄₁₆ in from the edge');
    expect(lacing({ ...USUAL, eyeletInset: inches(1 / 2), bonesAtLacing: 0 })).not.toContain(
      'lie on the channel',
    );
  });

  it('are none on an edge too short for two', () => {
    const short: Draft = { ...DEMO, pieces: [rectangle(60, 40)] };
    expect(eyeletsFor(short, USUAL)).toEqual([]);
  });
});

describe('channels', () => {
  it('lie on both mates of a seam, half on each, and whole beside the eyelets', () => {
    const half = casingWidth(USUAL.boneWidth) / 2;
    const channels = channelsOf(DEMO, DEFAULT_STYLE, USUAL);
    expect(channels).toHaveLength(1 + 2 * DEMO.proof.seams.length + 2);
    for (const { piece: id, sides, ends } of channels) {
      const piece = DEMO.pieces.find((each) => each.id === id) as Piece;
      const upright = piece.edges.filter(({ role }) => role === 'seam' || role === 'centre');
      expect(ends).toHaveLength(2);
      for (const [i, side] of sides.entries()) {
        const middle = side[Math.floor(side.length / 2)] as Point;
        const away = Math.min(...upright.map(({ points }) => toLines(middle, [points])));
        const lacing = sides.length === 2 || id === 'back-1';
        if (!lacing) expect(away, `${id} ${i}`).toBeCloseTo(half, 1);
      }
    }
  });

  it('end at the bones’ ends, which stand as far from both ends of the channel', () => {
    const [first] = channelsOf(DEMO, DEFAULT_STYLE, USUAL);
    const [bone] = makingList(DEMO, DEFAULT_STYLE, USUAL).bones;
    const [a, b] = (first?.ends ?? []).map(([start]) => start);
    const centre = DEMO.pieces[0]?.edges.find(({ role }) => role === 'centre') as Edge;
    const along = (point: Point): number => {
      const at = centre.points.findIndex(({ y }) => y > point.y);
      return polylineLength([...centre.points.slice(0, at), point]);
    };
    expect(Math.abs(along(a as Point) - along(b as Point))).toBeCloseTo(bone?.lengthMm ?? 0, 0);
  });
});

describe('lace', () => {
  it('is reckoned for an opening that lets the garment on: over the hip without another opening, else round the body', () => {
    const shut = makingList(DEMO, DEFAULT_STYLE, USUAL);
    const waist = DEMO.proof.ledger.find(({ level }) => level === 'waist');
    const hip = DEMO.proof.ledger.find(({ level }) => level === 'hip');
    expect(shut.laceOpeningMm).toBeCloseTo((hip?.bodyGirth ?? 0) - (waist?.sewnGirth ?? 0), 6);
    const wedges = DEFAULT_STYLE.wedges.filter(({ id }) => id !== 'front-centre');
    const busk: Style = { ...DEFAULT_STYLE, wedges, closure: { ...DEFAULT_STYLE.closure, front: 'busk' } };
    const opening = makingList(draft(DEMO_CLIENT.measurements, busk), busk, { ...USUAL, laceOpening: 0 });
    // 2 in of gap and 2 in of reduction at the waist
    expect(opening.laceOpeningMm).toBeCloseTo(inches(4), 0);
    expect(opening.laceMm).toBeLessThan(shut.laceMm);
    expect(makingList(DEMO, DEFAULT_STYLE, { ...USUAL, laceOpening: 600 }).laceOpeningMm).toBe(600);
  });

  it('is for the narrowest place also where the garment ends there, and so is the tape: the waist along the hem', () => {
    const { style } = NAMED_STYLES.get('bridal-bodice') ?? { style: DEFAULT_STYLE };
    const made = draft(DEMO_CLIENT.measurements, style);
    const list = makingList(made, style, USUAL);
    const hip = made.proof.ledger.find(({ level }) => level === 'hip');
    const hems = made.pieces.map(({ edges }) =>
      lengthOf(edges.find(({ role }) => role === 'hem')?.points ?? []),
    );
    const waist = 2 * hems.reduce((sum, each) => sum + each, 0);
    expect(list.laceOpeningMm).toBeCloseTo((hip?.bodyGirth ?? 0) - waist, 6);
    expect(list.tapeMm).toBeCloseTo(waist + USUAL.tapeEnds, 6);
  });
});

describe('binding and allowances', () => {
  const trimmings = (style: Style): string =>
    makingSections(makingList(draft(DEMO_CLIENT.measurements, style), style, USUAL), USUAL, 'in').find(
      ({ kind }) => kind === 'trimmings',
    )?.care ?? '';
  const bare = { ...DEFAULT_STYLE.allowances, top: 0, hem: 0 };

  it('agree: what a bound edge has of allowance is said to be trimmed away, and nothing where it has none', () => {
    expect(trimmings(DEFAULT_STYLE)).toContain(
      'Before binding, trim the allowance away: ½ in at the top edge, ½ in at the hem.',
    );
    expect(trimmings({ ...DEFAULT_STYLE, allowances: bare })).not.toContain('trim the allowance');
    const turned = trimmings({ ...DEFAULT_STYLE, turnedHem: true });
    expect(turned).toContain('½ in at the top edge.');
    expect(turned).not.toContain('at the hem');
  });
});

describe('cloth', () => {
  it('is the rows that rectangles take', () => {
    const bare = { ...USUAL, selvedge: 0, clothSpare: 0 };
    // Four 200 mm wide pairs on 36 in: folded, two in a row of 457 mm, so two rows of 300 and the shears' way.
    const [narrow] = clothFor(
      Array.from({ length: 4 }, () => rectangle(200, 300)),
      bare,
    );
    expect(narrow).toMatchObject({ lay: 'folded', lengthMm: 620 });
    const [onFold] = clothFor([rectangle(400, 300, 1, true)], bare);
    expect(onFold).toMatchObject({ lay: 'folded', lengthMm: 310 });
    // Each panel on the fold begins a row, which has room for a pair beside it; two pairs have none beside each other.
    const [beside] = clothFor(
      [rectangle(240, 300), rectangle(240, 300), rectangle(200, 300, 1, true), rectangle(200, 300, 1, true)],
      bare,
    );
    expect(beside).toMatchObject({ lay: 'folded', lengthMm: 620 });
    const [wide] = clothFor([rectangle(600, 300, 1)], bare);
    expect(wide).toMatchObject({ lay: 'open', lengthMm: 310 });
    expect(clothFor([rectangle(1300, 300)], bare).map(({ lengthMm }) => lengthMm !== null)).toEqual([
      false,
      false,
      true,
      true,
      false,
      true,
    ]);
  });

  it('has room for the pieces of every draft, and wider cloth never takes more', () => {
    for (const { name, made } of DRAFTS) {
      const area = made.pieces.reduce(
        (sum, { cutLine }) =>
          sum + 2 * Math.abs(polygonArea(cutLine.map(({ x, y }): [number, number] => [x, y]))),
        0,
      );
      const lengths = clothFor(made.pieces, USUAL)
        .sort((a, b) => a.widthMm - b.widthMm)
        .map(({ widthMm, lengthMm }) => {
          if (lengthMm !== null && made.pieces.length > 0)
            expect(lengthMm * widthMm, name).toBeGreaterThan(area);
          return lengthMm ?? Infinity;
        });
      expect(
        [...lengths].sort((a, b) => b - a),
        name,
      ).toEqual(lengths);
    }
  });
});

describe('bones in words', () => {
  const sectionOf = (made: Draft, style: Style) => {
    const found = makingSections(makingList(made, style, USUAL), USUAL, 'in').find(
      ({ heading }) => heading === 'Bones',
    );
    if (!found) throw new Error('it has bones');
    return found;
  };

  it('say which lacing edge they stand at where left and right are cut apart', () => {
    const apart = draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE, {
      leftShare: { waist: 0.52 },
      rightLower: {},
    });
    const named = (made: Draft): string[] =>
      sectionOf(made, DEFAULT_STYLE)
        .lines.map(({ item }) => item)
        .filter((item) => item.startsWith('Lacing'))
        .map((item) => item.split(', ').slice(0, -1).join(', '));
    expect(named(apart)).toEqual([
      'Lacing, left, between edge and eyelets',
      'Lacing, left, beyond the eyelets',
      'Lacing, right, between edge and eyelets',
      'Lacing, right, beyond the eyelets',
    ]);
    expect(named(DEMO)).toEqual(['Lacing, between edge and eyelets', 'Lacing, beyond the eyelets']);
  });

  it('speak of two bindings only where there are two', () => {
    const turned: Style = { ...DEFAULT_STYLE, turnedHem: true };
    expect(sectionOf(DEMO, DEFAULT_STYLE).remark).toContain('the distance between the bindings');
    const { remark } = sectionOf(draft(DEMO_CLIENT.measurements, turned), turned);
    expect(remark).not.toContain('bindings');
    expect(remark).toContain(
      '¼ in for the binding above and as much for the turned hem, and by ½ in besides',
    );
  });

  it('are said to stop at the over-bust line where they do, and only there', () => {
    const { made, style } = worn('basque-bodice');
    const { lines, remark } = sectionOf(made, style);
    const stopped = lines.filter(({ note }) => note.includes('up to the over-bust line only'));
    expect(stopped.map(({ item }) => item)).toContain('Centre front');
    expect(stopped).toHaveLength(makingList(made, style, USUAL).bones.filter((bone) => bone.stopped).length);
    const front = made.pieces.find(({ id }) => id === 'front-1')?.edges[0]?.points ?? [];
    const overBust = made.levels.find(({ name }) => name === 'overBust')?.y ?? Number.NaN;
    expect(Math.min(...front.map(({ y }) => y))).toBeLessThan(overBust);
    expect(remark).not.toContain('bindings');
    expect(JSON.stringify(sectionOf(DEMO, DEFAULT_STYLE))).not.toContain('over-bust');
  });
});

describe('fastenings', () => {
  const edgeOf = (made: Draft, block: Piece['block']): number =>
    polylineLength(
      made.pieces.find((piece) => piece.block === block && piece.number === 1)?.edges[0]?.points ?? [],
    );

  it('are as long as the finished edge or seam they close', () => {
    const { made, style } = worn('basque-bodice', {
      closure: { front: 'hooks', back: 'zip', lacingGap: 0, sideZip: true },
    });
    const sideSeam = made.proof.seams.find(({ seam }) => seam.kind === 'sideSeam');
    const { fastenings } = makingList(made, style, USUAL);
    expect(fastenings).toEqual([
      { kind: 'hooks', place: 'front', edgeMm: edgeOf(made, 'front') },
      { kind: 'zip', place: 'back', edgeMm: edgeOf(made, 'back') },
      { kind: 'zip', place: 'side', edgeMm: sideSeam?.lengthA },
    ]);
    const said = makingSections(makingList(made, style, USUAL), USUAL, 'cm');
    const lines = said.find(({ heading }) => heading === 'Fastening')?.lines ?? [];
    expect(lines.map(({ item }) => item)).toEqual([
      'Hook tape, centre front',
      'Zip, centre back',
      'Zip, left side seam',
    ]);
    for (const [i, { lengthMm }] of lines.entries()) {
      expect(lengthMm).toBeGreaterThanOrEqual((fastenings[i]?.edgeMm ?? Number.NaN) - 1e-6);
      expect(lengthMm).toBeLessThan((fastenings[i]?.edgeMm ?? Number.NaN) + 1);
    }
  });

  it('are none where a garment is laced, or closes nowhere', () => {
    expect(makingList(DEMO, DEFAULT_STYLE, USUAL).fastenings).toEqual([]);
    expect(
      makingSections(makingList(DEMO, DEFAULT_STYLE, USUAL), USUAL, 'in').map(({ heading }) => heading),
    ).not.toContain('Fastening');
  });
});

describe('binding', () => {
  const along = (pieces: readonly Piece[], role: Edge['role']): number =>
    pieces
      .flatMap(({ edges }) => edges.filter((edge) => edge.role === role))
      .reduce((sum, { points }) => sum + polylineLength(points), 0);

  it('goes round top edge and hem of a strapless garment, both halves', () => {
    const { bindingMm, shouldered } = makingList(DEMO, DEFAULT_STYLE, USUAL);
    expect(shouldered).toBe(false);
    expect(bindingMm.top).toBeCloseTo(2 * along(DEMO.pieces, 'top'), 6);
    expect(bindingMm.hem).toBeCloseTo(2 * along(DEMO.pieces, 'hem'), 6);
  });

  it('goes along no hem that is turned up', () => {
    const list = makingList(DEMO, { ...DEFAULT_STYLE, turnedHem: true }, USUAL);
    const bound = makingList(DEMO, DEFAULT_STYLE, USUAL).bindingMm;
    expect(list.bindingMm).toMatchObject({ top: bound.top, hem: 0 });
    expect(list.bindingMm.both).toBeCloseTo(bound.top * (1 + USUAL.bindingSpare), 6);
    expect(JSON.stringify(makingSections(list, USUAL, 'in'))).toContain('none for the turned hem');
    const allowances = { ...DEFAULT_STYLE.allowances, hem: 0 };
    expect(makingList(DEMO, { ...DEFAULT_STYLE, allowances, turnedHem: true }, USUAL).bindingMm).toEqual(
      bound,
    );
  });

  it('goes round neckline and armholes of a shouldered one, and along no shoulder seam', () => {
    const { made, style } = worn('princess-bodice');
    const list = makingList(made, style, USUAL);
    expect(along(made.pieces, 'shoulder')).toBeGreaterThan(100);
    expect(list.bindingMm.top).toBeCloseTo(
      2 * (along(made.pieces, 'top') + along(made.pieces, 'armhole')),
      6,
    );
    const words = JSON.stringify(makingSections(list, USUAL, 'in'));
    expect(words).toContain('neckline and armholes ');
    expect(words).not.toContain('top edge ');
  });

  it('goes round the band’s own neckline and armholes, not along the seam of panels and band', () => {
    const { made, style } = worn('off-shoulder-bridal');
    const bands = made.extras.filter(({ kind }) => kind === 'band');
    expect(bands).toHaveLength(2);
    const { bindingMm, shouldered } = makingList(made, style, USUAL);
    expect(shouldered).toBe(true);
    expect(bindingMm.top).toBeCloseTo(2 * (along(bands, 'top') + along(bands, 'armhole')), 6);
    expect(bindingMm.hem).toBeCloseTo(2 * along(made.pieces, 'hem'), 6);
    // Two halves that happen to be alike take as much as one half cut twice.
    const rightWedges = style.wedges.map((wedge) => ({ ...wedge, id: `right-${wedge.id}` }));
    const apart = { ...style, rightWedges };
    const halves = draftWhole(DEMO_CLIENT.measurements, apart);
    expect(halves.halves).toBeDefined();
    const whole = makingList(halves, apart, USUAL).bindingMm;
    expect(whole.top).toBeCloseTo(bindingMm.top, 3);
    expect(whole.hem).toBeCloseTo(bindingMm.hem, 3);
  });
});

describe('the list in words', () => {
  const sections = makingSections(makingList(DEMO, DEFAULT_STYLE, USUAL), USUAL, 'in');

  it('says each thing once, in both units, and where the figures come from once for all', () => {
    expect(sections.map(({ heading }) => heading)).toEqual([
      'Cut',
      'Bones',
      'Lacing',
      'Binding, tape, casing',
      'Cloth for one layer',
    ]);
    for (const { remark } of sections) expect(remark).not.toMatch(/common practice|published|book|McCunn/i);
    const metric = usualMaking('cm');
    const text = makingText(makingSections(makingList(DEMO, DEFAULT_STYLE, metric), metric, 'cm'), {
      client: 'Wren\nAbernathy',
      draft: 'Ball',
      unit: 'cm',
      remark: null,
    });
    expect(text).toContain('Making list: Wren Abernathy, Ball\n');
    expect(text).toMatch(/Seam Front 1 – Front 2: 2 × [\d.]+ cm – channel [\d.]+ cm\n/);
    expect(text).toContain(WORKSHOP_CARE);
    expect(text.match(/common practice/g)).toHaveLength(1);
    expect(text).toContain('Help names the sources');
    expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('is empty for a draft without pieces', () => {
    const none: Draft = { ...DEMO, pieces: [], proof: { ledger: [], seams: [], closedDarts: [], edges: [] } };
    expect(makingSections(makingList(none, DEFAULT_STYLE, USUAL), USUAL, 'in')).toEqual([]);
  });

  it('never says a number that is none', () => {
    for (const { name, made, style } of DRAFTS) {
      const words = JSON.stringify(makingSections(makingList(made, style, USUAL), USUAL, 'in'));
      expect(words, name).not.toMatch(/NaN|undefined|Infinity|"–"/);
    }
  });
});

describe('the CSV file', () => {
  const sections = makingSections(makingList(DEMO, DEFAULT_STYLE, USUAL), USUAL, 'in');
  const names = { client: 'Wren', draft: 'Ball', unit: 'in', remark: null } as const;

  it('has as many fields in each record and CR LF at each end', () => {
    const text = makingCsv(sections, { ...names, client: 'A "quoted", name\r\nin two lines' });
    const records = readCsv(text);
    expect(records[0]).toEqual(['Client', 'Draft', 'List', 'Item', 'Count', 'Length, in', 'Note']);
    for (const record of records) expect(record).toHaveLength(7);
    expect(records[1]?.[0]).toBe('A "quoted", name\r\nin two lines');
    expect(records.length).toBe(
      3 + sections.reduce((sum, { lines, care }) => sum + lines.length + (care === '' ? 1 : 2), 0),
    );
    expect(records.some(([, , , item]) => item === 'Seam Front 1 – Front 2')).toBe(true);
    for (const [, , , , count, length] of records.slice(1)) {
      expect(count).toMatch(/^\d*$/);
      expect(length).toMatch(/^(\d+(\.\d+)?)?$/);
    }
  });

  it.each([
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    ' =1+1',
    '\t=1+1',
    '\r=1',
    '\uff1d1+1',
    '−1',
    '|cmd',
    '\u200b=1',
    '\ufeff=1',
    '"=1',
  ])('lets no spreadsheet compute a name: %j', (name) => {
    for (const given of [
      { ...names, client: name },
      { ...names, draft: name },
    ])
      for (const record of readCsv(makingCsv(sections, given)).slice(1))
        for (const cell of record) expect(cell).not.toMatch(/^[\s\u200b\ufeff]*[=+\-@\uff1d\u2212|]/u);
  });
});

describe('settings', () => {
  it('come with defaults within their spans', () => {
    for (const unit of ['in', 'cm'] as const)
      expect(checkMaking(usualMaking(unit))).toEqual({ ok: true, settings: usualMaking(unit) });
  });

  it('are refused with the field that is out of its span', () => {
    for (const field of MAKING_FIELDS)
      for (const value of [Number.NaN, field.least - 1, field.most + 1, '3', null, undefined, Infinity])
        expect(checkMaking({ ...USUAL, [field.name]: value })).toEqual({ ok: false, faults: [{ field }] });
    expect(checkMaking({ ...USUAL, bonesOnSeam: 1.5 })).toMatchObject({ ok: false });
    for (const nonsense of [null, 7, 'x', [], {}, { ...USUAL, rule: 'guess' }])
      expect(checkMaking(nonsense)).toMatchObject({ ok: false });
  });

  it('at either end of every span still give a list', () => {
    for (const field of MAKING_FIELDS)
      for (const value of [field.least, field.most]) {
        const settings = { ...USUAL, [field.name]: value };
        const words = JSON.stringify(
          makingSections(makingList(DEMO, DEFAULT_STYLE, settings), settings, 'in'),
        );
        expect(words, field.name).not.toMatch(/NaN|undefined|Infinity/);
      }
  });
});

/** Reads records as RFC 4180 gives them. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let i = 0;
  while (i < text.length) {
    let cell = '';
    if (text[i] === '"') {
      i += 1;
      for (;;) {
        if (i >= text.length) throw new Error('a quoted field does not end');
        if (text[i] === '"' && text[i + 1] === '"') {
          cell += '"';
          i += 2;
        } else if (text[i] === '"') {
          i += 1;
          break;
        } else {
          cell += text[i];
          i += 1;
        }
      }
    } else
      while (i < text.length && text[i] !== ',' && text[i] !== '\r') {
        if (text[i] === '"' || text[i] === '\n')
          throw new Error(`a bare ${JSON.stringify(text[i])} in a field`);
        cell += text[i];
        i += 1;
      }
    record.push(cell);
    if (text[i] === ',') i += 1;
    else if (text.startsWith('\r\n', i)) {
      records.push(record);
      record = [];
      i += 2;
    } else throw new Error(`neither a comma nor CR LF after a field, at ${i}`);
  }
  if (record.length > 0) throw new Error('the last record does not end');
  return records;
}
