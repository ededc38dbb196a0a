// Finds texts of a page in accented text that are written in plain letters: they do not come out of the catalogue.

import type { Page } from 'playwright-core';

/** What may stand in plain letters; each is taken out of a text before it is looked at. */
const ALLOWED: readonly { readonly source: string; readonly reason: string }[] = [
  { source: '^(in|cm|mm)$', reason: 'The mark of a unit by itself, beside a field.' },
  {
    source: '(?<=\\p{N}[\\u202f\\u00a0 ]?)(in|cm|mm)(?!\\p{L})',
    reason: 'The mark of a unit behind a number.',
  },
  { source: '(?<!\\p{L})Staywright(?!\\p{L})', reason: 'The name of the program.' },
];

/** A text with the place it stands in, as `place: text`. */
type Found = string;

/**
 * Every text of the page with two or more plain letters in a row: text nodes, also of drawings and closed details, and the
 * attributes that are read out or shown. Licences are left out: they stand as their authors wrote them.
 *
 * @param typed names that a visitor has typed, or that come with the book
 */
export const plainTexts = (page: Page, typed: readonly string[]): Promise<Found[]> =>
  page.evaluate(
    ({ allowed, names }) => {
      const escaped = names.map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
      const taken = [...escaped, ...allowed].map((source) => new RegExp(source, 'gu'));
      const isPlain = (text: string): boolean =>
        /[A-Za-z]{2,}/.test(text) &&
        /[A-Za-z]{2,}/.test(taken.reduce((rest, each) => rest.replace(each, ' '), text.trim()));
      const pathOf = (element: Element): string => {
        const parts: string[] = [];
        for (let each: Element | null = element; each && each !== document.body; each = each.parentElement) {
          const classes = [...each.classList].map((name) => `.${name}`).join('');
          const alike = [...(each.parentElement?.children ?? [])].filter(
            ({ tagName }) => tagName === each?.tagName,
          );
          const place = alike.length > 1 ? `:nth-of-type(${alike.indexOf(each) + 1})` : '';
          parts.unshift(`${each.tagName.toLowerCase()}${classes}${place}`);
        }
        return parts.join(' > ');
      };
      const attributes = [
        ...['aria-label', 'aria-valuetext', 'aria-description', 'aria-roledescription', 'title'],
        ...['placeholder', 'alt', 'label'],
      ];
      const found = isPlain(document.title) ? [`title: ${document.title}`] : [];
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        if (node instanceof Element) {
          for (const name of attributes) {
            const text = node.getAttribute(name);
            if (text !== null && isPlain(text)) found.push(`${pathOf(node)} [${name}]: ${text}`);
          }
        } else if (node.parentElement && !node.parentElement.closest('script, style, .licences')) {
          const text = node.textContent ?? '';
          if (isPlain(text)) found.push(`${pathOf(node.parentElement)}: ${text.trim()}`);
        }
      }
      return [...new Set(found)];
    },
    { allowed: ALLOWED.map(({ source }) => source), names: [...typed] },
  );

/** By how many px the page is wider than its window; 0 where it is not. */
export const overflowPx = (page: Page): Promise<number> =>
  page.evaluate(() => Math.max(0, (document.scrollingElement?.scrollWidth ?? 0) - window.innerWidth));
