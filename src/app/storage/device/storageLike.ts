// The part of the browser's Storage that keeping a book needs; any of it may throw.

export interface StorageLike {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

/** The browser's local storage; null where there is none or the browser refuses it (asking alone can throw). */
export function browserStorage(window: Window): StorageLike | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
