// What the page hands to the browser to be saved, caught before the browser would ask for a place.

import { vi } from 'vitest';

export interface SavedFile {
  readonly name: string;
  readonly blob: Blob;
}

/** Catches every file from here on, in the order saved, until the mocks are restored. */
export function catchSavedFiles(): SavedFile[] {
  const saved: SavedFile[] = [];
  const blobs = new Map<string, Blob>();
  URL.createObjectURL = (blob: Blob) => {
    blobs.set(`blob:${blobs.size}`, blob);
    return `blob:${blobs.size - 1}`;
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, blob: blobs.get(this.href) as Blob });
  });
  return saved;
}
