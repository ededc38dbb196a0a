// Keeping the book in the browser, a record a client: the keeper of one tab. What is kept is never written over unless this tab
// read or wrote it last, or it lies whole elsewhere as well.

import { type Book, demoBook, type Migrations } from '../../../document';
import { isQuarantineKey } from '../aside/quarantine';
import { CountedStorage, NEARLY_FULL } from '../device/room';
import type { Keeping, Notice, SaveFault, SaveStatus } from '../device/saveStatus';
import type { StorageLike } from '../device/storageLike';
import type { Kept, OpenedBook } from '../records/openKept';
import { BOOK_KEY, LAYOUT, type OpenMark } from '../records/record';
import { Clashes } from './clashes';
import { collect } from './collect';
import { KeptRecords } from './keptRecords';
import type { Move } from './move';
import { NextTask } from './nextTask';

/** Changes that come faster than this are kept together. */
const DEBOUNCE_MS = 300;

/** Records are written for no longer than this at a time, unless the page is left. */
const SLICE_MS = 8;

export interface BookStorageOptions {
  /** Null where the browser has none. */
  readonly storage: StorageLike | null;
  readonly now: () => Date;
  readonly newId: () => string;
  /** Runs something while no other tab runs the like; without it, at once. */
  readonly exclusive?: (run: () => void) => void;
}

/** What reads the storage, fetched when there is something to read. */
export const fetchReader = () => import('./bookReader');

/** The keeper of one tab; no part of it throws, but the promise of `load` may be rejected. */
export class BookStorage {
  readonly storage: CountedStorage | null;
  readonly records: KeptRecords | null;
  readonly clashes: Clashes | null;
  /** Null while there is no book of the first layout to be moved. */
  private move: Move | null = null;
  private state: Keeping = { status: { kind: 'saved' }, notices: [] };
  private readonly listeners = new Set<(status: SaveStatus) => void>();
  /** The last book that was loaded or given, and whether some of it still has to be kept. */
  private latest: Book | null = null;
  private waits = false;
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** What follows when the book was kept. */
  readonly following = new NextTask();
  /** The storage could not be read when the page was opened, and was not since. */
  private isUnread = false;
  /** Keys of what cannot be read; it stays where it lies. */
  private unreadable: readonly string[] = [];
  private hasPacking = false;
  /** The id for the invented client of a book of the first layout that is to be moved at the next start. */
  private movesLater: string | null = null;

  constructor(private readonly options: BookStorageOptions) {
    const { storage, now } = options;
    this.storage = storage && new CountedStorage(storage);
    this.records = this.storage && new KeptRecords(this.storage);
    this.clashes = this.storage && new Clashes(this.storage, now);
  }

  /**
   * The kept book, or that of a first start where there is none. What reads a book is fetched only where there is something to
   * read; where it cannot be fetched, the promise is rejected and nothing is changed.
   *
   * @param also ids of clients to be opened beside the one that was
   */
  async load(also: readonly string[] = []): Promise<Book> {
    const kept = this.storage && collect(this.storage);
    if (kept) this.latest = await this.takeIn(kept, also);
    else {
      const reason = this.storage ? 'refused' : 'absent';
      this.isUnread = this.storage !== null;
      this.latest = demoBook(this.options.newId());
      this.tell({ status: { kind: 'failed', reason }, notices: [{ kind: 'unavailable', reason }] });
    }
    return this.latest;
  }

  private async takeIn(kept: Kept, also: readonly string[]): Promise<Book> {
    this.records?.start(new Map(), kept.open);
    if (kept.records.size === 0 && kept.earlier === null) return demoBook(this.options.newId());
    const { Move, headsOf, openKept, packBody, fetchSteps, NO_STEPS } = await fetchReader();
    const heads = await headsOf(kept.records);
    const { newId } = this.options;
    const openedWith = (steps: Migrations): OpenedBook => openKept(kept, { heads, newId, also, steps });
    let opened = openedWith(kept.earlier === null ? NO_STEPS : await fetchSteps());
    if (opened.isEarlier) opened = openedWith(await fetchSteps());
    const { book, known, notices, unreadable, moves } = opened;
    this.records?.packWith(packBody);
    this.hasPacking = true;
    this.records?.start(known, kept.open);
    if (this.storage && moves && kept.earlier !== null)
      this.move = new Move(this.storage, this.options.now, moves, kept.earlier);
    this.unreadable = kept.earlier !== null && !moves ? [...unreadable, BOOK_KEY] : unreadable;
    this.tell({ notices });
    this.sayRoom();
    if (moves) {
      this.waits = true;
      this.wait(0);
    }
    return book;
  }

  /** Takes the book to be kept a moment later; the last one given is the one kept. */
  save(book: Book): void {
    this.latest = book;
    this.waits = true;
    if (this.state.status.kind === 'saved') this.become({ kind: 'pending' });
    this.wait(DEBOUNCE_MS);
    if (this.hasPacking || !this.records) return;
    this.hasPacking = true;
    // Where it does not come, records stay plain.
    import('../records/packing').then(
      ({ packBody }) => this.records?.packWith(packBody),
      () => undefined,
    );
  }

  /** Keeps at once what waits, and tries again what failed. */
  flush(): void {
    clearTimeout(this.timer);
    this.write(Number.POSITIVE_INFINITY);
    this.following.doNow();
  }

  private wait(ms: number): void {
    clearTimeout(this.timer);
    const { exclusive = (run) => run() } = this.options;
    this.timer = setTimeout(() => exclusive(() => this.write(SLICE_MS)), ms);
  }

