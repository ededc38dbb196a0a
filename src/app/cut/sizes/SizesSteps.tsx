// Panel widths and seam lengths by size, with their steps as bars: a seam whose step jumps is seen at once.

import {
  formatLength,
  jumpsOf,
  LEVEL_WORDS,
  pieceLabel,
  SIZING,
  type SizeRow,
  seamLabel,
  sizesTableCsv,
  stepsOf,
  type Unit,
} from '../../../document';
import { download } from '../../components/files/download';
import { fileName } from '../../components/files/fileName';
import { SizesTable } from './SizesTable';
import type { Proved } from './useSizes';

const TEXTS = SIZING.steps;

export function SizesSteps({
  proved: { proofs, table },
  unit,
  style,
}: {
  proved: Proved;
  unit: Unit;
  style: string;
}) {
  const names = proofs.map(({ name }) => name);
  const busts = proofs.map(({ measurements }) => measurements.bust);
  return (
    <details className="size-steps">
      <summary>
        <h3>{TEXTS.title}</h3>
      </summary>
      <p className="hint">{TEXTS.says({ unit })}</p>
      <SizesTable label={TEXTS.title} heads={[TEXTS.what, TEXTS.steps]} names={names}>
        {table.map((row) => (
          <tr key={nameOf(row)}>
            <th scope="row">{nameOf(row)}</th>
            <td>
              <Steps row={row} busts={busts} names={names} />
            </td>
            {row.lengths.map((mm, i) => (
              <td key={proofs[i]?.name ?? i}>{mm === null ? '' : formatLength(mm, unit)}</td>
            ))}
          </tr>
        ))}
      </SizesTable>
      <div className="actions">
        <button
          type="button"
          onClick={() =>
            download(
              sizesTableCsv(proofs, table, unit),
              'text/csv;charset=utf-8',
              `${fileName(style, 'sizes')}.csv`,
            )
          }
        >
          {TEXTS.download}
        </button>
      </div>
    </details>
  );
}

const nameOf = (row: SizeRow): string =>
  row.kind === 'width'
    ? TEXTS.width({ piece: pieceLabel(row.piece), level: LEVEL_WORDS[row.level] })
    : seamLabel(row.seam);

/** Width of a bar and height of the drawing, px. */
const [BAR, HIGH] = [8, 26];

function Steps({
  row,
  busts,
  names,
}: {
  row: SizeRow;
  busts: readonly (number | null)[];
  names: readonly string[];
}) {
  const steps = stepsOf(row);
  const jumps = jumpsOf(row, busts);
  const most = Math.max(1, ...steps.map((step) => Math.abs(step ?? 0)));
  const isSigned = steps.some((step) => (step ?? 0) < 0);
  const [zero, scale] = isSigned ? [HIGH / 2, HIGH / 2 / most] : [HIGH, HIGH / most];
  const pairs = jumps.flatMap((isJump, i) =>
    isJump ? [{ from: names[i] ?? '', to: names[i + 1] ?? '' }] : [],
  );
  const said = pairs.length > 0 ? TEXTS.jumps({ pairs }) : TEXTS.even;
  return (
    <span className="step-bars">
      <svg width={steps.length * BAR} height={HIGH} aria-hidden="true">
        <line x1={0} x2={steps.length * BAR} y1={zero} y2={zero} />
        {steps.map((step, i) => {
          const size = Math.abs(step ?? 0) * scale;
          return (
            <rect
              // biome-ignore lint/suspicious/noArrayIndexKey: a step is told by its place
              key={i}
              className={jumps[i] ? 'jumps' : undefined}
              x={i * BAR + 1}
              width={BAR - 2}
              y={(step ?? 0) < 0 ? zero : zero - size}
              height={size}
            />
          );
        })}
      </svg>
      <span className={pairs.length > 0 ? 'off' : 'hint'}>{said}</span>
    </span>
  );
}
