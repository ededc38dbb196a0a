// The choices made in the Cut step. They are remembered while the page is open, and are the same for every client.

import { create } from 'zustand';
import { CUT, MOCKUP_ALLOWANCE_MM, type Unit } from '../../../document';
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

/** What the Cut step shows beside the choices. */
export type CutView = 'panels' | 'lay' | 'making';

/** The pattern of the garment, or a mock-up to fit it by. */
type PrintKind = 'pattern' | 'mockup';

export interface CutChoices {
  readonly view: CutView;
  readonly medium: Medium;
  readonly kind: PrintKind;
  /** Allowance of a mock-up on every edge, mm. */
  readonly mockupAllowance: number;
  /** Whether waist line and bust point run right across the panels of the pattern. */
  readonly linesAcross: boolean;
  /** A name in the list of papers, `own` for a typed size, or null while none is chosen. */
  readonly paperName: string | null;
  readonly paper: PaperChoice;
  /** A name in the list of pages, or `own` for a roll of typed width. */
  readonly pageName: string;
  readonly page: OnePageChoice;
  readonly projector: ProjectorChoice;
  /** Whether all heads lie one way; null while that is not chosen. */
  readonly nap: boolean | null;
  readonly printers: readonly Printer[];
  /** The name of the printer the next print is for; null for one that keeps the scale. */
  readonly printer: string | null;
}

export const useCutChoices = create<CutChoices>()(() => ({
  view: 'panels',
  medium: 'sheets',
  kind: 'pattern',
  mockupAllowance: MOCKUP_ALLOWANCE_MM,
  linesAcross: false,
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

/** The paper to print on: before one is chosen, the one that is usual where the client's unit is used. */
export const paperFor = (
  { paperName, paper }: Pick<CutChoices, 'paperName' | 'paper'>,
  unit: Unit,
): PaperChoice => (paperName === null && unit === 'in' ? paperChoice('Letter') : paper);

/**
 * Whether all heads lie one way. While that is not chosen, they do under a projector only, since there the cloth itself is cut;
 * paper panels are laid on the cloth one by one.
 */
export const napFor = ({ nap, medium }: Pick<CutChoices, 'nap' | 'medium'>): boolean =>
  nap ?? medium === 'projector';

export const changeNap = (nap: boolean): void => set({ nap });

export const choose = (choices: Partial<CutChoices>): void => set(choices);

/** Chooses a paper by name, or keeps the present size as a typed one; margin, overlap and orientation stay. */
export const choosePaper = (name: string, present: PaperChoice): void => {
  const named = PAPERS.find((each) => each.name === name);
  set({
    paperName: named?.name ?? 'own',
    paper: named ? { ...present, ...named } : { ...present, name: CUT.sheets.ownSize },
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

/** The correction of the chosen printer; undefined where it keeps the scale or its kept numbers are out of span. */
export function correctionOf({ printers, printer }: CutChoices): Correction | undefined {
  const found = printers.find(({ name }) => name === printer);
  return found && isCorrection(found) ? { across: found.across, down: found.down } : undefined;
}

/**
 * The printer of this name with a correction from what a square of its last print measured; null where it is too far off. The
 * last print is taken to have been drawn with the correction kept for the printer.
 *
 * @param sideMm what the square should measure, mm
 * @param measured what it measured, mm
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
