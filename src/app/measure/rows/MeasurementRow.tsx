// One measurement: its name, its number, the same in the other unit, what is to be said of it in a few words, and its menu.

import { memo, useState } from 'react';
import {
  type Expected,
  MEASUREMENT_WORDS,
  measurementIssueSentence,
  openClient,
  setMeasurement,
} from '../../../document';
import { MEASUREMENTS, type MeasurementName } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { measurementField } from '../../components/fields/unreadTexts';
import { useClientNumber } from '../../components/fields/useNumberEdit';
import { isNeeded, useLaterIssues } from '../../store/laterIssues';
import { seen } from '../../store/store';
import { useOpen, useStore } from '../../store/storeContext';
import type { FieldShown } from './fieldShown';
import { ReadingRows } from './ReadingRows';
import { RowMenu } from './RowMenu';
import { rowRemark } from './rowRemark';
import { useRowActions } from './useRowActions';

const NEEDED = new Set<MeasurementName>(MEASUREMENTS.filter((each) => each.needed).map((each) => each.name));

interface MeasurementRowProps {
  readonly name: MeasurementName;
  /** What was to be expected, where the number is unusual. */
  readonly odd: Expected | null;
  readonly isInHand: boolean;
  /** Its second and third reading are open below it. */
  readonly isReading: boolean;
  readonly onFocus: (shown: FieldShown) => void;
  readonly onRead: (name: MeasurementName) => void;
}

export const MeasurementRow = memo(function MeasurementRow(props: MeasurementRowProps) {
  const { name, odd, isInHand, isReading, onFocus, onRead } = props;
  const { client } = useOpen();
  const issues = useLaterIssues();
  const edit = useClientNumber();
  const [isMenuOpen, openMenu] = useState(false);
  const { label, how } = MEASUREMENT_WORDS[name];
  // The number being typed is always the latest; all that is said about it may come a moment later.
  const value = useStore((state) => openClient(seen(state)).measurements[name]);
  const actions = useRowActions(name, onRead);
  // A number that is not there yet is no fault: its label says that it is needed. Notes stand beside the figure.
  const own = issues.filter(({ at, code }) => at.field === name && code !== 'measurementMissing');
  const remarks = own
    .filter(({ severity }) => severity !== 'note')
    .flatMap((issue) => measurementIssueSentence(issue, client.unit) ?? []);
  const remark = rowRemark({ client, name, odd: remarks.length > 0 ? null : odd, issues: own });
  const show = (): void => onFocus({ field: name, measurement: name, label, how });
  return (
    <>
      <div
        className="tape-row measurement"
        data-field={name}
        data-in-hand={isInHand || undefined}
        data-filled={value !== null || undefined}
      >
        <LengthField
          label={label}
          value={value}
          unit={client.unit}
          optional={true}
          hasFractionKeys={true}
          remember={measurementField(client, name)}
          needed={NEEDED.has(name) || isNeeded(name, issues)}
          hint={how}
          remarks={remarks}
          refused={own.some(({ severity }) => severity === 'error')}
          onFocus={show}
          {...edit({ code: 'measurementSet', measurement: name }, (open, mm) =>
            setMeasurement(open, name, mm),
          )}
        />
        <p
          className={`row-remark ${remark.kind}`}
          aria-live={remark.kind === 'unusual' ? 'polite' : undefined}
        >
          {remark.text}
        </p>
        <RowMenu name={name} actions={actions} isOpen={isMenuOpen} onOpen={openMenu} />
      </div>
      {isReading && value !== null ? <ReadingRows name={name} isInHand={isInHand} onFocus={show} /> : null}
    </>
  );
});
