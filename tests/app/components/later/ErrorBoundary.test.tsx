import { act, screen } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ErrorBoundary } from '../../../../src/app/components/later/ErrorBoundary';
import { useOpen, useStore } from '../../../../src/app/store/storeContext';
import { changeClient, DEMO_BOOK } from '../../../../src/document';
import { onTable } from '../../withStore';

/** A step that cannot be drawn while the client is called so. */
function Step() {
  const { client } = useOpen();
  if (client.name === 'Trouble') throw new Error('drawing');
  return <p>All is well</p>;
}

function Screen() {
  const [step, setStep] = useState('draft');
  const undo = useStore((state) => state.undo);
  const kept = useStore((state) => state.kept);
  return (
    <>
      <button type="button" onClick={() => setStep('fit')}>
        Next step
      </button>
      <ErrorBoundary part="step" step={step} book={kept} onUndo={undo}>
        <Step />
      </ErrorBoundary>
    </>
  );
}

// React tells the console of every error that is caught.
beforeEach(() => void vi.spyOn(console, 'error').mockImplementation(() => undefined));
afterEach(() => void vi.restoreAllMocks());

describe('a step that cannot be drawn', () => {
  const trouble = changeClient(DEMO_BOOK, (client) => ({ ...client, name: 'Trouble' }));

  it('says that nothing is lost, and undo brings it back', async () => {
    const { user, store } = onTable(<Screen />);
    expect(screen.getByText('All is well')).toBeVisible();
    act(() => store.getState().change({ code: 'clientRenamed' }, () => trouble));
    expect(await screen.findByRole('alert')).toHaveTextContent('Nothing is lost');
    await user.click(screen.getByRole('button', { name: 'Undo the last change' }));
    expect(screen.getByText('All is well')).toBeVisible();
  });

  it('is tried again when asked, and at another step', async () => {
    const { user, store } = onTable(<Screen />, trouble);
    await user.click(screen.getByRole('button', { name: 'Try again' }));
    expect(screen.getByRole('alert')).toBeVisible();
    expect(screen.getByRole('button', { name: 'Download a backup' })).toBeEnabled();
    act(() => store.getState().change({ code: 'clientRenamed' }, () => DEMO_BOOK));
    await user.click(screen.getByRole('button', { name: 'Next step' }));
    expect(screen.getByText('All is well')).toBeVisible();
  });
});
