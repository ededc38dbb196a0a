// Fittings as they are kept with a draft: dated, each with the alterations it led to, switched on or off one by one.

import type { Alteration, Draft, RefusalCode } from '../../engine';

/** An alteration of a fitting; one that is off is kept and not made. */
export type KeptAlteration = Alteration & { readonly on: boolean };

/** One day on which the mock-up was tried on. `date` is an ISO day; what is off as a whole is kept and not made. */
export interface Fitting {
  readonly date: string;
  readonly note: string;
  readonly on: boolean;
  readonly alterations: readonly KeptAlteration[];
}

/** What became of an alteration; `fitting` and `alteration` count from 0. */
export interface FittingOutcome {
  readonly fitting: number;
  readonly alteration: number;
  readonly applied: boolean;
  /** Why it was not made; null where it was. */
  readonly code: RefusalCode | 'switchedOff' | null;
}

/** The alterations that are on, fitting by fitting. */
export const alterationsOf = (fittings: readonly Fitting[]): readonly Alteration[] =>
  fittings.flatMap(({ on, alterations }) => (on ? alterations.filter((each) => each.on) : []));

/** The fittings with the alterations that are on, and no others. */
export const inForce = (fittings: readonly Fitting[]): readonly Fitting[] =>
  fittings.flatMap((fitting) => {
    const alterations = fitting.on ? fitting.alterations.filter(({ on }) => on) : [];
    return alterations.length > 0 ? [{ ...fitting, alterations }] : [];
  });

/** What became of every alteration of the fittings in a draft that was made with {@link alterationsOf} them. */
export function outcomesOf(fittings: readonly Fitting[], { alterations }: Draft): FittingOutcome[] {
  let next = 0;
  return fittings.flatMap(({ on, alterations: kept }, fitting) =>
    kept.map((each, alteration): FittingOutcome => {
      if (!on || !each.on) return { fitting, alteration, applied: false, code: 'switchedOff' };
      const outcome = alterations[next];
      next += 1;
      return {
        fitting,
        alteration,
        applied: outcome?.applied ?? false,
        code: outcome ? outcome.code : 'notDrafted',
      };
    }),
  );
}

/** How many alterations a draft has, and how many it was asked for and has not. */
export function countOutcomes(outcomes: readonly FittingOutcome[]): { made: number; refused: number } {
  const made = outcomes.filter(({ applied }) => applied).length;
  return { made, refused: outcomes.filter(({ code }) => code !== null && code !== 'switchedOff').length };
}
