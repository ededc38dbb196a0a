// The input of every pattern, whatever it is printed on.

import type { Client, SavedDraft } from '../../document';
import type { Draft } from '../../engine';
import type { Glyphs } from '../glyphs/glyphs';
import type { MakingSettings } from '../making/settings';
import type { LinesAcross } from '../panel/levelLines';

/** A draft, its client and style, and choices that do not depend on the paper. */
export interface PlanInput {
  readonly draft: Draft;
  readonly client: Pick<Client, 'name' | 'unit' | 'measurements' | 'estimated'> & {
    readonly sides?: Client['sides'] | null;
  };
  readonly savedDraft: Pick<SavedDraft, 'name' | 'style' | 'acknowledgedReduction' | 'acknowledgedRibs'> &
    Partial<Pick<SavedDraft, 'fittings'>>;
  /** The date as it is printed. */
  readonly date: string;
  /** Glyphs for names that the page's face cannot set. */
  readonly glyphs?: Glyphs | null;
  /** True for cloth with a nap or a one-way print: no panel is turned upside down. */
  readonly nap?: boolean;
  /** Where given, eyelets and bones are drawn on the panels and the making list is printed after the sheets. */
  readonly making?: MakingSettings;
  /** Lines drawn right across the panels; none where left out. */
  readonly across?: LinesAcross;
  /** True for a mock-up: its panels say so, have no eyelets and are cut from one layer, and no making list is printed. */
  readonly mockup?: boolean;
  /** The how-manieth mock-up of the draft it is; not written where it is left out. */
  readonly mockupNumber?: number;
  /** The day on which the tape was taken, as it is printed; null or left out where it was not written down. */
  readonly tapeDay?: string | null;
  /** The days of the fittings in the order of their list, as they are printed; left out where they are printed as they are kept. */
  readonly fittingDays?: readonly string[];
  /** Name and version of the program, as they are printed; left out where they are not known. */
  readonly program?: string;
}
