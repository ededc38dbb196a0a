// Writes the records of a book, one at a time, each only over what this tab last read or wrote under its key.

import type { Book } from '../../document';
import type { Known } from './records/openKept';
import { clientRecord, OPEN_KEY, type Pack, recordKey, styleRecord } from './records/record';
import { type SaveFault, saveFaultOf } from './saveStatus';
import type { StorageLike } from './storageLike';

/** A record that is not yet as the book has it; `entry` is null for one that was taken out. */
export interface Waiting {
  readonly key: string;
  readonly entry: object | null;
  readonly name: string;
  readonly text: () => string | null;
}

/** `conflict`: something else lies under the key. `cleared`: nothing lies in the storage any more. */
export type Outcome = 'kept' | 'conflict' | 'cleared' | SaveFault;

export class KeptRecords {
  private known = new Map<string, Known>();
  /** Records by client or style: what did not change is not packed twice. */
  private readonly texts = new WeakMap<object, string>();
  private pack: Pack = null;
  /** Sums of every record that this tab has read or written: what it has seen was not written by another tab meanwhile. */
  private readonly seen = new Set<string>();
  /** What was written under each key and could not be read back: it may lie there none the less. */
  private readonly tried = new Map<string, readonly string[]>();
  /** What was last read or written under {@link OPEN_KEY}. */
  private mark: string | null = null;

  constructor(private readonly storage: StorageLike) {}

  packWith(pack: Pack): void {
    this.pack = pack;
  }

  /** Takes for known what was read. */
  start(known: ReadonlyMap<string, Known>, mark: string | null): void {
    this.known = new Map(known);
    for (const { text } of known.values()) this.see(text);
    this.mark = mark;
  }

  knownAt(key: string): Known | undefined {
    return this.known.get(key);
  }

  learn(key: string, known: Known): void {
    this.known.set(key, known);
    this.tried.delete(key);
    this.see(known.text);
  }

  /** Whether anything was read or written. */
  hasAny(): boolean {
    return this.known.size > 0;
  }

  hasSeen(text: string): boolean {
    return this.seen.has(headSum(text));
  }

  private see(text: string | null): void {
    if (text !== null) this.seen.add(headSum(text));
  }

  forget(key: string): void {
    this.known.delete(key);
  }

  /** Whether what this tab has read or written is gone altogether. */
  areGone(): boolean {
    try {
      return this.isCleared();
    } catch {
      return true;
    }
  }

  /** What is no longer in the storage waits again. May throw. */
  forgetGone(): void {
    for (const key of [...this.known.keys()]) if (this.storage.getItem(key) === null) this.known.delete(key);
    this.mark = this.storage.getItem(OPEN_KEY);
  }

  /** Everything of the book that does not lie in the storage as it is. */
  waiting(book: Book): Waiting[] {
    const found: Waiting[] = [];
    const there = new Set<string>();
    const look = (key: string, entry: object, name: string, text: () => string): void => {
      there.add(key);
      if (this.known.get(key)?.entry !== entry)
        found.push({ key, entry, name, text: () => this.textOf(entry, text) });
    };
    for (const client of book.clients)
      look(recordKey('client', client.id), client, client.name, () => clientRecord(client, this.pack));
    for (const each of book.unopened ?? [])
      look(recordKey('client', each.id), each, each.name, () => each.record);
    for (const style of book.styles) {
      const key = recordKey('style', style.id);
      look(key, style, style.name, () => styleRecord(style, this.orderOf(key), this.pack));
    }
    for (const [key, { text }] of this.known)
      if (text !== null && !there.has(key)) found.push({ key, entry: null, name: '', text: () => null });
    return found;
  }

  private textOf(entry: object, make: () => string): string {
    const text = this.texts.get(entry) ?? make();
    this.texts.set(entry, text);
    return text;
  }

  /** A style keeps its place; a new one comes after all others. */
  private orderOf(key: string): number {
    const orders = [...this.known.values()].map(({ order }) => order ?? 0);
    return this.known.get(key)?.order ?? Math.max(0, ...orders) + 1;
  }

  /** Writes one record, and reads it back. Never throws. */
  write({ key, entry, text }: Waiting): Outcome {
    try {
      const there = this.storage.getItem(key);
      const known = this.known.get(key)?.text ?? null;
      const next = text();
      if (there !== next) {
        if (there !== null && there !== known && !this.tried.get(key)?.includes(there)) return 'conflict';
        if (there === null && known !== null && this.isCleared()) return 'cleared';
        if (next === null) this.storage.removeItem(key);
        else {
          this.tried.set(key, [...(this.tried.get(key) ?? []), next]);
          this.storage.setItem(key, next);
        }
        if (this.storage.getItem(key) !== next) return 'refused';
      }
      if (next === null) this.known.delete(key);
      else this.learn(key, { entry, text: next, ...this.orderAt(key) });
      return 'kept';
    } catch (error) {
      return saveFaultOf(error);
    }
  }

  private orderAt(key: string): { order?: number } {
    return key.startsWith(recordKey('style', '')) ? { order: this.orderOf(key) } : {};
  }

  /** Writes which client is open. The last tab to say so is right. */
  writeMark(mark: string): Exclude<Outcome, 'conflict'> {
    try {
      if (mark === this.mark) return 'kept';
      if (this.isCleared()) return 'cleared';
      this.storage.setItem(OPEN_KEY, mark);
      if (this.storage.getItem(OPEN_KEY) !== mark) return 'refused';
      this.mark = mark;
      return 'kept';
    } catch (error) {
      return saveFaultOf(error);
    }
  }

  /** Whether the mark that every tab leaves is gone, although this tab has seen it. May throw. */
  private isCleared(): boolean {
    return this.mark !== null && this.storage.getItem(OPEN_KEY) === null;
  }

  /** A sum over every record that is known, whatever their order: a history belongs to the book of its sum. */
  seal(): string {
    let [a, b] = [0, 0];
    for (const [key, { text }] of this.known) {
      if (text === null) continue;
      const head = `${key} ${headSum(text)}`;
      for (let i = 0, h = 17; i <= head.length; i += 1) {
        if (i === head.length) [a, b] = [a ^ h, (b + h) | 0];
        else h = (Math.imul(h, 31) + head.charCodeAt(i)) | 0;
      }
    }
    return `${(a >>> 0).toString(36)}.${(b >>> 0).toString(36)}`;
  }
}

/** The sum that a record begins with. */
const headSum = (text: string): string => text.slice(0, text.indexOf(' '));
