// Where a wedge ends, and the side panel cut in one: each as a pure step from one style to the next.

import {
  type BlockName,
  type DartEnd,
  type DartPoint,
  type Draft,
  inches,
  LEVEL_NAMES,
  POINTS_OF,
  type Style,
  WEDGE_FIELDS,
  type Wedge,
  type WedgeKind,
  withPoints,
  xAt,
} from '../../../engine';
import { changeWedge } from './wedgeLists';

/** Through both edges, open at one of them, or closed within its panel. */
export const WEDGE_KINDS = Object.keys(WEDGE_FIELDS) as WedgeKind[];

/** Heights on the draft, mm downwards, between which the points of a dart are proposed. */
export interface DartSpace {
  readonly top: number;
  readonly bust: number;
  readonly waist: number;
  readonly hem: number;
}

/** The room a wedge's points have on a draft; null where it was not drafted. Edges are taken at their places beside it. */
export function dartSpace(
  { blocks, levels, nodes, span }: Draft,
  block: BlockName,
  id: string,
): DartSpace | null {
  const bust = levels.find(({ name }) => name === 'bust');
  const axis = blocks?.[block].wedges.find((wedge) => wedge.id === id)?.axis;
  if (!span || !bust || !axis) return null;
  const heights = (edge: 'top' | 'hem'): number[] => {
    const places = nodes.filter((node) => node.edge === edge && node.block === block).map(({ at }) => at);
    places.sort((a, b) => a.x - b.x);
    const next = places.findIndex(({ x }) => x >= xAt(axis, span[edge]));
    return places
      .slice(next < 0 ? -2 : Math.max(0, next - 1), next < 0 ? undefined : next + 1)
      .map(({ y }) => y);
  };
  return {
    top: Math.max(...heights('top'), span.highest),
    bust: bust.y,
    waist: span.waist,
    hem: Math.min(...heights('hem'), span.lowest),
  };
}

/**
 * Makes a wedge one of another kind. Points it has already stay, its intakes too; only what a gore adds is let go, for a
 * dart is sewn shut. New points are the usual ones; a lower point that would lie above a new upper one gives way. A wedge on
 * the centre line stays as it is.
 */
export function setEnds(style: Style, id: string, kind: WedgeKind, space: DartSpace): Style {
  return changeWedge(style, id, (wedge) => {
    if (wedge.station <= -1) return wedge;
    const { upper, lower, intake } = wedge;
    const usual = usualPoints(space, kind);
    const has = POINTS_OF[kind];
    const keepsLower = lower && (upper || kind !== 'closed' || isBelow(lower, usual.upper, space));
    return withPoints(
      { ...wedge, intake: has.length > 0 ? withoutGore(intake) : intake },
      {
        upper: has.includes('upper') ? (upper ?? usual.upper) : undefined,
        lower: has.includes('lower') ? (keepsLower ? lower : usual.lower) : undefined,
      },
    );
  });
}

/** Whether a point lies below another; one told from the hip line does. */
function isBelow(point: DartPoint, other: DartPoint, { bust, waist }: DartSpace): boolean {
  const height = ({ from, below }: DartPoint): number =>
    from === 'hip' ? Number.POSITIVE_INFINITY : below + (from === 'bust' ? bust : waist);
  return height(point) > height(other);
}

/** Moves one point of a dart; the other one stays. */
export function setDartPoint(style: Style, id: string, end: DartEnd, point: DartPoint): Style {
  return changeWedge(style, id, (wedge) =>
    withPoints(wedge, { upper: wedge.upper, lower: wedge.lower, [end]: point }),
  );
}

/** Cuts front and back side panel in one, or parts them by a side seam again. */
export function setJoinedSide(style: Style, joined: boolean): Style {
  const { joinedSide: _, ...apart } = style;
  return joined ? { ...apart, joinedSide: true } : apart;
}

/** Points lie this far within the bust point, the waist's fullness and the edges (common practice, no source). mm */
const USUAL = {
  belowBust: inches(1),
  aboveBust: inches(0.5),
  belowWaist: inches(3),
  insideEdge: inches(1),
} as const;

function usualPoints(
  { top, bust, waist, hem }: DartSpace,
  kind: WedgeKind,
): Readonly<Record<DartEnd, DartPoint>> {
  const upper = bust + USUAL.belowBust;
  const below = top + USUAL.insideEdge;
  const aboveBust = kind === 'openAtTop' && bust - USUAL.aboveBust >= below;
  return {
    // Where the top edge lies below the bust, the point is told from the waist, which it is near to.
    upper:
      upper >= below ? { from: 'bust', below: USUAL.belowBust } : { from: 'waist', below: below - waist },
    // From a top edge above the bust a dart runs towards the bust point; else on over the waist.
    lower: aboveBust
      ? { from: 'bust', below: -USUAL.aboveBust }
      : { from: 'waist', below: Math.min(USUAL.belowWaist, hem - USUAL.insideEdge - waist) },
  };
}

const withoutGore = (intake: Wedge['intake']): Wedge['intake'] =>
  Object.fromEntries(
    LEVEL_NAMES.flatMap((level) => {
      const taken = intake[level];
      return taken === undefined ? [] : [[level, Math.max(0, taken)]];
    }),
  );
