// The garment as worn on the page, with a worker that answers at once on the page itself.

import { act, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { awaitedWedge } from '../../../src/app/components/awaited/awaitedPlace';
import { StoreContext } from '../../../src/app/store/storeContext';
import AsWorn from '../../../src/app/worn/AsWorn';
import SmallWorn from '../../../src/app/worn/SmallWorn';
import { type WornResult, wornResult } from '../../../src/app/worn/view/wornPicture';
import type { WornRequest } from '../../../src/app/worn/wornRequest';
import {
  changeClient,
  changeStyle,
  DEMO_BOOK,
  NAMED_STYLES,
  openClient,
  openDraftOf,
  parseLength,
  WORN,
} from '../../../src/document';
import { type Style, sewGarment } from '../../../src/engine';
import { onTable } from '../withStore';

/** All tests are of one body: a style is sewn once. */
const SEWN = new Map<Style, WornResult>();

/** Requests are kept until the test lets them be answered. */
function withWorker() {
  const asked: WornRequest[] = [];
  const askers: FakeWorker[] = [];
  class FakeWorker {
    listeners: ((event: MessageEvent) => void)[] = [];
    breaks: (() => void)[] = [];
    isEnded = false;
    addEventListener(kind: string, listener: (event: MessageEvent) => void): void {
      if (kind === 'message') this.listeners.push(listener);
      else this.breaks.push(listener as () => void);
    }
    postMessage(request: WornRequest): void {
      asked.push(request);
      askers.push(this);
    }
    terminate(): void {
      this.isEnded = true;
      this.listeners = [];
    }
  }
  vi.stubGlobal('Worker', FakeWorker);
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe(): void {}
      disconnect(): void {}
    },
  );
  const answer = (request: WornRequest): void => {
    const { draft, measurements, style, sides, number } = request;
    const result = SEWN.get(style) ?? wornResult(sewGarment(draft, measurements, style, sides));
    SEWN.set(style, result);
    const asker = askers[asked.findIndex((each) => each.draft === draft)];
    act(() => {
      for (const listener of asker?.listeners ?? [])
        listener(new MessageEvent('message', { data: { kind: 'sewn', number, result } }));
    });
  };
  /** The worker that was asked last does not come, as where its script is missing. */
  const failToCome = (): void =>
    act(() => {
      for (const broken of askers.at(-1)?.breaks ?? []) broken();
    });
  return { asked, askers, answer, failToCome };
}

const styleNamed = (name: string): Style => NAMED_STYLES.get(name)?.style as Style;

/** A page without a graphics card and without a canvas. */
const withoutDrawing = () => vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);

/** A written length in mm; NaN where it is none. */
function lengthOf(text: string, unit: 'in' | 'cm'): number {
  const parsed = parseLength(text, unit);
  return 'mm' in parsed ? parsed.mm : Number.NaN;
}

