import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import FirstRun from '../../../src/app/help/FirstRun';
import { HelpButton } from '../../../src/app/help/HelpButton';
import {
  changeClient,
  DEMO_BOOK,
  GLOSSARY,
  MEASUREMENT_WORDS,
  SAFETY_CAUTIONS,
  SOURCES,
} from '../../../src/document';
import { UNMEASURED } from '../../../src/engine';
import { onTable } from '../withStore';

const PROJECT = join(import.meta.dirname, '../../..');
const manifest = (path: string) => JSON.parse(readFileSync(join(PROJECT, path), 'utf8'));

/** The dialog; a page without a screen does not open it, so that it has no role. */
const help = async (): Promise<HTMLElement> =>
  (await screen.findByText('The way through', { selector: 'h3' })).closest('dialog') ?? document.body;

describe('Help', () => {
  it('opens by its button and has every word, source and measurement', async () => {
    const { user } = onTable(<HelpButton />);
    await user.click(screen.getByRole('button', { name: 'Help' }));
    const text = (await help()).textContent ?? '';
    for (const { word, meaning } of GLOSSARY) expect(text).toContain(`${word}${meaning}`);
    for (const item of SOURCES.flatMap(({ items }) => items)) expect(text).toContain(item);
    for (const { source } of SAFETY_CAUTIONS) expect(text).toContain(source);
    for (const { label, how } of Object.values(MEASUREMENT_WORDS)) expect(text).toContain(`${label}${how}`);
    await user.click(within(await help()).getByText('Close'));
    expect(document.querySelector('dialog')).toBeNull();
  });

  it('opens by the question mark, but not while something is typed', async () => {
    const { user } = onTable(
      <>
        <input type="text" aria-label="A field" />
        <HelpButton />
      </>,
    );
    await user.type(screen.getByRole('textbox', { name: 'A field' }), 'what?');
    expect(screen.getByRole('textbox', { name: 'A field' })).toHaveValue('what?');
    expect(document.querySelector('dialog')).toBeNull();
    await user.click(document.body);
    await user.keyboard('?');
    expect(await help()).toBeInTheDocument();
  });

  it('explains every word of the drawing', () => {
    const words = GLOSSARY.map(({ word }) => word.toLowerCase()).join(', ');
    for (const word of [
      ...['level', 'ease', 'lacing gap', 'block', 'wedge (dart)', 'intake', 'station', 'leg', 'panel'],
      ...['seam', 'truing', 'sewn girth'],
    ])
      expect(words).toContain(word);
  });

  it('has the text of the licence of every package that the running app stands on', async () => {
    const { user } = onTable(<HelpButton />);
    await user.click(screen.getByRole('button', { name: 'Help' }));
    const list = (await screen.findByText('react: MIT')).closest('ul');
    const parts = [...(list?.querySelectorAll('li') ?? [])];
    const named = parts.map((part) => part.querySelector('summary')?.textContent?.split(':')[0]);
    const { dependencies } = manifest('package.json');
    expect(named).toEqual(expect.arrayContaining(Object.keys(dependencies)));
    // What these stand on in turn.
    expect(named).toEqual(expect.arrayContaining(['scheduler', 'fast-png', 'robust-predicates']));
    for (const part of parts) expect(part.querySelector('pre')?.textContent).toMatch(/copyright|permission/i);
  });
});

describe('a first visit', () => {
  it('is shown three pictures, the middle one of panels drafted for the client', () => {
    onTable(<FirstRun />);
    const pictures = screen.getAllByRole('figure');
    expect(pictures).toHaveLength(3);
    expect(pictures[1]?.querySelectorAll('path.panel').length).toBe(3);
    expect(pictures[1]?.querySelector('path.panel')?.getAttribute('d')).toMatch(/^M[-\d.]+ [-\d.]+L.*Z$/);
  });

  it('is shown panels of the invented client where her own cannot be drafted yet', () => {
    onTable(
      <FirstRun />,
      changeClient(DEMO_BOOK, (client) => ({ ...client, measurements: UNMEASURED })),
    );
    const pictures = screen.getAllByRole('figure');
    expect(pictures[1]?.querySelectorAll('path.panel').length).toBe(3);
    for (const picture of document.querySelectorAll('svg'))
      expect(picture.getAttribute('viewBox')).toMatch(/^(-?[\d.]+ ?){4}$/);
  });
});
