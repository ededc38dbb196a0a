// How each step stands, in a word or two under its name in the head of the page.

import { catalogue, plural } from '../catalogue';

interface Count {
  readonly count: number;
}

export const STEP_STATES = catalogue({
  missing: ({ count }: Count) => `${count} to take`,
  taken: ({ count }: Count) => `${count} taken`,
  wedges: ({ count }: Count) => plural(count, { one: '1 wedge', other: `${count} wedges` }),
  toMend: ({ count }: Count) => `${count} to mend`,
  holds: 'holds',
  toLookAt: ({ count }: Count) => `${count} to look at`,
  ready: 'ready',
  cautions: 'cautions to read',
  notYet: 'not yet',
});
