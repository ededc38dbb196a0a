// The places where a garment fits worst, and what usually cures them.

import type { Point } from '../../geometry/point';
import type { BlockName, LevelName } from '../../terms/names';
import type { FitFigures } from './figures';
import type { Band, Part } from './regions';

/** Something to look at: how much, mm or % as its kind has it, and at which level of which block it is mended. */
export type WornPlace = {
  readonly amount: number;
  readonly part: Part;
  /** Where the wedges that cure it stand; null where the side seam does. */
  readonly block: BlockName | null;
  readonly level: LevelName;
  /** Where on paper it is worst, mm; null for marks, which are many. */
  readonly at: Point | null;
} & (
  | { readonly kind: 'standsOff' | 'pulls'; readonly band: Band }
  | { readonly kind: 'gapes'; readonly edge: 'top' | 'hem' }
  | { readonly kind: 'rides' }
);

/** Below these a maker would not see it on a mock-up. Our own bounds; mm, and % for what pulls. */
const SEEN = { standsOff: 5, pulls: 1.5, gapes: 5, rides: 8 } as const;

const LEVEL_OF: Readonly<Record<Band, LevelName>> = {
  aboveBust: 'overBust',
  bustToUnderBust: 'underBust',
  underBustToWaist: 'waist',
  belowWaist: 'hip',
};

const blockOf = (part: Part): BlockName | null => (part === 'side' ? null : part);

type Levels = readonly { readonly name: LevelName; readonly y: number }[];

/** An edge is mended at a level no farther from it than this, else at the outermost one beyond it, mm. Our own bound. */
const NEAR_MM = 40;

/** The level at which a place of an edge is mended: the nearest one, or that towards which the cloth runs on beyond the edge. */
function levelOfEdge(edge: 'top' | 'hem', { y }: Point, levels: Levels): LevelName {
  const away = (level: Levels[number]): number => Math.abs(level.y - y);
  const [nearest] = [...levels].sort((a, b) => away(a) - away(b));
  const beyond = levels.filter((level) => (edge === 'top' ? level.y < y : level.y > y));
  const next = edge === 'top' ? beyond.at(-1) : beyond[0];
  return (nearest && away(nearest) <= NEAR_MM ? nearest : (next ?? nearest))?.name ?? 'waist';
}

/**
 * The worst places first, each against the least of its kind that is seen; `most` at the most.
 *
 * @param levels of the draft from the top down, mm on paper
 */
export function worstPlaces(figures: FitFigures, levels: Levels, most = 3): WornPlace[] {
  const nearest = (level: LevelName): LevelName =>
    levels.some(({ name }) => name === level) || level === 'overBust' ? level : 'waist';
  const all: WornPlace[] = [
    ...figures.regions.flatMap(({ band, part, standOff, stretch, farthest, tightest }): WornPlace[] => {
      const place = { part, block: blockOf(part), band, level: nearest(LEVEL_OF[band]) };
      return [
        { kind: 'standsOff', amount: standOff, at: farthest, ...place },
        { kind: 'pulls', amount: stretch, at: tightest, ...place },
      ];
    }),
    ...figures.edges.map(
      ({ edge, part, gape, widest }): WornPlace => ({
        kind: 'gapes',
        amount: gape,
        at: widest,
        edge,
        part,
        block: blockOf(part),
        level: levelOfEdge(edge, widest, levels),
      }),
    ),
    ...figures.marks.map(
      ({ level, part, rise }): WornPlace => ({
        kind: 'rides',
        amount: rise,
        at: null,
        level,
        part,
        block: blockOf(part),
      }),
    ),
  ];
  const badness = ({ kind, amount }: WornPlace): number => Math.abs(amount) / SEEN[kind];
  return all
    .filter((place) => badness(place) > 1)
    .sort((a, b) => badness(b) - badness(a))
    .slice(0, most);
}
