// A text of separated values taken to rows and cells, as spreadsheets write it.

/** Rows of cells; rows with nothing in them are left out, and `line` counts them all, from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

const SEPARATORS = ['\t', ';', '|', ','] as const;

/**
 * The rows of a text. The separator is the tab, semicolon, bar or comma that stands most often in the first row; a cell in quotes may
 * hold separators, line ends and doubled quotes. A byte order mark is passed over.
 */
export function csvRows(text: string): readonly CsvRow[] {
  const plain = text.replace(/^\ufeff/u, '').replace(/\r\n?/gu, '\n');
  const [head = ''] = plain
    .replace(/"[^"]*"/gu, '')
    .trimStart()
    .split('\n');
  const count = (separator: string): number => head.split(separator).length;
  const separator = SEPARATORS.reduce((most, each) => (count(each) > count(most) ? each : most));
  const rows: string[][] = [['']];
  let isQuoted = false;
  const write = (character: string): void => {
    const row = rows.at(-1);
    if (row) row[row.length - 1] += character;
  };
  for (let i = 0; i < plain.length; i += 1) {
    const character = plain.charAt(i);
    if (isQuoted && character === '"' && plain.charAt(i + 1) === '"') {
      write('"');
      i += 1;
    } else if (character === '"' && (isQuoted || rows.at(-1)?.at(-1)?.trim() === '')) isQuoted = !isQuoted;
    else if (isQuoted) write(character);
    else if (character === separator) rows.at(-1)?.push('');
    else if (character === '\n') rows.push(['']);
    else write(character);
  }
  return rows
    .map((cells, i) => ({ line: i + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}
