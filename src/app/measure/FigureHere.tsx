// Which field's tape is shown, and its figure beneath the field itself where the one beside the form is out of sight.

import { createContext, useContext } from 'react';
import { MEASURE } from '../../document';
import type { MeasurementName } from '../../engine';
import { BodyFigure, isBehind } from './BodyFigure';

export interface TapeShown {
  /** The field that was last gone into. */
  readonly field: string;
  readonly measurement: MeasurementName;
  /** How it is taken. */
  readonly how: string;
}

export const TapeContext = createContext<TapeShown | null>(null);

/** Stays until another field is gone into: what lies below must not move away under a finger. */
export function FigureHere({ field }: { field: string }) {
  const shown = useContext(TapeContext);
  if (shown?.field !== field) return null;
  return (
    <div className="figure-here">
      <BodyFigure measurement={shown.measurement} />
      {isBehind(shown.measurement) ? <p className="hint">{MEASURE.figure.behind}</p> : null}
    </div>
  );
}
