// The drafting sheet: one client's draft as steps to draw with ruler and curve.

import { DRAFTING_SHEET, inSentence } from '../../document';
import { type Piece, SIDES, type Side, styleOfSide } from '../../engine';
import type { PlanInput } from '../layout/planInput';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedRemark } from '../remarks/estimates';
import { tightLacingLines } from '../remarks/tightLacing';
import type { DraftingSheet, DraftingStep } from './elements/draftingStep';
import { type SheetLengths, sheetLengths } from './elements/sheetLengths';
import { bandSteps } from './steps/bandSteps';
import { blockSteps } from './steps/blockSteps';
import { extraSteps } from './steps/extraSteps';
import { panelSteps } from './steps/panelSteps';
import { targetSteps } from './steps/targetSteps';

/** The steps of one half, drafted by itself. */
function halfSteps(input: PlanInput, side: Side, lengths: SheetLengths): DraftingStep[] {
  const half = input.draft.halves?.[side];
  if (!half) return [];
  // The pieces of a half are cut as pairs where both sides are alike; where they differ each is cut once.
  const once = (piece: Piece): Piece => ({ ...piece, cut: { count: 1, onFold: false } });
  const style = styleOfSide(input.savedDraft.style, side);
  // A side zip is in the left side seam.
  const { sideZip, ...closure } = style.closure;
  const zipped = sideZip && side === 'left' ? { sideZip } : {};
  const own = {
    ...input,
    draft: { ...half, pieces: half.pieces.map(once), extras: half.extras.map(once) },
    savedDraft: { ...input.savedDraft, style: { ...style, closure: { ...closure, ...zipped } } },
  };
  const steps = [
    ...targetSteps(own, lengths),
    ...blockSteps(own, 'front', lengths),
    ...blockSteps(own, 'back', lengths),
    ...panelSteps(own, lengths),
    ...bandSteps(own, lengths),
  ];
  return steps.map((step) => ({
    ...step,
    heading: DRAFTING_SHEET.ofHalf[side]({ heading: inSentence(step.heading) }),
  }));
}

/**
 * The sheet in the client's unit, with every length to the nearest 1/16 in or mm. A block drawn from it is within one division of
 * the engine's points at every level. A draft without pieces has no steps.
 */
export function draftingSheet(input: PlanInput): DraftingSheet {
  const { draft, client, savedDraft, date } = input;
  const lengths = sheetLengths(client.unit);
  const estimated = estimatedRemark(client);
  return {
    client: client.name,
    draft: savedDraft.name,
    date,
    warning: hasErrors(input) ? DO_NOT_CUT : null,
    remarks: [
      ...(draft.halves ? [DRAFTING_SHEET.sidesDiffer] : []),
      ...(estimated === null ? [] : [estimated]),
      ...tightLacingLines(input),
      DRAFTING_SHEET.lengths[client.unit],
    ],
    steps:
      draft.pieces.length === 0
        ? []
        : draft.halves
          ? [...SIDES.flatMap((side) => halfSteps(input, side, lengths)), ...extraSteps(input, lengths)]
          : [
              ...targetSteps(input, lengths),
              ...blockSteps(input, 'front', lengths),
              ...blockSteps(input, 'back', lengths),
              ...panelSteps(input, lengths),
              ...bandSteps(input, lengths),
              ...extraSteps(input, lengths),
            ],
  };
}
