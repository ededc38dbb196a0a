// A copy of the built app on a server of its own, where files can be missing, answered wrongly, or built anew.

import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

export interface ChangingServer {
  readonly address: string;
  /** Names of the scripts under assets/ that are there now. */
  readonly scripts: () => string[];
  /** Scripts that are not there, by the beginning of their name. */
  readonly missing: Set<string>;
  /** Names in `missing` that were asked for. */
  readonly refused: Set<string>;
  /** Scripts that are not answered before `held` is emptied by `letGo`, by the beginning of their name. */
  readonly held: Set<string>;
  /** Names in `held` that were asked for. */
  readonly asked: Set<string>;
  readonly letGo: () => void;
  /** What is not there is answered with the page, as hosts of single pages do. */
  answersWithPage: boolean;
  /** Builds anew: the page is called otherwise, and every script but the first has another name. The files of before are gone. */
  readonly buildLater: (title: string) => void;
  readonly close: () => Promise<void>;
}

/** @param built the folder of the build that is copied */
export async function changingServer(built: string): Promise<ChangingServer> {
  const folder = mkdtempSync(join(tmpdir(), 'staywright-changing-'));
  const assets = join(folder, 'assets');
  cpSync(built, folder, { recursive: true });
  const page = (): Buffer => readFileSync(join(folder, 'index.html'));
  let free: () => void = () => undefined;
  let whenFree = new Promise<void>((go) => (free = go));
  const server = createServer(async (request, answer) => {
    const path = normalize(new URL(request.url ?? '/', 'http://host').pathname);
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    for (const name of changing.held) {
      if (!path.startsWith(`/assets/${name}`)) continue;
      changing.asked.add(name);
      await whenFree;
    }
    try {
      for (const name of changing.missing) {
        if (!path.startsWith(`/assets/${name}`)) continue;
        changing.refused.add(name);
        throw new Error('missing');
      }
      const content = readFileSync(file);
      answer.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
      answer.end(content);
    } catch {
      if (changing.answersWithPage) answer.writeHead(200, { 'content-type': 'text/html' }).end(page());
      else answer.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const changing: ChangingServer = {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    scripts: () => readdirSync(assets).filter((name) => name.endsWith('.js')),
    missing: new Set(),
    refused: new Set(),
    held: new Set(),
    asked: new Set(),
    letGo: () => {
      changing.held.clear();
      free();
      whenFree = new Promise<void>((go) => (free = go));
    },
    answersWithPage: false,
    buildLater: (title) => {
      const names = new Map(
        changing.scripts().map((name) => [name, `${name.replace(/\.js$/, '')}-${title.toLowerCase()}.js`]),
      );
      for (const [name, next] of names) renameSync(join(assets, name), join(assets, next));
      const texts = ['index.html', ...changing.scripts().map((name) => join('assets', name))];
      for (const file of texts) {
        const path = join(folder, file);
        let text = readFileSync(path, 'utf8').replace('<title>', `<title>${title} `);
        for (const [name, next] of names) text = text.replaceAll(name, next);
        writeFileSync(path, text);
      }
      relist(folder, names);
    },
    close: async () => {
      await new Promise((closed) => server.close(closed));
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return changing;
}

/** Writes the sums of the files into the worker's list, as the build does. */
function relist(folder: string, names: ReadonlyMap<string, string>): void {
  const worker = join(folder, 'sw.js');
  const text = readFileSync(worker, 'utf8').replace(/\[\{"?(?:revision|url|integrity)"?:.*?\}\]/s, (list) => {
    const entries = JSON.parse(list) as { url: string; revision: string | null; integrity: string }[];
    const next = entries.map((entry) => {
      const name = entry.url.replace(/^assets\//, '');
      const url = names.has(name) ? `assets/${names.get(name)}` : entry.url;
      const bytes = readFileSync(join(folder, url === './' ? 'index.html' : url));
      const sum = createHash('sha256').update(bytes);
      return {
        url,
        revision: entry.revision && bytes.length.toString(36),
        integrity: `sha256-${sum.digest('base64')}`,
      };
    });
    return JSON.stringify(next);
  });
  writeFileSync(worker, text);
}
