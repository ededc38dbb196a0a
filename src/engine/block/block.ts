// A half block before it is cut apart: the side seam that puts back what the wedges take, and the wedges' legs.

import type { Body } from '../body/body';
import type { SmoothLine } from '../geometry/smoothLine';
import { openAt } from '../style/openings';
import type { Style } from '../style/style';
import type { Wedge } from '../style/wedgeFields';
import { type Issue, issue } from '../terms/issue';
import type { BlockName, LevelName } from '../terms/names';
import { TAPE_TOLERANCE_MM } from '../terms/units';
import { sizeWedges } from './balance';
import { checkExtent, extentOf, shutWhereEmpty, THROUGH } from './extent';
import type { Level } from './levels';
import { lineDown, PAST_BUST_ROUND_MM } from './lineDown';
import type { ShoulderFrame } from './shoulders';
import { onCentre } from './station';
import { type DraftedWedge, draftWedge } from './wedge';

export interface Block {
  readonly name: BlockName;
  /** x of the bust-point line, mm; on the back the same distance from the body's centre back. */
  readonly bustLine: number;
  readonly wedges: readonly DraftedWedge[];
  readonly sideSeam: SmoothLine;
  /** Flat width at each level, mm: closed width and all intakes. */
  readonly width: ReadonlyMap<LevelName, number>;
}

/** What a block is drafted between. */
interface BlockFrame {
  readonly levels: readonly Level[];
  /** Height of the level top edge, mm. */
  readonly top: number;
  /** Null where the panels are strapless. */
  readonly shoulder: ShoulderFrame | null;
}

/**
 * Drafts one block. At each level flat width = closed width + sum of intakes, so that the sewn girth meets its
 * target whatever the wedges do. All lines are monotone between levels and straight down beyond the outermost; with
 * a shoulder, the wedge that runs through goes on up to its middle.
 */
export function draftBlock(
  block: BlockName,
  body: Body,
  { levels, top, shoulder }: BlockFrame,
  style: Style,
): { block: Block; issues: Issue[] } {
  const issues: Issue[] = [];
  const wedges = style.wedges.filter((wedge) => wedge.block === block).sort(fromCentre);
  const bustLine = bustLineOf(block, body, levels, style);
  const extents = wedges.map((wedge) => extentOf(wedge, levels, top));
  const { intakeOf: sized, unplaced } = sizeWedges(block, wedges, extents, levels, bustLine, style, shoulder);
  const darts = new Map(
    wedges.map(({ id }, i) => [id, shutWhereEmpty(extents[i] ?? THROUGH, levels, sized.get(id))]),
  );
  const intakeOf = new Map(
    wedges.map(({ id }) => [id, darts.get(id)?.intake ?? new Map<LevelName, number>()]),
  );
  for (const wedge of wedges) issues.push(...checkExtent(wedge, block, levels, top));
  for (const [level, left] of unplaced)
    if (left > TAPE_TOLERANCE_MM) issues.push(issue('intakeNotPlaced', { left }, { block, level }));

  const width = new Map(
    levels.map((level) => {
      const intakes = wedges.reduce((sum, wedge) => sum + (intakeOf.get(wedge.id)?.get(level.name) ?? 0), 0);
      return [level.name, level.net[block] + intakes];
    }),
  );
  const least = Math.min(...width.values());
  if (bustLine >= least) issues.push(issue('bustPointOffBlock', {}, { block, field: 'bustPointWidth' }));

  // Above the levels only a centre wedge lies between the centre edge and the shoulder.
  const centreTakes = wedges
    .filter(onCentre)
    .reduce((sum, { id }) => sum + ([...(intakeOf.get(id)?.values() ?? [])][0] ?? 0), 0);
  const drafted = wedges.map((wedge) => {
    const dart = darts.get(wedge.id);
    const extent = dart?.extent ?? THROUGH;
    const up = shoulder && extent.upper === null && !onCentre(wedge) ? shoulder : null;
    return draftWedge(wedge, extent, dart?.intake ?? new Map(), {
      levels,
      bustLine,
      width,
      shoulder: up && { ...up.middle, x: up.middle.x + centreTakes + up.intake / 2, intake: up.intake },
    });
  });
  const sideSeam = sideLine(levels, width);
  return { block: { name: block, bustLine, wedges: drafted, sideSeam, width }, issues };
}

/** Where it leans in above the bust it is a cone like the wedges. */
function sideLine(levels: readonly Level[], width: ReadonlyMap<LevelName, number>): SmoothLine {
  const bust = levels.find(({ name }) => name === 'bust');
  return lineDown(
    levels.map(({ name, y }) => ({ y, value: width.get(name) as number })),
    bust ? { bust: bust.y, round: PAST_BUST_ROUND_MM } : null,
  );
}

// The name settles ties, so that the order in which wedges were added changes nothing.
const fromCentre = (a: Wedge, b: Wedge): number =>
  a.station - b.station || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

function bustLineOf(block: BlockName, body: Body, levels: readonly Level[], style: Style): number {
  const half = body.bustPointWidth / 2 - openAt(block, style.closure) / 2;
  if (block === 'front') return half;
  const bust = levels.find((level) => level.name === 'bust') as Level;
  // A wide lacing gap must not push the back's bust-point line onto the centre edge, nor a slim waist leave no room beyond it.
  const slimmest = Math.min(...levels.map((level) => level.net.back));
  return Math.min(Math.max(half, bust.net.back / 4), slimmest / 2);
}