describe('as worn', () => {
  it('names the worst places with what cures them, and has a table and what is assumed', () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    onTable(<AsWorn onSideSeam={vi.fn()} />);
    expect(screen.getByRole('status')).toHaveTextContent('Sewing …');
    answer(asked.at(-1) as WornRequest);
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
    const place = screen.getByText(/^Stands off [\d½⅛¼¾⅜⅝⅞⁰¹²³⁴-⁹⁄₀-₉]+ in from bust to under-bust, front\./);
    expect(place).toHaveTextContent('What usually cures it: take in the front wedges at the under-bust.');
    expect(within(place).getByRole('button')).toHaveTextContent('Go to the bust wedge at the under-bust');
    const table = screen.getByRole('table', { name: 'By region and edge' });
    expect(
      within(table).getByRole('row', { name: /^Top edge, front (0|[½⅛¼¾⅜⅝⅞⁰¹²³⁴-⁹⁄₀-₉]+) in$/ }),
    ).toBeVisible();
    expect(screen.getByText(/No pressure is shown/)).toBeVisible();
    expect(screen.getByText(/cannot draw the garment/)).toBeVisible();
    vi.unstubAllGlobals();
  });

  it('says that a worker did not come, and starts another with the next change', () => {
    withoutDrawing();
    const { asked, askers, answer, failToCome } = withWorker();
    const { store } = onTable(<AsWorn onSideSeam={vi.fn()} />);
    failToCome();
    expect(screen.getByRole('status')).toHaveTextContent(WORN.failed);
    act(() =>
      store
        .getState()
        .change({ code: 'hemMoved' }, (book) =>
          changeStyle(book, (style) => ({ ...style, hemBelow: style.hemBelow + 5 })),
        ),
    );
    const [first, next] = [askers.at(0), askers.at(-1)];
    expect(next).not.toBe(first);
    expect([first?.isEnded, next?.isEnded]).toEqual([true, false]);
    answer(asked.at(-1) as WornRequest);
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
    expect(screen.getByRole('table', { name: 'By region and edge' })).toBeVisible();
    vi.unstubAllGlobals();
  });

  it('says under the picture what is not sewn on', () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const banded = changeStyle(
      changeClient(DEMO_BOOK, (client) => ({
        ...client,
        measurements: { ...client.measurements, acrossShoulder: 374 },
      })),
      () => styleNamed('off-shoulder-bridal'),
    );
    onTable(<AsWorn onSideSeam={vi.fn()} />, banded);
    answer(asked.at(-1) as WornRequest);
    const said = screen.getByText(/^Not sewn on here: .*band/i);
    expect(said.parentElement).toContainElement(screen.getByRole('button', { name: 'Save picture' }));
    vi.unstubAllGlobals();
  });

  it('goes to the wedge and level that cure a place', async () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const { user } = onTable(<AsWorn onSideSeam={vi.fn()} />);
    answer(asked.at(-1) as WornRequest);
    await user.click(screen.getByRole('button', { name: 'Go to the bust wedge at the under-bust' }));
    const { wedges } = openDraftOf(openClient(DEMO_BOOK)).style;
    const bust = wedges.find(({ block, station }) => block === 'front' && station === 0)?.id;
    expect(awaitedWedge()).toEqual({ wedge: bust, level: 'underBust', side: null });
    expect(window.location.hash).toBe('#draft');
    vi.unstubAllGlobals();
  });

  it('is seen beside what was saved to compare, figure beside figure', async () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const { user } = onTable(<AsWorn onSideSeam={vi.fn()} />, {
      ...DEMO_BOOK,
      clients: DEMO_BOOK.clients.map((client) => ({
        ...client,
        drafts: client.drafts.map((each) => ({
          ...each,
          comparison: { on: '2026-11-01', measurements: client.measurements, style: styleNamed('cincher') },
        })),
      })),
    });
    answer(asked.at(-1) as WornRequest);
    expect(asked).toHaveLength(1);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Beside' }), 'As saved Nov 1, 2026');
    expect(asked).toHaveLength(2);
    answer(asked[1] as WornRequest);
    const row = screen.getByRole('row', { name: /^all of it/ });
    expect(row).toHaveTextContent(/^all of it[½⅛¼¾⅜⅝⅞⁰¹²³⁴-⁹⁄₀-₉]+ in\([½⅛¼¾⅜⅝⅞⁰¹²³⁴-⁹⁄₀-₉]+ in\)/);
    expect(screen.getAllByRole('img', { name: /The garment on the body, / })).toHaveLength(2);
    vi.unstubAllGlobals();
  });

  it('shows what each colour means, and nothing for plain cloth', async () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const { user } = onTable(
      <AsWorn onSideSeam={vi.fn()} />,
      changeStyle(DEMO_BOOK, () => styleNamed('cincher')),
    );
    answer(asked.at(-1) as WornRequest);
    expect(screen.getByRole('img', { name: /^Stand-off in inches/ })).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'Stretch crosswise' }));
    expect(screen.getByRole('img', { name: /^Stretch across the grain in %/ })).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'Cloth' }));
    expect(screen.queryByRole('img', { name: / in (inches|mm|%)/ })).toBeNull();
    vi.unstubAllGlobals();
  });

  it('tells every length in the unit of the tape: parts of an inch, or millimetres', () => {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const shown = (unit: 'in' | 'cm'): { figures: number[]; legend: number[]; text: string } => {
      const book = { ...DEMO_BOOK, clients: DEMO_BOOK.clients.map((client) => ({ ...client, unit })) };
      const { unmount, container } = onTable(<AsWorn onSideSeam={vi.fn()} />, book);
      answer(asked.at(-1) as WornRequest);
      const cells = [...container.querySelectorAll('.worn-table tbody td')].map(
        ({ textContent }) => textContent,
      );
      const lengths = cells.flatMap((cell) => /^(\S+) (?:in|mm)/.exec(cell ?? '')?.[1] ?? []);
      const limits = [...container.querySelectorAll('.worn-legend g text')].map(
        ({ textContent }) => textContent,
      );
      const mm = (text: string | null): number =>
        unit === 'in' ? lengthOf(text ?? '', 'in') : Number(text?.replace('−', '-'));
      const read = { figures: lengths.map(mm), legend: limits.map(mm), text: container.textContent ?? '' };
      unmount();
      return read;
    };
    const [inInches, inMillimetres] = [shown('in'), shown('cm')];
    expect(inInches.text).not.toMatch(/\bmm\b/);
    expect(inMillimetres.text).not.toMatch(/\d in\b|\binch/);
    expect(inInches.figures.length).toBeGreaterThan(10);
    expect(inInches.figures).toHaveLength(inMillimetres.figures.length);
    for (const [i, length] of inInches.figures.entries())
      expect(Math.abs(length - (inMillimetres.figures[i] ?? Number.NaN))).toBeLessThan(25.4 / 32 + 0.06);
    expect(inInches.legend.map((limit) => Math.round((limit / 25.4) * 32 * 1e6) / 1e6)).toEqual([
      1, 4, 6, 10, 16, 24,
    ]);
    expect(inMillimetres.legend).toEqual([1, 3, 5, 8, 12, 18]);
    vi.unstubAllGlobals();
  });

  it('says what is not judged yet, and no figure with it', () => {
    const { asked, answer } = withWorker();
    onTable(
      <AsWorn onSideSeam={vi.fn()} />,
      changeStyle(DEMO_BOOK, () => styleNamed('princess-bodice')),
    );
    answer(asked.at(-1) as WornRequest);
    expect(screen.getByText(/are not judged yet/)).toBeVisible();
    expect(screen.queryByRole('table')).toBeNull();
    vi.unstubAllGlobals();
  });

  it('pays no heed to an answer that is older than what was asked last', () => {
    const { asked, answer } = withWorker();
    onTable(<AsWorn onSideSeam={vi.fn()} />);
    const request = asked.at(-1) as WornRequest;
    answer({ ...request, style: styleNamed('princess-bodice'), number: request.number - 1 });
    expect(screen.getByRole('status')).toHaveTextContent('Sewing …');
    vi.unstubAllGlobals();
  });

  it('says so where the browser has no workers', () => {
    onTable(<AsWorn onSideSeam={vi.fn()} />);
    expect(screen.getByRole('status')).toHaveTextContent(/has no workers/);
  });
});

