import { act, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { usePlanInput } from '../../../src/app/cut/choices/usePlanInput';
import LayCard from '../../../src/app/cut/lay/LayCard';
import { useLayChoices } from '../../../src/app/cut/lay/layChoices';
import type { LayAnswer, LayRequest } from '../../../src/app/cut/lay/layRequest';
import { changeStyle, DEMO_BOOK, DEMO_CLIENT, readBook, removeClient } from '../../../src/document';
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
    const { asked, cloth, seed } = this.asked as LayRequest;
    const laid = startLay(asked, cloth, seed);
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
    expect(screen.queryByText(/This plan is old/)).toBeNull();
    await user.click(screen.getByLabelText('With a nap or a one-way print'));
    expect(screen.getByText(/This plan is old/)).toBeTruthy();
    await user.selectOptions(screen.getByLabelText('Layer'), 'Lining');
    expect(screen.queryByRole('img')).toBeNull();
  });

  it('asks a second worker when the first plan is there, and keeps the plan when it is stopped', async () => {
    vi.stubGlobal('navigator', { ...navigator, hardwareConcurrency: 2, userAgent: navigator.userAgent });
    const { user, client } = onTable(<Part />);
    await user.click(screen.getByRole('button', { name: 'Lay the panels' }));
    const [first, second] = StandInWorker.opened;
    expect([first?.asked?.seed, second?.asked]).toEqual([0, null]);
    first?.start();
    expect([first?.asked?.seed, second?.asked?.seed]).toEqual([0, 1]);
    expect(client().drafts[0]?.lays).toBeUndefined();
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(client().drafts[0]?.lays).toHaveLength(1);
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

describe('a lay plan that is kept with its draft', () => {
  it('is drawn again after the page was left, is old once the draft is another, and new again after undo', async () => {
    const first = onTable(<Part />);
    await first.user.selectOptions(screen.getByLabelText('Layers of it'), '2');
    await first.user.click(screen.getByRole('button', { name: 'Lay the panels' }));
    StandInWorker.opened[0]?.start();
    await first.user.click(screen.getByRole('button', { name: 'Stop' }));
    const [kept] = first.client().drafts[0]?.lays ?? [];
    expect(kept).toMatchObject({ layer: 'fashion', cloth: { layers: 2 } });
    expect(kept?.placed.length).toBeGreaterThan(0);
    // The book holds it as text, and what was in memory is gone.
    const read = readBook(JSON.stringify(first.store.getState().history.present));
    if (read.kind !== 'book') throw new Error(read.kind);
    first.unmount();
    useLayChoices.setState(FRESH, true);
    const again = onTable(<Part />, read.book);
    const drawing = screen.getByRole('img', { name: `${kept?.placed.length} outlines on the cloth` });
    expect(drawing).toBeTruthy();
    expect(screen.getByLabelText('Layers of it')).toHaveProperty('value', '2');
    expect(screen.queryByText(/This plan is old/)).toBeNull();
    act(() =>
      again.store
        .getState()
        .change({ code: 'hemMoved' }, (book) => changeStyle(book, (style) => ({ ...style, hemBelow: 80 }))),
    );
    expect(screen.getByText(/This plan is old.*It is drawn again when/)).toBeTruthy();
    expect(screen.queryByRole('img')).toBeNull();
    expect(screen.getByRole('button', { name: 'Lay them anew' })).toBeTruthy();
    act(() => again.store.getState().undo());
    expect(screen.queryByText(/This plan is old/)).toBeNull();
    expect(screen.getByRole('img')).toBeTruthy();
  });

  it('lays a draft of another client on the same cloth, and says it when she is gone', async () => {
    const other = { ...DEMO_CLIENT, id: 'other', name: 'Ines' };
    const { user, store } = onTable(<Part />, { ...DEMO_BOOK, clients: [...DEMO_BOOK.clients, other] });
    await user.selectOptions(screen.getByLabelText('Also on this cloth'), `Ines, ${other.drafts[0]?.name}`);
    await screen.findByRole('button', { name: /^Take Ines/ });
    await user.click(screen.getByText(/^On the bias/));
    await user.click(screen.getByLabelText(/^Ines.*: Front 1$/));
    await user.click(screen.getByRole('button', { name: 'Lay the panels' }));
    const asked = StandInWorker.opened[0]?.asked?.asked ?? [];
    expect(new Set(asked.map(({ of }) => of)).size).toBe(2);
    expect(asked.filter(({ bias }) => bias).map(({ of, piece }) => [of, piece.id])).toEqual([
      [`Ines, ${other.drafts[0]?.name}`, 'front-1'],
    ]);
    StandInWorker.opened[0]?.start();
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(screen.getByRole('img', { name: `${2 * 12} outlines on the cloth` })).toBeTruthy();
    act(() =>
      store.getState().change({ code: 'clientRemoved', name: 'Ines' }, (book) => removeClient(book, 'other')),
    );
    expect(screen.getByText(/^A draft that lay on this cloth is not in the book/)).toBeTruthy();
    expect(screen.getByRole('button', { name: /^Lay them/ })).toHaveProperty('disabled', true);
  });
});
