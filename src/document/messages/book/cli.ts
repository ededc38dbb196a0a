// The texts of the headless drafter: its help, and the faults of its command line.

import { catalogue } from '../catalogue';

export const CLI = catalogue({
  unwritable: ({ letters }: { letters: readonly string[] }) =>
    `no font that is installed with the program has ${letters.join(' ')}: they stand as empty boxes`,
  /** What --help writes. `styles` are the names of the styles there are, `papers` the words --paper takes. */
  help: ({ styles, papers }: { styles: readonly string[]; papers: readonly string[] }) =>
    `Drafts a bodice or corset block without a screen.

  npm run draft -- [--client FILE.json] [--style NAME|FILE.json] [--fittings FILE.json]
                  [--paper NAME] [--nap] [--worn] [--out DIR]
                  [--lay WIDTH [--fold] [--gap MM] [--seconds S] [--seed N]]
  npm run draft -- --sizes FILE.csv [--client FILE.json] [--style NAME|FILE.json] [--paper NAME] [--out DIR]
  npm run draft -- --stdin [--style NAME|FILE.json]

  --client FILE   the client to draft; without it, the demo client
  --style NAME    ${styles.join(', ')}; or a file ending in .json, whose fields are laid over the default style
  --fittings FILE what fittings changed: seams, lengths, edges and bust point, laid on the draft
  --sizes FILE    a table of sizes, each drafted in the style; the client as well only where one is named
  --paper NAME    what pattern.pdf is printed on: ${papers.join(', ')};
                  a4 without it
  --nap           the cloth has a nap or a one-way print: no panel lies head down; so it is under a projector in any case
  --worn          sews the garment on a body of these girths as well, into worn.json
  --lay WIDTH     lays the pieces on cloth of this usable width (mm) as well; open, unless --fold says that it is folded
                  lengthwise. --gap MM lies between two cut lines (0), --seconds S is how long a shorter lay is looked
                  for (3), --seed N begins the search otherwise (1). With --nap all heads lie one way
  --out DIR       where the files go; out without it
  --stdin         reads a client a line (JSON) and writes a draft a line in the same order; makes no files
  --version       the version of the program
  --help          this

A client file: { "name": "…", "unit": "mm", "measurements": { "bust": 940, … } }. Lengths are in mm; with "unit": "in"
they are in inches, and texts such as "34 1/2" will do. A measurement left out or null was not taken; one that was
estimated and not measured is named in a list, "estimated": [ "underarmToWaist" ], and every print says so.
A body that differs left to right has "sides": { "leftShare": { "waist": 0.52 }, "rightLower": { "hip": 8 } }: the left's
part of a girth, and how much lower a level sits on the right. Both halves are then drafted, and each piece is cut once.

A file of fittings: { "unit": "mm", "fittings": [ { "date": "2026-11-26", "note": "", "alterations": [
  { "kind": "seam", "seam": ["front-2", "front-3"], "side": "both", "at": [ { "level": "waist", "a": 6, "b": 6 } ] } ] } ] }.
+ takes in, shortens, raises; "a" is the edge of the first panel. Other kinds: "length" ("between": ["underBust", "waist"]),
"edge" ("edge": "top"), both with "at": [ { "place": "centreBack", "by": 6 } ], and "bustPoint" ("out", "down").

A table of sizes (CSV; tab, semicolon, bar or comma): the size's name in the first column, the others called as measurements are
("bust" or "Bust girth"), in mm unless the heading or a second row of units alone says cm or in. A row with a bad cell is left
out and said with row and column. It makes:
  sizes/NAME.json a pieces.json of each size
  nested.pdf      the sizes that can be cut one over another, aligned at the waist and on grain or fold, on the paper asked for
  nested.svg      the same at full size in mm, a group a size
  nested.dxf      the same for cutters, a block a piece and size
  sizes.csv       panel widths and seam lengths, a column a size
It ends with 1 where a row was left out or a size must not be cut, and with 2 where no size could be drafted.

Made in the directory of a client:
  pieces.json     levels, pieces, seams and issues; coordinates in mm, x from the centre line, y down from the shoulder
                  level. Its levels are only those that the garment reaches all round.
  pattern.pdf     the pattern on sheets to be joined, and behind them the making list by the usual figures; or on one
                  page of a roll, or light on dark for a projector.
  pattern.svg     the pattern at full size in mm, a group a panel and in it a group for each kind of line.
  pattern.dxf     the same for cutters (release 12, mm): a block a piece, layers by number as in ASTM D6673.
  sheet.html      the drafting sheet: the draft as numbered steps to draw by hand, in the client's unit (cm for mm).
  worn.json       with --worn: the panels sewn, boned, laced and at rest on the body; stand-off, strain and contact at
                  every place, and figures of the fit. It compares drafts and promises no fit; contact is an estimate.
  lay.json        with --lay: the cut lines on the cloth in mm, x along it and y across it from the selvedge or the fold,
                  with lay.svg at full size and lay.pdf to scale, with where each piece begins.
All but pieces.json are made where there is a piece to print; those from an earlier run are taken away first.

With --stdin a good line is answered with the object of pieces.json and the client's name, a bad one with
{ "name": …, "error": [ { "path": …, "message": … } ] }. Blank lines get no answer. It ends with 0 once every line
is answered; a reader that leaves before that is told as below.

Ends with 0 when drafted; 1 when the draft must not be cut as it is (what could be made is made, the issues are on the
error stream); 2 when the input cannot be used (one line a fault, with the path of the field); 3 when what was drafted
cannot be written: the device is full, or the reader has left (one line).
`,

  version: ({ version }: { version: string }) => `Staywright ${version}\n`,

  /** Words that --paper takes beside the names of sheets. */
  papers: ['WIDTHxHEIGHT (mm)', 'roll (36 in wide)', 'roll-WIDTH (mm)', 'projector'],

  options: {
    unknown: 'This is not understood; --help lists what is.',
    twice: 'This is given twice.',
    valueMissing: 'Its value is missing.',
    ofClient: 'This goes with --client; sizes have none.',
    notWithStdin: 'This does not go with --stdin, which makes no files.',
    onlyWithLay: 'This goes with --lay alone.',
    number: ({ least, most, whole }: { least: number; most: number; whole: boolean }) =>
      `This must be a ${whole ? 'whole number' : 'number'} from ${least} to ${most}.`,
  },

  styleUnknown: ({ name, styles }: { name: string; styles: readonly string[] }) =>
    `There is no style “${name}”; there are: ${styles.join(', ')}. A file ends in .json.`,
  paperUnknown: ({ name, papers }: { name: string; papers: readonly string[] }) =>
    `There is no paper “${name}”; there are: ${papers.join(', ')}.`,
  pictureTooLarge: 'The picture would be larger than a PDF page may be.',

  /** `code` is the system's own, as ENOENT. */
  fileNotRead: ({ path, code }: { path: string; code: string }) =>
    `The file ${path} could not be read (${code}).`,
  outputNotWritten: ({ code }: { code: string }) =>
    `The output could not be written (${code === 'EPIPE' ? 'its reader has left' : code}).\n`,
  filesNotWritten: ({ directory, code }: { directory: string; code: string }) =>
    `The files could not be written into ${directory} (${code}).`,

  /** A fault of a line of the stream as a whole; lines are counted from 1. */
  line: ({ number, message }: { number: number; message: string }) => `Line ${number}: ${message}`,
  lineTooLong: ({ most }: { most: number }) => `This line is longer than ${most} characters.`,
});
