// Work that is done in a task of its own, so that it does not add to the time of the present one.

export class NextTask {
  private waiting: { readonly work: () => void; readonly timer: ReturnType<typeof setTimeout> } | null = null;

  /** Of several pieces of work that are given in one task, the last is done. */
  give(work: () => void): void {
    clearTimeout(this.waiting?.timer);
    this.waiting = { work, timer: setTimeout(() => this.doNow()) };
  }

  /** Does at once what waits. */
  doNow(): void {
    const { waiting } = this;
    this.waiting = null;
    clearTimeout(waiting?.timer);
    waiting?.work();
  }
}
