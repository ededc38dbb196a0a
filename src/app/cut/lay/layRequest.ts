// What the page asks of a worker that lays panels, and what that answers.

import type { Cloth, LayFault, LayPlan, PieceToLay } from '../../../paper';

export interface LayRequest {
  readonly asked: readonly PieceToLay[];
  readonly cloth: Cloth;
  /** Another one tries other lays. */
  readonly seed: number;
}

export type LayAnswer =
  /** The shortest plan so far of this worker. */
  | { readonly kind: 'plan'; readonly plan: LayPlan }
  | { readonly kind: 'faults'; readonly faults: readonly LayFault[] }
  /** The time is up. */
  | { readonly kind: 'done' };

/** So long a shorter lay is looked for. */
export const MOST_SECONDS = 30;
