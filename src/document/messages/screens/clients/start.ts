// What stands in the page before its script runs. The build reads this file too, hence the ending in the import.

import { catalogue } from '../../catalogue.ts';

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
  /** Under `slow`; where the files of the page were opened from a disk, they get no further than this. */
  looseFiles:
    'If you opened this page by a double click: its loose files do not work from a disk. Open staywright.html of the same release instead, or put the folder on a web space.',
  /** Where scripts are switched off. */
  noScript:
    'Staywright is a program that runs in this page, and JavaScript is switched off here. Allow it for this page in the browser’s settings and load the page again. Nothing is sent anywhere.',
});

interface Made {
  readonly out: string;
  readonly folder: string;
  readonly file: string;
  readonly howTo: string;
  readonly folderMb: number;
  readonly fileMb: number;
}

/** Said in the terminal where a release was written. */
export const RELEASE = catalogue({
  made: ({ out, folder, file, howTo, folderMb, fileMb }: Made) =>
    `${out}/${folder}/ for any web space, ${folderMb.toFixed(1)} MB\n${out}/${file} opens by a double click, ${fileMb.toFixed(1)} MB\n${out}/${howTo} says what to do with them\n`,
});
