// A table with a column for each size, which scrolls sideways where it is wider than its room.

import type { ReactNode } from 'react';

interface SizesTableProps {
  readonly label: string;
  /** The heads of the columns before those of the sizes. */
  readonly heads: readonly string[];
  /** Names of the sizes. */
  readonly names: readonly string[];
  /** The rows. */
  readonly children: ReactNode;
}

export function SizesTable({ label, heads, names, children }: SizesTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways is reached by keys
    <div className="wide-table" role="region" aria-label={label} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {[...heads, ...names].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
