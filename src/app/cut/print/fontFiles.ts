// The fonts as the page serves them. Loaded only for a print; of the large faces only the parts that a name needs.

import korean from '@fontsource/noto-sans-kr/unicode.json?url&no-inline';
import chinese from '@fontsource/noto-sans-sc/unicode.json?url&no-inline';
import thai from '@fontsource/noto-sans-thai/unicode.json?url&no-inline';
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url&no-inline';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url&no-inline';
import type { FontFiles } from '../../../paper';

const PARTS = import.meta.glob<string>(
  [
    '/node_modules/@fontsource/noto-sans-sc/files/noto-sans-sc-[0-9]*-400-normal.woff',
    '/node_modules/@fontsource/noto-sans-kr/files/noto-sans-kr-[0-9]*-400-normal.woff',
    '/node_modules/@fontsource/noto-sans-thai/files/noto-sans-thai-thai-400-normal.woff',
  ],
  { query: '?url&no-inline', import: 'default', eager: true },
);

const ADDRESSES = new Map([
  ['DejaVuSansCondensed.ttf', regular],
  ['DejaVuSansCondensed-Bold.ttf', bold],
  ...Object.entries(PARTS).map(([path, address]) => [path.replace(/^.*\//, ''), address] as const),
]);

/** Which part of a face has which letters. */
const LISTS = { 'noto-sans-sc': chinese, 'noto-sans-kr': korean, 'noto-sans-thai': thai } as const;

export const fontFiles: FontFiles = {
  read: async (name) => new Uint8Array(await (await fetched(ADDRESSES.get(name) ?? name)).arrayBuffer()),
  parts: async (face) => (await fetched(LISTS[face])).json(),
};

async function fetched(address: string): Promise<Response> {
  const answer = await fetch(address);
  // Some hosts answer with the page what they do not have.
  const isPage = answer.headers.get('content-type')?.startsWith('text/html') === true;
  if (!answer.ok || isPage) throw new Error(`${address} could not be loaded`);
  return answer;
}
