// What the draft has to say, on the steps that only count it: the Draft step tells each once, where it is mended.

import { useMemo } from 'react';
import { ISSUES, MEASUREMENT_WORDS, unusualLine, widerThanBustLine } from '../../document';
import type { Issue, Severity } from '../../engine';
import { useDraft, useOpen } from '../store/storeContext';
import { goToMendList, MEND_STEP } from './awaited/awaitedFocus';
import { MeasureLink } from './links/MeasureLink';

export function IssueList({ issues }: { issues: readonly Issue[] }) {
  const odd = useOddities();
  const missing = issues.flatMap(({ code, at }) =>
    code === 'measurementMissing' && at.field ? [at.field] : [],
  );
  const count = (severity: Severity): number =>
    issues.filter((issue) => issue.severity === severity && issue.code !== 'measurementMissing').length;
  const [errors, warnings] = [count('error'), count('warn') + odd.length];
  if (errors + warnings + missing.length === 0) return null;
  return (
    <section className="issues" aria-label={ISSUES.label} aria-live="polite">
      <ul>
        {missing.length > 0 ? <MissingMeasurements fields={missing} /> : null}
        {errors > 0 ? <Counted severity="error">{ISSUES.toMend({ count: errors })}</Counted> : null}
        {warnings > 0 ? <Counted severity="warn">{ISSUES.toLookAt({ count: warnings })}</Counted> : null}
      </ul>
    </section>
  );
}

/** How many there are, and the way to where each is told and mended. */
function Counted({ severity, children }: { severity: Severity; children: string }) {
  return (
    <li className={severity}>
      <a href={MEND_STEP} onClick={goToMendList}>
        {children}
      </a>
    </li>
  );
}

/** What the draft shows of a body that was measured oddly, or is built so. */
export function useOddities(): string[] {
  const { client } = useOpen();
  const draft = useDraft();
  const { measurements, estimated, unit } = client;
  const unusual = useMemo(() => unusualLine(measurements, estimated, unit), [measurements, estimated, unit]);
  return [unusual, widerThanBustLine(draft)].filter((line) => line !== null);
}

/** The measurements that are not filled in yet, together, and the way to them. */
export function MissingMeasurements({ fields }: { fields: readonly string[] }) {
  const measurements = Object.entries(MEASUREMENT_WORDS)
    .filter(([field]) => fields.includes(field))
    .map(([, { name }]) => name);
  return (
    <li className="missing">
      <b>{ISSUES.notMeasured}</b> {ISSUES.draftNeeds({ measurements })} <MeasureLink fields={fields} />
    </li>
  );
}
