// What is to mend in the draft, gravest first, each told here once: with the press that mends it where the cure is one step,
// else with the way to where it is set.

import { useEffect } from 'react';
import {
  changeStyle,
  ISSUES,
  isRead,
  MEASUREMENT_WORDS,
  MEND,
  percentOf,
  wantsReading,
} from '../../../document';
import type { Issue, Severity } from '../../../engine';
import { arriveAtMendList, MEND_LIST } from '../../components/awaited/awaitedFocus';
import { finishedGirth, waistAlteredBy } from '../../components/girthWords';
import { MissingMeasurements, useOddities } from '../../components/IssueList';
import { CautionsLink } from '../../components/links/CautionsLink';
import { MeasureLink } from '../../components/links/MeasureLink';
import { useIssueSentence } from '../../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../../store/storeContext';
import { CURES } from './cures';
import { faultId } from './mendFocus';
import { type TabName, tabOfIssue } from './tabs';

interface MendListProps {
  /** Opens the tab on which something is set, with the wedge in hand that it is set for. */
  readonly onShow: (tab: TabName, wedge: string | null) => void;
}

const GRAVITY: readonly Severity[] = ['error', 'warn', 'note'];

export function MendList({ onShow }: MendListProps) {
  useEffect(arriveAtMendList, []);
  const draft = useDraft();
  const { issues, proof } = draft;
  const { closure } = useOpen().savedDraft.style;
  const odd = useOddities();
  const missing = issues.flatMap(({ code, at }) =>
    code === 'measurementMissing' && at.field ? [at.field] : [],
  );
  const sorted = GRAVITY.flatMap((severity) =>
    issues.filter((issue) => issue.severity === severity && issue.code !== 'measurementMissing'),
  );
  const grave = grouped(sorted.filter((issue) => issue.severity !== 'note'));
  const notes = grouped(sorted.filter((issue) => issue.severity === 'note'));
  const count = grave.length + odd.length + (missing.length > 0 ? 1 : 0);
  return (
    <section className="issues mend-list" aria-label={ISSUES.label} aria-live="polite">
      <h3 id={MEND_LIST} tabIndex={-1} className={count > 0 ? 'some' : 'none'}>
        {count > 0 ? MEND.toMend({ count }) : MEND.nothing}
      </h3>
      {count > 0 ? (
        <ul>
          {missing.length > 0 ? <MissingMeasurements fields={missing} /> : null}
          {grave.map((group) => (
            <Fault key={keyOf(group)} group={group} onShow={onShow} />
          ))}
          {odd.map((sentence) => (
            <li key={sentence} className="warn">
              <b>{ISSUES.severities.warn}</b> {sentence} <MeasureLink fields={[]} />
            </li>
          ))}
        </ul>
      ) : (
        <p className="hint">
          {MEND.holds({
            seams: proof.seams.length,
            girths: proof.ledger.filter((row) => finishedGirth(row, closure)?.off === 0).length,
          })}
        </p>
      )}
      <WaistLine />
      {notes.length > 0 ? (
        <details>
          <summary>{ISSUES.notes({ count: notes.length })}</summary>
          <ul>
            {notes.map((group) => (
              <Fault key={keyOf(group)} group={group} onShow={onShow} />
            ))}
          </ul>
        </details>
      ) : null}
    </section>
  );
}

/** Issues that one press mends together: of one code where it has a cure, else each for itself. */
type Group = readonly [Issue, ...Issue[]];

function grouped(issues: readonly Issue[]): Group[] {
  const groups: Group[] = [];
  for (const issue of issues) {
    const at = groups.findIndex(([first]) => first.code === issue.code && CURES[issue.code]);
    const found = groups[at];
    if (found) groups[at] = [...found, issue];
    else groups.push([issue]);
  }
  return groups;
}

const keyOf = ([{ code, at }]: Group): string => `${code} ${JSON.stringify(at)}`;

interface FaultProps extends MendListProps {
  readonly group: Group;
}

function Fault({ group, onShow }: FaultProps) {
  const sentence = useIssueSentence();
  const draft = useDraft();
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const [first] = group;
  const cure = CURES[first.code];
  const tab = tabOfIssue(first);
  return (
    <li id={first.at.field === undefined ? undefined : faultId(first.at.field)} className={first.severity}>
      <b>{ISSUES.severities[first.severity]}</b> {[...new Set(group.map(sentence))].join(' ')}
      {wantsReading(first) && !isRead(first, savedDraft) ? (
        <>
          {' '}
          <CautionsLink />
        </>
      ) : null}
      {Object.hasOwn(MEASUREMENT_WORDS, first.at.field ?? '') ? (
        <>
          {' '}
          <MeasureLink fields={[first.at.field ?? '']} />
        </>
      ) : null}
      {cure ? (
        <button
          type="button"
          className="cure"
          onClick={() => change(cure.change, (book) => changeStyle(book, (style) => cure.set(style, draft)))}
        >
          {cure.label({ count: group.length })}
        </button>
      ) : tab === null ? null : (
        <button type="button" className="quiet cure" onClick={() => onShow(tab, first.at.wedge ?? null)}>
          {MEND.show}
        </button>
      )}
    </li>
  );
}

/** By how much the waist is taken in, and the way to the cautions. */
function WaistLine() {
  const { client, savedDraft } = useOpen();
  const alteredBy = waistAlteredBy(useDraft());
  const { waist } = client.measurements;
  const asked = -savedDraft.style.ease.waist;
  if (!waist || Math.max(asked, asked - alteredBy) <= 0) return null;
  const part = (mm: number): string => percentOf(Math.max(0, mm), waist) ?? '';
  return (
    <p className="waist-line">
      {MEND.waistIn({
        percent: part(asked),
        altered: alteredBy === 0 ? null : part(asked - alteredBy),
      })}{' '}
      <CautionsLink>{MEND.cautions}</CautionsLink>
    </p>
  );
}
