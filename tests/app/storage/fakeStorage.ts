// A storage for tests that holds what it is given until told to fail.

import type { StorageLike } from '../../../src/app/storage/storageLike';

export class FakeStorage implements StorageLike {
  readonly kept = new Map<string, string>();
  /** Every key written, in order. */
  readonly written: string[] = [];
  refusesToRead = false;
  refusesToWrite = false;
  /** The most characters it takes in all. */
  room = Number.POSITIVE_INFINITY;

  constructor(kept: Readonly<Record<string, string>> = {}) {
    for (const [key, value] of Object.entries(kept)) this.kept.set(key, value);
  }

  get length(): number {
    return this.kept.size;
  }

  key(index: number): string | null {
    return [...this.kept.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    if (this.refusesToRead) throw new DOMException('read', 'SecurityError');
    return this.kept.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    if (this.refusesToWrite) throw new DOMException('write', 'SecurityError');
    const others = [...this.kept].reduce((sum, [k, v]) => sum + (k === key ? 0 : v.length), 0);
    if (others + value.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    this.written.push(key);
    this.kept.set(key, value);
  }

  removeItem(key: string): void {
    this.kept.delete(key);
  }
}
