// The texts of the Cut step: allowances, files, paper, printer and print. Those of the making list are in making.ts.

import { catalogue, plural } from '../../catalogue';

/** Shown while a PDF is being made, and where it could not be. */
const PDF = {
  making: 'Making the PDF…',
  failed: 'The PDF could not be made. Nothing in the book has changed; try again, or reload the page.',
};

export const CUT = catalogue({
  views: {
    label: 'What is shown',
    each: { panels: 'Panels on paper', lay: 'Lay plan', making: 'Making list' },
  },

  allowances: {
    title: 'Seam allowances',
    hint: 'None on an edge that is bound; none at centre front on a fold.',
    edges: {
      seam: 'Seams',
      side: 'Side seam',
      top: 'Top edge',
      armhole: 'Armhole',
      neckline: 'Neckline',
      centre: 'Centre edges',
      hem: 'Hem',
    },
    followsTop: 'Left empty, it is that of the top edge.',
    turnedHem: 'Turn the hem up',
    turnedHemHint:
      'At its ends the allowance is cut as the mirror image of the seam allowances above the fold, and lies on them when it is turned up. Leave this off where the hem is bound or faced.',
  },

  files: {
    title: 'Drawings and pictures',
    download: 'Download',
    svg: {
      name: 'SVG drawing',
      hint: 'Full size, in millimetres; a group for each panel, in it one for each kind of line.',
      download: 'Download the SVG drawing',
      failed: 'This browser cannot make the SVG drawing.',
    },
    dxf: {
      name: 'DXF drawing',
      hint: 'Full size, in millimetres, release 12; a block for each panel, layers by number as in ASTM D6673.',
      download: 'Download the DXF drawing',
      failed: 'This browser cannot make the DXF drawing.',
    },
    png: {
      name: 'PNG picture',
      hint: 'All panels small, to look at and to send to the client; not to cut from.',
      download: 'Download the PNG picture',
      failed: 'This browser cannot make the PNG picture.',
    },
  },

  sizes: {
    title: 'Sizes and casts',
    hint: 'This style in a range of sizes, for a class or a pattern to sell, or for everybody in a cast.',
    open: 'Open sizes and casts',
  },

  prints: {
    title: 'What was printed',
    hint: 'Each print with what it was drafted from; kept with the client.',
    line: ({
      day,
      draft,
      mockup,
      form,
      tape,
      alterations,
    }: {
      day: string;
      draft: string;
      mockup: number | null;
      form: string;
      /** The day of the tape; null where it was not written down. */
      tape: string | null;
      alterations: number;
    }) =>
      [
        `${day}: ${draft}`,
        `${mockup === null ? 'pattern' : `mock-up ${mockup}`} ${form}`,
        ...(tape === null ? [] : [`tape of ${tape}`]),
        ...(alterations === 0
          ? []
          : [plural(alterations, { one: 'one alteration', other: `${alterations} alterations` })]),
      ].join(', '),
    forms: {
      sheets: 'on sheets',
      page: 'on one page',
      projector: 'for a projector',
      svg: 'as an SVG drawing',
      dxf: 'as a DXF drawing',
    },
  },

  draftingSheet: {
    title: 'Drafting sheet',
    hint: {
      in: 'This draft as numbered steps with inches to 1/16 and a figure each, to draw the same block by hand with ruler and curve.',
      cm: 'This draft as numbered steps with centimetres to the millimetre and a figure each, to draw the same block by hand with ruler and curve.',
    },
    pdf: 'Download as PDF',
    webPage: 'Download as web page',
    making: PDF.making,
    failed: PDF.failed,
  },

  kinds: {
    legend: 'What is printed',
    pattern: 'Pattern',
    mockup: 'Mock-up',
    allowance: 'On every edge',
    mockupHint:
      'To sew, bone, lace on and mark: levels, centre lines and bust point right across every panel, no eyelets.',
    linesAcross: 'Waist line and bust point right across',
  },

  print: {
    title: 'Paper',
    printedOn: 'Printed on',
    media: { sheets: 'Sheets', page: 'One page', projector: 'Projector' },
    download: {
      sheets: 'Download the PDF',
      page: 'Download the page',
      projector: 'Download for the projector',
    },
    made: 'The PDF is made and given to the browser to download.',
    /** Of the print just made; `mockup` is its number, null for a pattern. */
    kept: ({ mockup }: { mockup: number | null }) =>
      mockup === null
        ? 'What it was drafted from is kept under “What was printed”.'
        : `It is mock-up ${mockup}, kept under “What was printed”. What is pinned and marked on it goes into the draft at Fit.`,
    toFittings: 'Bring in a fitting',
    share: 'Share the PDF',
    notShared: 'The device did not take the PDF. It lies among your downloads.',
    pagesDrawn: 'Pages drawn',
    page: ({ drawn, of }: { drawn: number; of: number }) => `Page ${drawn} of ${of}`,
    making: PDF.making,
    cancel: 'Cancel',
    failures: {
      tooLarge: 'The picture would be larger than a PDF page may be; take a narrower one.',
      failed: PDF.failed,
    },
    notPrinted: 'Not printed yet.',
    unwritable: ({ letters }: { letters: readonly string[] }) =>
      `This device has no font for ${letters.join(' ')}: on the print they stand as empty boxes. Write the name in other letters, or print on a device that shows them.`,
  },

  /** Why nothing may be printed, by where that is cured. */
  refusals: {
    measure: 'Some measurements that the draft needs are not filled in.',
    draft: 'The draft cannot be cut as it is, so it is not printed; what to change stands below.',
    cautions:
      'The garment is drawn in by more than is usual. Read the cautions and acknowledge them in the Draft step; then it prints.',
  },
  goTo: { measure: 'Go to the measurements', draft: 'Go to the draft' },

  plan: {
    label: 'Plan',
    busy: 'Laying the panels out…',
    noPanels: 'No panels to lay out yet',
    nothingOnPaper: 'Nothing to show on this paper',
    needsPaper: 'The panels are laid out as soon as its size can be printed on.',
    panelsOnSheets: ({ panels, sheets }: { panels: number; sheets: number }) =>
      `${panels} panels on ${sheets} ${plural(sheets, { one: 'sheet', other: 'sheets' })}`,
    panelsOnPage: ({ panels }: { panels: number }) => `${panels} panels on one page`,
    panelsOnPicture: ({ panels }: { panels: number }) => `${panels} panels on one picture`,
    sheet: ({ name }: { name: string }) => `Sheet ${name}`,
  },

  sheets: {
    label: 'Sheets',
    papers: {
      A4: 'A4, 210 × 297 mm',
      Letter: 'Letter, 8½ × 11 in',
      Legal: 'Legal, 8½ × 14 in',
      A3: 'A3, 297 × 420 mm',
      Tabloid: 'Tabloid, 11 × 17 in',
      A0: 'A0, 841 × 1189 mm',
    },
    anotherSize: 'Another size…',
    /** What a typed size is called on the first page. */
    ownSize: 'Own size',
    width: 'Width',
    height: 'Height',
    orientation: 'Which way round the sheets lie',
    orientations: { fewest: 'Fewest sheets', portrait: 'Portrait', landscape: 'Landscape' },
    marginAndOverlap: 'Margin and overlap',
    margin: 'Margin',
    overlap: 'Overlap',
    whole: 'One page, with the squares, all panels and the making list on it.',
    /** The two parts of one sentence: the first is bold. */
    count: ({ printed }: { printed: number }) =>
      printed === 0 ? 'No sheet' : plural(printed, { one: 'One sheet', other: `${printed} sheets` }),
    rest: {
      all: {
        portrait: ', portrait, and a first page with the plan of the sheets.',
        landscape: ', landscape, and a first page with the plan of the sheets.',
      },
      some: {
        portrait: ({ of }: { of: number }) =>
          ` of ${of}, portrait, and a first page with the plan of the sheets.`,
        landscape: ({ of }: { of: number }) =>
          ` of ${of}, landscape, and a first page with the plan of the sheets.`,
      },
    },
    printAll: 'Print all sheets again',
    leaveOutHint: 'A sheet that is not wanted is left out by a press on it.',
  },

  page: {
    label: 'Page',
    papers: {
      '36 in roll': 'Roll, 36 in (914 mm) wide',
      '24 in roll': 'Roll, 24 in (610 mm) wide',
      A0: 'A0, 841 × 1189 mm',
    },
    anotherWidth: 'Roll of another width…',
    width: 'Width of the roll',
    margin: 'Margin',
    /** The two parts of one sentence: the first is bold. Sizes are written in metres. */
    size: ({ width, height }: { width: string; height: string }) => `${width} × ${height} m`,
    rest: ', the squares and all panels on it.',
  },

  projector: {
    lineWeight: 'Line weight',
    lineWeightWritten: ({ mm }: { mm: string }) => `${mm} mm`,
    width: 'Width of the picture',
    widthOutside: 'The picture must be from 30 cm (12 in) to 508 cm (200 in) wide.',
    /** The two parts of one sentence, with the side of a square of the grid in bold between them. */
    moveUntil: 'Light lines on a dark ground. Move the projector until the squares of the grid measure ',
    onTable: ' on the table, across and down.',
  },

  nap: {
    label: 'Panels lie',
    eitherWay: 'heads either way',
    oneWay: 'all one way (nap or print)',
  },

  printer: {
    title: 'Printer',
    label: 'The print is for',
    keepsScale: 'a printer that keeps the scale',
    another: 'another printer…',
    /** What the square on the first page measures. */
    square: { in: '4 in', cm: '10 cm (100 mm)' },
    keepsScaleHint: ({ square }: { square: string }) =>
      `Print at 100 %, without fitting to the page, and measure the square on the first page before cutting. If it is not ${square}, choose another printer here and say what it measured.`,
    name: 'Name of the printer',
    corrected: ({ correction }: { correction: string }) =>
      `Prints for it are drawn ${correction}. If its last print still was not right:`,
    uncorrected: ({ square }: { square: string }) =>
      `What the ${square} square of its last print measured, to the centre of the line:`,
    across: 'Square across',
    down: 'Square down',
    correct: 'Correct the next print',
    forget: 'Forget this printer',
    faults: {
      nameMissing: 'Give the printer a name, so that its correction is found again.',
      measureMissing: 'Type what the square measured, both across and down.',
      tooFarOff:
        'That is more than 10 % off: look whether the print was fitted to the page, and which square was measured.',
    },
  },
});
