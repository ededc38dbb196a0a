// What the build writes into the page: its policy, and what stands there until its script runs.

import type { Plugin } from 'vite';
import { FOLDER_POLICY } from './policy.ts';

/** Writes the policy into the built page; the development server needs inline scripts and goes without. */
export const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: (_, { command, mode }) => command === 'build' && mode !== 'single',
  transformIndexHtml: () => [policyTag(FOLDER_POLICY)],
};

const policyTag = (content: string) => ({
  tag: 'meta',
  attrs: { 'http-equiv': 'Content-Security-Policy', content },
  injectTo: 'head-prepend' as const,
});

/** What is said before the script of the page runs. */
interface StartingWords {
  readonly loading: string;
  readonly slow: string;
  readonly reload: string;
  readonly looseFiles: string;
  readonly noScript: string;
}

/** Writes what stands in the page until its script runs, and stays where scripts do not run or a part of it does not come. */
export const startingWords = ({ loading, slow, reload, looseFiles, noScript }: StartingWords): Plugin => ({
  name: 'starting-words',
  transformIndexHtml: (html) =>
    html.replace(
      '<!-- start -->',
      [
        `<noscript><p class="empty">${noScript}</p></noscript>`,
        `<p class="empty loading">${loading}</p>`,
        `<p class="empty slow">${slow} <a href="">${reload}</a><br />${looseFiles}</p>`,
      ].join(''),
    ),
});
