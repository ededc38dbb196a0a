// Every style on three bodies against the drawings that were looked at and kept. `npm run golden:update` keeps new ones; it
// alone writes, and then the contact sheet wants to be looked at again.

import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { draft } from '../../src/engine';
import { SIZED_BODIES } from '../support/bodies/sizedBodies';
import { inSideSeam } from '../support/styles/sideDart';
import { contactSheet } from './contactSheet';
import { drawDraft } from './drawDraft';

const UPDATING = process.env.UPDATE_GOLDEN === '1';

/** Farther apart than rounding and another machine's last digit can bring two equal numbers. mm */
const SAME_MM = 0.002;

/** The darted bodice with its bust dart turned into the side seam: no ready style has it there. */
const SIDE_DART = 'darted-bodice-side-dart';
const STYLES = new Map([
  ...NAMED_STYLES,
  [
    SIDE_DART,
    { title: 'Darted bodice to the waist, bust dart in the side seam', style: inSideSeam() },
  ] as const,
]);

const CASES = [...STYLES].flatMap(([style, { title, style: asked }]) =>
  SIZED_BODIES.map(([body, measurements]) => ({ style, body, title, asked, measurements })),
);

const fileOf = (name: string): URL => new URL(`drawings/${name}.svg`, import.meta.url);
const nameOf = ({ style, body }: { style: string; body: string }): string => `${style}-${body}`;
const SHEET = 'contact-sheet';

describe('a golden', () => {
  it.each(CASES)('$style-$body', ({ style, body, title, asked, measurements }) => {
    const drawn = drawDraft(`${title}, ${body}`, draft(measurements, asked));
    const file = fileOf(nameOf({ style, body }));
    if (UPDATING) writeFileSync(file, drawn);
    expect(existsSync(file), 'kept by npm run golden:update').toBe(true);
    expect(differences(drawn, readFileSync(file, 'utf8'))).toEqual([]);
  });

  it('is kept for no style that there is not', () => {
    const wanted = new Set([...CASES.map(nameOf), SHEET]);
    const names = (): string[] =>
      readdirSync(new URL('drawings', import.meta.url))
        .filter((file) => file.endsWith('.svg'))
        .map((file) => file.slice(0, -4));
    if (UPDATING) for (const name of names()) if (!wanted.has(name)) rmSync(fileOf(name));
    expect(names().filter((name) => !wanted.has(name))).toEqual([]);
  });

  it('differs where a number or a line does', () => {
    const kept = '<path class="seam" d="M0 1 2.5 -3"/>';
    expect(differences(kept, kept.replace('2.5', '2.5019'))).toEqual([]);
    expect(differences(kept, kept.replace('2.5', '2.503'))).toHaveLength(1);
    expect(differences(kept, kept.replace('-3', '3'))).toHaveLength(1);
    expect(differences(kept, kept.replace('seam', 'top'))).toHaveLength(1);
    expect(differences(kept, kept.replace(' 2.5', ' 2.5 4'))).toHaveLength(1);
    expect(differences(kept, `${kept}\n`)).toHaveLength(1);
  });
});

it('the contact sheet shows the goldens as they are kept', () => {
  const sheet = contactSheet(
    CASES.map(({ style, body }) => ({
      style,
      body,
      svg: readFileSync(fileOf(nameOf({ style, body })), 'utf8'),
    })),
  );
  if (UPDATING) writeFileSync(fileOf(SHEET), sheet);
  expect(readFileSync(fileOf(SHEET), 'utf8') === sheet).toBe(true);
});

/** What differs between two drawings: by line, what it is a line of, and by how much at most; numbers within {@link SAME_MM} do not. */
function differences(drawn: string, kept: string): string[] {
  const [mine, theirs] = [drawn.split('\n'), kept.split('\n')];
  if (mine.length !== theirs.length) return [`${mine.length} lines instead of ${theirs.length}`];
  return mine.flatMap((line, i) => {
    const [a, b] = [apart(line), apart(theirs[i] as string)];
    const what = `line ${i + 1}, ${/class="([^"]*)"/.exec(line)?.[1] ?? line.slice(0, 40)}`;
    if (a.text !== b.text) return [`${what}: not the same points in number, or not the same line`];
    const off = Math.max(0, ...a.numbers.map((value, k) => Math.abs(value - (b.numbers[k] as number))));
    return off > SAME_MM ? [`${what}: up to ${off.toFixed(3)} mm off`] : [];
  });
}

/** A line's text with a place for each number, and the numbers. */
function apart(line: string): { text: string; numbers: number[] } {
  const numbers: number[] = [];
  const text = line.replace(/-?\d+(\.\d+)?/g, (number) => {
    numbers.push(Number(number));
    return '#';
  });
  return { text, numbers };
}
