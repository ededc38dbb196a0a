// Below the waist the body grows again: where round the body it does so, and what each wedge lets out for it.

import { at, numberAt } from '../geometry/lists';
import { halfOpenAt } from '../style/openings';
import type { Style } from '../style/style';
import type { Wedge } from '../style/wedgeFields';
import { isDart } from '../style/wedgeKind';
import type { BlockName, LevelName } from '../terms/names';
import { type Extent, reaches } from './lines/extent';
import { halfGirth, type Level } from './lines/levels';
import { axisX, onCentre } from './lines/station';

/** The wedges of one block while they are sized. */
export interface BlockWedges {
  readonly block: BlockName;
  /** In order from the centre line. */
  readonly wedges: readonly Wedge[];
  /** Where each of them runs. */
  readonly extents: readonly Extent[];
  readonly levels: readonly Level[];
  /** x of the bust-point line, mm. */
  readonly bustLine: number;
  readonly style: Style;
  /** Room that balanced wedges leave beside them over the usual, mm. */
  readonly room: ReadonlyMap<LevelName, number>;
}

/**
 * The part of the growth of the half girth from waist to hip that a body has made at each tenth of the way from centre front to
 * centre back. Mean of 1,104 women of the 1988 US Army survey (Gordon et al. 1989, NATICK/TR-89/044), their sections taken as
 * ellipses at the waist and superellipses at the hip; the SD is at most .062.
 */
const GROWTH = [0, 0.017, 0.053, 0.122, 0.238, 0.397, 0.578, 0.742, 0.859, 0.941, 1];

/** The part of the growth from centre front up to `part` of the way round to centre back, straight between the tenths. */
export function growthUpTo(part: number): number {
  const tenths = 10 * Math.min(1, Math.max(0, part));
  const i = Math.min(GROWTH.length - 2, Math.floor(tenths));
  return at(GROWTH, i) + (tenths - i) * (at(GROWTH, i + 1) - at(GROWTH, i));
}

/**
 * Sizes the balanced wedges of one block below the waist: each lets out what the body grows in its zone, from the middle of the
 * panel on its one side to the middle of that on its other side; the first zone begins at the body's centre. A wedge that parts
 * two panels may come to add cloth; a dart takes at least nothing. What is left is the side seam's.
 *
 * @param intakes of every wedge by level, mm, settled down to the waist; changed in place
 */
export function springBelowWaist(of: BlockWedges, intakes: readonly Map<LevelName, number>[]): void {
  const { wedges, extents, levels } = of;
  const waist = levels.find(({ name }) => name === 'waist');
  const below = waist ? levels.filter(({ y }) => y > waist.y) : [];
  if (!waist || below.length === 0) return;
  const zones = zonesOfBody(of, waist, intakes);
  for (const level of below) {
    const growth = Math.max(0, halfGirth(level) - halfGirth(waist));
    for (const [i, wedge] of wedges.entries()) {
      if (wedge.sizing !== 'balanced') continue;
      const taken = (intakes[i]?.get('waist') ?? 0) - numberAt(zones, i) * growth;
      const least = isDart(wedge) ? Math.max(0, taken) : taken;
      intakes[i]?.set(level.name, reaches(at(extents, i), level.y) ? least : 0);
    }
  }
}

/** Each wedge's part of the growth of the half girth; one that ends above the waist has none, and parts no zone. */
function zonesOfBody(of: BlockWedges, waist: Level, intakes: readonly Map<LevelName, number>[]): number[] {
  const stays = (_: unknown, i: number): boolean => (at(of.extents, i).lower ?? waist.y) >= waist.y;
  const below = { ...of, wedges: of.wedges.filter(stays), extents: of.extents.filter(stays) };
  const zones = zonesAt(below, waist, intakes.filter(stays));
  return of.wedges.map((wedge) => zones[below.wedges.indexOf(wedge)] ?? 0);
}

function zonesAt(
  { block, wedges, bustLine, style }: BlockWedges,
  waist: Level,
  intakes: readonly Map<LevelName, number>[],
): number[] {
  const taken = intakes.map((each) => each.get('waist') ?? 0);
  const width = taken.reduce((sum, each) => sum + each, waist.net[block]);
  const open = halfOpenAt(block, style.closure);
  // The closed distance of each wedge from the centre edge.
  let before = 0;
  const places = wedges.map((wedge, i) => {
    const x = axisX(wedge, 'waist', bustLine, width, open);
    const place = onCentre(wedge) ? 0 : x - before - numberAt(taken, i) / 2;
    before += numberAt(taken, i);
    return place;
  });
  const grown = (place: number): number => {
    const part = (place + open) / halfGirth(waist);
    return block === 'front' ? growthUpTo(part) : 1 - growthUpTo(1 - part);
  };
  const ends = [...places, waist.net[block]];
  return places.map((place, i) => {
    const inner = i === 0 ? 0 : grown((place + numberAt(places, i - 1)) / 2);
    return Math.max(0, grown((place + numberAt(ends, i + 1)) / 2) - inner);
  });
}
