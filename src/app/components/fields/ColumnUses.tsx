// What the columns of a table are read as: those that were not understood, to be said, and the others, to be changed.

import {
  COLUMNS,
  type ColumnUse,
  columnLabel,
  hasMeasurement,
  MEASURE,
  MEASUREMENT_WORDS,
  passedOver,
  type ReadColumn,
} from '../../../document';
import { MEASUREMENTS } from '../../../engine';

/** Says which columns were not understood, and from which one the names are taken where no heading says so. */
export function ColumnsSaid({ columns }: { columns: readonly ReadColumn[] }) {
  const open = passedOver(columns);
  const presumed = columns.find(({ isPresumedName, isUnderstood }) => isPresumedName && !isUnderstood);
  if (!hasMeasurement({ columns }))
    return <p className="said">{COLUMNS.noneUnderstood({ columns: columns.map(columnLabel) })}</p>;
  return (
    <>
      {open.length > 0 ? <p className="said">{COLUMNS.notUnderstood({ columns: open })}</p> : null}
      {presumed ? <p className="hint">{COLUMNS.presumedName({ column: columnLabel(presumed) })}</p> : null}
    </>
  );
}

interface ColumnUsesProps {
  readonly columns: readonly ReadColumn[];
  /** Null: the column is read by its heading again. */
  readonly onChoose: (key: string, use: ColumnUse | null) => void;
}

export function ColumnUses({ columns, onChoose }: ColumnUsesProps) {
  const [toSay, understood] = [false, true].map((is) =>
    columns.filter(({ isUnderstood }) => isUnderstood === is),
  );
  const taken = new Set(columns.map(({ use }) => use));
  return (
    <div className="column-uses">
      {toSay?.length ? (
        <Columns title={COLUMNS.toSay} columns={toSay} taken={taken} onChoose={onChoose} />
      ) : null}
      {understood?.length ? (
        <details>
          <summary>{COLUMNS.understood}</summary>
          <Columns title={COLUMNS.understood} columns={understood} taken={taken} onChoose={onChoose} />
        </details>
      ) : null}
    </div>
  );
}

interface ColumnsProps extends ColumnUsesProps {
  readonly title: string;
  readonly taken: ReadonlySet<ColumnUse | null>;
}

function Columns({ title, columns, taken, onChoose }: ColumnsProps) {
  return (
    <table aria-label={title}>
      <thead>
        <tr>
          <th scope="col">{COLUMNS.column}</th>
          <th scope="col">{COLUMNS.firstCells}</th>
          <th scope="col">{COLUMNS.readAs}</th>
        </tr>
      </thead>
      <tbody>
        {columns.map((column) => (
          <tr key={column.key}>
            <th scope="row">{columnLabel(column)}</th>
            <td>{column.firstCells.join(' · ')}</td>
            <td>
              <UseChoice column={column} taken={taken} onChoose={(use) => onChoose(column.key, use)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface UseChoiceProps {
  readonly column: ReadColumn;
  readonly taken: ReadonlySet<ColumnUse | null>;
  readonly onChoose: (use: ColumnUse | null) => void;
}

/** A measurement of another column can be chosen once that is read otherwise; the names can be moved at once. */
function UseChoice({ column, taken, onChoose }: UseChoiceProps) {
  const isOpen = (use: ColumnUse): boolean => use === column.use || !taken.has(use);
  return (
    <select
      aria-label={COLUMNS.readsAs({ column: columnLabel(column) })}
      value={column.use ?? ''}
      onChange={({ target }) => onChoose(USES.find((use) => use === target.value) ?? null)}
    >
      {column.isUnderstood && column.use !== null ? null : <option value="">{COLUMNS.uses.open}</option>}
      <option value="name">{COLUMNS.uses.name}</option>
      <option value="leftOut">{COLUMNS.uses.leftOut}</option>
      {GROUPS.map((group) => (
        <optgroup key={group} label={MEASURE.groups[group].title}>
          {MEASUREMENTS.filter((each) => each.group === group).map(({ name }) => (
            <option key={name} value={name} disabled={!isOpen(name)}>
              {MEASUREMENT_WORDS[name].label}
            </option>
          ))}
        </optgroup>
      ))}
    </select>
  );
}

const USES: readonly ColumnUse[] = ['name', 'leftOut', ...MEASUREMENTS.map(({ name }) => name)];
const GROUPS = [...new Set(MEASUREMENTS.map(({ group }) => group))];
