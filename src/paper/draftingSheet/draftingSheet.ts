// The drafting sheet: one client's draft as steps that a student follows with ruler and curve.

import { HANDS, type Hand, type Piece, styleOfHand } from '../../engine';
import { estimatedRemark } from '../estimates';
import { DO_NOT_CUT, hasFaults } from '../faults';
import type { PlanInput } from '../placePanels';
import { tightLacingLines } from '../tightLacing';
import { bandSteps } from './bandSteps';
import { blockSteps } from './blockSteps';
import type { HandSheet, HandStep } from './draftingStep';
import { extraSteps } from './extraSteps';
import { panelSteps } from './panelSteps';
import { type Tape, tapeFor } from './tape';
import { targetSteps } from './targetSteps';

const SIDES_DIFFER =
  'The two sides differ: the left half and the right half are each drafted by themselves, from girths that are twice that side’s part. Cut each panel once; a right front and a left back are traced face down.';

/** The steps of one half, drafted by itself. */
function halfSteps(input: PlanInput, hand: Hand, tape: Tape): HandStep[] {
  const half = input.draft.halves?.[hand];
  if (!half) return [];
  // Drafted alone a half is cut as a pair; of two that differ each piece is cut once.
  const once = (piece: Piece): Piece => ({ ...piece, cut: { count: 1, onFold: false } });
  const style = styleOfHand(input.sheet.style, hand);
  // A zip in the side is in the left one.
  const { sideZip, ...closure } = style.closure;
  const zipped = sideZip && hand === 'left' ? { sideZip } : {};
  const own = {
    ...input,
    draft: { ...half, pieces: half.pieces.map(once), extras: half.extras.map(once) },
    sheet: { ...input.sheet, style: { ...style, closure: { ...closure, ...zipped } } },
  };
  const steps = [
    ...targetSteps(own, tape),
    ...blockSteps(own, 'front', tape),
    ...blockSteps(own, 'back', tape),
    ...panelSteps(own, tape),
    ...bandSteps(own, tape),
  ];
  const name = hand === 'left' ? 'Left half' : 'Right half';
  return steps.map((step) => ({
    ...step,
    heading: `${name}: ${step.heading.charAt(0).toLowerCase()}${step.heading.slice(1)}`,
  }));
}

/**
 * The sheet in the client's unit, every length to the nearest 1/16 in or mm. Who draws by it comes out within one division of
 * the tape of the engine's points at every level. A draft without pieces has no steps.
 */
export function handSheet(input: PlanInput): HandSheet {
  const { draft, client, sheet, date } = input;
  const tape = tapeFor(client.unit);
  const estimated = estimatedRemark(client);
  const unit =
    client.unit === 'in' ? 'inches, to the nearest 1/16' : 'centimetres, to the nearest millimetre';
  return {
    client: client.name,
    draft: sheet.name,
    date,
    warning: hasFaults(input) ? DO_NOT_CUT : null,
    remarks: [
      ...(draft.halves ? [SIDES_DIFFER] : []),
      ...(estimated === null ? [] : [estimated]),
      ...tightLacingLines(input),
      `All lengths in ${unit}. Each is rounded by itself, so a sum may be one division out; measure every mark from the line that is named, never from the mark before.`,
    ],
    steps:
      draft.pieces.length === 0
        ? []
        : draft.halves
          ? [...HANDS.flatMap((hand) => halfSteps(input, hand, tape)), ...extraSteps(input, tape)]
          : [
              ...targetSteps(input, tape),
              ...blockSteps(input, 'front', tape),
              ...blockSteps(input, 'back', tape),
              ...panelSteps(input, tape),
              ...bandSteps(input, tape),
              ...extraSteps(input, tape),
            ],
  };
}
