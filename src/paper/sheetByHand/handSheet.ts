// The drafting sheet: one client's draft as steps that a student follows with ruler and curve.

import { estimatedRemark } from '../estimates';
import { DO_NOT_CUT, hasFaults } from '../faults';
import type { PlanInput } from '../placePanels';
import { blockSteps } from './blockSteps';
import { extraSteps } from './extraSteps';
import type { HandSheet } from './handStep';
import { panelSteps } from './panelSteps';
import { tapeFor } from './tape';
import { targetSteps } from './targetSteps';

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
      ...(estimated === null ? [] : [estimated]),
      `All lengths in ${unit}. Each is rounded by itself, so a sum may be one division out; measure every mark from the line that is named, never from the mark before.`,
    ],
    steps:
      draft.pieces.length === 0
        ? []
        : [
            ...targetSteps(input, tape),
            ...blockSteps(input, 'front', tape),
            ...blockSteps(input, 'back', tape),
            ...panelSteps(input, tape),
            ...extraSteps(input, tape),
          ],
  };
}
