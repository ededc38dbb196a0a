// Moves the book of the first layout into records. That book stays where it is until everything of it lies under another key.

import { quarantineOnce } from '../aside/quarantine';
import { type SaveFault, saveFaultOf } from '../device/saveStatus';
import type { StorageLike } from '../device/storageLike';
import type { OpenedBook } from '../records/openKept';
import { pack } from '../records/packing';
import { BOOK_KEY, DEFLATED_MARK } from '../records/record';

export class Move {
  private isDone = false;

  constructor(
    private readonly storage: StorageLike,
    private readonly now: () => Date,
    private readonly moves: NonNullable<OpenedBook['moves']>,
    private earlier: string,
  ) {}

  /** What the mark of the storage says while the book is being moved, so that one that was broken off goes on at the next start. */
  moving(): string | null {
    return this.isDone ? null : this.moves.invented;
  }

  /** Once all records are written: puts aside what has none, then removes the earlier book. Null where that is done. */
  end(): SaveFault | null {
    if (this.isDone) return null;
    try {
      for (const text of this.moves.aside)
        if (quarantineOnce(this.storage, text, this.now()) === null) return 'full';
      // A tab with an earlier build may have written it since: then it stays, and the next start says so.
      if (this.storage.getItem(BOOK_KEY) === this.earlier) this.storage.removeItem(BOOK_KEY);
      if (this.storage.getItem(BOOK_KEY) === this.earlier) return 'refused';
    } catch (error) {
      return saveFaultOf(error);
    }
    this.isDone = true;
    return null;
  }

  /** Writes the earlier book in less room, over itself, where there is none left for its records; false where that is no help. */
  shrink(): boolean {
    if (this.isDone || this.earlier.startsWith(DEFLATED_MARK)) return false;
    try {
      const smaller = DEFLATED_MARK + pack(this.earlier);
      if (smaller.length >= this.earlier.length || this.storage.getItem(BOOK_KEY) !== this.earlier)
        return false;
      this.storage.setItem(BOOK_KEY, smaller);
      this.earlier = smaller;
      return true;
    } catch {
      return false;
    }
  }
}
