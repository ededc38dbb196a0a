// The end of Measure: how much of her is measured, and the way to the draft or the reason why it cannot be made yet.

import { memo } from 'react';
import { formatLength, MEASURE, MEASUREMENT_WORDS } from '../../document';
import { MEASUREMENTS, type MeasurementName } from '../../engine';
import { measurementField, useUnreadTexts } from '../components/fields/unreadTexts';
import { NextArrow } from '../components/NextArrow';
import { isNeeded, useLaterIssues } from '../store/laterIssues';
import { useOpen } from '../store/storeContext';
import { inputOf, NEXT_STEP } from './rows/fieldShown';

const { next: words } = MEASURE;

interface Standing {
  /** The field that is in the way of a draft; null where there is none. */
  readonly first: MeasurementName | null;
  readonly head: string;
  readonly reason: string;
}

export const NextStep = memo(function NextStep() {
  const { first, head, reason } = useStanding();
  const go = (): void => {
    if (first !== null) inputOf(first)?.focus();
    else {
      window.location.hash = 'draft';
      window.scrollTo({ top: 0 });
    }
  };
  return (
    <div className="next-step">
      <p className={first === null ? 'ready' : 'waits'}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d={first === null ? 'M4 10.500 8.200 15 16 5.500' : 'M10 4v7M10 14.500v.1'} />
        </svg>
        <span>
          <b>{head}</b> <span className="hint">{reason}</span>
        </span>
      </p>
      <button
        id={NEXT_STEP}
        type="button"
        className={first === null ? 'primary' : 'primary waits'}
        onClick={go}
        aria-description={first === null ? undefined : `${head}: ${reason}`}
      >
        {words.draft}
        <NextArrow />
      </button>
    </div>
  );
});

function useStanding(): Standing {
  const { client } = useOpen();
  const issues = useLaterIssues();
  const { measurements, unit } = client;
  const texts = useUnreadTexts();
  const needed = MEASUREMENTS.filter((each) => each.needed);
  // A style may need more than every draft does.
  const missing = MEASUREMENTS.filter(
    ({ name, needed: always }) => measurements[name] === null && (always || isNeeded(name, issues)),
  ).map(({ name }) => name);
  const [first = null] = missing;
  if (first !== null)
    return {
      first,
      head: words.missing({ count: missing.length }),
      reason: words.first({ measurements: missing.map((name) => MEASUREMENT_WORDS[name].label) }),
    };
  const refused = MEASUREMENTS.find(({ name }) =>
    issues.some(({ at, severity }) => at.field === name && severity === 'error'),
  );
  if (refused)
    return {
      first: refused.name,
      head: words.refused({ measurement: MEASUREMENT_WORDS[refused.name].name }),
      reason: words.refusedWhy,
    };
  const unread = MEASUREMENTS.find(
    ({ name }) => texts.get(measurementField(client, name))?.isBeingTyped === false,
  );
  if (unread) {
    const kept = measurements[unread.name];
    return {
      first: unread.name,
      head: words.refused({ measurement: MEASUREMENT_WORDS[unread.name].name }),
      reason:
        kept === null
          ? words.unreadNone
          : words.unreadWhy({ length: formatLength(kept, unit, { withUnit: true }) }),
    };
  }
  const taken = MEASUREMENTS.filter(
    ({ name }) => measurements[name] !== null && !client.estimated.includes(name),
  ).length;
  return {
    first: null,
    head: words.taken({ taken, all: MEASUREMENTS.length, needed: needed.length }),
    reason: words.others,
  };
}
