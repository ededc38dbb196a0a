// A browser engine as the walks of these tests drive it: few things, the same in each, so that a walk is described once.

export interface Place {
  /** CSS px from the left edge of the window's content. */
  readonly x: number;
  /** CSS px from its top edge. */
  readonly y: number;
}

export type Key = 'Enter' | 'Tab';

/** A window of a browser, with a visitor who was never there before. */
export interface EngineWindow {
  readonly goTo: (address: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  /** Runs a function in the page, which knows nothing but what it is given; gives what can be written as JSON. */
  readonly ask: <About, Answer>(question: (about: About) => Answer, about: About) => Promise<Awaited<Answer>>;
  /** Presses the pointer at the first place, moves it over the others and lets it go at the last. */
  readonly pull: (path: readonly Place[]) => Promise<void>;
  readonly type: (text: string) => Promise<void>;
  readonly press: (key: Key) => Promise<void>;
  /** Errors and warnings of the page and its console, until now. */
  readonly complaints: () => Promise<readonly string[]>;
  readonly close: () => Promise<void>;
}

export interface Engine {
  readonly name: string;
  /** What is to be installed on Debian to have it. */
  readonly packages: string;
  readonly isInstalled: () => boolean;
  /** @param downloads the folder into which files go that the page gives to be saved */
  readonly open: (downloads: string) => Promise<EngineWindow>;
}

/** A call of the function, to be run in a page. */
export const callOf = (question: (about: never) => unknown, about: unknown): string =>
  `(${question})(${JSON.stringify(about) ?? 'undefined'})`;

/** Size of the window's content, CSS px. */
export const WINDOW = { width: 1440, height: 900 } as const;
