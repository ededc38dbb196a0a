// The input of a nested print: one style in several sizes, one over another.

import type { SavedDraft, SizedDraft, Unit } from '../../document';
import type { LevelName } from '../../engine';
import type { Glyphs } from '../glyphs/glyphs';

export interface NestedInput {
  /** The sizes from the smallest up, each with a draft that can be cut; at least one. */
  readonly sizes: readonly SizedDraft[];
  /** Names of sizes that are left out, as they must not be cut. */
  readonly leftOut: readonly string[];
  /** The style, which gives the print its name. */
  readonly savedDraft: Pick<SavedDraft, 'name' | 'style'>;
  readonly unit: Unit;
  /** The date as it is printed. */
  readonly date: string;
  /** The level at which the sizes of a panel lie on one another; the waist where left out. */
  readonly alignedAt?: LevelName;
  /** Glyphs for names that the page's face cannot set. */
  readonly glyphs?: Glyphs | null;
}
