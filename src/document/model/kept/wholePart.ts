// What can be had of the text of a book that is cut off or damaged: all of its clients and styles before that place.

/**
 * The data of a JSON object up to the last whole entry of one of its lists from which on nothing can be read; null where there is
 * no such entry. Never throws.
 */
export function wholePartOf(text: string): unknown {
  const ends = endsOfEntries(text);
  let found: unknown = null;
  // A text that can be read up to one entry can be read up to each before it.
  let [from, to] = [0, ends.length];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    const part = parsed(`${text.slice(0, ends[middle])}]}`);
    if (part === null) to = middle;
    else [found, from] = [part, middle + 1];
  }
  return found;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** Behind each entry of a list that stands in the outermost object. */
function endsOfEntries(text: string): number[] {
  const ends: number[] = [];
  const open: string[] = [];
  let isText = false;
  for (let i = 0; i < text.length; i += 1) {
    const letter = text[i] ?? '';
    if (isText) {
      if (letter === '\\') i += 1;
      else if (letter === '"') isText = false;
    } else if (letter === '"') isText = true;
    else if (letter === '{' || letter === '[') open.push(letter);
    else if (letter === '}' || letter === ']') {
      open.pop();
      if (open.length === 2 && open[0] === '{' && open[1] === '[') ends.push(i + 1);
    }
  }
  return ends;
}
