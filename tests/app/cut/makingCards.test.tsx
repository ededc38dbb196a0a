import { screen, waitFor, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { resetMaking, useMakingChoices } from '../../../src/app/cut/choices/makingChoices';
import { usePlanInput } from '../../../src/app/cut/choices/usePlanInput';
import { DraftingSheetCard } from '../../../src/app/cut/DraftingSheetCard';
import { MakingCard } from '../../../src/app/cut/MakingCard';
import { type Book, DEMO_BOOK } from '../../../src/document';
import { inches } from '../../../src/engine';
import { onTable } from '../withStore';

function Cards() {
  const input = usePlanInput();
  return (
    <>
      <MakingCard input={input} />
      <DraftingSheetCard input={input} />
      <output>{input.making ? 'with the list' : 'without the list'}</output>
    </>
  );
}

/** What was handed to the browser to be saved: names and contents. */
let saved: { name: string; text: () => Promise<string> }[] = [];
beforeEach(() => {
  saved = [];
  let last: Blob | null = null;
  URL.createObjectURL = (blob: Blob) => {
    last = blob;
    return 'blob:test';
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    const blob = last as Blob;
    saved.push({
      name: this.download,
      text: () =>
        new Promise((resolve) => {
          const reader = new FileReader();
          reader.onload = () => resolve(String(reader.result));
          reader.readAsText(blob);
        }),
    });
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  resetMaking();
  useMakingChoices.setState({ printed: true });
});

const rowOf = (item: string): HTMLElement => screen.getByText(item).closest('li') as HTMLElement;
const field = (name: string): HTMLElement => screen.getByRole('textbox', { name, hidden: true });
const open = async (user: ReturnType<typeof onTable>['user']): Promise<void> => {
  await user.click(screen.getByText('What the list goes by'));
};

describe('the making list on the screen', () => {
  it('lists bones by the usual figures and again when one is changed', async () => {
    const { user } = onTable(<Cards />);
    expect(rowOf('Centre front')).toHaveTextContent('10¼ in');
    await open(user);
    await user.clear(field('Bones are sold in steps of'));
    await user.type(field('Bones are sold in steps of'), '2{Enter}');
    expect(rowOf('Centre front')).toHaveTextContent('10 in');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Bones are reckoned' }), 'by the channel');
    expect(useMakingChoices.getState().settings).toMatchObject({ rule: 'channel', boneStep: inches(2) });
    await user.click(screen.getByRole('button', { name: 'Back to the usual figures' }));
    expect(rowOf('Centre front')).toHaveTextContent('10¼ in');
  });

  it('says what a figure may be and goes on with the last good one', async () => {
    const { user } = onTable(<Cards />);
    await open(user);
    await user.clear(field('Eyelets apart'));
    await user.type(field('Eyelets apart'), '9');
    await user.tab();
    expect(screen.getByText(/This must be between .* and .* in; the last good figure holds/)).toBeVisible();
    expect(useMakingChoices.getState().settings?.eyeletSpacing ?? 25).toBe(25);
    expect(screen.getByText('Eyelets, two rows alike')).toBeInTheDocument();
  });

  it('is printed with the pattern unless that is ticked off', async () => {
    const { user } = onTable(<Cards />);
    expect(screen.getByText('with the list')).toBeVisible();
    await user.click(screen.getByRole('checkbox', { name: /behind the sheets/ }));
    expect(screen.getByText('without the list')).toBeVisible();
  });

  it('is copied as text, or says that it could not be', async () => {
    const { user } = onTable(<Cards />);
    await user.click(screen.getByRole('button', { name: 'Copy as text' }));
    expect(await screen.findByText('Copied.')).toBeVisible();
    expect(await navigator.clipboard.readText()).toMatch(
      /^Making list: Wren Abernathy, Winter ball bodice\n/,
    );
    vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('not allowed'));
    await user.click(screen.getByRole('button', { name: 'Copy as text' }));
    expect(await screen.findByText(/did not let the list be copied/)).toBeVisible();
  });

  it('is saved as CSV under the names of client and draft', async () => {
    const { user } = onTable(<Cards />);
    await user.click(screen.getByRole('button', { name: 'Download as CSV' }));
    expect(saved.map(({ name }) => name)).toEqual(['Wren-Abernathy-Winter-ball-bodice-making-list.csv']);
    expect(await saved[0]?.text()).toMatch(/^\ufeff?Client,Draft,List,Item,Count,"Length, in",Note\r\n/);
  });
});

describe('the drafting sheet on the screen', () => {
  it('is saved as a web page and as a PDF', async () => {
    const { user } = onTable(<Cards />);
    const card = within(screen.getByRole('region', { name: 'Drafting sheet' }));
    await user.click(card.getByRole('button', { name: 'Download as web page' }));
    await user.click(card.getByRole('button', { name: 'Download as PDF' }));
    await waitFor(() => expect(saved).toHaveLength(2));
    expect(saved.map(({ name }) => name)).toEqual([
      'Wren-Abernathy-Winter-ball-bodice-drafting-sheet.html',
      'Wren-Abernathy-Winter-ball-bodice-drafting-sheet.pdf',
    ]);
    expect(await saved[0]?.text()).toMatch(/^<!doctype html>/);
    expect(await saved[1]?.text()).toMatch(/^%PDF-/);
  });

  it('is not given for a draft that must not be cut', () => {
    const [client] = DEMO_BOOK.clients;
    if (!client) throw new Error('the demo book has a client');
    const untaken: Book = {
      ...DEMO_BOOK,
      clients: [{ ...client, measurements: { ...client.measurements, waist: null } } as typeof client],
    };
    onTable(<Cards />, untaken);
    for (const name of ['Download as web page', 'Download as PDF'])
      expect(screen.getByRole('button', { name })).toBeDisabled();
    expect(screen.queryByRole('region', { name: 'Making list' })).toBeNull();
  });
});
