// The texts of Fit: the panels closed up, and the proofs beside them.

import { catalogue, plural } from '../../catalogue';

interface Band {
  /** The length of the band’s lower edge, front and back together. */
  readonly length: string;
}

interface UnevenBand extends Band {
  /** Between the band’s edge and the top edges. */
  readonly difference: string;
}

export const FIT = catalogue({
  empty: 'There are no panels to close up yet.',
  views: {
    label: 'View',
    each: { closedUp: 'Panels closed up', asWorn: 'As worn' },
  },
  closedUp: {
    title: 'Closed up',
    held: 'Seams held together',
    heldAt: { top: 'at the top edge', waist: 'at the waist', hem: 'at the hem' },
  },
  openDarts: {
    shut: 'Open darts are shut here, leg to leg like seams. Sewn, the panel cups from the dart’s point; to lie flat it is slashed from there (broken line), and its parts lap or spread.',
    staysOpen:
      'A dart stays open here where no straight slash from its point reaches the edge across from it.',
    openAtTop: 'Darts open at the top edge stay open here; hold the seams at the top edge to see them shut.',
    openAtSide:
      'The dart that opens in the side seam stays open here, and front and back are held together below it; hold the seams at the top edge to see it shut.',
    openAtHem: 'Darts open at the hem stay open here; hold the seams at the hem to see them shut.',
  },
  band: {
    notDrawn: {
      both: 'The off-shoulder band is not drawn here.',
      left: 'The left half’s off-shoulder band is not drawn here.',
      right: 'The right half’s off-shoulder band is not drawn here.',
    },
    even: ({ length }: Band) =>
      `Front and back together its lower edge is ${length}, as long as the top edges it is sewn to, mark to mark.`,
    longer: ({ length, difference }: UnevenBand) =>
      `Front and back together its lower edge is ${length}, ${difference} longer than the top edges it is sewn to, mark to mark; ease the difference in.`,
    shorter: ({ length, difference }: UnevenBand) =>
      `Front and back together its lower edge is ${length}, ${difference} shorter than the top edges it is sewn to, mark to mark; ease the difference in.`,
  },
});

interface Counts {
  readonly seams: number;
  readonly crossings: number;
  readonly girths: number;
}

const seamsOf = (seams: number): string => plural(seams, { one: 'one seam', other: `${seams} seams` });
const crossingsOf = (crossings: number): string =>
  plural(crossings, { one: 'one crossing', other: `${crossings} crossings` });
const girthsOf = (girths: number): string => plural(girths, { one: 'one girth', other: `${girths} girths` });

export const PROOFS = catalogue({
  holds: 'holds',
  lookAgain: 'look again',
  /** One line for all the tables. */
  headline: {
    holds: 'It holds',
    lookAgain: 'Look again',
    allHold: ({ seams, crossings, girths, widest }: Counts & { widest: string }) =>
      `${seamsOf(seams)}, ${crossingsOf(crossings)} and ${girthsOf(girths)} hold; mates differ by ${widest} at most.`,
    off: ({ seams, crossings, girths }: Counts) =>
      `${[
        ...(seams > 0 ? [seamsOf(seams)] : []),
        ...(crossings > 0 ? [crossingsOf(crossings)] : []),
        ...(girths > 0 ? [girthsOf(girths)] : []),
      ].join(', ')} to look at again; they are marked in the tables.`,
    /** Alterations that the draft has. */
    altered: ({ count }: { count: number }) =>
      plural(count, {
        one: 'With one alteration after fittings.',
        other: `With ${count} alterations after fittings.`,
      }),
    /** Alterations that are switched on and that the draft has not. */
    unmade: ({ count }: { count: number }) =>
      plural(count, {
        one: 'One alteration could not be made: under Fittings it says why.',
        other: `${count} alterations could not be made: under Fittings each says why.`,
      }),
  },
  /** Beside the title of a folded table. */
  counted: {
    seams: ({ count }: { count: number }) => seamsOf(count),
    crossings: ({ count }: { count: number }) => crossingsOf(count),
    girths: ({ count }: { count: number }) => girthsOf(count),
    panels: ({ panels, levels }: { panels: number; levels: number }) =>
      `${plural(panels, { one: 'one panel', other: `${panels} panels` })} at ${plural(levels, { one: 'one level', other: `${levels} levels` })}`,
  },
  withUnit: ({ length, unit }: { length: string; unit: 'in' | 'cm' }) => `${length} ${unit}`,
  under: ({ length }: { length: string }) => `under ${length}`,
  widths: {
    title: 'Panel widths',
    what: 'The sewn width of each panel at each level; a dash where a level runs out through an edge.',
    panel: 'Panel',
    none: '–',
  },
  /** On the drawing, beside the seam in hand. */
  apart: ({ difference }: { difference: string }) => `differ by ${difference}`,
  next: 'Next: Cut',
  /** What a cell of a table says, with the row and the column it stands in. */
  cell: ({ row, column, text }: { row: string; column: string; text: string }) =>
    `${row}, ${column}: ${text}`,
  seamWalk: {
    title: 'Seam walk',
    whatSeams: 'Each mate rolled along the other, edge against edge.',
    whatSeamsAndDarts: 'Each mate rolled along the other, edge against edge; in a dart, leg against leg.',
    seam: 'Seam',
    oneEdge: 'One edge',
    mate: 'Its mate',
    differ: 'Differ by',
    marksMoved: 'Marks moved',
    /** Of a mate that is meant to be longer. */
    eased: ({ length }: { length: string }) => `${length} eased`,
  },
  edgeRun: {
    title: 'Edge run',
    what: 'The angle across each seam when it is sewn; 180° runs straight on, unless a corner was wanted.',
    crossing: 'Crossing',
    top: { head: 'Top edge', name: 'top edge' },
    hem: { head: 'Hem', name: 'hem' },
    neckline: ({ seam }: { seam: string }) => `${seam}, neckline`,
    armhole: ({ seam }: { seam: string }) => `${seam}, armhole`,
    corner: ({ angle }: { angle: string }) => `corner ${angle}`,
  },
  girths: {
    title: 'Girths',
    whatLaced: ({ gap }: { gap: string }) =>
      `Measured across the finished panels, with the lacing gap of ${gap} counted in: what the tape reads round the laced garment.`,
    whatClosed: 'Measured across the finished panels: what the tape reads round the closed garment.',
    level: 'Level',
    asked: 'Asked',
    /** What fittings changed. */
    altered: 'Altered',
    unaltered: '–',
    laced: 'Laced',
    sewn: 'Sewn',
    differ: 'Differ by',
    alongEdge: ({ girth }: { girth: string }) => `${girth} along the edge`,
  },
});
