import { act, screen, waitFor } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import StyleBook from '../../../../src/app/draft/styles/StyleBook';
import { StyleChoice } from '../../../../src/app/draft/styles/StyleChoice';
import { SideContext } from '../../../../src/app/store/sideContext';
import {
  addClient,
  type Book,
  changeStyle,
  DEMO_BOOK,
  DEMO_CLIENT,
  keepStyle,
  NAMED_STYLES,
  openClient,
  openDraftOf,
  removeStyle,
  setRightWedges,
  setSizing,
  writeStyle,
} from '../../../../src/document';
import { DEFAULT_STYLE } from '../../../../src/engine';
import { onTable } from '../../withStore';

const V_FRONT = NAMED_STYLES.get('v-front')?.style ?? DEFAULT_STYLE;
const KEPT = keepStyle(DEMO_BOOK, 's', 'Harbour', V_FRONT, '2026-11-20');

/** The press that opens the styles, by what it says of the style on the table. */
const opener = () => screen.getByRole('button', { name: /^Style book: / });
const shown = () => opener().getAttribute('title');
const picture = (title: string) =>
  screen.findByRole('button', { name: new RegExp(`^${title}`), hidden: true }, { timeout: 15_000 });

async function lay(user: ReturnType<typeof onTable>['user'], title: string): Promise<void> {
  await user.click(opener());
  await user.click(await picture(title));
}

describe('the styles to start from', () => {
  it('are pictures of the ready-made ones, and the maker’s own before them', async () => {
    const { user, client, store } = onTable(<StyleChoice />, KEPT);
    await user.click(opener());
    await picture('Harbour');
    const groups = document.querySelectorAll('.style-pictures');
    expect([...groups].map((group) => group.querySelector('h3')?.textContent)).toEqual([
      'Your styles',
      'Ready-made',
    ]);
    await waitFor(
      () =>
        expect(document.querySelectorAll('.style-picture .garment-sketch')).toHaveLength(
          1 + NAMED_STYLES.size,
        ),
      { timeout: 15_000 },
    );
    await user.click(await picture('Harbour'));
    expect(openDraftOf(client()).style).toBe(V_FRONT);
    await lay(user, 'Waist cincher');
    expect(openDraftOf(client()).style).toBe(NAMED_STYLES.get('cincher')?.style);
    store.getState().undo();
    expect(openDraftOf(client()).style).toBe(V_FRONT);
  });

  it('can be laid before anything is measured, and wait with their pictures', async () => {
    const { user, client } = onTable(<StyleChoice />, addClient(DEMO_BOOK, 'bea', 'Bea'));
    await lay(user, 'Waist cincher');
    expect(openDraftOf(client()).style).toBe(NAMED_STYLES.get('cincher')?.style);
    await user.click(opener());
    expect(await screen.findByText(/^They are drawn as soon as Bea is measured/)).toBeInTheDocument();
    expect(document.querySelector('.style-picture .garment-sketch')).toBeNull();
  });
});

function styleBook(book: Book = DEMO_BOOK) {
  const onUse = vi.fn();
  const shown = onTable(
    <StyleBook current={null} isChanged={false} onUse={onUse} onClose={() => undefined} />,
    book,
  );
  const press = (name: string) => shown.user.click(screen.getByRole('button', { name, hidden: true }));
  const field = (name: string) => screen.getByRole('textbox', { name, hidden: true });
  const styles = () => shown.store.getState().history.present.styles;
  return { ...shown, onUse, press, field, styles };
}

describe('the style on the table', () => {
  const hem = (book: Book, mm: number): Book => changeStyle(book, (style) => ({ ...style, hemBelow: mm }));

  it('is shown as chosen, from the first day on', () => {
    onTable(<StyleChoice />);
    expect(shown()).toBe('Over-bust corset');
  });

  it('is said to be changed, is chosen anew, and comes back with an undo', async () => {
    const { user, client, store } = onTable(<StyleChoice />);
    await lay(user, 'Waist cincher');
    expect(shown()).toBe('Waist cincher');
    act(() => store.getState().change({ code: 'hemMoved' }, (book) => hem(book, 100)));
    expect(shown()).toBe('Changed from Waist cincher');
    act(() => store.getState().undo());
    expect(shown()).toBe('Waist cincher');
    act(() => store.getState().redo());
    await lay(user, 'Waist cincher');
    expect(openDraftOf(client()).style).toEqual(NAMED_STYLES.get('cincher')?.style);
    expect(shown()).toBe('Waist cincher');
  });

  it('is not asked about while a handle is pulled', () => {
    const { store } = onTable(<StyleChoice />);
    act(() => store.getState().show((book) => hem(book, 100)));
    expect(shown()).toBe('Over-bust corset');
    act(() => store.getState().keep({ code: 'hemMoved' }));
    expect(shown()).toBe('Changed from Over-bust corset');
  });

  it('is the one that was asked for, of two that are the same', async () => {
    const copied: Book = JSON.parse(JSON.stringify(KEPT));
    const { user } = onTable(<StyleChoice />, copied);
    await lay(user, 'Harbour');
    expect(shown()).toBe('Harbour');
    await lay(user, 'V-front bodice with a dipped hem');
    expect(shown()).toBe('V-front bodice with a dipped hem');
    await lay(user, 'Harbour');
    expect(shown()).toBe('Harbour');
  });

  it('is not said to be one that is no longer in the book', async () => {
    const own = { ...V_FRONT, hemBelow: 90 };
    const { user, store } = onTable(<StyleChoice />, keepStyle(DEMO_BOOK, 's', 'Harbour', own, '2026-11-20'));
    await lay(user, 'Harbour');
    act(() =>
      store.getState().change({ code: 'styleRemoved', title: 'Harbour' }, (book) => removeStyle(book, 's')),
    );
    expect(shown()).toBe('A style of its own');
  });

  it('is kept as it is with the right half on the table', async () => {
    const two = changeStyle(DEMO_BOOK, (style) => setRightWedges(style, true));
    const { user, store } = onTable(
      <SideContext value="right">
        <StyleChoice />
      </SideContext>,
      two,
    );
    await user.click(opener());
    await user.type(
      await screen.findByRole('textbox', { name: 'Name of the style', hidden: true }, { timeout: 15_000 }),
      '{Enter}',
    );
    expect(store.getState().history.present.styles[0]?.style).toBe(openDraftOf(openClient(two)).style);
    expect(shown()).toBe(DEMO_CLIENT.drafts[0]?.name ?? '');
  });
});

