// What a visitor's browser fetches before the page can be used.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, inject, it } from 'vitest';

const MOST_BYTES = 150_000;

const folder = inject('appFolder');
const page = readFileSync(join(folder, 'index.html'), 'utf8');
/** What the page asks for at once. */
const asked = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, path]) => path as string);
const textOf = (path: string): string => readFileSync(join(folder, path), 'utf8');
const scripts = asked.map(textOf);
/** What runs at once: the script of the page, and all that it imports. */
const run = asked.slice(0, 1);
for (const path of run)
  for (const [, name] of textOf(path).matchAll(/from\s*["'`]\.\/([^"'`]+\.js)["'`]/g))
    if (!run.includes(`assets/${name}`)) run.push(`assets/${name}`);

it('is no more than 150 kB of scripts, gzipped', () => {
  const bytes = scripts.reduce((sum, script) => sum + gzipSync(script).length, 0);
  expect(scripts.length).toBeGreaterThan(1);
  expect(bytes).toBeGreaterThan(60_000);
  expect(bytes).toBeLessThanOrEqual(MOST_BYTES);
});

it('leaves the writing of PDF for when it is asked for', () => {
  expect(scripts.some((script) => script.includes('%PDF-'))).toBe(false);
});

it('leaves the face that prints are set in for when one is made', () => {
  expect(scripts.some((script) => script.includes('DejaVuSans'))).toBe(false);
  expect(page).not.toContain('.ttf');
});

it('shares with the workers what writes PDF, and the whole build is no more than 4.5 MB', () => {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile());
  const scripted = files.filter((path) => path.endsWith('.js')).map((path) => readFileSync(path, 'utf8'));
  // The library, and what calls it.
  for (const part of ['%PDF-', 'PAGEAA+'])
    expect(
      scripted.filter((script) => script.includes(part)),
      part,
    ).toHaveLength(1);
  expect(files.some((path) => /sizesWorker/.test(path))).toBe(true);
  expect(files.reduce((sum, path) => sum + statSync(path).size, 0)).toBeLessThanOrEqual(4_500_000);
});

it('asks for the reading of a kept book at once, and leaves running it for when there is one', () => {
  const readsData = (script: string): boolean => script.includes('invalid_union');
  expect(scripts.filter(readsData)).toHaveLength(1);
  expect(run.length).toBeGreaterThan(1);
  expect(run.map(textOf).some(readsData)).toBe(false);
});

it('leaves drafting for when the page is shown', () => {
  const drafts = (script: string): boolean => script.includes('A piece was made without its ');
  const all = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js'));
  expect(all.filter((name) => drafts(textOf(`assets/${name}`)))).toHaveLength(1);
  expect(scripts.some(drafts)).toBe(false);
});

it('comes in few scripts', () => {
  expect(asked.length).toBeLessThanOrEqual(5);
});

it('leaves the notices about keeping for when there is one, but for the sentence that stands for them', () => {
  expect(scripts.some((script) => script.includes('no room left to keep the book'))).toBe(false);
  expect(scripts.some((script) => script.includes('the notice that says why could not be loaded'))).toBe(
    true,
  );
});

it('does not carry the accented letters of the test build', () => {
  expect(scripts.some((script) => script.includes('áƀçđ'))).toBe(false);
});
