// A style to start from: wedges, edges, ease and closing at once; it can be undone like any change.

import { changeStyle, NAMED_STYLES } from '../../document';
import { useTable } from '../tableContext';

export function StyleChoice() {
  const change = useTable((table) => table.change);
  return (
    <label className="choice style-choice">
      <span>Start from a style</span>
      <select
        value=""
        onChange={(event) => {
          const named = NAMED_STYLES.get(event.target.value);
          if (named) change(named.title.toLowerCase(), (book) => changeStyle(book, () => named.style));
        }}
      >
        <option value="">Choose…</option>
        {[...NAMED_STYLES].map(([name, { title }]) => (
          <option key={name} value={name}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}
