// Seam allowances, a number for each kind of edge.

import { changeStyle } from '../../document';
import type { Allowances } from '../../engine';
import { LengthField } from '../parts/LengthField';
import { useIssueSentence } from '../parts/useIssueSentence';
import { useDraft, useOpen, useTable } from '../tableContext';

const EDGES: readonly { edge: keyof Allowances; label: string }[] = [
  { edge: 'seam', label: 'Seams' },
  { edge: 'side', label: 'Side seam' },
  { edge: 'top', label: 'Top edge' },
  { edge: 'hem', label: 'Hem' },
  { edge: 'centre', label: 'Centre edges' },
];

export function AllowanceCard() {
  const { client, sheet } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const show = useTable((table) => table.show);
  const keep = useTable((table) => table.keep);
  const drop = useTable((table) => table.drop);
  return (
    <section className="card allowance-card" aria-label="Seam allowances">
      <h2>Seam allowances</h2>
      <p className="hint">None on an edge that is bound; none at centre front on a fold.</p>
      {EDGES.map(({ edge, label }) => (
        <LengthField
          key={edge}
          label={label}
          span={[0, 100]}
          value={sheet.style.allowances[edge]}
          unit={client.unit}
          remarks={issues.filter((issue) => issue.at.field === `allowances.${edge}`).map(sentence)}
          onShow={(mm) =>
            show((book) =>
              changeStyle(book, (style) => ({
                ...style,
                allowances: { ...style.allowances, [edge]: mm ?? 0 },
              })),
            )
          }
          onKeep={() => keep(`allowance, ${label.toLowerCase()}`)}
          onDrop={drop}
        />
      ))}
    </section>
  );
}
