// Writes the making list as plain text, for a message or a shopping note.

import { type Client, formatLength, MAKING_LIST, type SavedDraft, type Unit } from '../../document';
import { estimatedRemark } from '../remarks/estimates';
import { MAKING_SOURCES, type MakingLine, type MakingSection, WORKSHOP_CARE } from './makingSections';

export interface MakingNames {
  readonly client: string;
  readonly draft: string;
  readonly unit: Unit;
  /** The estimated measurements of the client; null where there are none. */
  readonly remark: string | null;
}

/** What stands at the head of a making list. */
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

/** The amount of a line: "2 × 13¼ in"; empty where it has neither a count nor a length. */
export function amountOf({ count, lengthMm }: MakingLine, unit: Unit): string {
  const length = lengthMm === null ? null : formatLength(lengthMm, unit, { withUnit: true });
  if (count === null || (count === 1 && length !== null)) return length ?? '';
  return length === null ? String(count) : `${count} × ${length}`;
}

/** A line for each item, with a blank line between sections. Line breaks in names become blanks. */
export function makingText(
  sections: readonly MakingSection[],
  { client, draft, unit, remark: estimated }: MakingNames,
): string {
  const title = [client, draft]
    .map((name) => name.replace(/\s+/gu, ' ').trim())
    .filter((name) => name !== '');
  const blocks = sections.map(({ heading, lines, care, remark }) =>
    [
      heading.toUpperCase(),
      ...lines.map((line) => {
        const details = [amountOf(line, unit), line.note].filter((part) => part !== '').join(' – ');
        return details === '' ? line.item : `${line.item}: ${details}`;
      }),
      ...(care === '' ? [] : [care]),
      `(${remark})`,
    ].join('\n'),
  );
  return `${[MAKING_LIST.titleOf({ names: title }), ...(estimated === null ? [] : [estimated]), ...blocks, MAKING_SOURCES, WORKSHOP_CARE].join('\n\n')}\n`;
}
