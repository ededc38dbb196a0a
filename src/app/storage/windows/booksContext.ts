// Hands the keeper of this tab to the parts of the screen that speak of keeping.

import { createContext } from 'react';
import type { BookStorage } from '../book/bookStorage';
import type { Host } from '../device/host';

export interface Books {
  readonly storage: BookStorage;
  readonly host: Host;
}

/** Null where nothing is kept, as in a part of the screen on its own. */
export const BooksContext = createContext<Books | null>(null);
