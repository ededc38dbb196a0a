// The texts of sizes and casts: one style for a range of sizes, or for everybody in a show.

import { catalogue, listed, plural } from '../../catalogue';

const UNITS = { in: 'inches', cm: 'centimetres' } as const;

type InUnit = { readonly unit: keyof typeof UNITS };

const seams = (count: number): string => plural(count, { one: '1 seam', other: `${count} seams` });
const crossings = (count: number): string =>
  plural(count, { one: '1 crossing', other: `${count} crossings` });
const girths = (count: number): string => plural(count, { one: '1 girth', other: `${count} girths` });

export const SIZING = catalogue({
  title: 'Sizes and casts',
  styleLine: ({ style }: { style: string }) => `Drafted in the style of this draft: ${style}.`,

  whom: { label: 'Draft for', range: 'A range of sizes', cast: 'A cast' },
  source: { label: 'The sizes', chart: 'Computed from the survey', table: 'A table of my own' },

  chart: {
    from: 'Smallest bust',
    to: 'Largest bust',
    drop: ({ bust }: { bust: string }) => `Bust less waist at bust ${bust}`,
    stature: 'Height',
    usual: 'Left empty, it is the survey’s.',
    says: ({ unit }: InUnit) =>
      `Estimates in ${UNITS[unit]}: what women of this bust measured in a public survey of 1988, fit and mostly young. Two in three lie within the ± behind a number. Measure whenever you can.`,
    beyond: ({ sizes }: { sizes: readonly string[] }) =>
      plural(sizes.length, {
        one: `Nobody in the survey had the bust of size ${listed(sizes)}: its numbers go beyond what was measured.`,
        other: `Nobody in the survey had the bust of sizes ${listed(sizes)}: their numbers go beyond what was measured.`,
      }),
    none: 'The largest bust is smaller than the smallest one: there is no size between them.',
    measured: 'What the sizes measure',
    measurement: 'Measurement',
    within: ({ length, within }: { length: string; within: string }) => `${length} ± ${within}`,
    toTable: 'Change these numbers in a table',
  },

  table: {
    range: 'The table, a row for each size',
    cast: 'The table, a row for each person',
    hint: ({ unit }: InUnit) =>
      `Names in the first column, the others called as on Measure. Type it, paste it from a spreadsheet, or choose a CSV file. Numbers are in ${UNITS[unit]} unless a heading or a second row of units says otherwise.`,
    file: 'Choose a CSV file',
    empty: 'There is no row yet.',
    moreFaults: ({ count }: { count: number }) =>
      plural(count, { one: 'And one more row.', other: `And ${count} more rows.` }),
  },

  proof: {
    range: 'What holds, by size',
    cast: 'What holds, by person',
    name: { range: 'Size', cast: 'Name' },
    measured: 'Bust, waist, hip',
    holds: 'Holds',
    choose: ({ name }: { name: string }) => `Print ${name}`,
    print: 'Print',
    counted: (counts: { seams: number; crossings: number; girths: number }) =>
      `${seams(counts.seams)}, ${crossings(counts.crossings)}, ${girths(counts.girths)} hold`,
    off: ({ count }: { count: number }) =>
      plural(count, { one: 'One does not hold', other: `${count} do not hold` }),
    missing: ({ names }: { names: readonly string[] }) => `Not measured: ${names.join(', ')}.`,
    remarks: ({ count }: { count: number }) => plural(count, { one: '1 remark', other: `${count} remarks` }),
    busy: 'Drafting…',
    failed: 'The drafts could not be made. Change a number to try again, or reload the page.',
    pages: 'Pages of the list',
    page: ({ first, last, of }: { first: number; last: number; of: number }) =>
      `${first} to ${last} of ${of}`,
    earlier: 'Earlier',
    next: 'Next',
  },

  steps: {
    title: 'Panel widths and seam lengths by size',
    says: ({ unit }: InUnit) =>
      `Lengths in ${UNITS[unit]}. The bars are the steps from size to size against what the row usually grows; a step that is over 2 mm off is drawn full and named.`,
    what: 'Panel or seam',
    width: ({ piece, level }: { piece: string; level: string }) => `${piece}, ${level}`,
    steps: 'Steps',
    even: 'even',
    jumps: ({ pairs }: { pairs: readonly { readonly from: string; readonly to: string }[] }) =>
      pairs.map(({ from, to }) => `jumps from ${from} to ${to}`).join(', '),
    download: 'Download as CSV',
  },

  print: {
    title: 'Print',
    form: 'As',
    forms: {
      sheets: 'One over another, on sheets',
      page: 'One over another, on one page',
      projector: 'One over another, for a projector',
      svg: 'One over another, SVG drawing',
      dxf: 'One over another, DXF drawing',
      zip: 'A PDF for each, in one ZIP',
    },
    formsOfCast: 'A PDF for each person, in one ZIP',
    paper: ({ paper }: { paper: string }) => `Paper as chosen in Cut: ${paper}.`,
    page: ({ page }: { page: string }) => `Page as chosen in Cut: ${page}.`,
    withSheets: 'With a drafting sheet for each',
    make: ({ count, isCast }: { count: number; isCast: boolean }) =>
      isCast
        ? plural(count, { one: 'Print 1 person', other: `Print ${count} people` })
        : plural(count, { one: 'Print 1 size', other: `Print ${count} sizes` }),
    none: 'Nothing that can be cut is chosen.',
    leftOut: ({ count }: { count: number }) =>
      plural(count, {
        one: 'One is left out: it cannot be cut.',
        other: `${count} are left out: they cannot be cut.`,
      }),
    progress: ({ done, of }: { done: number; of: number }) => `${done} of ${of}`,
    cancel: 'Cancel',
    made: 'Made and downloaded.',
    failed: 'The print could not be made. Nothing in the book has changed; try again, or reload the page.',
    tooLarge: 'The page would be larger than a PDF page may be. Print fewer sizes, or on sheets.',
    cautions: 'Some are tightly laced: the cautions',
    read: 'I have read them, and whoever wears it will be told.',
  },
});
