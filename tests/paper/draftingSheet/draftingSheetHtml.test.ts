// The drafting sheet as an HTML file: no script in it, and nothing of a name but its letters.

import { describe, expect, it } from 'vitest';
import type { Issue } from '../../../src/engine';
import type { PlanInput } from '../../../src/paper';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import { draftingSheetHtml } from '../../../src/paper/draftingSheet/draftingSheetHtml';
import { demoPattern } from '../demoPattern';

const INPUT: PlanInput = demoPattern();
const read = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');
const named = (name: string): PlanInput => ({
  ...INPUT,
  client: { ...INPUT.client, name },
  savedDraft: { ...INPUT.savedDraft, name },
  date: name,
});

describe('sheet.html', () => {
  const page = read(draftingSheetHtml(INPUT));

  it('says every step with its sentences and tables as they are', () => {
    const { steps } = draftingSheet(INPUT);
    const sections = [...page.querySelectorAll('section')];
    expect(sections.map((section) => section.querySelector('h2')?.textContent)).toEqual(
      steps.map(({ heading }, i) => `${i + 1}. ${heading}`),
    );
    for (const [i, step] of steps.entries()) {
      const section = sections[i] as Element;
      expect([...section.querySelectorAll('p')].map((each) => each.textContent)).toEqual(step.sentences);
      expect(
        [...section.querySelectorAll('table')].map((table) =>
          [...table.querySelectorAll('tbody tr')].map((row) =>
            [...row.children].map((cell) => cell.textContent),
          ),
        ),
      ).toEqual(step.tables.map(({ rows }) => rows));
      expect(section.querySelectorAll('svg').length).toBe(step.figure ? 1 : 0);
    }
  });

  it('stands alone: no script, no address, a policy that lets nothing be fetched', () => {
    const text = draftingSheetHtml(INPUT);
    expect(text).not.toMatch(
      /<script|javascript:|https?:|url\(|@import|<link|<img|<iframe| on\w+=| href| src=/i,
    );
    expect(page.querySelector('meta[http-equiv]')?.getAttribute('content')).toMatch(/^default-src 'none';/);
    expect(page.doctype?.name).toBe('html');
    expect(page.documentElement.lang).toBe('en');
  });

  it('keeps every figure inside its box', () => {
    for (const svg of page.querySelectorAll('svg')) {
      const [, , width, height] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
      const numbers = [...svg.querySelectorAll('path')].flatMap((path) =>
        (path.getAttribute('d') ?? '')
          .split(/[ML]/)
          .filter((each) => each !== '')
          .map((pair) => pair.split(' ').map(Number)),
      );
      expect(numbers.length).toBeGreaterThan(0);
      for (const [x = Number.NaN, y = Number.NaN] of numbers) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width as number);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual((height as number) + 0.01);
      }
    }
  });

  it.each([
    '</style><script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    '</title><svg onload=alert(1)>',
    '<!--',
    ']]>',
    "'&amp;'",
    'Zoë Ọlá Ångström 王小明 Ελένη Дарья',
    'مريم',
    '\u202eevil\u202c',
  ])('writes the name %j as letters only', (name) => {
    const made = read(draftingSheetHtml(named(name)));
    expect(made.querySelectorAll('script, img, iframe, object, [onload], [onerror]')).toHaveLength(0);
    const visible = name.replace(/[\u202a-\u202e]/g, '');
    expect(made.querySelector('h1')?.textContent).toBe(visible);
    expect(made.querySelectorAll('section')).toHaveLength(page.querySelectorAll('section').length);
  });

  it('is the same text for the same draft', () => {
    expect(draftingSheetHtml(INPUT)).toBe(draftingSheetHtml(demoPattern()));
  });

  it('says so where there is nothing to draw, and warns of a draft that must not be cut', () => {
    const none = { ...INPUT, draft: { ...INPUT.draft, pieces: [] } };
    expect(read(draftingSheetHtml(none)).querySelector('main')?.textContent).toMatch(/nothing to draw/);
    const issue: Issue = { code: 'panelCrossed', severity: 'error', at: {}, values: {} };
    const faulty = {
      ...INPUT,
      draft: { ...INPUT.draft, issues: [issue] },
    };
    expect(read(draftingSheetHtml(faulty)).querySelector('.warning')?.textContent).toMatch(/do not cut/);
  });
});
