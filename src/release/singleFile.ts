// The build of the page as one file, which opens by a double click: everything it would ask a server for stands in it.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { extname } from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import { singleFilePolicy } from './policy.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.woff': 'font/woff',
  '.json': 'application/json',
};

const dataAddress = (path: string, bytes: Uint8Array): string =>
  `data:${TYPES[extname(path)] ?? 'application/octet-stream'};base64,${Buffer.from(bytes).toString('base64')}`;

const sumOf = (text: string): string => `sha256-${createHash('sha256').update(text).digest('base64')}`;

/** Files that are asked for by address become addresses that hold them. */
const holdFiles: Plugin = {
  name: 'hold-files',
  enforce: 'pre',
  load(address) {
    const [path = '', query] = address.split('?');
    if (query !== 'url&no-inline') return null;
    return `export default ${JSON.stringify(dataAddress(path, readFileSync(path)))}`;
  },
};

/** Puts script, style and icon into the page, and the policy that lets nothing else run. */
const intoPage: Plugin = {
  name: 'into-page',
  enforce: 'post',
  // After the build's own last words on its scripts.
  generateBundle: { order: 'post', handler: writePage },
};

function writePage(this: Rolldown.PluginContext, _: unknown, bundle: Rolldown.OutputBundle): void {
  const page = bundle['index.html'];
  if (page?.type !== 'asset') throw new Error('the build has no page');
  const scripts = Object.values(bundle).flatMap((each) => (each.type === 'chunk' ? [each] : []));
  const [script] = scripts;
  if (!script || scripts.length > 1) throw new Error('the build has more than one script');
  const styles = Object.values(bundle).flatMap((each) =>
    each.type === 'asset' && each.fileName.endsWith('.css') ? [String(each.source)] : [],
  );
  // A script ends at its end tag, wherever that stands.
  const code = `\n${script.code.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--')}\n`;
  const style = `\n${styles.join('\n')}\n`;
  const icon = dataAddress('.svg', readFileSync('public/staywright.svg'));
  const policy = singleFilePolicy([sumOf(code)], [sumOf(style)]);
  const html = String(page.source)
    .replace(
      /\s*<(script type="module"|link rel="(stylesheet|modulepreload|manifest|apple-touch-icon)")[^>]*>(<\/script>)?/g,
      '',
    )
    .replace(/(<link rel="icon" href=")[^"]*"/, (_all, before: string) => `${before}${icon}"`)
    .replace(/<head>/, () => `<head>\n    <meta http-equiv="Content-Security-Policy" content="${policy}" />`)
    .replace('</head>', () => `  <style>${style}</style>\n  </head>`)
    .replace('</body>', () => `  <script id="staywright">${code}</script>\n  </body>`);
  for (const name of Object.keys(bundle)) delete bundle[name];
  this.emitFile({ type: 'asset', fileName: 'index.html', source: html });
}

/** The plugins of the mode `single`. */
export const singleFile = [holdFiles, intoPage];
