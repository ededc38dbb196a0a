// What the draft has to say, gravest first; each sentence names its place.

import { useMemo } from 'react';
import {
  ISSUES,
  isRead,
  MEASUREMENT_WORDS,
  unusualLine,
  wantsReading,
  widerThanBustLine,
} from '../../document';
import type { Issue, Severity } from '../../engine';
import { useDraft, useOpen } from '../store/storeContext';
import { CautionsLink } from './CautionsLink';
import { useIssueSentence } from './useIssueSentence';

const GRAVITY: readonly Severity[] = ['error', 'warn', 'note'];

export function IssueList({ issues }: { issues: readonly Issue[] }) {
  const sentence = useIssueSentence();
  const { savedDraft } = useOpen();
  const odd = useOddities();
  const missing = issues.flatMap(({ code, at }) =>
    code === 'measurementMissing' && at.field ? [at.field] : [],
  );
  const sorted = GRAVITY.flatMap((severity) =>
    issues.filter((issue) => issue.severity === severity && issue.code !== 'measurementMissing'),
  );
  const grave = sorted.filter((issue) => issue.severity !== 'note');
  const notes = sorted.filter((issue) => issue.severity === 'note');
  const line = (issue: Issue) => (
    <li key={`${issue.code} ${JSON.stringify(issue.at)}`} className={issue.severity}>
      <b>{ISSUES.severities[issue.severity]}</b> {sentence(issue)}
      {wantsReading(issue) && !isRead(issue, savedDraft) ? (
        <>
          {' '}
          <CautionsLink />
        </>
      ) : null}
    </li>
  );
  if (sorted.length === 0 && missing.length === 0 && odd.length === 0) return null;
  return (
    <section className="issues" aria-label={ISSUES.label} aria-live="polite">
      {grave.length > 0 || missing.length > 0 || odd.length > 0 ? (
        <ul>
          {missing.length > 0 ? <MissingMeasurements fields={missing} /> : null}
          {grave.map(line)}
          {odd.map((sentence) => (
            <li key={sentence} className="warn">
              <b>{ISSUES.severities.warn}</b> {sentence} <a href="#measure">{ISSUES.goToMeasurements}</a>
            </li>
          ))}
        </ul>
      ) : null}
      {notes.length > 0 ? (
        <details>
          <summary>{ISSUES.notes({ count: notes.length })}</summary>
          <ul>{notes.map(line)}</ul>
        </details>
      ) : null}
    </section>
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
      <b>{ISSUES.notMeasured}</b> {ISSUES.draftNeeds({ measurements })}{' '}
      <a href="#measure">{ISSUES.goToMeasurements}</a>
    </li>
  );
}
