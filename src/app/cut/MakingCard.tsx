// The card of the making list: what to cut, buy and make for the open draft, computed from the workshop's own figures.

import { useState } from 'react';
import { MAKING } from '../../document';
import {
  amountOf,
  type MakingSection,
  makingCsv,
  makingNames,
  makingText,
  type PlanInput,
  WORKSHOP_CARE,
} from '../../paper';
import { Checkbox } from '../components/fields/Checkbox';
import { download } from '../components/files/download';
import { fileName } from '../components/files/fileName';
import { printMaking, useMakingChoices } from './choices/makingChoices';
import { refusalOf } from './choices/usePlanInput';
import { MakingForm } from './MakingForm';
import { useMaking } from './useMaking';

/** Marks the file as UTF-8: some spreadsheets read fractions and names wrong without it. */
const BYTE_ORDER_MARK = '\ufeff';

export function MakingCard({ input }: { input: PlanInput }) {
  const choices = useMakingChoices();
  const { client, savedDraft } = input;
  const { unit } = client;
  const { sections } = useMaking(input);
  const [outcome, setOutcome] = useState<'copied' | 'notCopied' | null>(null);
  const names = makingNames(input);
  const refused = refusalOf(input) !== null;
  const copy = (): void => {
    const failed = (): void => setOutcome('notCopied');
    // A page that is not secure has no clipboard.
    if (!navigator.clipboard) failed();
    else navigator.clipboard.writeText(makingText(sections, names)).then(() => setOutcome('copied'), failed);
  };
  if (sections.length === 0) return null;
  return (
    <section className="card making-card" aria-label={MAKING.title}>
      <h2>{MAKING.title}</h2>
      <div className="making-sections">
        {sections.map((section) => (
          <SectionOfList key={section.kind} section={section} unit={unit} />
        ))}
      </div>
      <p className="hint">{WORKSHOP_CARE}</p>
      <MakingForm unit={unit} rules={sections.map(({ remark }) => remark)} />
      <Checkbox on={choices.printed} onSet={printMaking}>
        {MAKING.printed}
      </Checkbox>
      <div className="actions">
        <button type="button" disabled={refused} onClick={copy}>
          {MAKING.copy}
        </button>
        <button
          type="button"
          disabled={refused}
          onClick={() =>
            download(
              BYTE_ORDER_MARK + makingCsv(sections, names),
              'text/csv;charset=utf-8',
              `${fileName(client.name, savedDraft.name, 'making list')}.csv`,
            )
          }
        >
          {MAKING.download}
        </button>
      </div>
      <p className="hint" aria-live="polite">
        {outcome ? MAKING[outcome] : ''}
      </p>
    </section>
  );
}

function SectionOfList({ section, unit }: { section: MakingSection; unit: 'in' | 'cm' }) {
  const { heading, lines, care } = section;
  return (
    <section>
      <h3>{heading}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line.item}>
            <span>{line.item}</span>
            <b>{amountOf(line, unit)}</b>
            {line.note === '' ? null : <span className="hint">{line.note}</span>}
          </li>
        ))}
      </ul>
      {care === '' ? null : <p className="care">{care}</p>}
    </section>
  );
}
