// What is written behind the command.

import type { Fault, Read } from '../document';

const VALUED = ['client', 'style', 'paper', 'out'] as const;
type Valued = (typeof VALUED)[number];

export interface Options {
  readonly task: 'help' | 'stream' | 'files';
  /** A file; null for the demo client. */
  readonly client: string | null;
  readonly style: string;
  readonly paper: string;
  readonly out: string;
}

/** Reads the words behind the command; every flag that is unknown, doubled or without its value is a fault. */
export function readOptions(words: readonly string[]): Read<Options> {
  if (words.includes('--help') || words.includes('-h'))
    return { ok: true, value: { ...USUAL, task: 'help' } };
  const faults: Fault[] = [];
  const given = new Map<Valued | 'stdin', string>();
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const [, flag = '', , written] = /^--([^=]*)(=(.*))?$/s.exec(word) ?? [];
    const name = VALUED.find((each) => each === flag) ?? (word === '--stdin' ? 'stdin' : undefined);
    if (name === undefined) {
      faults.push({ path: word, message: 'This is not understood; --help lists what is.' });
      continue;
    }
    if (given.has(name)) faults.push({ path: `--${name}`, message: 'This is given twice.' });
    const ahead = rest[0] !== undefined && !rest[0].startsWith('--');
    const value = name === 'stdin' ? '-' : (written ?? (ahead ? rest.shift() : undefined));
    if (value === undefined || value === '')
      faults.push({ path: `--${name}`, message: 'Its value is missing.' });
    given.set(name, value ?? '');
  }
  if (given.has('stdin'))
    for (const name of ['client', 'paper', 'out'] as const)
      if (given.has(name))
        faults.push({ path: `--${name}`, message: 'This does not go with --stdin, which makes no files.' });
  if (faults.length > 0) return { ok: false, faults };
  return {
    ok: true,
    value: {
      task: given.has('stdin') ? 'stream' : 'files',
      client: given.get('client') ?? USUAL.client,
      style: given.get('style') ?? USUAL.style,
      paper: given.get('paper') ?? USUAL.paper,
      out: given.get('out') ?? USUAL.out,
    },
  };
}

const USUAL: Options = { task: 'files', client: null, style: 'default', paper: 'a4', out: 'out' };
