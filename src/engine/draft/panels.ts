// Cutting the two blocks apart: which panel lies between which legs, and which edges are sewn together.

import { combine, leastBetween, type SmoothLine, straightDown } from '../geometry/smoothLine';
import { type Issue, issue } from '../issue';
import type { Block } from './block';
import type { Level } from './levels';
import { LEAST_PANEL_MM, type Side } from './types';

/** What lies between two wedges, before its ends are trued. */
export interface Panel {
  readonly id: string;
  readonly side: Side;
  /** Counted from the centre line, from 1. */
  readonly number: number;
  /** Edge nearer the centre line; for the first panel the centre edge itself. */
  readonly inner: SmoothLine;
  /** Edge nearer the side; for the last panel the side seam. */
  readonly outer: SmoothLine;
  /** Id of the wedge that bounds it, towards the side where there are two; null on a block without wedges. */
  readonly wedge: string | null;
}

/** One long edge of a panel. */
export interface Leg {
  readonly panel: Panel;
  readonly which: 'inner' | 'outer';
}

/** Two edges that are sewn together, or (`b` null) a centre edge that meets its mirror image. */
export interface Seam {
  readonly id: string;
  readonly kind: 'wedge' | 'side' | 'centre';
  readonly a: Leg;
  readonly b: Leg | null;
}

export const lineOf = (leg: Leg): SmoothLine => leg.panel[leg.which];

/**
 * Panels of a block between heights `top` and `hem`, mm. A panel under {@link LEAST_PANEL_MM} gets a blocking issue;
 * one whose edges meet or cross is not made. `wanted` is how many panels the wedges ask for, made or not.
 */
export function cutPanels(
  block: Block,
  levels: readonly Level[],
  top: number,
  hem: number,
): { panels: Panel[]; wanted: number; issues: Issue[] } {
  const issues: Issue[] = [];
  const panels: Panel[] = [];
  const centre = block.wedges.find((wedge) => wedge.onCentre);
  // A second wedge on the centre line cuts a panel of no width, which is refused.
  const cuts = block.wedges.filter((wedge) => wedge !== centre);
  for (let i = 0; i <= cuts.length; i += 1) {
    const inner = i === 0 ? (centre?.outerLeg ?? straightDown(0)) : cuts[i - 1]?.outerLeg;
    const outer = i === cuts.length ? block.sideSeam : cuts[i]?.innerLeg;
    if (!inner || !outer) continue;
    const wedge = cuts[i] ?? cuts[i - 1] ?? centre;
    const panel: Panel = {
      id: `${block.side}-${i + 1}`,
      side: block.side,
      number: i + 1,
      inner,
      outer,
      wedge: wedge?.id ?? null,
    };
    const narrow = narrowAt(panel, levels, top, hem);
    if (narrow) issues.push(narrow);
    if (narrow?.code !== 'panelCrossed') panels.push(panel);
  }
  return { panels, wanted: cuts.length + 1, issues };
}

/** The blocking issue of a panel that is too narrow, or crossed, somewhere between two heights, mm; null when it is not. */
export function narrowAt(panel: Panel, levels: readonly Level[], from: number, to: number): Issue | null {
  const least = leastBetween(combine(panel.outer, 1, panel.inner, -1), from, to);
  if (least.x >= LEAST_PANEL_MM) return null;
  return issue(
    least.x < CROSSED_MM ? 'panelCrossed' : 'panelTooNarrow',
    'block',
    {
      block: panel.side,
      piece: panel.id,
      level: nearest(levels, least.y),
      ...(panel.wedge === null ? {} : { wedge: panel.wedge }),
    },
    { width: least.x, least: LEAST_PANEL_MM },
  );
}

// Narrower than this two edges are one line to a pair of shears.
const CROSSED_MM = 1;

/** The seams of one block and its centre edge, from the centre to the side. */
export function seamsOf(panels: readonly Panel[]): Seam[] {
  return panels.flatMap((panel): Seam[] => {
    const leg: Leg = { panel, which: 'inner' };
    if (panel.number === 1) return [{ id: `${panel.side}-centre`, kind: 'centre', a: leg, b: null }];
    const neighbour = panels.find((other) => other.number === panel.number - 1);
    if (!neighbour) return [];
    return [
      { id: `${neighbour.id}/${panel.id}`, kind: 'wedge', a: { panel: neighbour, which: 'outer' }, b: leg },
    ];
  });
}

/** The seam between the outermost panels, where both were made. */
export function sideSeamOf(front: Panel | undefined, back: Panel | undefined): Seam[] {
  if (!front || !back) return [];
  return [
    { id: 'side', kind: 'side', a: { panel: front, which: 'outer' }, b: { panel: back, which: 'outer' } },
  ];
}

function nearest(levels: readonly Level[], y: number): Level['name'] {
  let best = levels[0] as Level;
  for (const level of levels) if (Math.abs(level.y - y) < Math.abs(best.y - y)) best = level;
  return best.name;
}
