// What is printed of a draft that is drawn in: how far past the usual, and whether the cautions were read.

import {
  type Client,
  formatLength,
  isRead,
  issueSentence,
  type SavedDraft,
  wantsReading,
} from '../../document';
import type { Draft } from '../../engine';

interface Laced {
  readonly draft: Draft;
  readonly client: Pick<Client, 'unit'>;
  readonly savedDraft: Pick<SavedDraft, 'style' | 'acknowledgedReduction' | 'acknowledgedRibs'>;
}

/** The cautions themselves belong on the print. */
export const isTightlyLaced = ({ draft }: Pick<Laced, 'draft'>): boolean => draft.issues.some(wantsReading);

/** A sentence or two each; none where nothing is drawn in past the usual and nothing was acknowledged. */
export function tightLacingLines({ draft, client, savedDraft }: Laced): string[] {
  const high = draft.issues.filter(wantsReading);
  const context = { unit: client.unit, style: savedDraft.style };
  return [
    ...high.map((issue) => issueSentence(issue, { ...context, read: isRead(issue, savedDraft) })),
    ...acknowledged(savedDraft, client.unit),
    ...(high.every((issue) => isRead(issue, savedDraft))
      ? []
      : ['The cautions for this reduction have not been acknowledged.']),
  ];
}

/** What the cautions were acknowledged for, whatever has become of it since. */
function acknowledged(
  { acknowledgedReduction: waist, acknowledgedRibs: ribs = 0 }: Laced['savedDraft'],
  unit: Laced['client']['unit'],
): string[] {
  if (waist === null) return [];
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const parts = [
    ...(waist > 0 || ribs === 0 ? [`a waist reduction of ${written(waist)}`] : []),
    ...(ribs > 0 ? [`an under-bust reduction of ${written(ribs)}`] : []),
  ];
  return [`The cautions for ${parts.join(' and ')} were read and acknowledged.`];
}
