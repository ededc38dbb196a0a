// What stands in the page before its script runs. The build reads this file too, hence the ending in the import.

import { catalogue } from '../catalogue.ts';

/** Said in the terminal where the page cannot be served. */
export const SERVE = catalogue({
  portTaken: ({ port }: { port: number }) =>
    `Staywright is not served: port ${port} is taken, perhaps by another window of it. Clients are kept for each port apart; end what has the port and start again. To begin another, empty book: npm start -- --port ${port + 1}\n`,
});

export const START = catalogue({
  loading: 'Laying out the table…',
  /** Under `loading`; seen where that takes long. */
  slow: 'If nothing more comes, a part of the page is missing. What is kept on this device is not touched.',
  reload: 'Load the page again',
});
