// What is said of keeping the printers in the browser.

import { catalogue } from '../catalogue';

export const PRINTER_FAULTS = catalogue({
  absent: 'This browser keeps nothing for this page: the correction holds until the tab is closed.',
  refused: 'The browser refused to keep the correction. It holds until the tab is closed.',
  full: 'There is no room left to keep the correction. It holds until the tab is closed.',
  guarding:
    'The printers kept before cannot be read, and there is no room to put them aside, so nothing is written over them. The correction holds until the tab is closed.',
  unreadable: 'The printers kept before cannot be read. They are put aside whole when a new one is kept.',
});
