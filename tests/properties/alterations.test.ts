// Alterations after a fitting, drawn at random on random styles: each moves what it names and nothing else, its inverse restores the
// draft, no order counts, and the altered draft keeps every bound. Measured on the finished outlines.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import {
  type Alteration,
  type AlteredSide,
  type Draft,
  draftWhole,
  type Edge,
  type LevelName,
  type Measurements,
  type Piece,
  type Point,
  type Style,
} from '../../src/engine';
import { drawBodies } from '../support/bodies/drawBodies';
import { expectAtMost } from '../support/expectAtMost';
import { DRAWN, howMany } from '../support/howMany';
import { broken, judge } from '../support/judges/judge';
import { lengthOf } from '../support/judges/outline';
import { pick, type Random, randomFrom } from '../support/random';
import { inverseOf, panelNamed, randomAlteration } from '../support/styles/alterations';
import { randomStyle } from '../support/styles/randomStyle';
import { withDarts } from '../support/styles/withDarts';

const SEED = 1014;
const COUNT = howMany({ few: 60, all: 2000 });

/** Nothing that is not named moves by more. mm */
const STILL_MM = 1e-9;

interface Case {
  readonly name: string;
  readonly body: Measurements;
  readonly style: Style;
  readonly base: Draft;
  readonly alteration: Alteration;
  /** The draft with that one alteration. */
  readonly made: Draft;
}

const SHOULDERED = [
  'bridal-bodice',
  'princess-bodice',
  'armhole-bridal',
  'darted-bodice',
  'off-shoulder-bridal',
];

function styleOf(random: Random, i: number): Style {
  if (i % 4 === 3) return NAMED_STYLES.get(pick(random, SHOULDERED))?.style ?? randomStyle(random);
  return i % 4 === 2 ? withDarts(randomStyle(random), random, false) : randomStyle(random);
}

const isSound = ({ issues, pieces }: Draft): boolean =>
  pieces.length > 0 && issues.every(({ severity }) => severity !== 'error');

function cases(): Case[] {
  const random = randomFrom(SEED);
  const bodies = drawBodies(COUNT, SEED);
  const found: Case[] = [];
  for (let i = 0; found.length < COUNT && i < 20 * COUNT; i += 1) {
    const drawn = bodies[i % COUNT] as Measurements;
    const body = { ...drawn, acrossShoulder: 150 + 0.25 * (drawn.bust ?? 0) };
    const style = styleOf(random, i);
    const base = draftWhole(body, style);
    const alteration = isSound(base) ? randomAlteration(random, base) : null;
    if (!alteration) continue;
    found.push({
      name: `seed ${SEED}, case ${i}, ${JSON.stringify(alteration)}`,
      body,
      style,
      base,
      alteration,
      made: draftWhole(body, style, null, [alteration]),
    });
  }
  return found;
}

const CASES = cases();

const altered = ({ body, style }: Pick<Case, 'body' | 'style'>, ...list: readonly Alteration[]): Draft =>
  draftWhole(body, style, null, list);

const isApplied = ({ alterations }: Draft): boolean => alterations.every((each) => each?.applied === true);

const apart = (a: readonly Point[], b: readonly Point[]): number =>
  a.length === b.length
    ? a.reduce((most, { x, y }, i) => {
        const other = b[i] as Point;
        return Math.max(most, Math.abs(x - other.x), Math.abs(y - other.y));
      }, 0)
    : Number.POSITIVE_INFINITY;

/** An edge with its ends at the heights of those of another, and each place between in the same share of the way to the waist. */
function withEndsOf(other: readonly Point[], edge: readonly Point[], waist: number): readonly Point[] {
  const [first, last] = [edge.at(0)?.y ?? 0, edge.at(-1)?.y ?? 0];
  const [otherFirst, otherLast] = [other.at(0)?.y ?? 0, other.at(-1)?.y ?? 0];
  return edge.map(({ x, y }) => {
    const [end, otherEnd] =
      Math.sign(y - waist) === Math.sign(first - waist) ? [first, otherFirst] : [last, otherLast];
    return { x, y: end === waist ? y : waist + ((y - waist) * (otherEnd - waist)) / (end - waist) };
  });
}

