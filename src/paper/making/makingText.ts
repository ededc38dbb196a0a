// The making list as plain text, for a message or a shopping note.

import { type Client, formatLength, type SavedDraft, type Unit } from '../../document';
import { estimatedRemark } from '../remarks/estimates';
import { type MakingLine, type MakingSection, WORKSHOP_CARE } from './makingSections';

export interface MakingNames {
  readonly client: string;
  readonly draft: string;
  readonly unit: Unit;
  /** What must be said of the client's lengths before all; null for nothing. */
  readonly remark: string | null;
}

export const makingNames = ({
  client,
  savedDraft,
}: {
  readonly client: Pick<Client, 'name' | 'unit' | 'measurements' | 'estimated'>;
  readonly savedDraft: Pick<SavedDraft, 'name'>;
}): MakingNames => ({
  client: client.name,
  draft: savedDraft.name,
  unit: client.unit,
  remark: estimatedRemark(client),
});

/** "2 × 13¼ in" and the like; empty where there is neither a count nor a length. */
export function amountOf({ count, lengthMm }: MakingLine, unit: Unit): string {
  const length = lengthMm === null ? null : formatLength(lengthMm, unit, { withUnit: true });
  if (count === null || (count === 1 && length !== null)) return length ?? '';
  return length === null ? String(count) : `${count} × ${length}`;
}

/** One line an item, sections parted by a blank line. Line breaks in names become blanks. */
export function makingText(
  sections: readonly MakingSection[],
  { client, draft, unit, remark: estimated }: MakingNames,
): string {
  const title = [client, draft]
    .map((name) => name.replace(/\s+/gu, ' ').trim())
    .filter((name) => name !== '');
  const blocks = sections.map(({ heading, lines, remark }) =>
    [
      heading.toUpperCase(),
      ...lines.map((line) => {
        const details = [amountOf(line, unit), line.note].filter((part) => part !== '').join(' – ');
        return details === '' ? line.item : `${line.item}: ${details}`;
      }),
      `(${remark})`,
    ].join('\n'),
  );
  return `${[`Making list: ${title.join(', ')}`, ...(estimated === null ? [] : [estimated]), ...blocks, WORKSHOP_CARE].join('\n\n')}\n`;
}
