// What a pattern is made from, whatever it is printed on.

import type { Client, SavedDraft } from '../../document';
import type { Draft } from '../../engine';
import type { Glyphs } from '../glyphs/glyphs';
import type { MakingSettings } from '../making/settings';

/** Everything a pattern is made from, whatever it is printed on. */
export interface PlanInput {
  readonly draft: Draft;
  readonly client: Pick<Client, 'name' | 'unit' | 'measurements' | 'estimated'>;
  readonly savedDraft: Pick<SavedDraft, 'name' | 'style' | 'acknowledgedReduction' | 'acknowledgedRibs'>;
  /** The day as it is to be printed. */
  readonly date: string;
  /** For names that the page's own font cannot set. */
  readonly glyphs?: Glyphs | null;
  /** The cloth has a nap or a print that runs one way: all panels lie with their heads up. */
  readonly nap?: boolean;
  /** Where given, eyelets are drawn on the panels and the making list is printed behind the sheets. */
  readonly making?: MakingSettings;
}
