// Reads the options of the command line.

import { CLI, type Fault, type Read } from '../document';

const VALUED = ['client', 'style', 'fittings', 'sizes', 'paper', 'out'] as const;
type Valued = (typeof VALUED)[number];

/** Flags without a value. */
const BARE = ['stdin', 'nap', 'worn'] as const;
type Bare = (typeof BARE)[number];

export interface Options {
  readonly task: 'help' | 'version' | 'stream' | 'files';
  /** Path of a client file; null for the demo client. */
  readonly client: string | null;
  readonly style: string;
  /** Path of a file of fittings; null for none. */
  readonly fittings: string | null;
  /** Path of a table of sizes; null for none. */
  readonly sizes: string | null;
  readonly paper: string;
  readonly out: string;
  /** Whether the cloth has a nap or a one-way print. */
  readonly nap: boolean;
  /** Whether the garment is sewn on the body as well. */
  readonly worn: boolean;
}

/** Reads the arguments of the command; a flag that is unknown, given twice or without its value is a fault. */
export function readOptions(words: readonly string[]): Read<Options> {
  if (words.includes('--help') || words.includes('-h'))
    return { ok: true, value: { ...USUAL, task: 'help' } };
  if (words.includes('--version')) return { ok: true, value: { ...USUAL, task: 'version' } };
  const faults: Fault[] = [];
  const given = new Map<Valued | Bare, string>();
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const [, flag = '', , written] = /^--([^=]*)(=(.*))?$/s.exec(word) ?? [];
    const bare = BARE.find((each) => word === `--${each}`);
    const name = VALUED.find((each) => each === flag) ?? bare;
    if (name === undefined) {
      faults.push({ path: word, message: CLI.options.unknown });
      continue;
    }
    if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.twice });
    const ahead = rest[0] !== undefined && !rest[0].startsWith('--');
    const value = bare ? '-' : (written ?? (ahead ? rest.shift() : undefined));
    if (value === undefined || value === '')
      faults.push({ path: `--${name}`, message: CLI.options.valueMissing });
    given.set(name, value ?? '');
  }
  if (given.has('stdin'))
    for (const name of ['client', 'fittings', 'sizes', 'paper', 'out', 'nap', 'worn'] as const)
      if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.notWithStdin });
  if (given.has('sizes') && !given.has('client'))
    for (const name of ['fittings', 'worn'] as const)
      if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.ofClient });
  if (faults.length > 0) return { ok: false, faults };
  return {
    ok: true,
    value: {
      task: given.has('stdin') ? 'stream' : 'files',
      client: given.get('client') ?? USUAL.client,
      style: given.get('style') ?? USUAL.style,
      fittings: given.get('fittings') ?? USUAL.fittings,
      sizes: given.get('sizes') ?? USUAL.sizes,
      paper: given.get('paper') ?? USUAL.paper,
      out: given.get('out') ?? USUAL.out,
      nap: given.has('nap'),
      worn: given.has('worn'),
    },
  };
}

const USUAL: Options = {
  task: 'files',
  client: null,
  style: 'default',
  fittings: null,
  sizes: null,
  paper: 'a4',
  out: 'out',
  nap: false,
  worn: false,
};
