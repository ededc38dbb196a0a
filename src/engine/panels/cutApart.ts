// Both blocks cut into panels, with their darts settled and the side panel joined, and the seams between them.

import type { Block } from '../block/block';
import type { Level } from '../block/levels';
import type { DraftedEdge } from '../edges/edgeLine';
import type { Style } from '../style/style';
import { type Issue, issue } from '../terms/issue';
import type { Side } from '../terms/names';
import { dartSeam, settleDarts } from './darts';
import type { Panel } from './panel';
import { cutPanels, narrowAt, seamsOf, sideSeamOf } from './panels';
import { seamCrossing } from './seamCrossing';
import type { Seam } from './seamEdge';
import { backSeamOf, joinSides } from './sidePanel';

/**
 * @param reach heights between which panels must be wide enough, mm
 */
export function cutApart(
  blocks: Readonly<Record<Side, Block>>,
  style: Style,
  levels: readonly Level[],
  edges: { readonly top: DraftedEdge; readonly hem: DraftedEdge },
  { highest, lowest }: { readonly highest: number; readonly lowest: number },
): { panels: Panel[]; seams: Seam[]; wanted: number; issues: Issue[] } {
  const front = cutPanels(blocks.front, levels, highest, lowest);
  const back = cutPanels(blocks.back, levels, highest, lowest);
  const issues = [...front.issues, ...back.issues];
  const settle = (panel: Panel): Panel => {
    if (panel.darts.length === 0) return panel;
    const settled = settleDarts(
      panel,
      (dart, edge) => seamCrossing(dartSeam(panel, dart), edges[edge], blocks).y,
    );
    issues.push(...settled.issues);
    return settled.panel;
  };
  const [fronts, backs] = [front.panels.map(settle), back.panels.map(settle)];
  const wanted = front.wanted + back.wanted;
  const [outmost, hindmost] = [
    fronts.find(({ outer }) => outer === blocks.front.sideSeam),
    backs.find(({ outer }) => outer === blocks.back.sideSeam),
  ];
  if (style.joinedSide && outmost && hindmost) {
    const joined = joinSides(outmost, hindmost, levels.find(({ name }) => name === 'waist')?.y ?? 0);
    if (joined) {
      const narrow = narrowAt(joined, levels, highest, lowest);
      const [before, behind] = [fronts.slice(0, -1), backs.slice(0, -1)];
      return {
        panels: [...before, joined, ...behind],
        // In sewing order: from centre front to the side panel, then on to centre back.
        seams: [...seamsOf([...before, joined]), ...backSeamOf(joined, behind), ...seamsOf(behind).reverse()],
        wanted: wanted - 1,
        issues: narrow ? [...issues, narrow] : issues,
      };
    }
    issues.push(issue('sidePanelAtCentre', 'block', { field: 'joinedSide' }));
  }
  return {
    panels: [...fronts, ...backs],
    seams: [...seamsOf(fronts), ...sideSeamOf(outmost, hindmost), ...seamsOf(backs).reverse()],
    wanted,
    issues,
  };
}
