// A storage for tests that holds what it is given until told to fail.

import type { StorageLike } from '../../../src/app/storage/device/storageLike';

/** What a call of the storage does instead of its work. */
export type StorageFault = 'throws' | 'isFull' | 'dropsIt';

export class FakeStorage implements StorageLike {
  readonly kept = new Map<string, string>();
  /** Every key written, in order. */
  readonly written: string[] = [];
  refusesToRead = false;
  refusesToWrite = false;
  /** The most characters it takes in all. */
  room = Number.POSITIVE_INFINITY;
  /** Calls made so far. */
  calls = 0;
  /** What the call of this number, and with `from` every later one, does. */
  fault: { readonly call: number; readonly kind: StorageFault; readonly from?: boolean } | null = null;

  constructor(kept: Readonly<Record<string, string>> = {}) {
    for (const [key, value] of Object.entries(kept)) this.kept.set(key, value);
  }

  get length(): number {
    this.count();
    return this.kept.size;
  }

  key(index: number): string | null {
    this.count();
    return [...this.kept.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    if (this.refusesToRead) throw new DOMException('read', 'SecurityError');
    if (this.count()) return null;
    return this.kept.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    if (this.refusesToWrite) throw new DOMException('write', 'SecurityError');
    if (this.count()) return;
    let others = 0;
    for (const [each, text] of this.kept) if (each !== key) others += each.length + text.length;
    if (others + key.length + value.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    this.written.push(key);
    this.kept.set(key, value);
  }

  removeItem(key: string): void {
    if (this.count()) return;
    this.kept.delete(key);
  }

  /** Counts a call; true where it does nothing. */
  private count(): boolean {
    this.calls += 1;
    const { fault } = this;
    if (!fault || !(fault.from ? this.calls >= fault.call : this.calls === fault.call)) return false;
    if (fault.kind === 'throws') throw new DOMException('no', 'SecurityError');
    if (fault.kind === 'isFull') throw new DOMException('full', 'QuotaExceededError');
    return true;
  }
}
