import { act, screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { TurnFields } from '../../../../src/app/draft/wedges/TurnFields';
import { useDraft } from '../../../../src/app/store/storeContext';
import { changeStyle, setStation } from '../../../../src/document';
import { onTable } from '../../withStore';

function BustWedge() {
  const wedge = useDraft().blocks?.front.wedges.find(({ id }) => id === 'front-bust');
  return wedge ? <TurnFields wedge={wedge} /> : null;
}

describe('turning intake about the bust point', () => {
  it('says the angle, moves the intake in one step, and undo brings it back', async () => {
    const { user, client, changes, store } = onTable(<BustWedge />);
    const wedges = () => client().drafts[0]?.style.wedges ?? [];
    const amount = screen.getByRole('textbox', { name: 'Intake to turn about the bust point' });
    await user.clear(amount);
    await user.type(amount, '1/2{Enter}');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Wedge it goes to' }), 'Side-front wedge');
    expect(screen.getByRole('status')).toHaveTextContent(
      /^About the bust point, \d+(\.\d)?°: it takes .* in there\.$/,
    );
    const before = wedges();
    await user.click(screen.getByRole('button', { name: 'Turn' }));
    expect(changes()).toEqual(['turned intake of the bust wedge']);
    expect(wedges().filter(({ block, sizing }) => block === 'front' && sizing === 'manual')).toHaveLength(3);
    store.getState().undo();
    expect(wedges()).toEqual(before);
  });

  it('offers nothing beyond what the wedge takes', async () => {
    const { user } = onTable(<BustWedge />);
    const amount = screen.getByRole('textbox', { name: 'Intake to turn about the bust point' });
    await user.clear(amount);
    await user.type(amount, '9{Enter}');
    expect(screen.getByRole('button', { name: 'Turn' })).toBeDisabled();
    expect(screen.getByRole('status')).toHaveTextContent('At the waist this wedge takes only');
  });

  it('calls the wedge it goes to by its name for as long as that is pulled', () => {
    const { store } = onTable(<BustWedge />);
    const offered = () =>
      within(screen.getByRole('combobox', { name: 'Wedge it goes to' }))
        .getAllByRole('option')
        .map(({ textContent }) => textContent);
    const before = offered();
    act(() =>
      store.getState().show((book) => changeStyle(book, (style) => setStation(style, 'front-side', -0.4))),
    );
    expect(offered()).toEqual(before);
    act(() => store.getState().keep({ code: 'hemMoved' }));
    expect(offered()).toEqual(['Centre-front wedge', 'Inner front wedge']);
  });
});
