// What to cut, buy and make for the draft in view, by the workshop's own figures.

import { useMemo, useState } from 'react';
import {
  amountOf,
  type MakingSection,
  makingCsv,
  makingList,
  makingNames,
  makingSections,
  makingText,
  type PlanInput,
  WORKSHOP_CARE,
} from '../../paper';
import { Checkbox } from '../components/Checkbox';
import { download } from '../components/download';
import { fileName } from '../components/fileName';
import { makingFor, printMaking, useMakingChoices } from './choices/makingChoices';
import { refusalOf } from './choices/usePlanInput';
import { MakingForm } from './MakingForm';

/** Tells a spreadsheet that the file is UTF-8; without it fractions and names come out wrong in some. */
const BYTE_ORDER_MARK = '\ufeff';

export function MakingCard({ input }: { input: PlanInput }) {
  const choices = useMakingChoices();
  const { draft, client, savedDraft } = input;
  const { unit } = client;
  const settings = makingFor(choices, unit);
  const sections = useMemo(
    () => makingSections(makingList(draft, savedDraft.style, settings), settings, unit),
    [draft, savedDraft.style, settings, unit],
  );
  const [said, setSaid] = useState('');
  const names = makingNames(input);
  const refused = refusalOf(input) !== null;
  const copy = (): void => {
    const done = (text: string) => (): void => setSaid(text);
    const failed = done('The browser did not let the list be copied; download it instead.');
    // Without a secure page there is no clipboard at all.
    if (!navigator.clipboard) failed();
    else navigator.clipboard.writeText(makingText(sections, names)).then(done('Copied.'), failed);
  };
  if (sections.length === 0) return null;
  return (
    <section className="card making-card" aria-label="Making list">
      <h2>Making list</h2>
      {sections.map((section) => (
        <SectionOfList key={section.heading} section={section} unit={unit} />
      ))}
      <p className="hint">{WORKSHOP_CARE}</p>
      <MakingForm unit={unit} />
      <Checkbox on={choices.printed} onSet={printMaking}>
        Print it behind the sheets, with the eyelets on the panels
      </Checkbox>
      <div className="actions">
        <button type="button" disabled={refused} onClick={copy}>
          Copy as text
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
          Download as CSV
        </button>
      </div>
      <p className="hint" aria-live="polite">
        {said}
      </p>
    </section>
  );
}

function SectionOfList({ section, unit }: { section: MakingSection; unit: 'in' | 'cm' }) {
  const { heading, lines, remark } = section;
  return (
    <details open={heading === 'Bones'}>
      <summary>{heading}</summary>
      <ul>
        {lines.map((line) => (
          <li key={line.item}>
            <span>{line.item}</span>
            <b>{amountOf(line, unit)}</b>
            {line.note === '' ? null : <span className="hint">{line.note}</span>}
          </li>
        ))}
      </ul>
      <p className="hint remark">{remark}</p>
    </details>
  );
}
