// From the gaps of a lacing, read level by level on the mock-up, to what each seam takes in or lets out.

import type { Block } from '../../block/block';
import type { Level } from '../../block/lines/levels';
import { growthUpTo } from '../../block/spring';
import { at, numberAt } from '../../geometry/lists';
import { halfOpenAt, openWidth } from '../../style/openings';
import type { Style } from '../../style/style';
import type { BlockName, PerLevel } from '../../terms/names';
import type { SeamAlteration, SeamEnd, SeamHeight } from '../terms/alteration';
import { isCentre } from '../terms/alterationsOfSide';
import { type ClosedHalf, closedHalfOf, distancesAt, wholeAt } from './closedHalf';

interface GapInput {
  /** Of a draft whose halves are alike. */
  readonly blocks: Readonly<Record<BlockName, Block>>;
  readonly levels: readonly Level[];
  readonly style: Style;
  /** What was read between the laced edges, mm, at those levels where it was. */
  readonly gaps: Partial<PerLevel>;
  /** What was read at the ends of the laced edges. */
  readonly atEnds?: readonly GapAtEnd[];
}

/** A gap at the top edge or the hem. */
interface GapAtEnd {
  readonly end: SeamEnd;
  /** Where the laced edge ends there, mm. */
  readonly y: number;
  /** mm */
  readonly gap: number;
}

type Seam = ClosedHalf['seams'][number];

/**
 * Alterations of the seams with which the lacing would lie as far open as the style asks, at every level where its gap was read. A
 * gap that is too wide is let out. Down to the waist the side seam has its share of that and the wedges of each block the rest, by
 * weight, as when a draft is balanced; below it every seam has as much as the body grows in its zone. Both edges of a seam
 * have half. A level that is not given keeps its girth.
 */
export function shareOverSeams({ blocks, levels, style, gaps, atEnds = [] }: GapInput): SeamAlteration[] {
  const closedHalf = closedHalfOf(blocks, style);
  const seams = closedHalf.seams.filter(({ pieces }) => !isCentre({ kind: 'seam', pieces }));
  const inOrder = closedHalf.lines.flatMap((line) => seams.filter((seam) => seam.line === line));
  const waist = levels.find(({ name }) => name === 'waist');
  if (!waist || inOrder.length === 0) return [];
  const onLevels = levels.flatMap(({ name, y, frontShare }): Read[] => {
    const gap = gaps[name];
    return gap === undefined ? [] : [{ y, frontShare, gap, height: { kind: 'level', level: name } }];
  });
  const onEnds = atEnds.map(
    ({ end, y, gap }): Read => ({ y, frontShare: shareNear(levels, y), gap, height: { kind: 'end', end } }),
  );
  const read = [...onLevels, ...onEnds];
  const zones = zonesOf(inOrder, closedHalf, waist.y, style);
  return inOrder.flatMap((seam, i): SeamAlteration[] => {
    const amounts = read.map((level) => {
      // Of the half body; more than nothing is taken in.
      const half = (openWidth(style.closure) - level.gap) / 2;
      const part = level.y > waist.y ? numberAt(zones, i) : shareOf(seam, inOrder, level, style);
      return { height: level.height, a: (half * part) / 2, b: (half * part) / 2 };
    });
    const isAny = amounts.some(({ a }) => a !== 0);
    return isAny
      ? [{ kind: 'seam', seam: { kind: 'seam', pieces: seam.pieces }, side: 'both', at: amounts }]
      : [];
  });
}

/** A gap, where it was read, and the front's part of the girth there. */
interface Read extends Pick<Level, 'y' | 'frontShare'> {
  readonly gap: number;
  readonly height: SeamHeight;
}

/** The front's part of the girth at the level nearest to a height. */
const shareNear = (levels: readonly Level[], y: number): number =>
  levels.reduce((near, level) => (Math.abs(level.y - y) < Math.abs(near.y - y) ? level : near), at(levels, 0))
    .frontShare;

/** A seam's part of a change of the half girth at a level down to the waist; those of all seams add up to 1. */
function shareOf(seam: Seam, seams: readonly Seam[], level: Pick<Level, 'frontShare'>, style: Style): number {
  const weightOf = ({ line }: Seam): number =>
    line.kind === 'wedge' ? (style.wedges.find(({ id }) => id === line.wedge.id)?.weight ?? 1) : 0;
  const on = (block: BlockName): readonly Seam[] =>
    seams.filter(({ line }) => line.kind === 'wedge' && line.block === block);
  const hasSide = seams.some(({ line }) => line.kind === 'sideSeam');
  const wedgesPart = (block: BlockName): number => {
    const own = block === 'front' ? level.frontShare : 1 - level.frontShare;
    const others = on(block === 'front' ? 'back' : 'front');
    const whole = own + (others.length === 0 && !hasSide ? 1 - own : 0);
    return hasSide ? Math.max(0, whole - style.balance.sideShare / 2) : whole;
  };
  const { line } = seam;
  if (line.kind === 'wedge') {
    const weights = on(line.block).reduce((sum, each) => sum + weightOf(each), 0);
    return (wedgesPart(line.block) * weightOf(seam)) / weights;
  }
  const taken = (['front', 'back'] as const).reduce(
    (sum, block) => sum + (on(block).length > 0 ? wedgesPart(block) : 0),
    0,
  );
  return 1 - taken;
}

/** Each seam's part of what the body grows below the waist: from half way to the seam before it to half way to the next. */
function zonesOf(seams: readonly Seam[], closedHalf: ClosedHalf, y: number, { closure }: Style): number[] {
  const whole = wholeAt(closedHalf, y);
  const open = halfOpenAt('front', closure);
  const girth = whole + open + halfOpenAt('back', closure);
  const distanceOf = distancesAt(closedHalf, y, whole);
  const places = seams.map(({ line }) => open + distanceOf(line));
  const middles = places.slice(1).map((place, i) => growthUpTo((at(places, i) + place) / 2 / girth));
  const ends = [0, ...middles, 1];
  return places.map((_, i) => numberAt(ends, i + 1) - numberAt(ends, i));
}
