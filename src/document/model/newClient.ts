// A client as she is added to the book.

import { DEFAULT_STYLE, UNMEASURED } from '../../engine';
import type { Client, DraftNotes, SavedDraft } from './book';

/** A client with nothing measured yet and one draft in the default style, which is open. */
export const newClient = ({
  draft,
  ...own
}: Pick<Client, 'id' | 'name' | 'unit'> & { readonly draft: Pick<SavedDraft, 'id' | 'name'> }): Client => ({
  ...own,
  measurements: UNMEASURED,
  takenOn: null,
  earlier: [],
  readings: {},
  estimated: [],
  archived: false,
  lastUsed: null,
  drafts: [newDraft(draft)],
  openDraft: draft.id,
  prints: [],
});

/** A draft in the default style. */
export const newDraft = (own: Pick<SavedDraft, 'id' | 'name'>): SavedDraft => ({
  ...own,
  style: DEFAULT_STYLE,
  acknowledgedReduction: null,
  comparison: null,
  fittings: [],
  notes: NO_NOTES,
});

/** A draft of which nothing was written. */
export const NO_NOTES: DraftNotes = { cloth: '', event: '', heel: '', bra: '' };

/** The id that every invented client had in books of earlier builds, so that it tells nobody apart. */
export const SHARED_ID = 'demo';
