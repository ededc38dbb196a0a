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

/** The worst places first, each against the least of its kind that is seen; `most` at the most. */
export function worstPlaces(
  figures: FitFigures,
  levels: readonly { readonly name: LevelName }[],
  most = 3,
): WornPlace[] {
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
        level: nearest(edge === 'top' ? 'overBust' : 'hip'),
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
