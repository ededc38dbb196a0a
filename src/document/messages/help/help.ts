// The texts of Help, but for the glossary and the sources.

import { catalogue } from '../catalogue';

interface Step {
  readonly name: string;
  readonly what: string;
}

interface Keys {
  readonly keys: string;
  readonly what: string;
}

const WAY: readonly Step[] = [
  {
    name: 'Measure',
    what: 'Type the numbers of the tape; nine of them are enough. Beside each the figure shows where the tape goes.',
  },
  {
    name: 'Draft',
    what: 'Choose a style and pull its wedges and edges. Every number of the drawing can be typed instead, and the girths stay as they are asked for.',
  },
  {
    name: 'Fit',
    what: 'Look whether the panels sew together: seams of equal length, edges that run on, girths that are met. As worn sews them on a body of these girths and shows where they stand off or pull; garments that hang from the shoulders are not judged there yet.',
  },
  {
    name: 'Cut',
    what: 'Print to scale on sheets or a roll, or take the files, with a list of what making it needs. Measure the printed square before you cut.',
  },
];

const KEYBOARD: readonly { readonly title: string; readonly keys: readonly Keys[] }[] = [
  {
    title: 'Measure',
    keys: [
      { keys: 'Tab, Enter', what: 'the next number; from the last one Enter goes on to the next step' },
      { keys: 'Shift + Tab, Shift + Enter', what: 'the number before' },
      { keys: 'Alt + ↓', what: 'the menu of the row: second reading, estimate, taking the number off' },
      { keys: 'Escape', what: 'the number as it was' },
    ],
  },
  {
    title: 'The drawing',
    keys: [
      { keys: '← → ↑ ↓', what: 'moves the handle that has the focus, by the smallest line of the tape' },
      { keys: 'Shift with an arrow', what: 'moves it farther' },
      { keys: 'Escape', what: 'gives up a pull, or puts a tool away' },
    ],
  },
  {
    title: 'Everywhere',
    keys: [
      { keys: 'Ctrl + Z', what: 'undo' },
      { keys: 'Ctrl + Y, Ctrl + Shift + Z', what: 'redo' },
      { keys: '?', what: 'this help, while nothing is typed' },
    ],
  },
];

export const HELP = catalogue({
  title: 'Help',
  sections: {
    way: 'The way through',
    measuring: 'How to measure',
    keyboard: 'Keyboard',
    glossary: 'Words',
    sources: 'Sources',
    keeping: 'Where your work is kept',
    about: 'About',
  },
  way: WAY,
  measuring: {
    intro: [
      'Measure over what is worn under the garment, standing at ease, the tape level and snug and never pulled in.',
      'Tie a tape round the waist where she bends, and leave it there: every height is measured to it.',
      'Write fractions as you say them, 34 1/2 or 34½, or in centimetres with point or comma. A unit behind a number holds for that number.',
      'A girth read twice is surer than one read once: the mean holds, and where two differ by more than ⅜ in (1 cm) a third decides.',
    ],
  },
  keyboard: KEYBOARD,
  lacing: {
    title: 'Tight lacing',
    caution: ({ text, source }: { text: string; source: string }) => `${text} (${source})`,
  },
  keeping: [
    'All you type stays in this browser on this device. Nothing is sent anywhere, and there is no account.',
    'It is kept as you type. Another browser, another device and a private window each have a book of their own, and clearing the browser’s data clears the book.',
    'Download a backup from the client book now and then and keep it elsewhere: it holds all clients, drafts and styles, and can be brought back on any device.',
    'Once it has been opened the page works without a connection.',
  ],
  /** The same for the page as one file on a disk. */
  keepingOfFile: [
    'This page is one file. All you type stays in this browser on this device. Nothing is sent anywhere, nothing is fetched, and there is no account.',
    'It is kept as you type. Another browser and another device each have a book of their own; in some browsers so has this file under another name or in another folder. Clearing the browser’s data clears the book.',
    'Download a backup from the client book now and then and keep it elsewhere: it holds all clients, drafts and styles, and can be brought back on any device.',
    'The file cannot be installed as an app, does not open a backup from the file manager, and does not tell of a later version. To use a later one, download a backup, then put the new file in the place of this one, under the same name.',
  ],
  about: {
    version: ({ version }: { version: string }) => `Staywright ${version}`,
    what: 'A drafter of bodice and corset blocks made to measure. It is free, under the MIT licence.',
    parts: 'Parts made by others, with their licences:',
    part: ({ name, licence }: { name: string; licence: string }) => `${name}: ${licence}`,
  },
  /** The pictures of a first visit. */
  firstRun: {
    title: 'From the tape to cloth',
    measure: 'Measure: nine numbers of the tape are enough.',
    draft: 'Draft: pull the wedges, and the girths stay met.',
    print: 'Cut: print the panels to scale.',
  },
});
