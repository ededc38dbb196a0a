// One proof as a table, whether it holds, and the places of its rows.

import type { PointedOut } from '../../table';
import type { Pointer, Proof } from './proofs';

interface ProofTableProps {
  readonly proof: Proof;
  /** Key of what is held on the drawing. */
  readonly chosen: string | null;
  readonly onPoint: (pointer: Pointer) => void;
  /** What is passed over or has the focus, for as long as it has. */
  readonly onPass: (place: PointedOut | null) => void;
}

export function ProofTable({ proof, chosen, onPoint, onPass }: ProofTableProps) {
  const { title, says, columns, rows } = proof;
  const met = !rows.some(({ off }) => off);
  /** `place`: what row and column it stands in, where that is not said beside it. */
  const written = (cell: string | Pointer, place?: string) =>
    typeof cell === 'string' ? (
      cell
    ) : (
      <button
        type="button"
        className="row-button"
        aria-label={place && `${place}: ${cell.text}`}
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
      <h2>
        {title} <span className={met ? 'met' : 'off'}>{met ? 'holds' : 'look again'}</span>
      </h2>
      <p className="hint">{says}</p>
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, head, cells, off }) => (
            <tr key={key} className={`${isChosen([head, ...cells]) ? 'chosen ' : ''}${off ? 'fails' : ''}`}>
              <th scope="row">{written(head)}</th>
              {cells.map((cell, i) => (
                <td key={columns[i + 1]}>
                  {written(cell, `${textOf(head)}, ${columns[i + 1]?.toLowerCase()}`)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const textOf = (cell: string | Pointer): string => (typeof cell === 'string' ? cell : cell.text);
