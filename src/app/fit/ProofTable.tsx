// One proof as a table, whether it holds, and the places of its rows.

import { PROOFS } from '../../document';
import type { PointedOut } from '../../table';
import type { Pointer, Proof } from './proofs';

interface ProofTableProps {
  readonly proof: Proof;
  /** Key of what is held on the drawing. */
  readonly chosen: string | null;
  readonly onPoint: (pointer: Pointer) => void;
  /** What is passed over or has the focus, for as long as it has. */
  readonly onPass: (place: PointedOut | null) => void;
  /** Stands open before it is asked for. */
  readonly isOpen?: boolean;
}

export function ProofTable({ proof, chosen, onPoint, onPass, isOpen = false }: ProofTableProps) {
  const { title, says, counted, columns, rows } = proof;
  const met = !rows.some(({ off }) => off);
  /** `place`: the row and column it stands in, where that is not said beside it. */
  const written = (cell: string | Pointer, place?: { row: string; column: string }) =>
    typeof cell === 'string' ? (
      cell
    ) : (
      <button
        type="button"
        className="row-button"
        aria-label={place && PROOFS.cell({ ...place, text: cell.text })}
        aria-pressed={chosen === cell.key}
        onClick={() => onPoint(cell)}
        onPointerEnter={() => onPass(cell.place)}
        onPointerLeave={() => onPass(null)}
        onFocus={() => onPass(cell.place)}
        onBlur={() => onPass(null)}
      >
        {cell.text}
      </button>
    );
  const isChosen = (cells: readonly (string | Pointer)[]): boolean =>
    cells.some((cell) => typeof cell !== 'string' && cell.key === chosen);
  return (
    <section className="card proof" aria-label={title}>
      <details open={isOpen || !met || rows.some(({ head, cells }) => isChosen([head, ...cells]))}>
        <summary>
          <h3>{title}</h3>
          <span className="hint">{counted}</span>
          <span className={met ? 'met' : 'off'}>{met ? PROOFS.holds : PROOFS.lookAgain}</span>
        </summary>
        <p className="hint">{says}</p>
        <table>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column.head} scope="col">
                  {column.head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, head, cells, off }) => (
              <tr key={key} className={`${isChosen([head, ...cells]) ? 'chosen ' : ''}${off ? 'fails' : ''}`}>
                <th scope="row">{written(head)}</th>
                {cells.map((cell, i) => (
                  <td key={columns[i + 1]?.head}>
                    {written(cell, { row: textOf(head), column: columns[i + 1]?.name ?? '' })}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}

const textOf = (cell: string | Pointer): string => (typeof cell === 'string' ? cell : cell.text);
