// What the draft has to say, gravest first; each sentence names its place.

import { issueSentence } from '../../document';
import type { Issue, Severity } from '../../engine';
import { useOpen } from '../tableContext';

const GRAVITY: readonly Severity[] = ['block', 'warn', 'note'];
const NAMES: Readonly<Record<Severity, string>> = {
  block: 'Cannot be cut',
  warn: 'Look again',
  note: 'Note',
};

export function IssueList({ issues }: { issues: readonly Issue[] }) {
  const { client, sheet } = useOpen();
  const sorted = GRAVITY.flatMap((severity) => issues.filter((issue) => issue.severity === severity));
  const grave = sorted.filter((issue) => issue.severity !== 'note');
  const notes = sorted.filter((issue) => issue.severity === 'note');
  const sentence = (issue: Issue): string => issueSentence(issue, { unit: client.unit, style: sheet.style });
  const line = (issue: Issue) => (
    <li key={`${issue.code} ${JSON.stringify(issue.at)}`} className={issue.severity}>
      <b>{NAMES[issue.severity]}</b> {sentence(issue)}
    </li>
  );
  if (sorted.length === 0) return null;
  return (
    <section className="issues" aria-label="Cautions" aria-live="polite">
      {grave.length > 0 ? <ul>{grave.map(line)}</ul> : null}
      {notes.length > 0 ? (
        <details>
          <summary>{notes.length === 1 ? 'One note' : `${notes.length} notes`} on this draft</summary>
          <ul>{notes.map(line)}</ul>
        </details>
      ) : null}
    </section>
  );
}