describe('the garment as worn beside the table', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  const wait = (ms: number): void =>
    act(() => {
      vi.advanceTimersByTime(ms);
    });

  /** The draft is sewn, and a handle is taken hold of. */
  function pulled() {
    withoutDrawing();
    const { asked, answer } = withWorker();
    const table = onTable(<SmallWorn pulling={false} onClose={vi.fn()} />);
    const draw = (pulling: boolean): void =>
      table.rerender(
        <StoreContext value={table.store}>
          <SmallWorn pulling={pulling} onClose={vi.fn()} />
        </StoreContext>,
      );
    const pullTo = (change: (style: Style) => Style): void =>
      act(() => table.store.getState().show((book) => changeStyle(book, change)));
    answer(asked.at(-1) as WornRequest);
    draw(true);
    return { asked, answer, table, draw, pullTo };
  }

  it('follows a pull on a coarse mesh when it rests, and is sewn on the usual one when it is let go', () => {
    const { asked, table, draw, pullTo } = pulled();
    wait(1000);
    // The handle has not moved yet.
    expect(asked).toHaveLength(1);
    const pulledTo = styleNamed('v-front');
    pullTo(() => pulledTo);
    wait(1000);
    expect(asked).toHaveLength(2);
    expect(asked.at(-1)).toMatchObject({ style: pulledTo, width: 24 });
    // The pull goes on while that is being sewn: where it rests next is asked for instead.
    pullTo(() => styleNamed('cincher'));
    wait(1000);
    expect(asked).toHaveLength(3);
    expect(asked.at(-1)).toMatchObject({ style: styleNamed('cincher'), width: 24 });
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
    act(() => table.store.getState().drop());
    draw(false);
    expect(asked).toHaveLength(4);
    expect(asked.at(-1)?.width).toBeUndefined();
    expect(asked.at(-1)?.style).toBe(asked[0]?.style);
  });

  it('leaves the frames of a pull that goes on to the table, however long, until it rests', () => {
    const { asked, answer, pullTo } = pulled();
    const pullFor = (ms: number): void => {
      for (let t = 0; t < ms; t += 20) {
        pullTo((style) => ({ ...style, hemBelow: 50 + t / 20 }));
        wait(20);
      }
    };
    pullFor(1000);
    expect(asked).toHaveLength(1);
    wait(400);
    expect(asked).toHaveLength(2);
    answer(asked.at(-1) as WornRequest);
    pullFor(2000);
    expect(asked).toHaveLength(2);
    wait(400);
    expect(asked).toHaveLength(3);
  });

  it('takes no frame that lasts long for a rest', () => {
    const { asked, pullTo } = pulled();
    // The page works for so long after each move: timers that fell due meanwhile fire before the next move is read.
    let worked = 0;
    const clock = performance.now.bind(performance);
    const now = vi.spyOn(performance, 'now').mockImplementation(() => clock() + worked);
    for (let k = 0; k < 12; k += 1) {
      pullTo((style) => ({ ...style, hemBelow: 50 + k }));
      worked += 600;
      wait(100);
    }
    expect(asked).toHaveLength(1);
    wait(1000);
    expect(asked).toHaveLength(2);
    now.mockRestore();
  });
});
