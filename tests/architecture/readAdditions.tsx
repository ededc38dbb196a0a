// Run in a process of its own, on a copy of the source in which the additions were made: prints as JSON where it finds them.

// jsdom comes without types.
const jsdom: string = 'jsdom';
const { JSDOM } = await import(jsdom);
const { window } = new JSDOM('<!doctype html><body></body>', {
  url: 'http://localhost/',
  pretendToBeVisual: true,
});
for (const name of Object.getOwnPropertyNames(window))
  if (!(name in globalThis))
    Object.defineProperty(globalThis, name, { get: () => Reflect.get(window, name) });
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

const { fireEvent, render, screen } = await import('@testing-library/react');
const { GarmentCard } = await import('../../src/app/draft/GarmentCard');
const { MeasureStep } = await import('../../src/app/measure/MeasureStep');
const { createStore } = await import('../../src/app/store/store');
const { StoreContext } = await import('../../src/app/store/storeContext');
const { readClient } = await import('../../src/cli/input/clientFile');
const { changeClient, changeSentence, changeStyle, DEMO_BOOK, openClient, openDraftOf } = await import(
  '../../src/document'
);
const { readBackup, readBook, readStyle, writeBackup, writeStyle } = await import('../../src/document');
const { styleField } = await import('../../src/document/messages/remarks/styleFields');
const { checkStyle, DEFAULT_STYLE } = await import('../../src/engine');

const [THIGH, STAY] = [560, 25];
// The names are not known to the source as it stands, where this file is checked.
const measured = changeClient(DEMO_BOOK, (client) => ({
  ...client,
  measurements: Object.assign({ ...client.measurements }, { thigh: THIGH }),
}));
const book = changeStyle(measured, (style) => Object.assign({ ...style }, { waistStay: STAY }));
const withBoth = (read: typeof book): object => {
  const client = openClient(read);
  const { style } = openDraftOf(client);
  return {
    thigh: Reflect.get(client.measurements, 'thigh'),
    waistStay: Reflect.get(style, 'waistStay'),
  };
};

const store = createStore(book);
const { container } = render(
  <StoreContext value={store}>
    <MeasureStep />
    <GarmentCard />
  </StoreContext>,
);
const [thigh] = screen.getAllByRole('textbox', { name: /^Thigh girth/ });
if (thigh) fireEvent.focus(thigh);
const stay = screen.getByRole('textbox', { name: /^Waist stay/ });
fireEvent.change(stay, { target: { value: '2' } });
fireEvent.blur(stay);
const [last] = store.getState().history.past.slice(-1);

const kept = readBook(JSON.stringify(book));
const backup = readBackup(writeBackup(book, '2026-11-26'), () => 'new');
const style = openDraftOf(openClient(book)).style;
const file = readStyle(JSON.parse(writeStyle('Stayed', style)), 'stayed');
const older = readBook(JSON.stringify(DEMO_BOOK));
const client = readClient({ name: 'Wren', unit: 'mm', measurements: { thigh: THIGH } });

process.stdout.write(
  JSON.stringify({
    thighInForm: thigh?.getAttribute('value'),
    tape: container.querySelector('.body-figure .tape-rim')?.getAttribute('d'),
    howToTakeIt: container.querySelector('.field-in-hand .how')?.textContent,
    stayInHistory: last ? changeSentence(last.change) : null,
    stayTyped: Reflect.get(openDraftOf(openClient(store.getState().history.present)).style, 'waistStay'),
    nameOfStay: styleField('waistStay', style).name,
    faultOfStay: checkStyle(Object.assign({ ...DEFAULT_STYLE }, { waistStay: 4 })).map(({ at }) => at.field),
    book: kept.kind === 'book' ? withBoth(kept.book) : kept,
    backup: backup.kind === 'backup' ? withBoth({ ...book, clients: backup.backup.clients }) : backup,
    styleFile: file.ok ? Reflect.get(file.value.style, 'waistStay') : file,
    clientFile: client.ok ? Reflect.get(client.value.measurements, 'thigh') : client,
    bookWithoutThem: older.kind === 'book' ? withBoth(older.book) : older,
  }),
);
process.exit(0);
