// What a garment can be seen beside: the same without what fittings altered, the one saved to compare with, the client's other drafts.

import { alterationsOf, type Client, type SavedDraft, WORN } from '../../document';
import type { Draft, Style } from '../../engine';
import { formatDay } from '../components/files/formatDay';
import { draftOfSide } from '../store/storeContext';

export interface Comparison {
  readonly key: string;
  readonly label: string;
  readonly style: Style;
  readonly draft: () => Draft;
}

/** Drafts as they were made; each is sewn on the client as she is measured now. */
export function comparisonsOf(client: Client, open: SavedDraft): readonly Comparison[] {
  const { comparison, fittings, style } = open;
  return [
    ...(alterationsOf(fittings).length > 0
      ? [
          {
            key: 'unaltered',
            label: WORN.compare.unaltered,
            style,
            draft: () => draftOfSide(client, { style }, null),
          },
        ]
      : []),
    ...(comparison
      ? [
          {
            key: 'saved',
            label: WORN.compare.saved({ name: comparison.name ?? null, day: formatDay(comparison.on) }),
            style: comparison.style,
            draft: () => draftOfSide(comparison, comparison, null),
          },
        ]
      : []),
    ...client.drafts
      .filter(({ id }) => id !== open.id)
      .map((other) => ({
        key: `draft ${other.id}`,
        label: other.name,
        style: other.style,
        draft: () => draftOfSide(client, other, null),
      })),
  ];
}
