// The record of a print as it is kept with the client, so that it can be told later what was cut.

import type { BodySides, Measurements, Style } from '../../engine';
import type { Fitting } from './fittings';

/** On what a pattern was printed, or as what it was saved. */
export const PRINT_FORMS = ['sheets', 'page', 'projector', 'svg', 'dxf'] as const;

export interface KeptPrint {
  /** ISO day. */
  readonly on: string;
  /** The draft's id, and its name at that time. */
  readonly draft: string;
  readonly draftName: string;
  /** The how-manieth mock-up of the draft; null for a pattern. */
  readonly mockup: number | null;
  readonly form: (typeof PRINT_FORMS)[number];
  /** Name and version of the program. */
  readonly program: string;
  readonly measurements: Measurements;
  /** The ISO day on which the tape was taken; null where it was not written down. */
  readonly takenOn: string | null;
  readonly sides?: BodySides;
  readonly style: Style;
  /** The fittings whose alterations were made, with these alone. */
  readonly fittings: readonly Fitting[];
}