  private write(mostMs: number): void {
    if (!this.waits || this.latest === null) return;
    if (this.state.status.kind === 'cleared' && this.records?.areGone()) return;
    if (!this.records) this.become({ kind: 'failed', reason: 'absent' });
    else if (this.isUnread && !this.readAgain()) this.become({ kind: 'failed', reason: 'refused' });
    else {
      const outcome = this.writeRecords(this.latest, this.records, performance.now() + mostMs);
      if (outcome === 'unfinished') this.wait(0);
      else if (outcome === 'cleared') this.become({ kind: 'cleared' });
      else this.settle(outcome);
    }
  }

  /** Writes what waits until a time; null where all of it is written or kept beside. */
  private writeRecords(
    book: Book,
    records: KeptRecords,
    end: number,
  ): SaveFault | 'unfinished' | 'cleared' | null {
    // The mark comes first while a book is being moved, so that a move that is broken off is known for one.
    let fault = this.isMoving() ? this.writeMark(book, records) : null;
    for (const waiting of records.waiting(book)) {
      if (performance.now() > end) return fault ?? 'unfinished';
      const outcome = this.clashes?.has(waiting.key) ? 'conflict' : records.write(waiting);
      if (outcome === 'cleared') return outcome;
      if (outcome === 'conflict') this.clashes?.keepBeside(waiting);
      else if (outcome !== 'kept' && fault !== 'full') fault = outcome;
    }
    if (fault === null && this.clashes?.list().length === 0) fault = this.move?.end() ?? null;
    return fault ?? this.writeMark(book, records);
  }

  private writeMark(book: Book, records: KeptRecords): SaveFault | 'cleared' | null {
    const moving = this.move?.moving() ?? this.movesLater;
    const mark: OpenMark = { layout: LAYOUT, open: book.openClient, ...(moving === null ? {} : { moving }) };
    const outcome = records.writeMark(JSON.stringify(mark));
    return outcome === 'kept' ? null : outcome;
  }

  private settle(fault: SaveFault | null): void {
    const clashes = this.clashes?.list() ?? [];
    const beside = this.clashes?.areAllBeside() ?? true;
    this.waits = fault !== null || !beside;
    if (fault === 'full' && this.move?.shrink()) this.wait(0);
    else if (fault !== null) this.become({ kind: 'failed', reason: fault });
    else if (clashes.length > 0) this.become({ kind: 'conflict', clashes, beside });
    else this.become({ kind: 'saved' });
    this.sayRoom();
  }

  /** Says that little room is left, or no longer where there is more again. */
  sayRoom(): void {
    const taken = this.taken();
    if (taken >= NEARLY_FULL)
      this.notify({ kind: 'nearlyFull', percent: Math.min(100, Math.round(taken * 100)) });
    else this.dismiss('nearlyFull');
  }

  /**
   * Looks again into a storage that could not be read when the page was opened. What lies there is left as it is, and this tab's
   * clients come beside it, because their ids are their own. False where it still cannot be read.
   */
  private readAgain(): boolean {
    const kept = this.storage && collect(this.storage);
    if (!kept) return false;
    this.isUnread = false;
    this.records?.start(new Map(), kept.open);
    // An earlier book is moved at the next start, which knows it by this.
    if (kept.earlier !== null) this.movesLater = this.options.newId();
    this.dismiss('unavailable');
    if (kept.earlier !== null || kept.records.size > 0) this.notify({ kind: 'readAgain' });
    return true;
  }

  /** Whether some of the book is not kept yet. */
  isWaiting(): boolean {
    return this.waits;
  }

  /** Whether the book of the first layout is being moved. */
  isMoving(): boolean {
    return this.move?.moving() != null;
  }

  now(): Date {
    return this.options.now();
  }

  newId(): string {
    return this.options.newId();
  }

  /** The last book that was loaded or given. */
  book(): Book | null {
    return this.latest;
  }

  /** The part of the room that is taken, 0 to 1. */
  taken(): number {
    return this.storage?.taken() ?? 0;
  }

  /** The same object until something changes. */
  readonly keeping = (): Keeping => this.state;

  readonly status = (): SaveStatus => this.state.status;

  /** Calls back on every change of the status or the notices; gives what ends it. */
  readonly subscribe = (listener: (status: SaveStatus) => void): (() => void) => {
    this.listeners.add(listener);
    return () => void this.listeners.delete(listener);
  };

  /** Says something, in the place of what was said of the same kind. */
  notify(notice: Notice): void {
    const others = this.state.notices.filter(({ kind }) => kind !== notice.kind);
    this.tell({ notices: [...others, notice] });
  }

  dismiss(kind: Notice['kind']): void {
    const notices = this.state.notices.filter((notice) => notice.kind !== kind);
    if (notices.length < this.state.notices.length) this.tell({ notices });
  }

  become(status: SaveStatus): void {
    this.tell({ status });
  }

  private tell(next: Partial<Keeping>): void {
    this.state = { ...this.state, ...next };
    for (const listener of this.listeners) listener(this.state.status);
  }

  /** Keys of what cannot be read; it stays where it lies. */
  unreadableKeys(): readonly string[] {
    return this.unreadable;
  }

  /** Whether something was put aside, or lies unreadable. */
  hasAside(): boolean {
    return this.unreadable.length > 0 || (this.storage?.hasKey(isQuarantineKey) ?? false);
  }

  setUnreadable(keys: readonly string[]): void {
    this.unreadable = keys;
    this.sayRoom();
  }

  /** Something waits again, since it was decided what becomes of it. */
  retry(): void {
    this.waits = true;
    this.flush();
  }
}
