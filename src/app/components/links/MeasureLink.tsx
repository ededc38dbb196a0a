// The way to the measurements, to the first field of those that are spoken of.

import { ISSUES } from '../../../document';
import { MEASUREMENTS } from '../../../engine';
import { goToMeasurement } from '../awaited/awaitedPlace';

const MEASURE_STEP = '#measure';

interface MeasureLinkProps {
  /** Names of fields; of those that are measurements, the first of the form has the focus there. */
  readonly fields: readonly string[];
  readonly children?: string;
}

export function MeasureLink({ fields, children = ISSUES.goToMeasurements }: MeasureLinkProps) {
  const first = MEASUREMENTS.find(({ name }) => fields.includes(name))?.name;
  return (
    <a href={MEASURE_STEP} onClick={first && (() => goToMeasurement(first))}>
      {children}
    </a>
  );
}
