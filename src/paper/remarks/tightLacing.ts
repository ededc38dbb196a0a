// Remarks on a strong reduction: how far it is past the usual, and whether the cautions were read.

import {
  type Client,
  formatLength,
  isRead,
  issueSentence,
  REMARKS,
  type SavedDraft,
  wantsReading,
} from '../../document';
import type { Draft } from '../../engine';

const TEXTS = REMARKS.tightLacing;

interface Laced {
  readonly draft: Draft;
  readonly client: Pick<Client, 'unit'>;
  readonly savedDraft: Pick<SavedDraft, 'style' | 'acknowledgedReduction' | 'acknowledgedRibs'>;
}

/** Whether the print must carry the cautions. */
export const isTightlyLaced = ({ draft }: Pick<Laced, 'draft'>): boolean => draft.issues.some(wantsReading);

/** The sentences to print; none where no reduction is past the usual and none was acknowledged. */
export function tightLacingLines({ draft, client, savedDraft }: Laced): string[] {
  const high = draft.issues.filter(wantsReading);
  const context = { unit: client.unit, style: savedDraft.style };
  return [
    ...high.map((issue) => issueSentence(issue, { ...context, read: isRead(issue, savedDraft) })),
    ...acknowledged(savedDraft, client.unit),
    ...(high.every((issue) => isRead(issue, savedDraft)) ? [] : [TEXTS.notAcknowledged]),
  ];
}

/** The reductions that the cautions were acknowledged for, even where the draft has others now. */
function acknowledged(
  { acknowledgedReduction: waist, acknowledgedRibs: ribs = 0 }: Laced['savedDraft'],
  unit: Laced['client']['unit'],
): string[] {
  if (waist === null) return [];
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const lengths = { waist: written(waist), ribs: written(ribs) };
  if (ribs <= 0) return [TEXTS.acknowledged.waist(lengths)];
  return [waist > 0 ? TEXTS.acknowledged.both(lengths) : TEXTS.acknowledged.ribs(lengths)];
}
