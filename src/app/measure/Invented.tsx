// On a first visit there is somebody to try things out on, and a way to one's own work.

import { addClient, entriesOf, MEASURE, SHELL } from '../../document';
import { nameFocus } from '../components/awaited/awaitedFocus';
import { useOpen, useStore } from '../store/storeContext';

/** Whether the invented client is all there is in the book. */
export function useIsInvented(): boolean {
  const { book, client } = useOpen();
  return client.invented === true && entriesOf(book).length === 1;
}

export function Invented() {
  const change = useStore((state) => state.change);
  if (!useIsInvented()) return null;
  return (
    <div className="invented">
      <p>{MEASURE.demo.invented}</p>
      <button
        type="button"
        onClick={() => {
          nameFocus.request();
          change({ code: 'clientAdded' }, (before) =>
            addClient(before, crypto.randomUUID(), SHELL.clientBar.newClient({ number: 2 })),
          );
        }}
      >
        {MEASURE.demo.beginOwn}
      </button>
    </div>
  );
}
