// Writes the records of a book, one at a time, each only over what this tab last read or wrote under its key.

import type { Book } from '../../../document';
import { type SaveFault, saveFaultOf } from '../device/saveStatus';
import type { StorageLike } from '../device/storageLike';
import type { Known } from '../records/openKept';
import {
  clientRecord,
  OPEN_KEY,
  type Pack,
  type RecordKind,
  recordKey,
  styleRecord,
} from '../records/record';

/** A record that is not yet as the book has it; `entry` is null for one that was taken out. */
export interface Waiting {
  readonly key: string;
  readonly entry: object | null;
  readonly name: string;
  readonly text: () => string | null;
  /** Of a style. */
  readonly order?: number;
}

/** `conflict`: something else lies under the key. `cleared`: nothing lies in the storage any more. */
export type Outcome = 'kept' | 'conflict' | 'cleared' | SaveFault;

export class KeptRecords {
  private known = new Map<string, Known>();
  /** Records by client or style: what did not change is not packed twice. */
  private readonly texts = new WeakMap<
    object,
    { readonly text: string; readonly order: number | undefined }
  >();
  private pack: Pack = null;
  /** Of each known record what it adds to the seal. */
  private readonly sums = new WeakMap<Known, number>();
  /** Sums of every record that this tab has read or written: what it has seen was not written by another tab meanwhile. */
  private readonly seen = new Set<string>();
  /** What was written under each key and could not be read back: it may lie there none the less. */
  private readonly tried = new Map<string, readonly string[]>();
  /** Keys of the known records that this tab has written, where the others were read. */
  private readonly written = new Set<string>();
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
    this.written.delete(key);
    this.see(known.text);
  }

  /** Whether anything was read or written. */
  hasAny(): boolean {
    return this.known.size > 0;
  }

  hasSeen(text: string): boolean {
    return this.seen.has(headSum(text));
  }

  /** Whether what is known under a key was written by this tab. */
  hasWritten(key: string): boolean {
    return this.written.has(key);
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
    // How many of those that are known are in the book: only where it is not all of them, it is looked who was taken out.
    let there = 0;
    const look = (
      key: string,
      entry: { readonly name: string },
      text: () => string,
      order?: number,
    ): void => {
      const known = this.known.get(key);
      if (known) there += 1;
      if (known?.entry === entry) return;
      const place = order === undefined ? {} : { order };
      found.push({ key, entry, name: entry.name, text: () => this.textOf(entry, text, order), ...place });
    };
    for (const client of book.clients)
      look(keyOf('client', client), client, () => clientRecord(client, this.pack));
    for (const each of book.unopened ?? []) look(keyOf('client', each), each, () => each.record);
    const orders = ordersOf(book.styles.map((style) => this.known.get(keyOf('style', style))?.order));
    for (const [i, style] of book.styles.entries()) {
      const order = orders[i] ?? 0;
      look(keyOf('style', style), style, () => styleRecord(style, order, this.pack), order);
    }
    return there === this.known.size ? found : [...found, ...this.takenOut(book)];
  }

  private takenOut(book: Book): Waiting[] {
    const there = new Set([
      ...[...book.clients, ...(book.unopened ?? [])].map((each) => keyOf('client', each)),
      ...book.styles.map((each) => keyOf('style', each)),
    ]);
    return [...this.known]
      .filter(([key, { text }]) => text !== null && !there.has(key))
      .map(([key]) => ({ key, entry: null, name: '', text: () => null }));
  }

  private textOf(entry: object, make: () => string, order: number | undefined): string {
    const made = this.texts.get(entry);
    const text = made && made.order === order ? made.text : make();
    this.texts.set(entry, { text, order });
    return text;
  }

  /** Writes one record, and reads it back. Never throws. */
  write({ key, entry, text, order }: Waiting): Outcome {
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
      else {
        this.learn(key, { entry, text: next, ...(order === undefined ? {} : { order }) });
        this.written.add(key);
      }
      return 'kept';
    } catch (error) {
      return saveFaultOf(error);
    }
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
    for (const [key, known] of this.known) {
      if (known.text === null) continue;
      const sum = this.sums.get(known) ?? sumOfHead(`${key} ${headSum(known.text)}`);
      this.sums.set(known, sum);
      [a, b] = [a ^ sum, (b + sum) | 0];
    }
    return `${(a >>> 0).toString(36)}.${(b >>> 0).toString(36)}`;
  }
}

/** Keys by client or style: a book of thousands is looked through at each change. */
const keys = new WeakMap<object, string>();

function keyOf(kind: RecordKind, entry: { readonly id: string }): string {
  const key = keys.get(entry) ?? recordKey(kind, entry.id);
  keys.set(entry, key);
  return key;
}

function sumOfHead(head: string): number {
  let sum = 17;
  for (let i = 0; i < head.length; i += 1) sum = (Math.imul(sum, 31) + head.charCodeAt(i)) | 0;
  return sum;
}

/** The sum that a record begins with. */
const headSum = (text: string): string => text.slice(0, text.indexOf(' '));

/**
 * The number by which each style of a list is sorted: one that is known keeps it, one that is put in, or put back, gets one between
 * its neighbours'.
 */
function ordersOf(known: readonly (number | undefined)[]): number[] {
  const orders: number[] = [];
  for (const [i, order] of known.entries()) {
    const last = orders.at(-1) ?? Number.NEGATIVE_INFINITY;
    if (order !== undefined && order > last) orders.push(order);
    else
      orders.push(
        between(
          last,
          known.slice(i + 1).find((each) => each !== undefined && each > last),
        ),
      );
  }
  return orders;
}

function between(last: number, next: number | undefined): number {
  if (last === Number.NEGATIVE_INFINITY) return next === undefined ? 1 : next - 1;
  return next === undefined ? last + 1 : (last + next) / 2;
}
