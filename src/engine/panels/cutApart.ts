// Both blocks cut into panels, with their darts settled and the side panel joined, and the seams between them.

import type { Block } from '../block/block';
import type { Level } from '../block/lines/levels';
import { endOfDart } from '../block/shoulders/upperEdges';
import type { DraftedEdge } from '../edges/edgeLine';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { BlockName } from '../terms/names';
import { clearDarts, dartSeam, type ShutDart } from './darts';
import type { Panel } from './panel';
import { cutPanels, isSurelyWide, narrowAt, seamsOf, sideSeamOf } from './panels';
import { seamCrossing } from './seamCrossing';
import type { Seam } from './seamEdge';
import { backSeamOf, joinSides } from './sidePanel';

export interface PanelsApart {
  readonly panels: readonly Panel[];
  readonly seams: readonly Seam[];
  /** How many panels the wedges ask for, made or not. */
  readonly expectedCount: number;
  /** Darts that were refused where they shut at an edge. */
  readonly shut: readonly ShutDart[];
  /** Every panel is wide enough at any height and none has a dart: between other heights they are cut apart alike. */
  readonly areSurelyWide: boolean;
  readonly issues: readonly Issue[];
}

/**
 * Cuts both blocks into panels, and finds the seams between them in sewing order.
 *
 * @param reach heights between which panels must be wide enough, mm
 */
export function cutApart(
  blocks: Readonly<Record<BlockName, Block>>,
  style: Style,
  levels: readonly Level[],
  edges: { readonly top: DraftedEdge; readonly hem: DraftedEdge },
  { highest, lowest }: { readonly highest: number; readonly lowest: number },
): PanelsApart {
  const front = cutPanels(blocks.front, levels, highest, lowest);
  const back = cutPanels(blocks.back, levels, highest, lowest);
  const issues = [...front.issues, ...back.issues];
  const shut: ShutDart[] = [];
  const withClearDarts = (panel: Panel): Panel => {
    if (panel.darts.length === 0) return panel;
    const cleared = clearDarts(
      panel,
      (dart, edge) =>
        (edge === 'top' ? endOfDart(blocks[panel.block].upper, dart.wedge)?.at.point.y : undefined) ??
        seamCrossing(dartSeam(panel, dart), edges[edge], blocks).y,
    );
    issues.push(...cleared.issues);
    shut.push(...cleared.shut);
    return cleared.panel;
  };
  const fronts = front.panels.map(withClearDarts);
  const backs = back.panels.map(withClearDarts);
  const expectedCount = front.expectedCount + back.expectedCount;
  const areSurelyWide = front.areSurelyWide && back.areSurelyWide;
  const [outmost, hindmost] = [
    fronts.find(({ outer }) => outer === blocks.front.sideSeam),
    backs.find(({ outer }) => outer === blocks.back.sideSeam),
  ];
  if (style.joinedSide && outmost && hindmost) {
    const joined = joinSides(outmost, hindmost, levels.find(({ name }) => name === 'waist')?.y ?? 0);
    if (joined) {
      const isWide = isSurelyWide(joined);
      const narrow = isWide ? null : narrowAt(joined, levels, highest, lowest);
      const before = fronts.slice(0, -1);
      const behind = backs.slice(0, -1);
      return {
        panels: [...before, joined, ...behind],
        // In sewing order: from centre front to the side panel, then on to centre back.
        seams: [...seamsOf([...before, joined]), ...backSeamOf(joined, behind), ...seamsOf(behind).reverse()],
        expectedCount: expectedCount - 1,
        shut,
        areSurelyWide: areSurelyWide && isWide,
        issues: narrow ? [...issues, narrow] : issues,
      };
    }
    issues.push(issue('sidePanelAtCentre', {}, { field: 'joinedSide' }));
  }
  return {
    panels: [...fronts, ...backs],
    seams: [...seamsOf(fronts), ...sideSeamOf(outmost, hindmost), ...seamsOf(backs).reverse()],
    expectedCount,
    shut,
    areSurelyWide,
    issues,
  };
}
