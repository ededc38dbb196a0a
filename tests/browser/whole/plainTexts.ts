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

/** What a look at a page found. */
export interface Look {
  /** Texts in plain letters, each with the place it stands in, as `place: text`. */
  readonly texts: readonly string[];
  /** By how many px the page is wider than its window; 0 where it is not. */
  readonly overflowPx: number;
}

/** What a look leaves in the page for the next. */
interface Watching {
  plainTextsWatch?: {
    /** Nodes that were added since the last look, with all that is in them. */
    readonly added: Set<Node>;
    /** Texts, and elements with an attribute, that changed since. */
    readonly changed: Set<Node>;
    readonly note: (records: readonly MutationRecord[]) => void;
    readonly observer: MutationObserver;
  };
}

/**
 * Every text of the page with two or more plain letters in a row: text nodes, also of drawings and closed details, and the
 * attributes that are read out or shown. Licences are left out: they stand as their authors wrote them. What has not changed since
 * the last look at the same load of the page was looked at then, and is not named again.
 *
 * @param typed names that a visitor has typed, or that come with the book
 */
export const lookAt = (page: Page, typed: readonly string[]): Promise<Look> =>
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
      const found = new Set(isPlain(document.title) ? [`title: ${document.title}`] : []);
      const lookAtNode = (node: Node): void => {
        if (node instanceof Element) {
          for (const name of attributes) {
            const text = node.getAttribute(name);
            if (text !== null && isPlain(text)) found.add(`${pathOf(node)} [${name}]: ${text}`);
          }
        } else if (node.parentElement && !node.parentElement.closest('script, style, .licences')) {
          const text = node.textContent ?? '';
          if (isPlain(text)) found.add(`${pathOf(node.parentElement)}: ${text.trim()}`);
        }
      };
      const lookAtAll = (root: Node): void => {
        lookAtNode(root);
        const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
        for (let node = walker.nextNode(); node; node = walker.nextNode()) lookAtNode(node);
      };
      const own = window as Watching;
      if (own.plainTextsWatch) {
        const { added, changed, note, observer } = own.plainTextsWatch;
        note(observer.takeRecords());
        for (const node of added) if (document.body.contains(node)) lookAtAll(node);
        for (const node of changed) if (document.body.contains(node)) lookAtNode(node);
        added.clear();
        changed.clear();
      } else {
        const [added, changed] = [new Set<Node>(), new Set<Node>()];
        const note = (records: readonly MutationRecord[]): void => {
          for (const { type, target, addedNodes } of records)
            if (type === 'childList') for (const node of addedNodes) added.add(node);
            else changed.add(target);
        };
        const observer = new MutationObserver(note);
        observer.observe(document.body, {
          ...{ subtree: true, childList: true, characterData: true },
          ...{ attributes: true, attributeFilter: attributes },
        });
        own.plainTextsWatch = { added, changed, note, observer };
        lookAtAll(document.body);
      }
      return {
        texts: [...found],
        overflowPx: Math.max(0, (document.scrollingElement?.scrollWidth ?? 0) - window.innerWidth),
      };
    },
    { allowed: ALLOWED.map(({ source }) => source), names: [...typed] },
  );
