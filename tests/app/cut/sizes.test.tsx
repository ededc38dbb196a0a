import { screen, waitFor, within } from '@testing-library/react';
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import SizesDialog from '../../../src/app/cut/sizes/SizesDialog';
import { useSizingChoices } from '../../../src/app/cut/sizes/sizingChoices';
import { changeClient, changeStyle, DEMO_BOOK } from '../../../src/document';
import { sizeRange } from '../../support/bodies/sizeRange';
import { catchSavedFiles, type SavedFile } from '../savedFiles';
import { onTable } from '../withStore';

const fresh = useSizingChoices.getState();
let saved: SavedFile[] = [];

beforeEach(() => {
  saved = catchSavedFiles();
});
afterEach(() => {
  vi.restoreAllMocks();
  useSizingChoices.setState(fresh, true);
});

const SLOW = { timeout: 20_000 };
const IN_CM = changeClient(DEMO_BOOK, (client) => ({ ...client, unit: 'cm' }));
const opened = (book = IN_CM) => {
  const shown = onTable(<SizesDialog onClose={() => undefined} />, book);
  // The test page knows dialogs but does not open them.
  shown.container.querySelector('dialog')?.setAttribute('open', '');
  return shown;
};
const rowOf = (name: string): Promise<HTMLElement> =>
  screen.findByRole('row', { name: new RegExp(`^(Print )?${name}\\b.*`) }, SLOW);
const bytesOf = (blob: Blob): Promise<Uint8Array> =>
  new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(new Uint8Array(reader.result as ArrayBuffer));
    reader.readAsArrayBuffer(blob);
  });
const type = (text: string): void => {
  const field = screen.getByRole('textbox', { name: /^The table/ });
  Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')?.set?.call(field, text);
  field.dispatchEvent(new Event('input', { bubbles: true }));
};

describe('a range of sizes', () => {
  it(
    'is computed and proved by size, its steps are plotted, and it prints one over another',
    SLOW,
    async () => {
      const { user } = opened();
      expect(await rowOf('92')).toHaveTextContent(/5 seams, 14 crossings, 3 girths hold/);
      const steps = (await screen.findByText('Panel widths and seam lengths by size', {}, SLOW)).closest(
        'details',
      );
      const widths = within(steps as HTMLElement)
        .getByText('Front 1, waist')
        .closest('tr');
      expect(widths?.querySelectorAll('rect')).toHaveLength(7);
      await user.click(screen.getByRole('checkbox', { name: 'Print 80' }));
      await user.selectOptions(screen.getByRole('combobox', { name: 'As' }), 'svg');
      await user.click(screen.getByRole('button', { name: 'Print 7 sizes' }));
      await waitFor(() => expect(saved).toHaveLength(1), SLOW);
      expect(saved[0]?.name).toMatch(/-A-range-of-sizes\.svg$/);
      const svg = strFromU8(await bytesOf(saved[0]?.blob as Blob));
      expect(svg).toContain('<g id="size-7">');
      expect(svg).not.toContain('<g id="size-8">');
    },
  );

  it('is changed as a table that begins with the computed numbers', SLOW, async () => {
    const { user } = opened();
    await user.click(screen.getByRole('button', { name: 'Change these numbers in a table' }));
    const field = screen.getByRole('textbox', { name: 'The table, a row for each size' });
    expect((field as HTMLTextAreaElement).value).toMatch(/^Size;Over-bust girth;Bust girth;/);
    expect(await rowOf('110')).toHaveTextContent(/hold/);
  });

  it('says a bad cell by row and column, and drafts the others', SLOW, async () => {
    const { user } = opened();
    await user.click(screen.getByRole('radio', { name: 'A table of my own' }));
    expect(screen.getByText('There is no row yet.')).toBeInTheDocument();
    type('Shoe;Hat\n38;7');
    expect(
      await screen.findByText(/No column is called as a measurement is. They are called “Shoe” and “Hat”/),
    ).toBeInTheDocument();
    type(sizeRange(3).replace('84;', 'wide;'));
    expect(await screen.findByText(/^Row 4, Bust: “wide” is no length/)).toBeInTheDocument();
    expect(await rowOf('38')).toHaveTextContent(/hold/);
    expect(screen.queryByRole('checkbox', { name: 'Print 36' })).toBeNull();
  });
});

