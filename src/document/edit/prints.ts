// The records of what was printed for a client.

import { type Book, type Client, openDraftOf, type SavedDraft } from '../model/book';
import { delta } from '../model/delta';
import { inForce } from '../model/fittings';
import type { History } from '../model/history';
import type { KeptPrint } from '../model/prints';
import { PROGRAM } from '../model/version';
import { inEveryState } from './inEveryState';
import { mockupStyle } from './mockup';

/** How many mock-ups of the open draft were printed, and one more; what is printed again the same day has the number it had. */
export function nextMockup(client: Client, on: string): number {
  const { id } = openDraftOf(client);
  const mockups = client.prints.filter(({ draft, mockup }) => draft === id && mockup !== null);
  const last = mockups.at(-1);
  const number = last?.mockup ?? 1;
  const isAgain =
    last !== undefined &&
    isSame(
      last,
      printOf(client, { on, form: last.form, mockup: { number, allowance: last.style.allowances.seam } }),
    );
  return isAgain ? number : Math.max(0, ...mockups.map(({ mockup }) => mockup ?? 0)) + 1;
}

interface PrintMade extends Pick<KeptPrint, 'on' | 'form'> {
  /** Of a mock-up its number and the allowance on every edge, mm; null for a pattern. */
  readonly mockup: { readonly number: number; readonly allowance: number } | null;
}

/** The record of a print of the open draft as it now is. */
export function printOf(client: Client, { on, form, mockup }: PrintMade): KeptPrint {
  const { id, name, style, fittings }: SavedDraft = openDraftOf(client);
  return {
    on,
    draft: id,
    draftName: name,
    mockup: mockup?.number ?? null,
    form,
    program: PROGRAM,
    measurements: client.measurements,
    takenOn: client.takenOn,
    ...(client.sides ? { sides: client.sides } : {}),
    style: mockup ? mockupStyle(style, mockup.allowance) : style,
    fittings: inForce(fittings),
  };
}

/** The client with the record of a print; the same once more on the same day is not kept twice. */
export const withPrint = (client: Client, print: KeptPrint): Client =>
  client.prints.some((each) => isSame(each, print))
    ? client
    : { ...client, prints: [...client.prints, print] };

const isSame = (one: KeptPrint, other: KeptPrint): boolean => delta(one, other) === null;

/**
 * The history with the record of a print in each of its states, because a print stays a print: no undo takes it back.
 *
 * @param now ISO instant
 */
export function keepPrint(
  history: History<Book>,
  client: string,
  print: KeptPrint,
  now: string,
): History<Book> {
  return inEveryState(history, (each) => {
    if (each.id !== client) return each;
    const made = withPrint(each, print);
    return made === each ? each : { ...made, changed: now };
  });
}
