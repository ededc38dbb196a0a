// Places of another step that are gone to: a wedge at a level on Draft, a measurement on Measure. Each has the focus once its step
// is laid out, and is then no longer awaited.

import type { LevelName, MeasurementName, Side } from '../../../engine';

interface WedgePlace {
  readonly wedge: string;
  readonly level: LevelName;
  /** The half it is drafted for; null where both are alike. */
  readonly side: Side | null;
}

let wedge: WedgePlace | null = null;
let measurement: MeasurementName | null = null;

/** Asks for the intake of a wedge at a level; the Draft step has it when it is laid out next. */
export function goToWedge(place: WedgePlace): void {
  wedge = place;
}

export const awaitedWedge = (): WedgePlace | null => wedge;

/** The Draft step is laid out with the wedge selected and the level in hand: its number has the focus. */
export function arriveAtWedge(): void {
  if (wedge) document.querySelector<HTMLElement>('.wedge-numbers .in-hand input')?.focus();
  wedge = null;
}

/** Asks for the field of a measurement; the Measure step has it when it is laid out next. */
export function goToMeasurement(name: MeasurementName): void {
  measurement = name;
}

/** The form of measurements is laid out. */
export function arriveAtMeasurement(): void {
  if (measurement) document.querySelector<HTMLElement>(`[data-field='${measurement}'] input`)?.focus();
  measurement = null;
}
