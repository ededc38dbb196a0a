// Says on the other steps that a number on Measure cannot be read, and which one the draft goes on with.

import { plainLength, SHELL } from '../../../document';
import { MEASUREMENTS, type MeasurementName } from '../../../engine';
import { measurementField, useUnreadTexts } from '../../components/fields/unreadTexts';
import { MeasureLink } from '../../components/links/MeasureLink';
import { useOpen } from '../../store/storeContext';

export function UnreadNotice() {
  const { client } = useOpen();
  const own = [...useUnreadTexts()].filter(([field]) => field.startsWith(`${client.id} `));
  if (own.length === 0) return null;
  const measurementAt = (field: string): MeasurementName | undefined =>
    MEASUREMENTS.find(({ name }) => field === measurementField(client, name))?.name;
  const goesOnWith = (field: string): string => {
    const measured = measurementAt(field);
    const { length, none, keptBefore } = SHELL.unread.afterLink;
    if (!measured) return keptBefore;
    const kept = client.measurements[measured];
    return kept === null ? none : length({ length: `${plainLength(kept, client.unit)} ${client.unit}` });
  };
  return (
    <div className="keeping" role="status">
      {own.map(([field, { label }]) => (
        <p key={field}>
          <span>
            {SHELL.unread.beforeLink({ field: label })}{' '}
            <MeasureLink fields={[measurementAt(field) ?? '']}>{SHELL.unread.link}</MeasureLink>{' '}
            {goesOnWith(field)}
          </span>
        </p>
      ))}
    </div>
  );
}
