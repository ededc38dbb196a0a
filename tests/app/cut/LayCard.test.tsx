import { act, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { usePlanInput } from '../../../src/app/cut/choices/usePlanInput';
import LayCard from '../../../src/app/cut/lay/LayCard';
import { useLayChoices } from '../../../src/app/cut/lay/layChoices';
import type { LayAnswer, LayRequest } from '../../../src/app/cut/lay/layRequest';
import { startLay } from '../../../src/paper';
import { onTable } from '../withStore';

/** A worker that answers when the test lets it. */
class StandInWorker extends EventTarget {
  static opened: StandInWorker[] = [];
  asked: LayRequest | null = null;
  isEnded = false;
  constructor() {
    super();
    StandInWorker.opened.push(this);
  }
  postMessage(request: LayRequest): void {
    this.asked = request;
  }
  terminate(): void {
    this.isEnded = true;
  }
  answer(data: LayAnswer): void {
    act(() => void this.dispatchEvent(new MessageEvent('message', { data })));
  }
  /** Answers as the worker does at its start. */
  start(): void {
    const { pieces, cloth, seed } = this.asked as LayRequest;
    const laid = startLay(pieces, cloth, seed);
    this.answer(laid.ok ? { kind: 'plan', plan: laid.work.best() } : { kind: 'faults', faults: laid.faults });
  }
}

const FRESH = useLayChoices.getInitialState();
beforeEach(() => {
  StandInWorker.opened = [];
  vi.stubGlobal('Worker', StandInWorker);
});
afterEach(() => {
  vi.unstubAllGlobals();
  useLayChoices.setState(FRESH, true);
});

function Part() {
  return <LayCard input={usePlanInput()} />;
}

describe('the lay plan', () => {
  it('shows the shortest plan so far with its length and cost, stops, and says when it is old', async () => {
    const { user, container } = onTable(<Part />);
    await user.click(screen.getByText('Shrinkage and price'));
    await user.type(screen.getByLabelText('Price of a yard'), '36');
    await user.click(screen.getByRole('button', { name: 'Lay the panels' }));
    const [worker] = StandInWorker.opened;
    worker?.start();
    const plan = [...useLayChoices.getState().plans.values()][0]?.plan;
    const inchesUsed = (plan?.lengthMm ?? 0) / 25.4;
    expect(container.querySelector('.count')?.textContent).toContain(`Cost ${inchesUsed.toFixed(2)}`);
    expect(screen.getByRole('img', { name: `${plan?.placed.length} outlines on the cloth` })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(StandInWorker.opened.every(({ isEnded }) => isEnded)).toBe(true);
    expect(screen.queryByText(/has changed since/)).toBeNull();
    await user.click(screen.getByLabelText('With a nap or a one-way print'));
    expect(screen.getByText(/has changed since/)).toBeTruthy();
    await user.selectOptions(screen.getByLabelText('Layer'), 'Lining');
    expect(screen.queryByRole('img')).toBeNull();
  });

  it('names a piece that is wider than the cloth, and what is wrong with a cloth', async () => {
    const { user } = onTable(<Part />);
    const width = screen.getByRole('textbox', { name: 'Usable width' });
    await user.clear(width);
    await user.type(width, '5');
    await user.click(screen.getByRole('button', { name: 'Lay the panels' }));
    StandInWorker.opened[0]?.start();
    expect(screen.getByText(/Front 1 needs .* across and the cloth has 5 in/)).toBeTruthy();
    await user.clear(width);
    await user.type(width, '1');
    expect(screen.getByText(/^The cloth must be from/)).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Lay the panels' })).toHaveProperty('disabled', true);
  });
});
