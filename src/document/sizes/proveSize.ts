// What holds of one size, and what is missing or wrong: a row of the table of sizes or of a cast.

import { type Issue, MEASUREMENTS, type MeasurementName, type Measurements } from '../../engine';
import { wantsReading } from '../edit/acknowledgement';
import { errorsOf, type SizedDraft } from './sizedDrafts';

export interface SizeProof {
  readonly name: string;
  readonly measurements: Measurements;
  readonly canBeCut: boolean;
  /** Needed measurements that were not taken. */
  readonly missing: readonly MeasurementName[];
  /** What forbids cutting it, but for what is missing. */
  readonly errors: readonly Issue[];
  readonly warnings: readonly Issue[];
  /** Seams and darts, crossings of edges and girths that were measured, of which `off` do not hold. */
  readonly seams: number;
  readonly crossings: number;
  readonly girths: number;
  readonly off: number;
}

/** Bounds of every draft: mates, edges across seams, sewn girths. */
const [MATES_MM, EDGES_RAD, GIRTHS_MM] = [0.05, Math.PI / 360, 0.1];

/** Measures the finished panels of a size as a maker does before she cuts. */
export function proveSize({ name, measurements, draft, canBeCut }: SizedDraft): SizeProof {
  const { seams, closedDarts, edges, ledger } = draft.proof;
  const sewn = ledger.flatMap(({ sewnGirth, targetGirth, alteredBy }) =>
    sewnGirth === null ? [] : [sewnGirth - targetGirth - alteredBy],
  );
  const off = [
    ...seams.map(({ lengthA, lengthB, ease }) => Math.abs(lengthA + ease - lengthB) > MATES_MM),
    ...closedDarts.map(({ lengthInner, lengthOuter }) => Math.abs(lengthInner - lengthOuter) > MATES_MM),
    ...edges.map(({ angle, asked }) => Math.abs(angle - asked) > EDGES_RAD),
    ...sewn.map((differ) => Math.abs(differ) > GIRTHS_MM),
  ].filter((isOff) => isOff).length;
  return {
    name,
    measurements,
    canBeCut,
    missing: MEASUREMENTS.filter((each) => each.needed && measurements[each.name] === null).map(
      (each) => each.name,
    ),
    errors: errorsOf(draft).filter(({ code }) => code !== 'measurementMissing'),
    warnings: draft.issues.filter((issue) => issue.severity === 'warn' || wantsReading(issue)),
    seams: seams.length + closedDarts.length,
    crossings: edges.length,
    girths: sewn.length,
    off,
  };
}
