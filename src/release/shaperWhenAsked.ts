// Lets the shaping of letters be built into the scripts of a page: those of the page in one file cannot wait while they load.

import type { Plugin } from 'vite';

/** What the package says for itself, and what stands there in a page. */
const CHANGES: Readonly<Record<string, readonly [string, string]>> = {
  // `openShaper` waits for the promise `ready` instead.
  'index.mjs': ['init(await createHarfBuzz());', 'export const ready = createHarfBuzz().then(init);'],
  // Only Node has the module, and goes the other way there.
  'harfbuzz.js': ['await import("module")', '{}'],
};

export const shaperWhenAsked: Plugin = {
  name: 'shaper-when-asked',
  apply: 'build',
  transform(code, path) {
    const [, file = ''] = /[\\/]harfbuzzjs[\\/]dist[\\/]([a-z.]+)$/.exec(path) ?? [];
    const change = CHANGES[file];
    if (!change) return null;
    if (!code.includes(change[0])) this.error(`harfbuzzjs is otherwise than this build expects: ${file}`);
    return code.replace(...change);
  },
};
