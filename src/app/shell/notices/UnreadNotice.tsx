// Says on the other steps that a number on Measure cannot be read, and which one the draft goes on with.

import { plainLength, SHELL } from '../../../document';
import { MEASUREMENTS } from '../../../engine';
import { measurementField, useUnreadTexts } from '../../components/fields/unreadTexts';
import { useOpen } from '../../store/storeContext';

export function UnreadNotice() {
  const { client } = useOpen();
  const own = [...useUnreadTexts()].filter(([field]) => field.startsWith(`${client.id} `));
  if (own.length === 0) return null;
  const goesOnWith = (field: string): string => {
    const measured = MEASUREMENTS.find(({ name }) => field === measurementField(client, name));
    const { length, none, keptBefore } = SHELL.unread.afterLink;
    if (!measured) return keptBefore;
    const kept = client.measurements[measured.name];
    return kept === null ? none : length({ length: `${plainLength(kept, client.unit)} ${client.unit}` });
  };
  return (
    <div className="keeping" role="status">
      {own.map(([field, { label }]) => (
        <p key={field}>
          <span>
            {SHELL.unread.beforeLink({ field: label })} <a href="#measure">{SHELL.unread.link}</a>{' '}
            {goesOnWith(field)}
          </span>
        </p>
      ))}
    </div>
  );
}