/** Which edges of a piece an alteration names, or may move with them. */
function isNamed(alteration: Alteration, piece: Piece, edge: Edge): boolean {
  if (alteration.kind === 'bustPoint') return true;
  const isAtTop = edge.at === 'top';
  if (alteration.kind === 'length') return true;
  if (alteration.kind === 'edge') return alteration.edge === 'hem' ? !isAtTop : edge.at !== 'hem';
  if (alteration.seam.kind === 'dart') {
    const { wedge } = alteration.seam;
    return (
      piece.darts.some((dart) => dart.wedge === wedge) &&
      (edge.dart !== undefined || edge.at === 'hem' || isAtTop)
    );
  }
  const own = JSON.stringify(panelNamed(piece));
  const mates = alteration.seam.pieces.map((each) => JSON.stringify(each));
  if (!mates.includes(own)) return false;
  if (edge.at === 'hem' || isAtTop) return true;
  return edge.mate !== null && mates.includes(JSON.stringify(panelNamed(edge.mate.piece)));
}

describe(`alterations drawn at random, ${COUNT} of them, seed ${SEED}`, () => {
  it('move what they name and nothing else', DRAWN, () => {
    let moved = 0;
    for (const each of CASES) {
      const { base, alteration, name, made } = each;
      if (!isApplied(made)) {
        for (const piece of base.pieces) {
          const same = made.pieces.find(({ id }) => id === piece.id);
          for (const [i, edge] of piece.edges.entries())
            expectAtMost(apart(edge.points, same?.edges[i]?.points ?? []), STILL_MM, name);
        }
        continue;
      }
      for (const piece of base.pieces) {
        const now = made.pieces.find(({ id }) => id === piece.id);
        for (const [i, edge] of piece.edges.entries()) {
          const points = now?.edges[i]?.points ?? [];
          if (isNamed(alteration, piece, edge)) moved += apart(edge.points, points) > STILL_MM ? 1 : 0;
          else expectAtMost(apart(edge.points, points), STILL_MM, `${name}: ${piece.id}/${i}`);
        }
      }
    }
    expect(moved).toBeGreaterThan(COUNT);
  });

  it('move the ends of mates within what their lengths ask', DRAWN, () => {
    let ends = 0;
    for (const each of CASES) {
      const { base, alteration, name, made } = each;
      if (alteration.kind !== 'seam' || alteration.seam.kind !== 'seam') continue;
      const { top = 0, waist = 0, hem = 0 } = made.span ?? {};
      // Mates are measured from the waist mark, which the garment must have.
      if (!isApplied(made) || top > waist || hem < waist) continue;
      const mates = base.pieces.flatMap((piece) =>
        piece.edges.flatMap((edge, i) =>
          (edge.at === 'inner' || edge.at === 'outer') && isNamed(alteration, piece, edge)
            ? [{ before: edge.points, after: edgeOf(made, piece, i) }]
            : [],
        ),
      );
      // The sideways move makes an edge longer or shorter, and truing again; its ends move by what is between the two.
      const asked = mates.reduce(
        (sum, { before, after }) =>
          sum + longer(before, after) + longer(before, withEndsOf(before, after, waist)),
        0,
      );
      for (const { before, after } of mates)
        for (const end of [0, -1]) {
          ends += 1;
          const shift = Math.abs((after.at(end)?.y ?? Number.NaN) - (before.at(end)?.y ?? Number.NaN));
          expectAtMost(shift, asked + 0.02, name);
        }
    }
    expect(ends).toBeGreaterThan(COUNT / 2);
  });

  it('are taken back by their inverse', DRAWN, () => {
    for (const each of CASES) {
      const { base, alteration, name } = each;
      const made = altered(each, alteration, inverseOf(alteration));
      if (!isApplied(made)) continue;
      for (const piece of base.pieces) {
        const now = made.pieces.find(({ id }) => id === piece.id);
        expect(now?.edges.length, name).toBe(piece.edges.length);
        for (const [i, edge] of piece.edges.entries())
          expectAtMost(apart(edge.points, now?.edges[i]?.points ?? []), STILL_MM, name);
        expectAtMost(apart(piece.cutLine, now?.cutLine ?? []), 1e-6, name);
      }
    }
  });

  it('come to the same in any order', DRAWN, () => {
    const random = randomFrom(SEED + 1);
    for (const [i, each] of CASES.entries()) {
      if (i % 4 !== 0) continue;
      const more = Array.from({ length: 3 }, () => randomAlteration(random, each.base));
      const list = [each.alteration, ...more.flatMap((one) => (one ? [one] : []))];
      const [one, other] = [altered(each, ...list), altered(each, ...[...list].reverse())];
      expect(other.pieces, each.name).toStrictEqual(one.pieces);
      expect(other.proof, each.name).toStrictEqual(one.proof);
      expect([...other.alterations].reverse(), each.name).toStrictEqual(one.alterations);
    }
  });

  it('leave a draft that keeps every bound, with the girths altered exactly', DRAWN, () => {
    let whole = 0;
    for (const each of CASES) {
      const { body, style, alteration, name, made } = each;
      if (!isSound(made) || !isApplied(made)) continue;
      whole += 1;
      // Where seams were shortened a level lies aslant over the darts; 0.16 mm is the worst of 2,000.
      const most = alteration.kind === 'length' ? 0.2 : 0.1;
      for (const { level, sewnGirth, targetGirth, alteredBy } of made.proof.ledger)
        if (sewnGirth !== null)
          expectAtMost(Math.abs(sewnGirth - targetGirth - alteredBy), most, `${name} ${level}`);
      const asked = askedGirths(alteration, made);
      for (const { level, alteredBy } of made.proof.ledger) {
        const by = asked.get(level);
        if (by !== undefined) expect(alteredBy, `${name} ${level}`).toBeCloseTo(by, 9);
      }
      const ease = Object.fromEntries(
        Object.entries(style.ease).map(([level, mm]) => [
          level,
          mm + (made.proof.ledger.find((row) => row.level === level)?.alteredBy ?? 0),
        ]),
      ) as unknown as Style['ease'];
      const judged = judge(correctedTape(body, alteration), { ...style, ease }, made, each.base);
      // Where seams were shortened the levels do not lie level; the judge of kinks knows no knots between levels.
      const isRaised = alteration.kind === 'length';
      const hasOwnKnots =
        alteration.kind === 'seam' && alteration.at.some(({ height }) => height.kind !== 'level');
      const level = judged.filter(
        ({ bound }) => !(isRaised && bound === 'D1') && !((isRaised || hasOwnKnots) && bound === 'D6'),
      );
      expect(broken(level), name).toEqual([]);
    }
    expect(whole).toBeGreaterThan(COUNT / 3);
  });
});

