// Reads the options of the command line.

import { CLI, type Fault, type Read } from '../../document';

const VALUED = [
  'client',
  'style',
  'fittings',
  'sizes',
  'paper',
  'out',
  'lay',
  'gap',
  'seconds',
  'seed',
] as const;
type Valued = (typeof VALUED)[number];

/** Flags without a value. */
const BARE = ['stdin', 'nap', 'worn', 'fold'] as const;
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
  /** The cloth that the pieces are laid on; null where none is. */
  readonly lay: LayOptions | null;
}

/** Lengths in mm. */
export interface LayOptions {
  readonly width: number;
  readonly fold: boolean;
  readonly gap: number;
  /** How long a shorter lay is looked for. */
  readonly seconds: number;
  /** Whole; the same seed tries the same lays. */
  readonly seed: number;
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
    for (const name of ['client', 'fittings', 'sizes', 'paper', 'out', 'nap', 'worn', 'lay'] as const)
      if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.notWithStdin });
  if (given.has('sizes') && !given.has('client'))
    for (const name of ['fittings', 'worn', 'lay'] as const)
      if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.ofClient });
  const lay = readLay(given, faults);
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
      lay,
    },
  };
}

const LAY_NUMBERS = {
  lay: { least: 100, most: 4000, whole: false, usual: 0 },
  gap: { least: 0, most: 50, whole: false, usual: 0 },
  seconds: { least: 0, most: 3600, whole: false, usual: 3 },
  seed: { least: 0, most: 2 ** 31 - 1, whole: true, usual: 1 },
} as const;

/** The cloth that was asked for; each number outside its span is a fault, and so is one without a cloth. */
function readLay(given: ReadonlyMap<Valued | Bare, string>, faults: Fault[]): LayOptions | null {
  if (!given.has('lay')) {
    for (const name of ['fold', 'gap', 'seconds', 'seed'] as const)
      if (given.has(name)) faults.push({ path: `--${name}`, message: CLI.options.onlyWithLay });
    return null;
  }
  const numberOf = (name: keyof typeof LAY_NUMBERS): number => {
    const { least, most, whole, usual } = LAY_NUMBERS[name];
    const text = given.get(name);
    if (text === undefined) return usual;
    const value = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
    if (!(value >= least && value <= most) || (whole && !Number.isInteger(value)))
      if (text !== '')
        faults.push({ path: `--${name}`, message: CLI.options.number({ least, most, whole }) });
    return value;
  };
  return {
    width: numberOf('lay'),
    fold: given.has('fold'),
    gap: numberOf('gap'),
    seconds: numberOf('seconds'),
    seed: numberOf('seed'),
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
  lay: null,
};
