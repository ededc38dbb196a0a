// What the maker has chosen in the Cut step, remembered while the page is open: how to print belongs to the printer at hand,
// not to a client.

import { create } from 'zustand';
import type { Unit } from '../../../document';
import {
  type Correction,
  correctionFrom,
  DEFAULT_PROJECTOR,
  isCorrection,
  ONE_PAGE_MARGIN_MM,
  ONE_PAGES,
  type OnePageChoice,
  PAPERS,
  type PaperChoice,
  type ProjectorChoice,
  paperChoice,
} from '../../../paper';
import type { Printer } from '../../storage/printers';

export type Medium = 'sheets' | 'page' | 'projector';

export interface CutChoices {
  readonly medium: Medium;
  /** Of the list, `own` for a size typed in, or null while the maker has chosen none. */
  readonly paperName: string | null;
  readonly paper: PaperChoice;
  /** Of the list, or `own`. */
  readonly pageName: string;
  readonly page: OnePageChoice;
  readonly projector: ProjectorChoice;
  /** All heads one way, as asked for; null while the maker has not said. */
  readonly nap: boolean | null;
  readonly printers: readonly Printer[];
  /** The printer the next print is for; null for one that keeps the scale. */
  readonly printer: string | null;
}

export const useCutChoices = create<CutChoices>()(() => ({
  medium: 'sheets',
  paperName: null,
  paper: paperChoice('A4'),
  pageName: ONE_PAGES[0].name,
  page: { widthMm: ONE_PAGES[0].widthMm, heightMm: ONE_PAGES[0].heightMm, marginMm: ONE_PAGE_MARGIN_MM },
  projector: DEFAULT_PROJECTOR,
  nap: null,
  printers: [],
  printer: null,
}));

const { setState: set } = useCutChoices;

/** The paper in force: before one is chosen, the usual one where the client's unit is used. */
export const paperFor = (
  { paperName, paper }: Pick<CutChoices, 'paperName' | 'paper'>,
  unit: Unit,
): PaperChoice => (paperName === null && unit === 'in' ? paperChoice('Letter') : paper);

/**
 * Whether all heads lie one way: before the maker says so, only under a projector, where the cloth itself is cut. From paper each
 * panel is laid on the cloth by itself.
 */
export const napFor = ({ nap, medium }: Pick<CutChoices, 'nap' | 'medium'>): boolean =>
  nap ?? medium === 'projector';

export const changeNap = (nap: boolean): void => set({ nap });

export const choose = (choices: Partial<CutChoices>): void => set(choices);

/** Takes a named paper, or keeps the present size as one of the maker's own; margin, overlap and the way up stay. */
export const choosePaper = (name: string, present: PaperChoice): void => {
  const named = PAPERS.find((each) => each.name === name);
  set({
    paperName: named?.name ?? 'own',
    paper: named ? { ...present, ...named } : { ...present, name: 'Own size' },
  });
};

export const changePaper = (present: PaperChoice, change: Partial<PaperChoice>): void =>
  set(({ paperName }) => ({ paperName: paperName ?? present.name, paper: { ...present, ...change } }));

export const choosePage = (name: string): void => {
  const named = ONE_PAGES.find((each) => each.name === name);
  set(({ page }) => ({
    pageName: named?.name ?? 'own',
    page: named ? { ...page, widthMm: named.widthMm, heightMm: named.heightMm } : { ...page, heightMm: null },
  }));
};

/** The correction of the printer in hand; undefined where it keeps the scale or its kept numbers cannot be true. */
export function correctionOf({ printers, printer }: CutChoices): Correction | undefined {
  const found = printers.find(({ name }) => name === printer);
  return found && isCorrection(found) ? { across: found.across, down: found.down } : undefined;
}

/**
 * The printer by this name, corrected by what a square of its last print measured, mm; null where it is too far off. Its last
 * print was corrected by what is known of it.
 */
export function measuredPrinter(
  { printers }: CutChoices,
  name: string,
  sideMm: number,
  measured: { readonly across: number; readonly down: number },
): Printer | null {
  const last = printers.find((each) => each.name === name);
  const correction = correctionFrom(sideMm, measured, last);
  return correction && { name, ...correction };
}