interface ApartCase extends Omit<Case, 'made'> {
  /** What was altered on each half before. */
  readonly before: readonly Alteration[];
}

/** Cases of a draft whose halves are altered apart, with one more alteration of one half. */
function casesApart(): ApartCase[] {
  const random = randomFrom(SEED + 2);
  return CASES.filter((_, i) => i % 4 === 0).flatMap(({ name, body, style, base: alike }) => {
    const drawn = (['left', 'right'] as const).map((side) => randomAlteration(random, alike, side));
    const before = drawn.flatMap((each) => (each ? [each] : []));
    const base = draftWhole(body, style, null, before);
    const alteration = randomAlteration(random, alike, pick(random, ['left', 'right'] as const));
    return alteration && base.halves && isSound(base) && isApplied(base)
      ? [
          {
            name: `${name}, apart ${JSON.stringify([before, alteration])}`,
            body,
            style,
            base,
            before,
            alteration,
          },
        ]
      : [];
  });
}

const centreOf = ({ pieces }: Draft, side: AlteredSide): readonly Point[] =>
  pieces
    .filter((piece) => piece.side === side && piece.number === 1)
    .flatMap(({ edges }) => edges.filter(({ at }) => at === 'inner').flatMap(({ points }) => points));

describe(`alterations of one half of drafts whose halves are altered apart, seed ${SEED + 2}`, () => {
  const apartCases = casesApart();

  it('move what they name on that half and nothing else', DRAWN, () => {
    let [moved, still] = [0, 0];
    for (const each of apartCases) {
      const { base, before, alteration, name } = each;
      const made = altered(each, ...before, alteration);
      // A centre whose ends move takes the other half's with it.
      const isCentreStill =
        apart(centreOf(base, alteration.side), centreOf(made, alteration.side)) <= STILL_MM;
      if (!isApplied(made)) continue;
      for (const piece of base.pieces) {
        const isOther = piece.side !== alteration.side;
        if (isOther && !isCentreStill) continue;
        const now = made.pieces.find(({ id }) => id === piece.id);
        for (const [i, edge] of piece.edges.entries()) {
          const by = apart(edge.points, now?.edges[i]?.points ?? []);
          if (!isOther && isNamed(alteration, piece, edge)) moved += by > STILL_MM ? 1 : 0;
          else {
            still += 1;
            expectAtMost(by, STILL_MM, `${name}: ${piece.id}/${i}`);
          }
        }
      }
    }
    expect(moved).toBeGreaterThan(apartCases.length);
    expect(still).toBeGreaterThan(10 * apartCases.length);
  });

  it('are taken back by their inverse, and come to the same in any order', DRAWN, () => {
    let restored = 0;
    for (const [n, each] of apartCases.entries()) {
      if (n % 2 === 0) continue;
      const { base, before, alteration, name } = each;
      const list = [...before, alteration, inverseOf(alteration)];
      const made = altered(each, ...list);
      if (!isApplied(made)) continue;
      restored += 1;
      for (const piece of base.pieces)
        for (const [i, edge] of piece.edges.entries()) {
          const points = edgeOf(made, piece, i);
          // With other knots a line is parted into other chords.
          if (addsKnots(alteration, before))
            for (const point of edge.points) expectAtMost(distanceToLine(point, points), CHORDS_MM, name);
          else expectAtMost(apart(edge.points, points), STILL_MM, name);
        }
      expect(altered(each, ...list.reverse()).pieces, name).toStrictEqual(made.pieces);
    }
    expect(restored).toBeGreaterThan(apartCases.length / 4);
  });
});

