// The licence texts of everything made by others that the page ships, read from the packages themselves.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

export interface Licence {
  readonly name: string;
  readonly version: string;
  /** As the package states it: an SPDX name. */
  readonly licence: string;
  /** Empty where the package has no text of its own. */
  readonly text: string;
}

/** Shipped although no dependency of the running app: the service worker is made of them. */
const OF_THE_WORKER = ['workbox-precaching'];

/** Licences stated by a name that is none. */
const STATED: Readonly<Record<string, string>> = { 'dejavu-fonts-ttf': 'Bitstream Vera, public domain' };

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const manifestIn = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** The licences of all packages that the packages of a project's running app stand on, by name. */
export function licencesOf(project: string): Licence[] {
  const found = new Map<string, Licence>();
  const add = (name: string): void => {
    const folder = join(project, 'node_modules', name);
    // Packages of types hold nothing that runs.
    if (found.has(name) || name.startsWith('@types/') || !existsSync(folder)) return;
    const { version, license = '', dependencies = {} } = manifestIn(folder);
    const file = readdirSync(folder).find((each) => /^licen[cs]e(\.|$)/i.test(each));
    const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '';
    found.set(name, { name, version, licence: STATED[name] ?? license, text });
    for (const each of Object.keys(dependencies)) add(each);
  };
  for (const name of [...Object.keys(manifestIn(project).dependencies ?? {}), ...OF_THE_WORKER]) add(name);
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The licences as one text: the project's own first. */
export function licenceText(project: string): string {
  const own = readFileSync(join(project, 'LICENSE'), 'utf8').trim();
  const { name, version } = manifestIn(project);
  const all = [{ name, version, licence: 'MIT', text: own }, ...licencesOf(project)];
  const line = '='.repeat(78);
  return all
    .map((each) => `${line}\n${each.name} ${each.version} (${each.licence})\n${line}\n\n${each.text}\n`)
    .join('\n');
}

const MODULE = 'virtual:licences';

/** Lets the app import the licences, and refuses a build that ships a package without its text. */
export function licences(project: string): Plugin {
  const known = licencesOf(project);
  return {
    name: 'licences',
    resolveId: (id) => (id === MODULE ? `\0${MODULE}` : null),
    load: (id) => (id === `\0${MODULE}` ? `export default ${JSON.stringify(known)}` : null),
    generateBundle(_, bundle) {
      const texts = new Map(known.map(({ name, text }) => [name, text]));
      for (const chunk of Object.values(bundle))
        for (const file of chunk.type === 'chunk' ? Object.keys(chunk.modules) : []) {
          const name = /.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/
            .exec(file)?.[1]
            ?.replace('\\', '/');
          if (name !== undefined && !texts.get(name))
            this.error(`${name} is shipped without the text of its licence`);
        }
    },
  };
}
