// What axe finds on a page, in the light and in the dark.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * A line for each fault: rule, element, reason. Where a dialog is open, of what is in it. All rules are asked in the light; in the dark the one of contrast, because nothing
 * else of a page hangs on its colours. The page is asked for without motion, so that no colour is between two.
 *
 * @param page is left in the light
 * @param inBoth false where another screen shows the same things in the dark
 */
export async function foundByAxe(page: Page, inBoth = true): Promise<string[]> {
  // The policy of the page keeps scripts out but not the debugger's.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  const inTheLight = await run(page, STANDARDS);
  if (!inBoth) return inTheLight;
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  const inTheDark = await run(page, ['color-contrast']);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  return [...inTheLight, ...inTheDark.map((fault) => `in the dark: ${fault}`)];
}

const run = (page: Page, rules: string[]): Promise<string[]> =>
  page.evaluate(async (runOnly) => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    // What lies behind a dialog was looked at before it was opened. Selectors of all that is well are not made.
    const { violations, passes } = await checker.run(document.querySelector('dialog[open]') ?? document, {
      runOnly,
      selectors: false,
    });
    const looked = passes.reduce((sum, { nodes }) => sum + nodes.length, 0);
    if (looked < 10) return ['axe looked at next to nothing'];
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html}: ${failureSummary}`),
    );
  }, rules);
