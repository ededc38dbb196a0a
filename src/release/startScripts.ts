// Puts what a start of the page needs into few scripts. Left to itself the bundler makes a script of every set of parts that some
// modules share, and on a slow machine each script takes longer to come than to run.

import type { Plugin, Rolldown, UserConfig } from 'vite';
import { build } from 'vite';

type Chunk = Rolldown.OutputChunk;

/** What a start fetches, in this order, by the module that is asked for; paths in the project. */
const ASKED_FOR = {
  /** The page itself. */
  first: 'src/main.tsx',
  /** What reads a kept book. */
  reader: 'src/app/storage/book/bookReader.ts',
  /** What draws the first draft. */
  drafting: 'src/app/store/drafts.ts',
} as const;

/**
 * Groups the modules of a start into scripts, and has the page ask for what reads a kept book at once. A worker may share modules
 * with the page: they are in scripts of their own, because a script is run as a whole.
 *
 * @param project its folder, with a slash at its end
 * @param plain the same build without any grouping
 */
export async function startScripts(project: string, mode: string, plain: UserConfig): Promise<Plugin> {
  const groups = groupsOf(await builtFrom(project, mode, plain), project);
  const names = Object.keys(ASKED_FOR).flatMap((name) => [sharedName(name), name]);
  // What an earlier script has no later one takes along.
  const groupOf = (name: string, i: number) => ({
    name,
    test: (module: string) => groups.get(module) === name,
    priority: names.length - i,
  });
  return {
    name: 'start-scripts',
    config: () => ({
      build: { rolldownOptions: { output: { codeSplitting: { groups: names.map(groupOf) } } } },
    }),
    transformIndexHtml: {
      order: 'post',
      handler: (_, { bundle = {} }) =>
        Object.values(bundle)
          .filter(({ fileName }) => /\/reader(-shared)?-[^/]*\.js$/.test(fileName))
          .map(({ fileName }) => ({
            tag: 'link',
            attrs: { rel: 'modulepreload', crossorigin: true, href: `./${fileName}` },
            injectTo: 'head',
          })),
    },
  };
}

const sharedName = (name: string): string => `${name}-shared`;

/** The scripts of a build that is not written. */
async function builtFrom(project: string, mode: string, plain: UserConfig): Promise<readonly Chunk[]> {
  const built = await build({
    ...plain,
    root: project,
    mode,
    configFile: false,
    logLevel: 'silent',
    build: { ...plain.build, write: false, minify: false, reportCompressedSize: false },
  });
  const [{ output }] = [built].flat() as [Rolldown.RolldownOutput];
  return output.flatMap((each) => (each.type === 'chunk' ? [each] : []));
}

/** The script that each module of a start is put into, by the module's path. */
function groupsOf(chunks: readonly Chunk[], project: string): ReadonlyMap<string, string> {
  const byFile = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  /** A script and all that it imports, and what it may import later where `later` is said. */
  const closure = (from: readonly Chunk[], later: boolean): ReadonlySet<string> => {
    const [found, waiting] = [new Set<Chunk>(), [...from]];
    for (const chunk of waiting) {
      if (found.has(chunk)) continue;
      found.add(chunk);
      for (const file of [...chunk.imports, ...(later ? chunk.dynamicImports : [])]) {
        const next = byFile.get(file);
        if (next) waiting.push(next);
      }
    }
    return new Set([...found].flatMap(({ moduleIds }) => moduleIds));
  };
  const isPage = ({ moduleIds }: Chunk): boolean => moduleIds.includes(project + ASKED_FOR.first);
  const ofWorkers = closure(
    chunks.filter((chunk) => chunk.isEntry && !isPage(chunk)),
    true,
  );
  const groups = new Map<string, string>();
  for (const [name, path] of Object.entries(ASKED_FOR)) {
    const asked = chunks.filter(({ moduleIds, facadeModuleId }) =>
      [...moduleIds, facadeModuleId].includes(project + path),
    );
    if (asked.length === 0) throw new Error(`the build has no script of ${path}`);
    for (const module of closure(asked, false))
      if (!groups.has(module)) groups.set(module, ofWorkers.has(module) ? sharedName(name) : name);
  }
  return groups;
}
