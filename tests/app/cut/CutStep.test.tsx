import { screen, waitFor, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CutStep } from '../../../src/app/cut/CutStep';
import { useCutChoices } from '../../../src/app/cut/choices/cutChoices';
import {
  acknowledge,
  changeClient,
  changeDraft,
  changeStyle,
  DEMO_BOOK,
  setMeasurement,
} from '../../../src/document';
import { readPattern } from '../../paper/readPattern';
import { TALL_CINCHER } from '../../support/styles/tallCincher';
import { catchSavedFiles, type SavedFile } from '../savedFiles';
import { onTable } from '../withStore';

const fresh = useCutChoices.getState();
/** What the page hands to the browser to be saved. */
let saved: SavedFile[] = [];

beforeEach(() => {
  saved = catchSavedFiles();
});
afterEach(() => {
  vi.restoreAllMocks();
  localStorage.clear();
  useCutChoices.setState(fresh, true);
});

const sheet = (name: string): HTMLElement => screen.getByRole('checkbox', { name: `Sheet ${name}` });
const pdf = async () => {
  await waitFor(() => expect(saved).toHaveLength(1), { timeout: 60_000 });
  return { name: saved[0]?.name, ...(await readPattern(await bytesOf(saved[0]?.blob as Blob))) };
};
const bytesOf = (blob: Blob): Promise<Uint8Array> =>
  new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(new Uint8Array(reader.result as ArrayBuffer));
    reader.readAsArrayBuffer(blob);
  });

