// Every text of the app comes out of the catalogue: in a build in accented letters none is left in plain ones. Lengthened as
// another language would lengthen them, they still fit into the window of a phone.

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  addClient,
  addStyle,
  type Book,
  changeClient,
  changeStyle,
  DEMO_BOOK,
  NAMED_STYLES,
  setDiffering,
  setMeasurement,
  writeBackup,
} from '../../../src/document';
import { DEFAULT_STYLE, type Style } from '../../../src/engine';
import { type ServedBuild, serveBuild } from '../../support/browser/serveBuild';
import { withBrowser } from '../session';
import { chooseAll, phone, pressAll, startWalk, unfold, type Walk, write, writeInAll } from './accentedWalk';

const MINUTE = 60_000;

let build: ServedBuild;
beforeAll(async () => {
  build = await serveBuild('accented');
}, 4 * MINUTE);
afterAll(() => build?.close());

const visit = withBrowser(() => build.url);

/** Goes to a step with a book kept in the browser, and looks; `typed` are the names that are typed on the way. */
const walkTo = async (step: string, book: Book | string = DEMO_BOOK, ...typed: string[]): Promise<Walk> => {
  const walk = startWalk(await visit(step, phone(build.url, book)), typed);
  await walk.page.locator('main section:visible, .fit-step').first().waitFor();
  await walk.look(`${step} opened`);
  return walk;
};

/** The demo book with its draft in another style. */
const inStyle = (style: Style): Book => changeStyle(DEMO_BOOK, () => style);
const readyMade = (name: string): Style => {
  const style = NAMED_STYLES.get(name)?.style;
  if (!style) throw new Error(`There is no ready-made style ${name}.`);
  return style;
};
const DIFFERING = changeClient(DEMO_BOOK, (client) => setDiffering(client, true));

describe('Measure', () => {
  it('its figure, faults, readings, estimates, sides and sets', { timeout: 5 * MINUTE }, async () => {
    const walk = await walkTo('measure');
    const { page, look } = walk;
    const fields = page.locator('.tape-form .measurement input');
    for (let i = 0; i < (await fields.count()); i += 1) {
      await fields.nth(i).focus();
      await look(`field ${i + 1} gone into`);
    }
    const bust = page.locator('.measurement').nth(1);
    for (const text of ['abc', '1 2 3', '1/0', '1 5/4', '1..2', `5' 13"`, '-3', '', '12', '200', '38']) {
      await write(bust.locator('input').first(), text);
      await look(`“${text}” as a girth`);
    }
    for (const i of [7, 8]) {
      const length = page.locator('.measurement').nth(i);
      await write(length.locator('input').first(), '');
      await look('an estimate offered');
      await length.locator('input').first().focus();
      await look('an estimate beside the figure');
      await length.locator('.row-more').click();
      await look('the menu of a row');
      await length.locator('[role="menuitem"]').first().click();
      await look('an estimate taken');
    }
    await bust.locator('.row-more').click();
    await bust.locator('[role="menuitem"]').first().click();
    for (const text of ['38 3/4', '33', 'x']) {
      await write(page.locator('.reading input').first(), text);
      await look(`“${text}” as a second reading`);
    }
    await pressAll(walk, '.also');
    await writeInAll(walk, '.sides', '99');
    await page.locator('.tape-day button').click();
    await write(bust.locator('input').first(), '40');
    await look('another set of measurements');
    await pressAll(walk, '.client-bar');
    expect(walk.found()).toEqual([]);
  });

  it('Help', async () => {
    const walk = await walkTo('measure');
    await walk.page.locator('.help-button').click();
    await walk.page.locator('.help').waitFor();
    await walk.look('opened');
    expect(walk.found()).toEqual([]);
  });

  it('of a client who was just added', async () => {
    const walk = await walkTo('measure');
    await walk.page.locator('.invented button').click();
    await walk.look('a client added');
    await walk.page.locator('.history button').first().click();
    await walk.look('undone');
    expect(walk.found()).toEqual([]);
  });
});

