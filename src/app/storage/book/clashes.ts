// Clients and styles that another tab keeps otherwise. This tab's are kept beside until the user chooses.

import { quarantine } from '../aside/quarantine';
import type { Clash } from '../device/saveStatus';
import type { StorageLike } from '../device/storageLike';
import type { Waiting } from './keptRecords';

interface Held extends Clash {
  /** Where this tab's record lies; null where there was no room for it, or there is none to keep. */
  readonly aside: string | null;
  readonly text: string | null;
}

export class Clashes {
  private readonly held = new Map<string, Held>();

  constructor(
    private readonly storage: StorageLike,
    private readonly now: () => Date,
  ) {}

  has(key: string): boolean {
    return this.held.has(key);
  }

  list(): Clash[] {
    return [...this.held.values()].map(({ key, name }) => ({ key, name }));
  }

  /** Whether all that this tab has of them is kept. */
  areAllBeside(): boolean {
    return [...this.held.values()].every(({ aside, text }) => aside !== null || text === null);
  }

  /** Keeps this tab's record under a key of its own, one for the whole clash. */
  keepBeside({ key, name, text }: Waiting): void {
    const ours = text();
    const before = this.held.get(key);
    if (before?.aside && before.text === ours) return;
    let aside = before?.aside ?? null;
    try {
      if (ours !== null && aside === null) aside = quarantine(this.storage, ours, this.now());
      else if (ours !== null && aside !== null) this.storage.setItem(aside, ours);
    } catch {
      // What lies beside is older than what this tab has, so it counts as not kept.
      this.held.set(key, { key, name: before?.name ?? name, aside: null, text: ours });
      return;
    }
    this.held.set(key, { key, name: before?.name || name, aside, text: ours });
  }

  /** Ends a clash; gives where this tab's record lies. */
  end(key: string): string | null {
    const aside = this.held.get(key)?.aside ?? null;
    this.held.delete(key);
    return aside;
  }
}
