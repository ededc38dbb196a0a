// Cuts text that arrives in chunks, as from a pipe, into lines, in bounded memory.

/** Longest line in characters, longer than any client; a longer line is a fault and its text is dropped. */
export const LONGEST_LINE = 1_000_000;

/** A line without its end, or null for one that is too long. */
export type Line = string | null;

/** Lines end in LF or CRLF; the last one needs no end. */
export async function* linesOf(chunks: AsyncIterable<string>, longest = LONGEST_LINE): AsyncGenerator<Line> {
  let held = '';
  let tooLong = false;
  const finish = (): Line => {
    const line = tooLong ? null : held.replace(/\r$/, '');
    held = '';
    tooLong = false;
    return line;
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf('\n'); end >= 0; end = chunk.indexOf('\n', from)) {
      hold(chunk.slice(from, end));
      yield finish();
      from = end + 1;
    }
    hold(chunk.slice(from));
  }
  if (held !== '' || tooLong) yield finish();

  function hold(text: string): void {
    if (tooLong || held.length + text.length > longest) [held, tooLong] = ['', true];
    else held += text;
  }
}
