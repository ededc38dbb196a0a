// What is written on the plan of a cloth, and what is wrong with one.

import { catalogue, plural } from '../catalogue';

interface ClothWords {
  /** With its unit. */
  readonly width: string;
  readonly folded: boolean;
  readonly nap: boolean;
  readonly gap: string | null;
  readonly shrinks: { readonly along: number; readonly across: number } | null;
}

interface WiderThanCloth {
  readonly piece: string;
  /** With their unit. */
  readonly needs: string;
  readonly width: string;
  readonly folded: boolean;
}

export const LAY_PLAN = catalogue({
  title: 'Lay plan',
  cloth: ({ width, folded, nap, gap, shrinks }: ClothWords) =>
    [
      `Usable width ${width}`,
      folded ? 'folded lengthwise' : 'open',
      nap ? 'with nap' : 'without nap',
      ...(gap === null ? [] : [`${gap} between pieces`]),
      ...(shrinks === null
        ? []
        : [`drawn larger for ${shrinks.along} % of shrinkage along and ${shrinks.across} % across`]),
    ].join(' · '),
  length: ({ length, density }: { length: string; density: number }) =>
    `Length ${length} · ${density} % of the cloth is used`,
  shrunk: 'The cloth is laid before it is washed: cut the outlines of this plan, not those of the pattern.',
  /** Over the table. The edge is the fold of folded cloth. */
  measured: {
    open: 'Measured from the start of the cloth and from the selvedge at the top of the plan, to where a piece begins.',
    folded:
      'Measured from the start of the cloth and from the fold, at the top of the plan, to where a piece begins.',
  },
  columns: {
    number: 'No.',
    piece: 'Piece',
    along: 'From the start',
    across: { open: 'From the selvedge', folded: 'From the fold' },
    lies: 'Lies',
  },
  /** How a piece lies. */
  lies: {
    fold: 'on the fold',
    single: 'right side up',
    mirrored: 'wrong side up',
    both: 'cuts both',
    head: 'head first',
    foot: 'hem first',
    turned: ({ degrees }: { degrees: number }) => `turned ${degrees}°`,
  },
  /** `of`: what its draft is called, where several lie on the cloth. */
  piece: ({ piece, of, copy, copies }: { piece: string; of: string | null; copy: number; copies: number }) =>
    `${of === null ? '' : `${of}: `}${copies > 1 ? `${piece} (${copy} of ${copies})` : piece}`,
  edges: { selvedge: 'Selvedge', fold: 'Fold', start: 'Start of the cloth' },
  /** On a strip of paper, and on the first page before them. */
  strips: ({ number, count }: { number: number; count: number }) =>
    `Actual size · strip ${number} of ${count}`,
  paper: ({ count }: { count: number }) =>
    plural(count, {
      one: 'The cloth lies on one strip of paper at full size.',
      other: `The cloth lies on ${count} strips of paper at full size: join them as they are numbered.`,
    }),
  svg: 'Lay plan at full size: 1 unit is 1 mm.',
  faults: {
    widerThanCloth: ({ piece, needs, width, folded }: WiderThanCloth) =>
      folded
        ? `${piece} needs ${needs} across and the folded cloth has ${width}: take a wider cloth, or lay it open.`
        : `${piece} needs ${needs} across and the cloth has ${width}: take a wider cloth.`,
    foldAcrossGrain: ({ piece }: { piece: string }) =>
      `The fold of ${piece} does not run along its grain, so it cannot lie on the fold: lay the cloth open.`,
    foldOnBias: ({ piece }: { piece: string }) =>
      `${piece} is cut on the fold, so it cannot lie on the bias on folded cloth: lay the cloth open.`,
  },
});
