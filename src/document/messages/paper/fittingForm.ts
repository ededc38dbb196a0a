// The fitting form that is printed behind a mock-up.

import { catalogue } from '../catalogue';
import { SEEN, SEEN_NAMES } from '../screens/fit/seenOnClient';

export const FITTING_FORM = catalogue({
  title: 'Fitting form',
  of: ({
    client,
    draft,
    number,
    date,
  }: {
    client: string;
    draft: string;
    number: number | null;
    date: string;
  }) =>
    [
      ...[client, draft].filter((name) => name.trim() !== ''),
      number === null ? `mock-up of ${date}` : `mock-up ${number} of ${date}`,
    ].join(', '),
  day: 'Fitted on: ____________   Heel: ____________   Bra worn: ____________',
  drawing: 'Laid open, outside up: mark pins and chalk here. Seams have the numbers of the rows below.',
  number: ({ number }: { number: number }) => String(number),
  sides: { left: 'wearer’s left', right: 'wearer’s right' },
  numbered: ({ number, seam }: { number: number; seam: string }) => `${number}  ${seam}`,
  seams: 'Seams',
  how: 'For each seam and level: + what is pinned out, − what is wanting, on each edge; L or R where one side only.',
  seam: 'Seam',
  level: 'Level',
  gaps: 'Gap of the lacing, as laced',
  gap: 'Between the edges',
  blank: ' ',
  seen: 'Seen',
  ticks: SEEN_NAMES.map((name) => SEEN[name].what),
  /** A box to tick, and room for how much and where. */
  tick: ({ seen }: { seen: string }) => `[   ]  ${seen}: ____________`,
  notes: 'Notes',
});
