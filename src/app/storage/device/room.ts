// A storage that counts how much of its room is taken, so that a user is told before it is full.

import { saveFaultOf } from './saveStatus';
import type { StorageLike } from './storageLike';

/** What browsers give one address, in letters of keys and values; 10 MB of two bytes each. */
const USUAL_ROOM = 5_242_880;

/** From this part of the room on it is said. */
export const NEARLY_FULL = 0.8;

export class CountedStorage implements StorageLike {
  private readonly lengths = new Map<string, number>();
  private sum = 0;
  private most = USUAL_ROOM;

  constructor(private readonly inner: StorageLike) {}

  get length(): number {
    return this.inner.length;
  }

  key(index: number): string | null {
    return this.inner.key(index);
  }

  getItem(key: string): string | null {
    const value = this.inner.getItem(key);
    this.count(key, value);
    return value;
  }

  setItem(key: string, value: string): void {
    try {
      this.inner.setItem(key, value);
    } catch (error) {
      if (saveFaultOf(error) !== 'full') throw error;
      // What would have been too much is the most that there is room for, where a browser gives less than is usual.
      const wanted = this.sum - (this.lengths.get(key) ?? 0) + key.length + value.length;
      if (wanted < this.most) this.most = Math.max(this.sum, wanted - 1, 1);
      throw error;
    }
    this.count(key, value);
    this.most = Math.max(this.most, this.sum);
  }

  removeItem(key: string): void {
    this.inner.removeItem(key);
    this.count(key, null);
  }

  /** Another tab has cleared everything. */
  forgetAll(): void {
    this.lengths.clear();
    this.sum = 0;
    this.most = USUAL_ROOM;
  }

  /**
   * Notes what another tab has written. Where that makes room, the most there is room for is taken to be the usual again: what was
   * found when there was none may have been reckoned without keys of which this tab knew nothing.
   */
  hear(key: string, value: string | null): void {
    const before = this.sum;
    this.count(key, value);
    if (value === null || this.sum < before) this.most = Math.max(USUAL_ROOM, this.sum);
  }

  private count(key: string, value: string | null): void {
    const length = value === null ? 0 : key.length + value.length;
    this.sum += length - (this.lengths.get(key) ?? 0);
    if (length === 0) this.lengths.delete(key);
    else this.lengths.set(key, length);
  }

  /** Whether a key of a kind was read or written. */
  hasKey(is: (key: string) => boolean): boolean {
    return [...this.lengths.keys()].some(is);
  }

  /** The part of the room that is taken, of what was read or written through this; 0 to 1. */
  taken(): number {
    return this.sum / this.most;
  }

  /** Letters that there is still room for. */
  free(): number {
    return Math.max(0, this.most - this.sum);
  }
}