/** Curves are flattened to chords that leave them by at most 0.02 mm, at either drawing. */
const CHORDS_MM = 0.04;

/** Whether an alteration may add knots to a line that was altered before: those stay when it is taken back. */
const addsKnots = (alteration: Alteration, before: readonly Alteration[]): boolean =>
  before.some(
    ({ kind, side }) => side === alteration.side && (kind === 'seam') === (alteration.kind === 'seam'),
  );

const distanceToLine = ({ x, y }: Point, line: readonly Point[]): number =>
  line.slice(1).reduce((least, end, i) => {
    const start = line[i] as Point;
    const [dx, dy] = [end.x - start.x, end.y - start.y];
    const t = ((x - start.x) * dx + (y - start.y) * dy) / (dx * dx + dy * dy);
    const inside = Math.min(1, Math.max(0, t));
    return Math.min(least, Math.hypot(x - start.x - inside * dx, y - start.y - inside * dy));
  }, Number.POSITIVE_INFINITY);

const edgeOf = (made: Draft, { id }: Piece, i: number): readonly Point[] =>
  made.pieces.find((piece) => piece.id === id)?.edges[i]?.points ?? [];

/** How much an edge's length changed, slice by slice, between heights that it had before and has now, mm. */
function longer(before: readonly Point[], after: readonly Point[]): number {
  const heights = (points: readonly Point[]) => points.map(({ y }) => y);
  const from = Math.max(Math.min(...heights(before)), Math.min(...heights(after)));
  const to = Math.min(Math.max(...heights(before)), Math.max(...heights(after)));
  const slices = 12;
  return Array.from({ length: slices }, (_, i) => from + ((to - from) * i) / slices).reduce(
    (sum, y) =>
      sum +
      Math.abs(
        lengthOf(between(after, y, y + (to - from) / slices)) -
          lengthOf(between(before, y, y + (to - from) / slices)),
      ),
    0,
  );
}

/** The part of an edge between two heights. */
function between(points: readonly Point[], from: number, to: number): Point[] {
  const down = [...points].sort((a, b) => a.y - b.y);
  const cut = (y: number): Point[] => {
    const i = down.findIndex((point) => point.y >= y);
    const [a, b] = [down[i - 1], down[i]];
    return a && b && b.y > y ? [{ x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y }] : [];
  };
  return [...cut(from), ...down.filter(({ y }) => y >= from && y <= to), ...cut(to)];
}

/** What the girths are asked to change by; a level between two heights that were said is left out. */
function askedGirths(alteration: Alteration, made: Draft): Map<LevelName, number> {
  const asked = new Map<LevelName, number>();
  if (alteration.kind === 'edge' || alteration.kind === 'bustPoint')
    for (const { name } of made.levels) asked.set(name, 0);
  if (alteration.kind !== 'seam' || alteration.at.length > 1) return asked;
  const [said] = alteration.at;
  if (said?.height.kind !== 'level') return asked;
  const { level } = said.height;
  asked.set(level, -2 * (said.a + said.b));
  const names = made.levels.map(({ name }) => name);
  const place = names.indexOf(level);
  for (const [i, name] of names.entries())
    if (i !== place && i > 0 && i < names.length - 1) asked.set(name, 0);
  return asked;
}

const correctedTape = (body: Measurements, alteration: Alteration): Measurements =>
  alteration.kind === 'bustPoint'
    ? {
        ...body,
        bustPointWidth: (body.bustPointWidth ?? 0) + 2 * alteration.out,
        neckToBust: (body.neckToBust ?? 0) + alteration.down,
      }
    : body;
