import { act, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { MendList } from '../../../../src/app/draft/strip/MendList';
import { WedgeCard } from '../../../../src/app/draft/wedges/WedgeCard';
import { changeClient, changeStyle, DEMO_BOOK, setDartPoint, setStation } from '../../../../src/document';
import { inches, type Wedge } from '../../../../src/engine';
import { onTable } from '../../withStore';

const ID = 'front-side';
const cardFor = (id: string) =>
  onTable(
    <>
      <WedgeCard selected={id} onSelect={() => undefined} level="waist" onLevel={() => undefined} />
      <MendList onShow={() => undefined} />
    </>,
  );
const ends = (name: string) => screen.getByRole('radio', { name });
const field = (name: string) => screen.getByRole('textbox', { name });

function setUp() {
  const made = cardFor(ID);
  const wedge = (): Wedge => made.client().drafts[0]?.style.wedges.find(({ id }) => id === ID) as Wedge;
  return { ...made, wedge };
}

describe('how a wedge ends', () => {
  it('is chosen on its card, kept under its name, and undone', async () => {
    const { user, wedge, changes, store } = setUp();
    expect(ends('Through')).toBeChecked();
    await user.click(ends('Closed'));
    expect(wedge()).toMatchObject({ upper: { from: 'bust' }, lower: { from: 'waist' } });
    expect(screen.getByRole('heading', { name: 'Side-front dart' })).toBeVisible();
    await user.click(ends('Open at hem'));
    expect(wedge().lower).toBeUndefined();
    expect(changes()).toEqual(['side-front wedge closed', 'side-front dart open at the hem']);
    store.getState().undo();
    store.getState().undo();
    expect(wedge().upper).toBeUndefined();
  });

  it('has points that are typed, and measured from another level without moving', async () => {
    const { user, wedge, changes } = setUp();
    await user.click(ends('Closed'));
    const upper = field('Upper point below the bust');
    await user.clear(upper);
    await user.type(upper, '1 1/2{Enter}');
    expect(wedge().upper).toEqual({ from: 'bust', below: inches(1.5) });
    await user.selectOptions(screen.getByRole('combobox', { name: /^Level the upper point/ }), 'waist');
    // Neck to bust and to waist of the demo client are 10 3/4 in and 16 in.
    expect(wedge().upper?.from).toBe('waist');
    expect(wedge().upper?.below).toBeCloseTo(inches(1.5 + 10.75 - 16), 9);
    expect(changes().at(-1)).toBe('upper point of the side-front dart');
  });

  it('leaves numbers only at the levels it crosses', async () => {
    const { user } = setUp();
    await user.click(ends('Closed'));
    expect(field('Intake at the waist')).toBeVisible();
    expect(screen.queryByRole('textbox', { name: 'Intake at the bust' })).toBeNull();
    expect(screen.getAllByText('beyond its points')).toHaveLength(6);
  });

  it('is open at the top edge as soon as it is asked to be, and needs nothing said', async () => {
    const { user } = setUp();
    await user.click(ends('Open at top'));
    expect(field('Lower point below the bust')).toHaveValue('-1/2');
    expect(screen.queryByText(/takes nothing/)).toBeNull();
  });

  it('says where it is shut and why', async () => {
    const { user } = setUp();
    await user.click(ends('Open at top'));
    await user.type(field('Lower point below the bust'), '{Control>}a{/Control}3{Enter}');
    expect(screen.getByText(/^It takes nothing at the bust and ends there/)).toBeVisible();
    await user.type(field('Intake at the bust'), '{Control>}a{/Control}1/2{Enter}');
    expect(screen.getByText(/^It takes nothing at the under-bust and ends there/)).toBeVisible();
    await user.type(field('Intake at the under-bust'), '{Control>}a{/Control}1/2{Enter}');
    expect(screen.queryByText(/takes nothing/)).toBeNull();
  });

  it('says that it takes nothing where nothing is to be taken', async () => {
    const { user } = onTable(
      <WedgeCard selected={ID} onSelect={() => undefined} level="waist" onLevel={() => undefined} />,
      changeClient(DEMO_BOOK, (client) => ({
        ...client,
        measurements: { ...client.measurements, overBust: inches(38.5) },
      })),
    );
    await user.click(ends('Open at top'));
    expect(screen.getByText(/^It takes nothing yet: pull its legs apart/)).toBeVisible();
  });

  it('is slanted by typing how far a point stands from the centre line', async () => {
    const { user, wedge, changes } = setUp();
    await user.click(ends('Closed'));
    await user.type(field('Lower point from the centre line'), '{Control>}a{/Control}6 1/4{Enter}');
    expect(field('Lower point from the centre line')).toHaveValue('6 1/4');
    expect(Object.keys(wedge().stationAt)).not.toEqual([]);
    expect(changes().at(-1)).toBe('lower point of the side-front dart');
    await user.click(screen.getByRole('button', { name: 'Straighten the axis' }));
    expect(wedge().stationAt).toEqual({});
  });

  it('is not asked on the centre line', () => {
    cardFor('front-centre');
    expect(screen.queryByRole('radio', { name: 'Closed' })).toBeNull();
    expect(screen.getByText(/On the centre line a wedge runs through/)).toBeVisible();
  });

  it('is called by its name for as long as it is pulled, also by what the draft refuses of it', async () => {
    const { user, changes, store } = setUp();
    await user.click(ends('Closed'));
    // Its lower point goes up through its upper one while it is moved across the bust-point line.
    act(() =>
      store
        .getState()
        .show((book) =>
          changeStyle(book, (style) =>
            setDartPoint(setStation(style, ID, -0.4), ID, 'lower', { from: 'bust', below: 26 }),
          ),
        ),
    );
    expect(screen.getByText(/The points of the side-front dart are/)).toBeVisible();
    const lower = field('Lower point below the bust');
    await user.type(lower, '{Control>}a{/Control}3{Enter}');
    expect(changes().at(-1)).toBe('lower point of the side-front dart');
  });
});
