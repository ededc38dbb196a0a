// The sewn width of each panel at each level, folded under its title.

import { formatLength, LEVEL_TITLES, PROOFS, pieceLabel, type Unit } from '../../document';
import type { Draft } from '../../engine';

export function PanelWidths({ draft, unit }: { draft: Draft; unit: Unit }) {
  const { widths: words } = PROOFS;
  const levels = draft.proof.ledger.filter(({ widths }) => Object.keys(widths).length > 0);
  return (
    <section className="card proof" aria-label={words.title}>
      <details>
        <summary>
          <h3>{words.title}</h3>
          <span className="hint">
            {PROOFS.counted.panels({ panels: draft.pieces.length, levels: levels.length })}
          </span>
        </summary>
        <p className="hint">{words.what}</p>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.panel}</th>
              {levels.map(({ level }) => (
                <th key={level} scope="col">
                  {LEVEL_TITLES[level]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {draft.pieces.map((piece) => (
              <tr key={piece.id}>
                <th scope="row">{pieceLabel(piece)}</th>
                {levels.map(({ level, widths }) => {
                  const width = widths[piece.id];
                  return <td key={level}>{width === undefined ? words.none : formatLength(width, unit)}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}
