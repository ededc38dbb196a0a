// The texts of what every step is made of: fields, dialogs, the list of issues, and the words for girths.

import { catalogue, listed, plural } from '../catalogue';

export const FIELDS = catalogue({
  ifKnown: 'if known',
  needed: 'needed',
  close: 'Close',
  readCautions: 'Read the cautions',
  downloadBackup: 'Download a backup',
  turnSign: ({ field }: { field: string }) => `Turn the sign over: ${field}`,
  /** Behind that button, where clients cannot be written into the file. */
  backupWithout: ({ names }: { names: readonly string[] }) =>
    `Not in the backup, since this page cannot open them: ${listed(names)}.`,
  backupNotFetched:
    'A part of the page could not be fetched, so no backup was written. Check the connection and try again, or reload the page.',
});

export const ISSUES = catalogue({
  label: 'Cautions',
  severities: { error: 'Cannot be cut', warn: 'Look again', note: 'Note' },
  notes: ({ count }: { count: number }) =>
    plural(count, { one: 'One note on this draft', other: `${count} notes on this draft` }),
  toMend: ({ count }: { count: number }) => `${count} to mend in the draft`,
  toLookAt: ({ count }: { count: number }) => `${count} to look at in the draft`,
  notMeasured: 'Not yet measured',
  draftNeeds: ({ measurements }: { measurements: readonly string[] }) =>
    `The draft needs ${measurements.join('; ')}.`,
  goToMeasurements: 'Go to the measurements',
});

/** Said behind a girth or of it. */
export const GIRTHS = catalogue({
  laced: 'laced',
  sewn: 'sewn',
  alongEdge: 'along the edge',
  aboveTop: 'above the top edge',
  belowHem: 'below the hem',
  atEdge: 'at the edge',
});