describe('a column that was not understood', () => {
  const columnOf = (name: string): HTMLElement =>
    screen.getByRole('combobox', { name: `“${name}” is read as` });

  it('is named, and read as one says it is', SLOW, async () => {
    const { user } = opened();
    await user.click(screen.getByRole('radio', { name: 'A cast' }));
    type(
      sizeRange(2)
        .replace('Size;', 'Singer;')
        .replace(';Bust;', ';Chest;')
        .replaceAll('\r\n', ';8\r\n')
        .replace(';8', ';Shoe'),
    );
    await screen.findByText(/^Not understood, and passed over: “Chest” and “Shoe”/);
    expect(screen.getByText('The names are taken from “Singer”.')).toBeInTheDocument();
    expect(await rowOf('36')).toHaveTextContent('Not measured: Bust girth.');
    const table = screen.getByRole('table', { name: 'Columns that were not understood' });
    expect(within(table).getByRole('row', { name: /^Chest 80 · 84/ })).toBeInTheDocument();
    const waist = within(columnOf('Chest')).getByRole('option', { name: 'Waist girth' });
    expect(waist).toBeDisabled();
    await user.selectOptions(columnOf('Chest'), 'Bust girth');
    await user.selectOptions(columnOf('Shoe'), 'Leave out');
    expect(screen.queryByText(/^Not understood/)).toBeNull();
    await waitFor(async () => expect(await rowOf('36')).toHaveTextContent(/hold/), SLOW);
  });
});

describe('a cast', () => {
  it(
    'has a row for each with what is missing, and a ZIP with a pattern and a drafting sheet for each',
    SLOW,
    async () => {
      const { user } = opened();
      await user.click(screen.getByRole('radio', { name: 'A cast' }));
      const [head, units, first, second] = sizeRange(2).split('\r\n');
      const short = second?.replace(/;[^;]*$/, ';').replace(/^36/, 'Ada');
      type([head?.replace('Size', 'Name'), units, first?.replace(/^34/, 'Ora'), short].join('\n'));
      expect(await rowOf('Ada')).toHaveTextContent('Not measured: Bust point to bust point.');
      expect(screen.getByText('One is left out: it cannot be cut.')).toBeInTheDocument();
      await user.click(screen.getByRole('checkbox', { name: 'With a drafting sheet for each' }));
      await user.click(screen.getByRole('button', { name: 'Print 1 person' }));
      await waitFor(() => expect(saved).toHaveLength(1), SLOW);
      const files = unzipSync(await bytesOf(saved[0]?.blob as Blob));
      expect(Object.keys(files).sort()).toEqual(['Ora-drafting-sheet.pdf', 'Ora.pdf']);
      for (const file of Object.values(files)) expect(strFromU8(file.slice(0, 5))).toBe('%PDF-');
    },
  );

  it('of a tightly laced style prints only once the cautions are read', SLOW, async () => {
    const tight = changeStyle(IN_CM, (style) => ({ ...style, ease: { ...style.ease, waist: -140 } }));
    const { user } = opened(tight);
    await rowOf('92');
    const print = await screen.findByRole('button', { name: /^Print \d sizes/ }, SLOW);
    await waitFor(() => expect(screen.getByText(/tightly laced/)).toBeInTheDocument(), SLOW);
    expect(print).toBeDisabled();
    await user.click(screen.getByRole('checkbox', { name: /^I have read them/ }));
    await waitFor(() => expect(print).toBeEnabled(), SLOW);
  });
});