describe('The client book', () => {
  it('its drafts, clients and archive', { timeout: 3 * MINUTE }, async () => {
    const book = addClient(DEMO_BOOK, 'second', 'Ada Quill');
    const walk = await walkTo('measure', book, 'Ada Quill', 'First draft', 'Dusk', 'zzz');
    const { page, look } = walk;
    await page.locator('.open-book').click();
    await page.locator('.client-list').waitFor();
    await look('opened');
    for (const i of [0, 1]) {
      await page.locator('.draft-list .list-head button').nth(i).click();
      await look('a draft added');
    }
    await write(page.locator('.draft-list input').first(), 'Dusk');
    await page.locator('.draft-list li .quiet').last().click();
    await look('a draft deleted');
    const rows = page.locator('.client-list li');
    for (const [row, button] of [
      [0, 0],
      [1, 1],
      [1, 2],
    ] as const) {
      await rows.nth(row).locator('.quiet').nth(button).click();
      await look(`button ${button + 1} of client ${row + 1} pressed`);
    }
    await pressAll(walk, '.client-list');
    await page.locator('.client-list .search input').fill('zzz');
    await look('nobody found');
    expect(walk.found()).toEqual([]);
  });

  it('what a backup would bring back', { timeout: 3 * MINUTE }, async () => {
    const walk = await walkTo(
      'measure',
      addStyle(DEMO_BOOK, 'own', 'Tern', DEFAULT_STYLE, '2026-01-02'),
      'Ada Quill',
      'Tern',
      'Herring',
      'Bea Thorn',
    );
    const { page, look } = walk;
    await page.locator('.open-book').click();
    const changed = changeClient(DEMO_BOOK, (client) => ({
      ...setMeasurement({ ...client, unit: 'cm' }, 'waist', 700),
      name: 'Bea Thorn',
      takenOn: '2026-01-02',
    }));
    const backup = addStyle(
      addClient(changed, 'third', 'Ada Quill'),
      'own',
      'Herring',
      DEFAULT_STYLE,
      '2026-01-02',
    );
    for (const text of [
      writeBackup(backup, '2026-01-03'),
      writeBackup({ ...backup, version: 999 } as unknown as Book, '2026-01-03'),
    ]) {
      await page.locator('.backup input[type=file]').setInputFiles({
        name: 'backup.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
      await page.locator('.backup .preview, .backup .said:not(:empty)').first().waitFor();
      await look('a backup chosen');
      if ((await page.locator('.backup .preview').count()) === 0) continue;
      await pressAll(walk, '.backup');
      // Each box was pressed once; with all of them off there is nothing to bring back.
      await page.locator('.backup input[type=checkbox]').first().check();
      await page.locator('.backup .primary').click();
      await look('a backup brought back');
    }
    expect(walk.found()).toEqual([]);
  });
});

describe('Keeping', () => {
  it.each([
    ['a book of a later version', JSON.stringify({ ...DEMO_BOOK, version: 999 })],
    ['a text that is no book', '{'],
  ])('%s', async (_, text) => {
    const walk = await walkTo('measure', text);
    const discard = walk.page.locator('.keeping .quiet');
    await discard.click();
    await walk.look('to be discarded');
    expect(walk.found()).toEqual([]);
  });

  it('another tab with another book', async () => {
    const walk = await walkTo('measure');
    const other = await walk.page.context().newPage();
    await other.goto(`${build.url}#measure`);
    const [here, there] = [walk.page, other].map((page) => page.locator('.measurement input').first());
    if (!here || !there) throw new Error('two pages were named');
    await write(there, '36');
    await expect.poll(() => here.inputValue()).toBe('36');
    await walk.look('followed');
    // A number half typed is a change under way.
    await here.fill('37');
    await write(there, '35');
    await here.press('Enter');
    await walk.page.locator('.keeping .failed button').first().waitFor();
    await walk.look('in conflict');
    expect(walk.found()).toEqual([]);
  });
});

describe('Fit', () => {
  const BOOKS: readonly (readonly [string, Book])[] = [
    ['the demo client', DEMO_BOOK],
    ['halves that differ', DIFFERING],
    ['nothing measured', changeClient(DEMO_BOOK, (client) => setMeasurement(client, 'bust', null))],
    ...['off-shoulder-bridal', 'darted-bodice', 'princess-bodice', 'long-line-side-panels'].map(
      (name) => [name, inStyle(readyMade(name))] as const,
    ),
  ];
  it.each(BOOKS)('%s', { timeout: 2 * MINUTE }, async (_, book) => {
    const walk = await walkTo('fit', book);
    await unfold(walk.page);
    await pressAll(walk, '.fit-step');
    const rows = walk.page.locator('.row-button');
    for (let i = 0; i < (await rows.count()); i += 5) {
      await rows.nth(i).click();
      await walk.look(`row ${i + 1} pressed`);
    }
    expect(walk.found()).toEqual([]);
  });

  it('a measurement that cannot be read', async () => {
    const walk = await walkTo('measure');
    const { page } = walk;
    await write(page.locator('.measurement input').nth(1), 'x');
    await page.locator('.steps a').nth(2).click();
    await page.locator('.fit-step').waitFor();
    await walk.look('gone to Fit');
    expect(walk.found()).toEqual([]);
  });
});

describe('Draft', () => {
  it('its table and cards', { timeout: 10 * MINUTE }, async () => {
    const walk = await walkTo('draft');
    const { page, look } = walk;
    await unfold(page);
    await look('unfolded');
    const tools = page.locator('.table-tools button');
    for (let i = 0; i < (await tools.count()); i += 1) {
      if (!(await tools.nth(i).isEnabled())) continue;
      await tools.nth(i).evaluate((button: HTMLButtonElement) => button.click());
      await look(`tool ${i + 1} pressed`);
      const dialog = page.locator('dialog[open]');
      if ((await dialog.count()) > 0) await dialog.locator('.dialog-head button').click();
    }
    const wedges = page.locator('.wedge-list button');
    for (let i = 0; i < (await wedges.count()); i += 1) {
      if (!(await wedges.nth(i).isEnabled())) continue;
      await wedges.nth(i).evaluate((button: HTMLButtonElement) => button.click());
      await unfold(page);
      await look(`wedge ${i + 1} selected`);
    }
    const tabs = page.locator('.tabs button');
    for (let i = 0; i < (await tabs.count()); i += 1) {
      await tabs.nth(i).click();
      await look(`tab ${i + 1}`);
      await pressAll(walk, '.tab-panel');
      await chooseAll(walk, '.tab-panel');
      await writeInAll(walk, '.tab-panel', '-99', 'x');
    }
    expect(walk.found()).toEqual([]);
  });

  // Those whose drawing has texts of its own: bands, darts, an armhole, a side cut in one, wedges by hand.
  it.each(['off-shoulder-bridal', 'darted-bodice', 'armhole-bridal', 'long-line-side-panels', 'hand-method'])(
    'in the style %s',
    { timeout: 2 * MINUTE },
    async (name) => {
      const walk = await walkTo('draft', inStyle(readyMade(name)));
      await unfold(walk.page);
      await walk.look('unfolded');
      expect(walk.found()).toEqual([]);
    },
  );

  it('the style book', { timeout: 2 * MINUTE }, async () => {
    const book = addStyle(DEMO_BOOK, 'own', 'Herring', DEFAULT_STYLE, '2026-01-02');
    // A fault of a style file begins with the name of its field in the file.
    const walk = await walkTo('draft', book, 'Herring', 'Dusk', 'wedges');
    const { page, look } = walk;
    await page.locator('.style-choice > button').click();
    await page.locator('.style-list').waitFor();
    await look('opened');
    await write(page.locator('dialog .text-field input, dialog input[type=text]').first(), 'Dusk');
    await page.locator('dialog form button, dialog .keep-style button').first().click();
    await look('a style kept');
    for (const text of ['{', '{"wedges":3}']) {
      await page.locator('.style-list input[type=file]').setInputFiles({
        name: 'Dusk.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
      await page.locator('.style-list .said:not(:empty)').first().waitFor();
      await look('a style file chosen');
    }
    await page.locator('.style-list li .quiet').last().click();
    await look('a style deleted');
    expect(walk.found()).toEqual([]);
  });
});

/** Tables of sizes as they are typed: no measurement, and rows with faults. */
const TABLES = ['Shoe;Size\n1;2', 'Size;Bust (in);Shoe\nMauve;zzz;1\n;34;2\nOchre;9;3\nOchre;9;4'];

describe('Cut', () => {
  it('its papers, prints and cards', { timeout: 10 * MINUTE }, async () => {
    const walk = await walkTo('cut', inStyle(readyMade('bridal-bodice')));
    const { page, look } = walk;
    await unfold(page);
    await look('unfolded');
    await pressAll(walk, '.cut-step');
    await page.locator('.cut-step input[type=radio]').first().check({ force: true });
    await unfold(page);
    await chooseAll(walk, '.cut-step');
    await writeInAll(walk, '.cut-step', '99', 'x');
    expect(walk.found()).toEqual([]);
  });

  it('sizes and casts', { timeout: 5 * MINUTE }, async () => {
    const walk = await walkTo(
      'cut',
      DEMO_BOOK,
      ...TABLES,
      'zzz',
      'Shoe',
      'Size',
      'Bust (in)',
      'Mauve',
      'Ochre',
    );
    const { page, look } = walk;
    await unfold(page);
    await page.locator('.sizes-card button').click();
    await page.locator('.bodies tbody tr .met').last().waitFor();
    await unfold(page);
    await look('a computed range');
    const form = page.locator('.sizes-print select');
    for (const value of ['page', 'projector', 'zip']) {
      await form.selectOption(value);
      await look(`to be printed as ${value}`);
    }
    await page.locator('.sizes input[type=radio]').nth(3).check();
    for (const table of TABLES) {
      await page.locator('.sizes textarea').fill(table);
      await look('a table typed');
    }
    await page.locator('.bodies .off').first().waitFor();
    await look('a size that cannot be cut');
    await page.locator('.sizes input[type=radio]').nth(1).check();
    await look('a cast');
    expect(walk.found()).toEqual([]);
  });
});
