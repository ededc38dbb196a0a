// The choice of a computed chart of sizes, and what its sizes measure with their ±.

import {
  CHART_BUSTS,
  CHART_SPANS,
  type ChartSize,
  chartCsv,
  formatLength,
  MEASUREMENT_WORDS,
  SIZING,
  type Unit,
} from '../../../document';
import { MEASUREMENTS } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { SizesTable } from './SizesTable';
import { chooseChart, chooseSizing, typeTable, useSizingChoices } from './sizingChoices';

const TEXTS = SIZING.chart;

/** The bust for which the drop is chosen, mm. */
const DROP_BUST_MM = 920;

export function ChartForm({ sizes, unit }: { sizes: readonly ChartSize[]; unit: Unit }) {
  const { chart } = useSizingChoices();
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const bust = (label: string, field: 'from' | 'to') => (
    <label className="choice">
      <span>{label}</span>
      <select value={chart[field]} onChange={(event) => chooseChart({ [field]: Number(event.target.value) })}>
        {CHART_BUSTS.map((mm) => (
          <option key={mm} value={mm}>
            {written(mm)}
          </option>
        ))}
      </select>
    </label>
  );
  const optional = (label: string, field: 'drop' | 'stature') => (
    <LengthField
      label={label}
      value={chart[field]}
      unit={unit}
      optional={true}
      span={CHART_SPANS[field]}
      hint={TEXTS.usual}
      onShow={(mm) => chooseChart({ [field]: mm })}
      onKeep={() => undefined}
      onDrop={() => undefined}
    />
  );
  const beyond = sizes.filter(({ isBeyond }) => isBeyond).map(({ name }) => name);
  return (
    <div className="chart-form">
      <div className="chart-choices">
        {bust(TEXTS.from, 'from')}
        {bust(TEXTS.to, 'to')}
        {optional(TEXTS.drop({ bust: written(DROP_BUST_MM) }), 'drop')}
        {optional(TEXTS.stature, 'stature')}
      </div>
      {sizes.length === 0 ? (
        <p className="said" role="alert">
          {TEXTS.none}
        </p>
      ) : (
        <>
          <p className="hint">{TEXTS.says({ unit })}</p>
          {beyond.length > 0 ? <p className="said">{TEXTS.beyond({ sizes: beyond })}</p> : null}
          <ChartTable sizes={sizes} unit={unit} />
          <div className="actions">
            <button
              type="button"
              onClick={() => {
                typeTable('range', chartCsv(sizes, unit));
                chooseSizing({ source: 'table', off: [] });
              }}
            >
              {TEXTS.toTable}
            </button>
          </div>
        </>
      )}
    </div>
  );
}

function ChartTable({ sizes, unit }: { sizes: readonly ChartSize[]; unit: Unit }) {
  const rows = MEASUREMENTS.filter(({ name }) =>
    sizes.some(({ measurements }) => measurements[name] !== null),
  );
  return (
    <details>
      <summary>{TEXTS.measured}</summary>
      <SizesTable label={TEXTS.measured} heads={[TEXTS.measurement]} names={sizes.map(({ name }) => name)}>
        {rows.map(({ name }) => (
          <tr key={name}>
            <th scope="row">{MEASUREMENT_WORDS[name].label}</th>
            {sizes.map((size) => (
              <td key={size.name}>{cellOf(size, name, unit)}</td>
            ))}
          </tr>
        ))}
      </SizesTable>
    </details>
  );
}

function cellOf(
  { measurements, within }: ChartSize,
  name: keyof ChartSize['measurements'],
  unit: Unit,
): string {
  const [mm, sd] = [measurements[name], within[name]];
  if (mm === null) return '';
  const length = formatLength(mm, unit, { parts: 8 });
  return sd === undefined ? length : TEXTS.within({ length, within: formatLength(sd, unit, { parts: 8 }) });
}
