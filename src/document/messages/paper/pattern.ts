// What is written on the panels, the sheets and the first page of a pattern.

import { catalogue, plural } from '../catalogue';

interface Cut {
  readonly count: number;
  readonly onFold: boolean;
  /** Cut for one half alone. */
  readonly rightSideUp: boolean;
  /** The layers it is cut from; empty where they are not said. */
  readonly layers: readonly { readonly layer: 'fashion' | 'strength' | 'lining'; readonly count: number }[];
}

export const PATTERN = catalogue({
  panel: {
    /** Examples: "Cut 2", "Cut 1 on fold", "Cut 2 fashion, 2 strength, 2 lining". */
    cut: ({ count, onFold, rightSideUp, layers }: Cut) => {
      const times =
        layers.length > 0
          ? // A number stays in a line with its layer.
            layers.map((each) => `${count * each.count}\u00a0${each.layer}`).join(', ')
          : String(count);
      if (onFold) return `Cut ${times} on fold`;
      return rightSideUp ? `Cut ${times}, right side up` : `Cut ${times}`;
    },
    mockup: ({ date, number }: { date: string; number: number | null }) =>
      number === null ? `Mock-up of ${date}` : `Mock-up ${number} of ${date}`,
    bustPoint: 'Bust point',
    dart: 'Dart',
  },
  edge: {
    onFold: ({ edge }: { edge: string }) => `${edge} · place on fold`,
    /** A seam between two panels. */
    to: ({ piece }: { piece: string }) => `To ${piece}`,
    namedTo: ({ edge, piece }: { edge: string; piece: string }) => `${edge}, to ${piece}`,
    noAllowance: 'no allowance',
    ease: ({ length }: { length: string }) => `ease in ${length}`,
  },
  /** Written in the calibration squares. */
  squares: { metric: '100 mm', inch: '4 in' },
  /** Beside the scale on every tenth sheet. */
  scale: { in: '2 in', cm: '50 mm' },
  sheet: {
    count: ({ number, count }: { number: number; count: number }) => `sheet ${number} of ${count}`,
    how: ({ paper, count }: { paper: string; count: string }) => `${paper} · print at 100 % · ${count}`,
    doNotCut: ({ warning, count }: { warning: string; count: string }) => `${warning} (${count})`,
    cutOff: ({ sheet }: { sheet: string }) => `cut off here, lay on ${sheet}`,
    liesUpTo: ({ sheet }: { sheet: string }) => `${sheet} lies up to here`,
  },
  /** At the foot of a page of text. */
  page: ({ foot, number }: { foot: string; number: number }) => `${foot} · page ${number}`,
  grid: {
    in: 'Each square of the grid is 2 in',
    cm: 'Each square of the grid is 50 mm',
  },
  svg: 'Sewing pattern at full size: 1 unit is 1 mm.',
  correction: {
    both: ({ across, down }: { across: string; down: string }) => `${across}, ${down}`,
    across: {
      unchanged: 'unchanged across',
      larger: ({ percent }: { percent: number }) => `${percent} % larger across`,
      smaller: ({ percent }: { percent: number }) => `${percent} % smaller across`,
    },
    down: {
      unchanged: 'unchanged down',
      larger: ({ percent }: { percent: number }) => `${percent} % larger down`,
      smaller: ({ percent }: { percent: number }) => `${percent} % smaller down`,
    },
  },
});

interface Sheets {
  readonly paper: string;
  readonly count: number;
  readonly unit: 'in' | 'cm';
}

const UNITS = { in: 'inches', cm: 'centimetres' } as const;

export const FIRST_PAGE = catalogue({
  print: {
    heading: 'Print at 100 %, no fitting',
    actualSize: 'Choose “actual size” in the print dialogue, not “fit to page”.',
    measure:
      'Then measure both squares with a ruler, across and down, from centre of line to centre of line. If they are not 100 mm and 4 in, do not use the print.',
  },
  thisPrint: 'This print',
  sheets: ({ paper, count, unit }: Sheets) =>
    count === 0
      ? `Paper ${paper}, no sheet and this page. Lengths in ${UNITS[unit]}.`
      : plural(count, {
          one: `Paper ${paper}, ${count} sheet and this page. Lengths in ${UNITS[unit]}.`,
          other: `Paper ${paper}, ${count} sheets and this page. Lengths in ${UNITS[unit]}.`,
        }),
  /** Alterations that the pattern has, and others that it was asked for and has not. */
  altered: ({ made, refused }: { made: number; refused: number }) =>
    refused === 0
      ? plural(made, {
          one: 'With one alteration after fittings; it is in the record behind.',
          other: `With ${made} alterations after fittings; the record behind has each.`,
        })
      : `Of ${made + refused} alterations after fittings ${plural(refused, {
          one: 'one could not be made',
          other: `${refused} could not be made`,
        })}; the record behind says which.`,
  onePage: ({ unit }: Pick<Sheets, 'unit'>) => `All panels on one page. Lengths in ${UNITS[unit]}.`,
  leftOut: ({ sheets }: { sheets: readonly string[] }) => `Not printed this time: ${sheets.join(', ')}.`,
  corrected: ({ correction }: { correction: string }) => `Drawn ${correction} to make up for the printer.`,
  lines:
    'Cut line: thick. Sew line: thin, broken. Grain: line with two arrows. Balance marks cross the sew line.',
  bones: 'Bone channels: dotted, with a line across at each end of the bone.',
  eyelets: 'Eyelets: ring and cross.',
  across: 'Levels and bust point: fine lines right across.',
  mockup: ({ date, number, allowance }: { date: string; number: number | null; allowance: string }) =>
    `${number === null ? 'Mock-up' : `Mock-up ${number}`} of ${date}, with ${allowance} on every edge and no eyelets. Sew it together, bone it, lace it on and mark on it what is to change.`,
  moreFaults: ({ count }: { count: number }) => `And ${count} more.`,
  allowances: {
    heading: 'Seam allowances, included',
    none: 'none',
    line: ({ allowance, edges }: { allowance: string; edges: readonly string[] }) =>
      `${allowance}: ${edges.join(', ')}`,
  },
  tightLacing: 'Tight lacing',
  missingGlyphs: 'Letters of a name that no font on hand has stand as empty boxes.',
  glyphsNotLoaded:
    'The letters of a name could not be loaded: what the page’s own font lacks stands without its marks or as a question mark.',
  /** Sheets within the rows of the map that nothing lies on. */
  blank: ({ sheets }: { sheets: readonly string[] }) =>
    sheets.length === 1
      ? `Nothing lies on ${sheets[0]}, so it is not printed.`
      : `Nothing lies on ${sheets.join(', ')}, so they are not printed.`,
  map: 'How the sheets lie',
  /** Panels whose names have no room on the map, by their numbers. */
  mapKey: ({ names }: { names: readonly string[] }) => names.map((name, i) => `${i + 1} ${name}`).join(' · '),
  cutShort: 'The rest is told on the screen.',
});
