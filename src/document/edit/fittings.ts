// What a maker can do to the fittings of a draft, each as a pure step from one list of fittings to the next.

import type { Alteration } from '../../engine';
import type { Book, DraftNotes, SavedDraft } from '../model/book';
import type { Fitting, KeptAlteration } from '../model/fittings';
import { changeDraft } from './commands';

type Fittings = readonly Fitting[];

/** The book with the fittings of the open draft changed. */
export const changeFittings = (book: Book, change: (fittings: Fittings) => Fittings): Book =>
  changeDraft(book, (savedDraft) => {
    const fittings = change(savedDraft.fittings);
    return fittings === savedDraft.fittings ? savedDraft : { ...savedDraft, fittings };
  });

/** Adds a fitting of an ISO day behind the others. */
export const addFitting = (fittings: Fittings, date: string): Fittings => [
  ...fittings,
  { date, note: '', on: true, alterations: [] },
];

/** Takes off the fitting at an index. */
export const removeFitting = (fittings: Fittings, at: number): Fittings =>
  fittings.filter((_, i) => i !== at);

/** Sets the day or the note of a fitting, or switches it on or off. */
export const setFitting = (
  fittings: Fittings,
  at: number,
  change: Partial<Pick<Fitting, 'date' | 'note' | 'on'>>,
): Fittings => fittings.map((fitting, i) => (i === at ? { ...fitting, ...change } : fitting));

/** Adds alterations, switched on, behind the others of a fitting. */
export const addAlterations = (fittings: Fittings, at: number, added: readonly Alteration[]): Fittings =>
  changeAlterations(fittings, at, (kept) => [...kept, ...added.map((each) => ({ ...each, on: true }))]);

/** Puts an alteration in the place of one; it stays switched as it was. */
export const setAlteration = (
  fittings: Fittings,
  at: number,
  alteration: number,
  next: Alteration,
): Fittings =>
  changeAlterations(fittings, at, (kept) =>
    kept.map((each, i) => (i === alteration ? { ...next, on: each.on } : each)),
  );

export const switchAlteration = (fittings: Fittings, at: number, alteration: number, on: boolean): Fittings =>
  changeAlterations(fittings, at, (kept) =>
    kept.map((each, i) => (i === alteration ? { ...each, on } : each)),
  );

export const removeAlteration = (fittings: Fittings, at: number, alteration: number): Fittings =>
  changeAlterations(fittings, at, (kept) => kept.filter((_, i) => i !== alteration));

const changeAlterations = (
  fittings: Fittings,
  at: number,
  change: (alterations: readonly KeptAlteration[]) => readonly KeptAlteration[],
): Fittings =>
  fittings.map((fitting, i) =>
    i === at ? { ...fitting, alterations: change(fitting.alterations) } : fitting,
  );

/** Sets one of a draft's notes. */
export const setNote = (savedDraft: SavedDraft, note: keyof DraftNotes, text: string): SavedDraft => ({
  ...savedDraft,
  notes: { ...savedDraft.notes, [note]: text },
});