describe('the Cut step on sheets', () => {
  it('leaves out the sheets that are clicked or keyed off, and prints the others', async () => {
    const { user } = onTable(<CutStep />);
    const count = screen.getAllByRole('checkbox', { name: /^Sheet / }).length;
    await user.click(sheet('A2'));
    expect(sheet('A2')).not.toBeChecked();
    sheet('A2').focus();
    await user.keyboard('{ArrowDown}');
    expect(sheet('B2')).toHaveFocus();
    await user.keyboard(' ');
    expect(sheet('B2')).not.toBeChecked();
    await user.keyboard('{Enter}');
    expect(sheet('B2')).toBeChecked();
    expect(screen.getByText(`${count - 1} sheets`)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Download the PDF' }));
    const { name, pages } = await pdf();
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice-Letter.pdf');
    const names = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    expect(names.join(' ')).toContain('Not printed this time: A2.');
    // the sheet's own name stands on the map alone
    expect(names.filter((text) => text === 'A2')).toHaveLength(1);
    expect(names.filter((text) => text === 'B2')).toHaveLength(2);
    await user.click(screen.getByRole('button', { name: 'Print all sheets again' }));
    expect(sheet('A2')).toBeChecked();
  }, 90_000);

  it('takes all sheets in again where others come', async () => {
    const { user } = onTable(<CutStep />);
    await user.click(sheet('A1'));
    await user.click(screen.getByRole('radio', { name: 'Portrait' }));
    expect(sheet('A1')).toBeChecked();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Sheets' }), 'A3');
    expect(sheet('A1')).toBeChecked();
  });

  it('puts all on one page where the paper holds it, without sheets to join', async () => {
    const { user } = onTable(<CutStep />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Sheets' }), 'A0');
    expect(screen.queryAllByRole('checkbox', { name: /^Sheet / })).toEqual([]);
    expect(screen.getByText(/^One page, with the squares/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeEnabled();
  });

  it('prints a mock-up at one press, with an allowance of its own, under a name that says so', async () => {
    const { user, container } = onTable(<CutStep />);
    const count = (kind: string): number =>
      [...container.querySelectorAll(`.stroke-${kind}`)].filter((path) => path.getAttribute('d') !== '')
        .length;
    expect(count('level')).toBe(0);
    await user.click(screen.getByRole('checkbox', { name: 'Waist line and bust point right across' }));
    expect(count('level')).toBe(6);
    await user.click(screen.getByRole('radio', { name: 'Mock-up' }));
    expect(count('level')).toBe(6);
    const edge = screen.getByRole('textbox', { name: 'On every edge' });
    expect(edge).toHaveValue('1');
    await user.clear(edge);
    await user.type(edge, '1 1/2');
    await user.click(screen.getByRole('button', { name: 'Download the PDF' }));
    const { name, pages } = await pdf();
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice-mock-up-Letter.pdf');
    const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(words).toContain('1½ in on every edge');
    expect(words).toContain('Top edge · 1½ in');
    expect(words).toContain('Staywright');
  }, 90_000);

  it('takes a size of the maker’s own and says what is wrong with it', async () => {
    const { user } = onTable(<CutStep />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Sheets' }), 'own');
    const width = screen.getByRole('textbox', { name: 'Width' });
    await user.clear(width);
    await user.type(width, '4');
    expect(screen.getByText(/too small for the calibration squares/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeDisabled();
    await user.clear(width);
    await user.type(width, '13');
    expect(screen.queryByText(/too small/)).toBeNull();
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeEnabled();
  });

  it('refuses to print what must not be cut', () => {
    const book = changeStyle(DEMO_BOOK, (style) => ({
      ...style,
      wedges: style.wedges.map((wedge) =>
        wedge.block === 'front' && wedge.station > -1
          ? { ...wedge, station: 0.5, sizing: 'manual' as const, intake: { waist: 90 } }
          : wedge,
      ),
    }));
    onTable(<CutStep />, book);
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeDisabled();
    for (const button of screen.getAllByRole('button', { name: /^Download the (SVG|DXF|PNG)/ }))
      expect(button).toBeDisabled();
    expect(screen.getByText(/cannot be cut as it is/)).toBeVisible();
  });

  it('turns panels head down where that saves a sheet, unless the cloth has a nap', async () => {
    const book = changeStyle(DEMO_BOOK, () => TALL_CINCHER);
    const { user } = onTable(<CutStep />, book);
    const count = (): number => screen.getAllByRole('checkbox', { name: /^Sheet / }).length;
    await user.selectOptions(screen.getByRole('combobox', { name: 'Sheets' }), 'Legal');
    const heads = screen.getByRole('combobox', { name: 'Panels lie' });
    expect(heads).toHaveDisplayValue('heads either way');
    const plain = count();
    await user.selectOptions(heads, 'all one way (nap or print)');
    expect(count()).toBeGreaterThan(plain);
  });

  it('has every head one way under a projector, where the cloth itself is cut, until the maker says otherwise', async () => {
    const { user } = onTable(<CutStep />);
    const heads = (): HTMLElement => screen.getByRole('combobox', { name: 'Panels lie' });
    await user.click(screen.getByRole('radio', { name: 'Projector' }));
    expect(heads()).toHaveDisplayValue('all one way (nap or print)');
    await user.click(screen.getByRole('radio', { name: 'One page' }));
    expect(heads()).toHaveDisplayValue('heads either way');
    await user.selectOptions(heads(), 'all one way (nap or print)');
    await user.click(screen.getByRole('radio', { name: 'Sheets' }));
    expect(heads()).toHaveDisplayValue('all one way (nap or print)');
  });

  it('says what is missing where there is no panel yet, and leads there', () => {
    const book = changeClient(DEMO_BOOK, (client) => setMeasurement(client, 'bust', null));
    onTable(<CutStep />, book);
    const plan = screen.getByRole('region', { name: 'Plan' });
    expect(within(plan).getByRole('heading', { name: 'No panels to lay out yet' })).toBeVisible();
    expect(within(plan).getByRole('link', { name: 'Go to the measurements' })).toHaveAttribute(
      'href',
      '#measure',
    );
    expect(screen.queryByText(/No sheet/)).toBeNull();
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeDisabled();
  });

  it('says once, and as what keeps the print back, that the cautions are to be read', () => {
    const book = changeStyle(DEMO_BOOK, (style) => ({ ...style, ease: { ...style.ease, waist: -130 } }));
    onTable(<CutStep />, book);
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeDisabled();
    const paper = screen.getByRole('region', { name: 'Paper' });
    expect(within(paper).getByText('Not printed yet.')).toBeVisible();
    expect(within(paper).getByRole('link', { name: 'Read the cautions' })).toHaveAttribute('href', '#draft');
    expect(screen.queryByText('Look again')).toBeNull();
    expect(screen.getAllByText(/garment is drawn in/)).toHaveLength(1);
  });

  it('keeps the print back for the ribs as for the waist, until the cautions are marked as read', () => {
    const tight = changeStyle(DEMO_BOOK, (style) => ({ ...style, ease: { ...style.ease, underBust: -150 } }));
    const { unmount } = onTable(<CutStep />, tight);
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeDisabled();
    unmount();
    onTable(
      <CutStep />,
      changeDraft(tight, (savedDraft) => acknowledge(savedDraft, true)),
    );
    expect(screen.getByRole('button', { name: 'Download the PDF' })).toBeEnabled();
    expect(screen.getByRole('link', { name: /^\d+ to look at in the draft$/ })).toHaveAttribute(
      'href',
      '#draft',
    );
    expect(screen.queryByText(/as read/)).toBeNull();
    expect(screen.queryByRole('link', { name: 'Read the cautions' })).toBeNull();
  });
});

describe('a printer that does not keep the scale', () => {
  const measure = async (user: ReturnType<typeof onTable>['user'], across: string, down: string) => {
    for (const [label, text] of [
      ['Square across', across],
      ['Square down', down],
    ] as const) {
      const field = screen.getByRole('textbox', { name: label });
      await user.clear(field);
      await user.type(field, text);
    }
    await user.click(screen.getByRole('button', { name: 'Correct the next print' }));
  };
  const another = async (user: ReturnType<typeof onTable>['user'], name: string) => {
    await user.selectOptions(screen.getByRole('combobox', { name: 'The print is for' }), 'another printer…');
    if (name) await user.type(screen.getByRole('textbox', { name: 'Name of the printer' }), name);
  };

  it('is corrected from the measured square, kept by its name, and corrected again from there', async () => {
    const { user } = onTable(<CutStep />);
    await another(user, 'Desk');
    await measure(user, '3.92', '4');
    expect(screen.getByText(/drawn 2.04 % larger across, unchanged down/)).toBeVisible();
    expect(JSON.parse(localStorage.getItem('staywright.printers') ?? '').printers).toEqual([
      { name: 'Desk', across: 4 / 3.92, down: 1 },
    ]);
    await measure(user, '4', '4.04');
    expect(useCutChoices.getState().printers[0]?.across).toBeCloseTo(4 / 3.92, 9);
    expect(useCutChoices.getState().printers[0]?.down).toBeCloseTo(4 / 4.04, 9);
    await user.click(screen.getByRole('button', { name: 'Download the PDF' }));
    const { name, pages } = await pdf();
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice-Letter-102.0x99.0-percent.pdf');
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain(
      '2.04 % larger across, 0.99 % smaller down',
    );
    await user.click(screen.getByRole('button', { name: 'Forget this printer' }));
    expect(JSON.parse(localStorage.getItem('staywright.printers') ?? '').printers).toEqual([]);
  }, 90_000);

  it('is not corrected by what cannot be true', async () => {
    const { user } = onTable(<CutStep />);
    await another(user, '');
    await measure(user, '4', '4');
    expect(screen.getByText(/Give the printer a name/)).toBeVisible();
    await user.type(screen.getByRole('textbox', { name: 'Name of the printer' }), 'Hall');
    await measure(user, '3.5', '4');
    expect(screen.getByText(/more than 10 % off/)).toBeVisible();
    expect(localStorage.getItem('staywright.printers')).toBeNull();
  });

  it('says so when what was kept cannot be read, and puts it aside', async () => {
    localStorage.setItem('staywright.printers', 'torn');
    const { user } = onTable(<CutStep />);
    expect(screen.getByText(/cannot be read/)).toBeVisible();
    await another(user, 'Desk');
    await measure(user, '4', '4');
    expect(Object.values({ ...localStorage })).toContain('torn');
  });
});

describe('the Cut step on one page', () => {
  it('shows how long a roll it takes, and prints it', async () => {
    const { user } = onTable(<CutStep />);
    await user.click(screen.getByRole('radio', { name: 'One page' }));
    expect(screen.getByText(/^0\.91 × \d\.\d\d m$/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Download the page' }));
    const { name, pages } = await pdf();
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice-one-page-36-in-roll.pdf');
    expect(pages).toHaveLength(1);
    expect(pages[0]?.widthMm).toBeCloseTo(914.4, 1);
  }, 90_000);

  it('says what a roll is too narrow for', async () => {
    const { user } = onTable(<CutStep />);
    await user.click(screen.getByRole('radio', { name: 'One page' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Page' }), 'own');
    const width = screen.getByRole('textbox', { name: 'Width of the roll' });
    await user.clear(width);
    await user.type(width, '5');
    expect(screen.getByText(/too narrow/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Download the page' })).toBeDisabled();
  });
});

describe('the Cut step for a projector', () => {
  it('shows light lines over a grid and prints them as heavy as asked', async () => {
    const { user } = onTable(<CutStep />);
    await user.click(screen.getByRole('radio', { name: 'Projector' }));
    const drawing = screen.getByRole('img', { name: '6 panels on one picture' });
    expect(drawing).toHaveAttribute('stroke-width', '1.5');
    expect(within(document.body).queryByRole('region', { name: 'Printer' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Download for the projector' }));
    const { name } = await pdf();
    expect(name).toBe('Wren-Abernathy-Winter-ball-bodice-projector.pdf');
  }, 90_000);
});

describe('what the Cut step shows', () => {
  it('is the panels, the lay plan or the making list, with the list in short beside the first two', async () => {
    const { user, container } = onTable(<CutStep />);
    const drawing = container.querySelector('.plan-drawing') as Element;
    const short = within(screen.getByRole('region', { name: 'Making list in short' }));
    expect(short.getByText('Eyelets').parentElement).toHaveTextContent('Eyelets26');
    expect(screen.queryByRole('region', { name: 'Making list' })).toBeNull();
    await user.click(short.getByRole('button', { name: 'The whole list' }));
    expect(screen.getByRole('region', { name: 'Making list' })).toBeVisible();
    expect(screen.queryByRole('region', { name: 'Making list in short' })).toBeNull();
    expect(drawing.closest('[hidden]')).not.toBeNull();
    await user.click(screen.getByRole('radio', { name: 'Lay plan' }));
    expect(await screen.findByRole('region', { name: 'Lay plan' })).toBeVisible();
    // a mock-up is not laid on cloth
    await user.click(screen.getByRole('radio', { name: 'Mock-up' }));
    expect(screen.queryByRole('radio', { name: 'Lay plan' })).toBeNull();
    expect(screen.getByRole('radio', { name: 'Panels on paper' })).toBeChecked();
  });
});
