// Writes the whole book as one file; a client stands in it in the shape that the headless drafter takes.

import type { Book } from '../book';
import type { Fitting } from '../fittings';
import { fittingsWritten } from './fittingForm';

/** The mark that tells a backup from any other file. */
export const BACKUP_KIND = 'staywright backup';

/**
 * The book as text; its clients must all be opened. In a backup `unit` says in which unit the numbers are, always mm; the unit a client is shown in
 * stands as `shownIn`.
 *
 * @param madeOn ISO day
 */
export function writeBackup(book: Book, madeOn: string): string {
  const { clients, unopened: _, ...rest } = book;
  const written = clients.map(({ name, unit, measurements, ...client }) => ({
    name,
    unit: 'mm',
    measurements,
    shownIn: unit,
    ...client,
    drafts: client.drafts.map((draft) => ({
      ...draft,
      fittings: fittingsWritten(draft.fittings),
      comparison: draft.comparison && withFittings(draft.comparison),
    })),
    prints: client.prints.map(withFittings),
  }));
  return `${JSON.stringify({ kind: BACKUP_KIND, madeOn, ...rest, clients: written }, null, 1)}\n`;
}

const withFittings = <T extends { readonly fittings?: readonly Fitting[] }>(kept: T): object =>
  kept.fittings ? { ...kept, fittings: fittingsWritten(kept.fittings) } : kept;
