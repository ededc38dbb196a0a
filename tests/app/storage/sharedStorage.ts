// One storage seen by several tabs, each of which hears of the others' writes when it is told to.

import { FakeStorage } from './fakeStorage';

interface Heard {
  readonly key: string;
  readonly value: string | null;
}

export class SharedStorage extends FakeStorage {
  /** What this tab has not heard yet, oldest first. */
  readonly inbox: Heard[] = [];
  private others: SharedStorage[] = [];

  /** Views of one storage for so many tabs. */
  static tabs(count: number): SharedStorage[] {
    const first = new SharedStorage();
    const all = Array.from({ length: count }, () => new SharedStorage());
    for (const each of all) {
      Object.assign(each, { kept: first.kept });
      each.others = all.filter((other) => other !== each);
    }
    return all;
  }

  override setItem(key: string, value: string): void {
    const before = this.kept.get(key);
    super.setItem(key, value);
    if (before !== value) for (const other of this.others) other.inbox.push({ key, value });
  }

  override removeItem(key: string): void {
    const wasThere = this.kept.has(key);
    super.removeItem(key);
    if (wasThere) for (const other of this.others) other.inbox.push({ key, value: null });
  }
}
