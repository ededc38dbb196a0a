// Turning intake about the bust point from one wedge to another, as a step from one style to the next.

import { type Block, type Level, type Style, type Turn, turnIntake } from '../../../engine';
import { changeEveryWedge } from './wedgeLists';

/**
 * The style with intake turned. All wedges of that half’s front are set by hand at what they take then, in neckline, shoulder and
 * armhole too, so that balancing does not put back what was turned away. The style itself where there is nothing to turn.
 */
export function turnIntakeTo(style: Style, front: Block, levels: readonly Level[], turn: Turn): Style {
  const turned = turnIntake(front, levels, turn);
  if (!turned) return style;
  return changeEveryWedge(openingBy(style, turned.opening), (wedge) => {
    const intake = turned.intakes.get(wedge.id);
    return intake ? { ...wedge, sizing: 'manual', intake } : wedge;
  });
}

/** The style with the front's opening in neckline, shoulder or armhole set, mm; itself where it has none. */
function openingBy(style: Style, opening: number | null): Style {
  const { shoulders } = style;
  if (!shoulders || opening === null) return style;
  return { ...style, shoulders: { ...shoulders, intake: { ...shoulders.intake, front: opening } } };
}
