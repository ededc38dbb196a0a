// What a wedge asks for, by where it ends.

import { inches } from '../terms/units';
import {
  absent,
  choice,
  type DataOf,
  type Fields,
  group,
  length,
  listOf,
  optional,
  type Span,
  share,
  someLevels,
  text,
  usualOf,
} from './fields';

/** The levels every draft has; a dart's point is placed from one of them. */
export const DART_LEVELS = ['bust', 'waist', 'hip'] as const;

/** −1 on the centre line, 0 on the bust-point line, +1 at the side seam. */
const STATION: Span = [-1, 1];

/** Where a dart ends within its panel: so far below (+) or above (−) a level, mm. */
const point = group({ from: choice(DART_LEVELS, 'waist'), below: length([-400, 400], 0) });

/**
 * Fullness of the cup: what the wedge takes `below` mm under the bust line, instead of what the levels on both sides would
 * make it. Less leaves more room under the bust point. Nothing comes of it where it does not lie between two levels.
 */
const cup = group({ below: length([5, 150], inches(1)), intake: length([0, 100], 0) });

/** The edges of a shouldered block that a wedge may run up to. */
const UPPER_EDGES = ['shoulder', 'armhole', 'neckline'] as const;
export type UpperEdge = (typeof UPPER_EDGES)[number];

/** Where a wedge may open on a shouldered block: the front's bust dart in the side seam too. */
export type Opening = UpperEdge | 'side';

/**
 * Where a wedge that runs through ends on a shouldered block: in which edge, and at which part of it, from the centre
 * towards the side: from the centre line to the neck point, from there to the tip, from there to the underarm. Left out, the
 * wedge nearest to the bust-point line ends in the middle of the shoulder. A front's dart may open in the side seam instead, `below`
 * the armhole as it is measured along that seam; `part` then means nothing.
 */
const endsAt = group({
  edge: choice([...UPPER_EDGES, 'side']),
  part: share([0, 1], 0.5),
  below: optional(length([15, 300], inches(2))),
});

/** Intake per level, mm; read when sized by hand, a level left out has none. A dart is sewn shut and adds no cloth. */
const dartIntake = someLevels('length', [0, 300]);

/** As a dart's; a wedge that parts two panels may add cloth as a gore does, which is less than nothing. */
const wedgeIntake = someLevels('length', [-200, 300]);

/** The fields of a wedge with these intakes and points. */
const wedge = <const Points extends Fields>(intake: typeof dartIntake, points: Points) =>
  group({
    /** A wedge is known by its id on whichever side it is. */
    id: text(),
    block: choice(['front', 'back']),
    /** Where its axis stands. One number for all levels keeps the axis on one line of the body. */
    station: share(STATION, 0),
    /** Bends the axis at single levels. */
    stationAt: someLevels('share', STATION),
    /**
     * Where the axis was put by hand: its distance from the body's centre, half of a lacing gap counted in. It stays there whatever
     * else changes; a level left out follows the station.
     */
    fromCentre: optional(someLevels('length', [0, 900])),
    /** `balanced`: the engine sizes it from the girths. `manual`: `intake` holds, and the balanced ones work round it. */
    sizing: choice(['balanced', 'manual']),
    intake,
    cup: optional(cup),
    endsAt: optional(endsAt),
    ...points,
    /** Its part of what balancing has to place on this block, against the other wedges' weights. */
    weight: share([0.01, 100], 1),
  });

/**
 * A wedge is cloth taken out between two legs. One that runs through from top edge to hem parts two panels; one on the
 * centre line always runs through. With a point at one end it is an open dart, with a point at both a closed one.
 * `upper` is the point towards the top edge, `lower` the one towards the hem.
 */
export const WEDGE_FIELDS = {
  through: wedge(wedgeIntake, { upper: absent(), lower: absent() }),
  openAtHem: wedge(dartIntake, { upper: point, lower: absent() }),
  openAtTop: wedge(dartIntake, { upper: absent(), lower: point }),
  closed: wedge(dartIntake, { upper: point, lower: point }),
} as const;

/** A wedge as a style file has it: its kind is not written but follows from its points. */
export const WEDGE_IN_FILE = wedge(wedgeIntake, { upper: optional(point), lower: optional(point) });

export const wedgeList = listOf(WEDGE_FIELDS);

export type Wedge = DataOf<typeof wedgeList>[number];
export type WedgeKind = keyof typeof WEDGE_FIELDS;
export type DartPoint = DataOf<typeof point>;
export type EndsAt = DataOf<typeof endsAt>;

/** How far below the armhole a bust dart opens in the side seam where its style does not say, mm. */
export const USUAL_SIDE_BELOW = endsAt.fields.below.usual;

/** Where the shaping of a bust wedge begins when its cup is to be full: about an inch below the bust point. */
export const USUAL_CUP = usualOf(cup);
