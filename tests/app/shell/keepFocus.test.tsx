import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepFocus } from '../../../src/app/shell/keepFocus';

let end: () => void;
beforeEach(() => {
  end = keepFocus(document);
});
afterEach(() => end());

/** A print that is started, drawn and made; a row that is deleted; a step back of which there is one. */
function Page() {
  const [state, setState] = useState<'idle' | 'drawing'>('idle');
  const [rows, setRows] = useState(['Wren', 'Tern']);
  const [steps, setSteps] = useState(1);
  return (
    <>
      <button type="button" disabled={steps === 0} onClick={() => setSteps(0)}>
        Undo
      </button>
      <button type="button">Redo</button>
      <section>
        {state === 'drawing' ? (
          <div>
            <button type="button" onClick={() => setState('idle')}>
              Cancel
            </button>
          </div>
        ) : (
          <button type="button" onClick={() => setState('drawing')}>
            Print
          </button>
        )}
      </section>
      <ul>
        {rows.map((row) => (
          <li key={row}>
            <button type="button" onClick={() => setRows(rows.filter((each) => each !== row))}>
              Delete {row}
            </button>
          </li>
        ))}
      </ul>
      <p>Nothing to press</p>
    </>
  );
}

const button = (name: string) => screen.getByRole('button', { name });

describe('the focus', () => {
  it.each([
    ['Undo', 'Redo'],
    ['Print', 'Cancel'],
    ['Delete Wren', 'Delete Tern'],
    ['Delete Tern', 'Delete Wren'],
  ])('goes from %s, which is gone when it is pressed, to %s', async (pressed, next) => {
    render(<Page />);
    button(pressed).focus();
    await userEvent.keyboard('{Enter}');
    await vi.waitFor(() => expect(button(next)).toHaveFocus());
  });

  it('comes back to what stood there before', async () => {
    render(<Page />);
    button('Print').focus();
    await userEvent.keyboard('{Enter}');
    await vi.waitFor(() => expect(button('Cancel')).toHaveFocus());
    await userEvent.keyboard('{Enter}');
    await vi.waitFor(() => expect(button('Print')).toHaveFocus());
  });

  it('goes on also where the browser tells that an element is left before it takes it out', async () => {
    render(<Page />);
    const pressed = button('Print');
    pressed.focus();
    pressed.addEventListener('click', () =>
      pressed.dispatchEvent(new FocusEvent('focusout', { bubbles: true })),
    );
    pressed.click();
    await vi.waitFor(() => expect(button('Cancel')).toHaveFocus());
  });

  it('is not taken back by what goes away after it was left', async () => {
    render(<Page />);
    const deleted = button('Delete Tern');
    deleted.focus();
    deleted.blur();
    // A press is a task of its own.
    await new Promise((go) => setTimeout(go));
    deleted.click();
    await vi.waitFor(() => expect(deleted).not.toBeInTheDocument());
    expect(document.body).toHaveFocus();
  });
});
