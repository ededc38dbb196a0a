// Drafts and cuts the blocks again with smaller wedges, where balanced wedges leave a panel too narrow or a dart shuts at an edge.

import { type Amendments, NO_AMENDMENTS } from '../block/amendments';
import type { Level } from '../block/lines/levels';
import { movedIn } from '../block/movedIn';
import type { Body } from '../body/body';
import { type BaseDraft, makeBaseDraft } from '../edges/baseDraft';
import { cutApart, type PanelsApart } from '../panels/cutApart';
import type { Style } from '../style/style';
import type { WedgeKind } from '../style/wedgeFields';
import type { DartEnd } from '../style/wedgeKind';
import type { Issue } from '../terms/issue';
import type { BlockName, LevelName } from '../terms/names';

export interface CutDraft {
  readonly baseDraft: BaseDraft;
  readonly apart: PanelsApart;
  /** Issues of the base draft. */
  readonly issues: readonly Issue[];
}

/** A draft is tried again so many times at the most; the first one without a blocking issue is taken. */
const MOST_ROUNDS = 6;

/** A wedge leaves so much more room than a panel lacks, so that few rounds are needed. mm */
const MORE_ROOM_MM = 0.5;

/**
 * Cuts a base draft into panels. Where a balanced wedge leaves a panel too narrow, the wedges of that block leave more room at that
 * level and the side seam takes the rest; a dart that opens too little at an edge is closed before it, or left out where there is
 * no room for that. A note tells of each. Of drafts that are all blocked, the first of those with the fewest errors is taken.
 */
export function cutAgain(
  body: Body,
  style: Style,
  levels: readonly Level[],
  first: Omit<CutDraft, 'apart'>,
): CutDraft {
  const cut = ({ baseDraft, issues }: Omit<CutDraft, 'apart'>): CutDraft => ({
    baseDraft,
    issues,
    apart: cutApart(baseDraft.blocks, style, levels, baseDraft.edges, baseDraft.span),
  });
  const asAsked = cut(first);
  let best = asAsked;
  let draft = asAsked;
  let amendments = NO_AMENDMENTS;
  for (let round = 0; round < MOST_ROUNDS && isBlocked(draft); round += 1) {
    const next = amend(draft, amendments, style);
    if (next === amendments) break;
    amendments = next;
    draft = cut(makeBaseDraft(body, style, levels, amendments));
    if (errorsOf(draft) < errorsOf(best)) best = draft;
  }
  return best;
}

const errorsOf = ({ apart: { issues } }: CutDraft): number =>
  issues.filter(({ severity }) => severity === 'error').length;

const isBlocked = (draft: CutDraft): boolean => errorsOf(draft) > 0;

/** The amendments for the next round; the same object where there is nothing more to amend. */
function amend(draft: CutDraft, amendments: Amendments, style: Style): Amendments {
  const { baseDraft, apart } = draft;
  const extents = new Map(amendments.extents);
  const leftOut = new Set(amendments.leftOut);
  for (const { wedge: id, extent } of apart.shut) {
    const wedge = style.wedges.find((each) => each.id === id);
    const kept = wedge && OWN_POINT[wedge.kind];
    const drafted = wedge && baseDraft.blocks[wedge.block].wedges.find((each) => each.id === id);
    if (!kept || drafted?.extent[kept] !== extent[kept]) continue;
    if (!extents.has(id) && hasRoom(extent)) extents.set(id, extent);
    else if (wedge.sizing === 'balanced') leftOut.add(id);
  }
  const room = {
    front: new Map(amendments.room.front),
    back: new Map(amendments.room.back),
  };
  const stations = new Map(amendments.stations);
  let changes = 0;
  for (const { block, level, lacking } of narrowPlaces(apart.issues, style)) {
    const takes = baseDraft.blocks[block].wedges.some(
      ({ sizing, onCentre, intake }) => sizing === 'balanced' && !onCentre && (intake.get(level) ?? 0) > 0,
    );
    if (takes) room[block].set(level, (room[block].get(level) ?? 0) + lacking + MORE_ROOM_MM);
    else
      for (const [id, station] of movedIn(baseDraft, block, level, style, leftAt(draft.issues, block, level)))
        stations.set(id, { ...stations.get(id), [level]: station });
    changes += 1;
  }
  const isSame =
    changes === 0 && extents.size === amendments.extents.size && leftOut.size === amendments.leftOut.size;
  return isSame ? amendments : { room, stations, extents, leftOut };
}

/** What balancing left to the side seam at a level, mm. */
const leftAt = (issues: readonly Issue[], block: BlockName, level: LevelName): number =>
  issues.reduce(
    (sum, { code, values, at }) =>
      code === 'intakeNotPlaced' && at.block === block && at.level === level ? sum + values.left : sum,
    0,
  );

/** The point that the style sets for an open dart. */
const OWN_POINT: Partial<Record<WedgeKind, DartEnd>> = { openAtHem: 'upper', openAtTop: 'lower' };

/** A closed dart that is shorter is a pleat. mm */
const LEAST_CLOSED_MM = 60;

const hasRoom = ({ upper, lower }: ShutExtent): boolean =>
  upper !== null && lower !== null && lower - upper >= LEAST_CLOSED_MM;

type ShutExtent = PanelsApart['shut'][number]['extent'];

/**
 * Where panels are too narrow, and by how much, mm. A panel too narrow below the waist counts at the waist, whose intake decides.
 */
function narrowPlaces(
  issues: readonly Issue[],
  { joinedSide }: Style,
): { block: BlockName; level: LevelName; lacking: number }[] {
  return issues.flatMap((each) => {
    const { block, level, piece } = each.at;
    if ((each.code !== 'panelTooNarrow' && each.code !== 'panelCrossed') || !block || !level) return [];
    const { width, least } = each.values;
    if (width === undefined || least === undefined) return [];
    const at = level === 'hip' || level === 'highHip' ? 'waist' : level;
    const blocks: BlockName[] = joinedSide && piece?.kind === 'sidePanel' ? ['front', 'back'] : [block];
    return blocks.map((each) => ({ block: each, level: at, lacking: least - width }));
  });
}