describe('the style book', () => {
  it('keeps the style on the table under a name, and writes over one of that name', async () => {
    const { press, field, styles, user } = styleBook();
    await user.clear(field('Name of the style'));
    expect(screen.getByRole('button', { name: 'Keep the style', hidden: true })).toBeDisabled();
    await user.type(field('Name of the style'), ' Harbour ');
    await press('Keep the style');
    expect(styles()).toMatchObject([{ name: 'Harbour', style: openDraftOf(DEMO_CLIENT).style }]);
    expect(styles()[0]?.on).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(screen.getByText(/^Harbour is kept/)).toBeInTheDocument();
    await user.type(field('Name of the style'), '{Enter}');
    expect(styles()).toHaveLength(1);
  });

  it.each([
    ['balances wedges sized by hand where one asks, so that they fit anybody', true, 'balanced'],
    ['keeps wedges sized by hand as they are', false, 'manual'],
  ])('%s', async (_, refit, sizing) => {
    const locked = setSizing(DEFAULT_STYLE, 'front-bust', 'manual', { waist: 30 });
    const sheets = DEMO_CLIENT.drafts.map((savedDraft) => ({ ...savedDraft, style: locked }));
    const { press, styles, user, client } = styleBook({
      ...DEMO_BOOK,
      clients: [{ ...DEMO_CLIENT, drafts: sheets }],
    });
    const tick = screen.getByRole('checkbox', { name: /^Balance the wedge sized by hand/, hidden: true });
    if (refit) await user.click(tick);
    await press('Keep the style');
    expect(styles()[0]?.style.wedges.find(({ id }) => id === 'front-bust')?.sizing).toBe(sizing);
    expect(openDraftOf(client()).style).toBe(locked);
  });

  it('lays a style on the table of another client', async () => {
    const { onUse, user } = styleBook(addClient(KEPT, 'bea', 'Bea'));
    await user.click(await picture('Harbour'));
    expect(onUse.mock.calls).toMatchObject([[{ key: 'own:s', style: V_FRONT }]]);
  });

  it('names a style anew', async () => {
    const { field, styles, user } = styleBook(KEPT);
    await user.clear(field('Name of the style Harbour'));
    await user.type(field('Name of the style Harbour'), 'Quay{Enter}');
    expect(styles().map(({ name }) => name)).toEqual(['Quay']);
  });

  it('takes a style out, and brings it back', async () => {
    const { press, styles, store } = styleBook(KEPT);
    await press('Delete the style Harbour');
    expect(styles()).toEqual([]);
    expect(screen.getByText(/^None yet/)).toBeInTheDocument();
    await press('Undo');
    expect(store.getState().history.present).toBe(KEPT);
  });

  it('takes a style from a file, never in the place of one that is there', async () => {
    const { styles, user, changes } = styleBook(KEPT);
    const input = screen.getByLabelText('Read a style file');
    await user.upload(input, jsonFile('quay.json', writeStyle('Harbour', DEFAULT_STYLE)));
    expect(await screen.findByText('Harbour was read from quay.json.')).toBeInTheDocument();
    expect(styles().map(({ name, style }) => [name, style])).toEqual([
      ['Harbour', V_FRONT],
      ['Harbour 2', DEFAULT_STYLE],
    ]);
    await user.upload(input, jsonFile('Quay.json', '{"unit":"in","hemBelow":"3 1/2"}'));
    expect(await screen.findByText('Quay was read from Quay.json.')).toBeInTheDocument();
    expect(styles()[2]?.style.hemBelow).toBeCloseTo(88.9, 9);
    expect(changes()).toEqual(['read the style Harbour', 'read the style Quay']);
  });

  it('says what is wrong with a file, and takes nothing', async () => {
    const { user, changes } = styleBook();
    const input = screen.getByLabelText('Read a style file');
    await user.upload(input, jsonFile('a.json', '{"hemBelow": 99999, "colour": "red"}'));
    expect(await screen.findByText('a.json was not taken:')).toBeInTheDocument();
    expect(screen.getByText('colour')).toBeInTheDocument();
    await user.upload(input, jsonFile('b.json', '{"hemBelow'));
    expect(await screen.findByText(/This is not a style file\./)).toBeInTheDocument();
    const wrong = Object.fromEntries([...'abcdefgh'].map((letter) => [letter, 1]));
    await user.upload(input, jsonFile('c.json', JSON.stringify(wrong)));
    expect(await screen.findByText('And 3 more.')).toBeInTheDocument();
    expect(changes()).toEqual([]);
  });
});

const jsonFile = (name: string, text: string): File => new File([text], name, { type: 'application/json' });
