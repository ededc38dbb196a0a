// What is said of a measurement in its row: one thing, in a few words. The whole sentence stands beside the figure.

import {
  asksWhich,
  type Client,
  type Expected,
  estimateWritten,
  expectedOf,
  formatLength,
  MEASURE,
  needsThird,
  usualRange,
} from '../../../document';
import type { Issue, MeasurementName } from '../../../engine';
import { formatDay } from '../../components/files/formatDay';

interface Remark {
  /** `unusual` asks to look again, `estimated` marks what was not measured, `aside` is said in passing. */
  readonly kind: 'unusual' | 'estimated' | 'aside';
  readonly text: string;
}

interface RowSaid {
  readonly client: Client;
  readonly name: MeasurementName;
  /** What was to be expected, where the number is unusual. */
  readonly odd: Expected | null;
  /** Those of the draft that stand at this measurement. */
  readonly issues: readonly Issue[];
}

export function rowRemark({ client, name, odd, issues }: RowSaid): Remark {
  const { unit } = client;
  const readings = client.readings[name] ?? [];
  const value = client.measurements[name];
  const lengths = readings.map((mm) => formatLength(mm, unit));
  if (odd) return { kind: 'unusual', text: MEASURE.row.unusual({ range: usualRange(odd, unit) }) };
  if (readings.length > 1)
    return {
      kind: asksWhich(readings) || needsThird(readings) ? 'unusual' : 'aside',
      text: MEASURE.row.read({ lengths }),
    };
  const expected = usableEstimate(client, name);
  if (client.estimated.includes(name) && expected)
    return { kind: 'estimated', text: MEASURE.row.estimated({ spread: estimateWritten(expected, unit) }) };
  const since = sinceBefore(client, name);
  if (since) return { kind: 'aside', text: since };
  if (value !== null) return { kind: 'aside', text: '' };
  const taken = issues.find(
    (issue): issue is Issue<'overBustEstimated'> => issue.code === 'overBustEstimated',
  );
  if (taken)
    return {
      kind: 'aside',
      text: MEASURE.row.taken({ length: formatLength(taken.values.overBust, unit, { withUnit: true }) }),
    };
  return {
    kind: 'aside',
    text: expected ? MEASURE.row.usual({ estimate: estimateWritten(expected, unit) }) : '',
  };
}

/** What may stand in for a measurement; null where nothing may, or where the draft itself stands in for it. */
export function usableEstimate(client: Client, name: MeasurementName): Expected | null {
  if (client.measurements.bust === null) return null;
  if (name === 'overBust' && !client.estimated.includes(name)) return null;
  return expectedOf(name, client.measurements, client.estimated);
}

/** What changed since the set before; null where none was taken. */
export function sinceBefore(client: Client, name: MeasurementName): string | null {
  const last = client.earlier.at(-1);
  const [before, now] = [last?.measurements[name] ?? null, client.measurements[name]];
  if (!last || before === null) return null;
  const write = (mm: number, signed = false): string =>
    formatLength(mm, client.unit, { withUnit: true, signed });
  const day = last.on === null ? null : formatDay(last.on);
  if (now === null) return MEASURE.since.before({ length: write(before), day });
  if (Math.abs(now - before) < SAME_MM) return MEASURE.since.same({ day });
  return MEASURE.since.changed({ length: write(before), day, difference: write(now - before, true) });
}

/** Less is no change that a tape can tell. */
const SAME_MM = 0.5;
