// The fonts as the page serves them. Loaded only when a name needs one; of the large faces only the parts it needs.

import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url&no-inline';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url&no-inline';
import type { FontFiles } from '../../paper';

const PARTS = import.meta.glob<string>(
  [
    '/node_modules/@fontsource/noto-sans-sc/files/noto-sans-sc-[0-9]*-400-normal.woff',
    '/node_modules/@fontsource/noto-sans-kr/files/noto-sans-kr-[0-9]*-400-normal.woff',
    '/node_modules/@fontsource/noto-sans-thai/files/noto-sans-thai-thai-400-normal.woff',
  ],
  { query: '?url&no-inline', import: 'default', eager: true },
);

const ADDRESSES = new Map([
  ['DejaVuSans.ttf', regular],
  ['DejaVuSans-Bold.ttf', bold],
  ...Object.entries(PARTS).map(([path, address]) => [path.replace(/^.*\//, ''), address] as const),
]);

/** Which part of a face has which letters. */
const LISTS: Readonly<Record<Parameters<FontFiles['parts']>[0], () => Promise<Record<string, string>>>> = {
  'noto-sans-sc': async () => (await import('@fontsource/noto-sans-sc/unicode.json')).default,
  'noto-sans-kr': async () => (await import('@fontsource/noto-sans-kr/unicode.json')).default,
  'noto-sans-thai': async () => (await import('@fontsource/noto-sans-thai/unicode.json')).default,
};

export const fontFiles: FontFiles = {
  read: async (name) => {
    const answer = await fetch(ADDRESSES.get(name) ?? name);
    if (!answer.ok) throw new Error(`the font ${name} could not be loaded`);
    return new Uint8Array(await answer.arrayBuffer());
  },
  parts: (face) => LISTS[face](),
};
