// The texts around the steps: the head of the page, undo and redo, and what is said of a change.

import { catalogue } from '../catalogue';

interface OfChange {
  /** What the change is called. */
  readonly change: string;
}

interface Girth {
  readonly level: string;
  readonly length: string;
}

export const SHELL = catalogue({
  steps: { label: 'Steps', measure: 'Measure', draft: 'Draft', fit: 'Fit', cut: 'Cut' },
  help: 'Help',
  /** Link before the head of the page. */
  skip: ({ step }: { step: string }) => `Go to ${step}`,
  clientBar: {
    openBook: ({ client, draft }: { client: string; draft: string }) => `${client} ${draft}, client book`,
    clientAndDraft: ({ client, draft }: { client: string; draft: string }) => `${client}, ${draft}`,
    unit: 'Unit',
    units: { in: 'Inches', cm: 'Centimetres' },
    /** What a client is called until she is given a name. */
    newClient: ({ number }: { number: number }) => `Client ${number}`,
  },
  history: {
    undo: 'Undo',
    redo: 'Redo',
    undoOf: ({ change }: OfChange) => `Undo: ${change}`,
    redoOf: ({ change }: OfChange) => `Redo: ${change}`,
    undone: ({ change }: OfChange) => `Undone: ${change}`,
    doneAgain: ({ change }: OfChange) => `Done again: ${change}`,
    movedTo: ({ change, value }: OfChange & { value: string }) => `${change} ${value}`,
    withConsequence: ({ change, consequence }: OfChange & { consequence: string }) =>
      `${change}; ${consequence}`,
  },
  consequence: {
    laced: ({ level, length }: Girth) => `${level} laced ${length}`,
    sewn: ({ level, length }: Girth) => `${level} sewn ${length}`,
    panel: ({ panel, length }: { panel: string; length: string }) => `${panel} ${length} wide at the waist`,
    cannotBeCut: 'cannot be cut like this',
    all: ({ consequences }: { consequences: readonly string[] }) => consequences.join(', '),
  },
  error: {
    title: 'Not shown',
    notDrawn: {
      page: 'The page could not be drawn. Nothing is lost: the book is as it was last kept.',
      step: 'This step could not be drawn. Nothing is lost: the book is as it was last kept.',
      section: 'This part could not be drawn. Nothing is lost: the book is as it was last kept.',
      dialog: 'This sheet could not be drawn. Nothing is lost: the book is as it was last kept.',
    },
    notFetched: {
      page: 'A part of the page did not come from the server. Nothing is lost: the book is as it was last kept. See whether you are connected, then load the page again.',
      step: 'This step did not come from the server. Nothing is lost: the book is as it was last kept. See whether you are connected, then load the page again.',
      section:
        'This part did not come from the server. Nothing is lost: the book is as it was last kept. See whether you are connected, then load the page again.',
      dialog:
        'This sheet did not come from the server. Nothing is lost: the book is as it was last kept. See whether you are connected, then load the page again.',
    },
    /** Nothing of the page is there yet, and the book was not opened. */
    notOpened:
      'The page could not be opened. What is kept on this device was not touched. See whether you are connected, then load the page again.',
    undo: 'Undo the last change',
    again: 'Try again',
  },
  /** Stands for a notice about keeping the book that cannot be loaded. */
  keepingUnknown:
    'The book may not be kept on this device, and the notice that says why could not be loaded. Download a backup from the client book before you close this tab.',
  update: {
    ready: 'A later version of this page is ready. Everything is kept.',
    asked: 'This page changes to its later version once what was done here is kept.',
    use: 'Use it now',
    elsewhere:
      'A later version of this page is in use in another tab. What was done here is not kept; download a backup before you load this page again.',
  },
  /** One sentence, with a link to Measure in it. */
  unread: {
    beforeLink: ({ field }: { field: string }) => `${field} on`,
    link: 'Measure',
    afterLink: {
      length: ({ length }: { length: string }) => `cannot be read; the draft goes on with ${length}.`,
      none: 'cannot be read; the draft goes on with none.',
      keptBefore: 'cannot be read; the draft goes on with what was kept before.',
    },
  },
});
