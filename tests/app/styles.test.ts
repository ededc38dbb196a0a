// The colours of the screen against WCAG 2.2: 4.5 for text (1.4.3), 3 for lines and rims that carry meaning (1.4.11).

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const [LIGHT = '', DARK = ''] = readFileSync('src/app/styles/window/base.css', 'utf8').split(
  'prefers-color-scheme: dark',
);
const NOTES = readFileSync('src/app/styles/design.md', 'utf8');

const colours = (css: string): Map<string, string> =>
  new Map([...css.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [name, hex]));

const THEMES = {
  light: colours(LIGHT),
  dark: new Map([...colours(LIGHT), ...colours(DARK)]),
};

/** Relative luminance of an sRGB colour as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(theme: keyof typeof THEMES, a: string, b: string): number {
  const [low = 0, high = 0] = [a, b]
    .map((name) => luminance(THEMES[theme].get(name) ?? '#000000'))
    .sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

/** The rows of a table of the notes: a colour, what it stands on, and its two figures. */
const ROWS = [
  ...NOTES.matchAll(/^\| ([a-z-]+) on ([a-z-]+) +\| (text|line) +\| +([\d.]+) +\| +([\d.]+) +\|$/gm),
];

describe('the colours', () => {
  it('are all in the notes that tell of them', () => {
    expect(ROWS.length).toBeGreaterThan(20);
    for (const [, a = '', b = ''] of ROWS)
      for (const name of [a, b]) expect(THEMES.light.has(name), name).toBe(true);
  });

  it.each(ROWS.map(([, a = '', b = '', use = '', light = '', dark = '']) => ({ a, b, use, light, dark })))(
    '$a on $b stands out as the notes say',
    ({ a, b, use, light, dark }) => {
      expect(contrast('light', a, b).toFixed(1)).toBe(light);
      expect(contrast('dark', a, b).toFixed(1)).toBe(dark);
      const least = use === 'text' ? 4.5 : 3;
      expect(Math.min(contrast('light', a, b), contrast('dark', a, b))).toBeGreaterThanOrEqual(least - 0.05);
    },
  );
});
