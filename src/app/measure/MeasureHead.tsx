// Above the rows: whose numbers they are, on which day they were taken, and what else is measured of her.

import { useEffect, useRef } from 'react';
import { changeClient, MEASURE, openClient, setDiffering } from '../../document';
import { nameFocus } from '../components/awaited/awaitedFocus';
import { Checkbox } from '../components/fields/Checkbox';
import { TextField } from '../components/fields/TextField';
import { seen } from '../store/store';
import { useOpen, useStore } from '../store/storeContext';
import { ALSO_GROUPS, type AlsoGroup, neededGroups } from './rows/rowGroups';
import { walkToFirst } from './rows/walkFields';
import { TapeDay } from './TapeDay';

interface MeasureHeadProps {
  /** Groups of measurements that are shown although nothing of them is needed. */
  readonly also: ReadonlySet<AlsoGroup>;
  readonly onAlso: (group: AlsoGroup, isShown: boolean) => void;
}

export function MeasureHead({ also, onAlso }: MeasureHeadProps) {
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const differing = useStore((state) => openClient(seen(state)).sides !== undefined);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => nameFocus.arrive(place.current?.querySelector('input') ?? null));
  const needed = neededGroups(client, savedDraft.style);
  return (
    <div className="measure-head">
      <div ref={place} className="client-name">
        <TextField
          label={MEASURE.client}
          value={client.name}
          onEnter={walkToFirst}
          onKeep={(name) =>
            change({ code: 'clientRenamed' }, (book) => changeClient(book, (open) => ({ ...open, name })))
          }
        />
      </div>
      <TapeDay />
      <fieldset className="also">
        <legend className="unseen">{MEASURE.also.label}</legend>
        {ALSO_GROUPS.map((group) => (
          <Checkbox
            key={group}
            on={also.has(group) || needed.has(group)}
            disabled={needed.has(group)}
            onSet={(isShown) => onAlso(group, isShown)}
            small={true}
          >
            {MEASURE.also[group]}
          </Checkbox>
        ))}
        <Checkbox
          on={differing}
          small={true}
          onSet={(next) =>
            change({ code: 'sidesSet', differing: next }, (book) =>
              changeClient(book, (open) => setDiffering(open, next)),
            )
          }
        >
          {MEASURE.sides.differ}
        </Checkbox>
      </fieldset>
    </div>
  );
}
