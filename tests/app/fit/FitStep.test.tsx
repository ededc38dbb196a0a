import { act, fireEvent, screen, within } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import { FitStep } from '../../../src/app/fit/FitStep';
import {
  addClient,
  changeClient,
  changeStyle,
  DEMO_BOOK,
  NAMED_STYLES,
  setEnds,
  setJoinedSide,
  setSide,
} from '../../../src/document';
import { inches, type Style } from '../../../src/engine';
import { onTable } from '../withStore';

const row = (name: string) => screen.getByRole('button', { name });
const pointedOut = (container: HTMLElement): number => container.querySelectorAll('.edge.pointed-out').length;

describe('Fit', () => {
  it('shows the place of a row on both mates, and lets go of it', async () => {
    const { user, container } = onTable(<FitStep />);
    await user.click(row('Front 1 + 2'));
    expect(row('Front 1 + 2')).toHaveAttribute('aria-pressed', 'true');
    expect(pointedOut(container)).toBe(2);
    await user.click(row('Front 1 + 2'));
    await user.tab();
    await user.unhover(row('Front 1 + 2'));
    expect(row('Front 1 + 2')).toHaveAttribute('aria-pressed', 'false');
  });

  it('shows the row of a seam that is pressed on the drawing', () => {
    const { container } = onTable(<FitStep />);
    const seam = container.querySelector('[data-piece="front-2"] .edge-reach');
    fireEvent.pointerUp(seam as Element);
    expect(screen.getAllByRole('button', { pressed: true }).map(({ textContent }) => textContent)).toEqual([
      'Front 1 + 2',
    ]);
    expect(pointedOut(container)).toBe(2);
  });

  const cells = (name: string): (string | null)[] =>
    [...(row(name).closest('tr')?.querySelectorAll('td') ?? [])].map(({ textContent }) => textContent);

  it('reckons a girth as the ledger does, lacing gap and all, and says so', () => {
    onTable(<FitStep />);
    expect(screen.getByRole('columnheader', { name: 'Laced' })).toBeInTheDocument();
    expect(screen.getByText(/with the lacing gap of 2 in counted in/)).toBeInTheDocument();
    // the demo's waist of 29 1/2 in with 2 in less of ease
    expect(cells('waist')).toEqual(['27½', '27½', 'under ¹⁄₆₄']);
    expect(cells('over-bust')).toEqual(['35½', 'above the top edge', '']);
    expect(cells('hip')).toEqual(['40', 'below the hem', '']);
  });

  it('says in one line that all holds, with how much of it and the widest difference', () => {
    onTable(<FitStep />);
    expect(screen.getByRole('heading', { name: 'It holds' })).toBeVisible();
    expect(
      screen.getByText(/^5 seams, 14 crossings and \d girths hold; mates differ by under ¹⁄₆₄ in at most\.$/),
    ).toBeVisible();
    expect(screen.getByRole('link', { name: 'Next: Cut' })).toHaveAttribute('href', '#cut');
  });

  it('writes both lengths and the difference beside the seam in hand, and no others', async () => {
    const { user, container } = onTable(<FitStep />);
    expect(container.querySelectorAll('.seam-lengths')).toHaveLength(0);
    await user.click(row('Front 1 + 2'));
    const [one, mate] = cells('Front 1 + 2');
    expect(
      [...container.querySelectorAll('.seam-lengths text')].map(({ textContent }) => textContent),
    ).toEqual([`${one} in`, `${mate} in`, 'differ by under ¹⁄₆₄ in']);
  });

  it('writes each length on the side of its own panel, however far that leans', async () => {
    const { user, container } = onTable(<FitStep />);
    for (const name of ['Side seam', 'Back 2 + 3', 'Back 1 + 2']) {
      await user.click(row(name));
      const [one, mate] = [...container.querySelectorAll('.seam-lengths text')].map((text) =>
        text.getAttribute('text-anchor'),
      );
      expect([one, mate].sort()).toEqual(['end', 'start']);
    }
  });

  it('says in the headline which alterations the draft has, and that others could not be made', async () => {
    const seam = (front: number) =>
      ({
        kind: 'seam',
        pieces: [front, front + 1].map((number) => ({ kind: 'panel', block: 'front', number })),
      }) as never;
    const alteration = (front: number, on = true) => ({
      ...({ kind: 'seam', seam: seam(front), side: 'right' } as const),
      ...{ at: [{ height: { kind: 'level', level: 'waist' }, a: 5, b: 5 } as const], on },
    });
    const fitted = (...alterations: ReturnType<typeof alteration>[]) =>
      changeClient(DEMO_BOOK, (client) => ({
        ...client,
        drafts: client.drafts.map((draft) => ({
          ...draft,
          fittings: [{ date: '2026-11-26', note: '', on: true, alterations }],
        })),
      }));
    const headline = () => screen.getByRole('heading', { name: 'It holds' }).parentElement as HTMLElement;
    const off = onTable(<FitStep />, fitted(alteration(1, false)));
    expect(headline()).not.toHaveTextContent('alteration');
    off.unmount();
    const two = onTable(<FitStep />, fitted(alteration(1), alteration(2)));
    expect(headline()).toHaveTextContent('With 2 alterations after fittings.');
    expect(headline()).not.toHaveTextContent('could not');
    two.unmount();
    onTable(<FitStep />, fitted(alteration(1), alteration(7)));
    expect(headline()).toHaveTextContent('With one alteration after fittings.');
    expect(headline()).toHaveTextContent('One alteration could not be made: under Fittings it says why.');
  });

  it('has the widths of all panels by level in a table, which make the girth', () => {
    onTable(<FitStep />);
    const table = within(screen.getByRole('region', { name: 'Panel widths' }));
    expect(table.getAllByRole('rowheader')).toHaveLength(6);
    expect(table.getAllByRole('columnheader').map(({ textContent }) => textContent)).toEqual([
      'Panel',
      'Bust',
      'Under-bust',
      'Waist',
    ]);
  });

  it('says that an off-shoulder band is not drawn, and how long it is against the panels', () => {
    const banded = NAMED_STYLES.get('off-shoulder-bridal')?.style as Style;
    onTable(
      <FitStep />,
      changeStyle(DEMO_BOOK, () => banded),
    );
    expect(screen.getByText(/^The off-shoulder band is not drawn here\./)).toHaveTextContent(
      /its lower edge is 1[67].* in, (as long as|\S+ in (longer|shorter) than) the top edges it is sewn to, mark to mark/,
    );
  });

  it('leaves the gap out where nothing is laced', () => {
    onTable(
      <FitStep />,
      changeStyle(DEMO_BOOK, (style) => ({ ...style, closure: { ...style.closure, back: 'hooks' } })),
    );
    expect(screen.getByRole('columnheader', { name: 'Sewn' })).toBeInTheDocument();
    expect(cells('waist').slice(0, 2)).toEqual(['27½', '27½']);
  });

  it('writes differences in the unit of the client', () => {
    const metric = changeClient(DEMO_BOOK, (client) => ({ ...client, unit: 'cm' }));
    onTable(<FitStep />, metric);
    expect(cells('waist')).toEqual(['69.9', '69.9', 'under ½ mm']);
    expect(cells('Front 1 + 2').at(-1)).toBe('under ½ mm');
  });

  it('counts what was measured oddly, and leads to where it is told', () => {
    const wide = changeClient(DEMO_BOOK, (client) => ({
      ...client,
      measurements: { ...client.measurements, waist: inches(40) },
    }));
    onTable(<FitStep />, wide);
    expect(screen.getByRole('link', { name: /^\d to look at in the draft$/ })).toHaveAttribute(
      'href',
      '#draft',
    );
  });

  it('says that there is nothing to close up yet for a client who was just added', () => {
    onTable(<FitStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    expect(screen.getByText('There are no panels to close up yet.')).toBeVisible();
    expect(screen.getByText('Not yet measured')).toBeVisible();
  });
});

describe('Fit with darts', () => {
  const space = { top: 240, bust: 270, waist: 400, hem: 510 };
  const bookOf = (change: (style: Style) => Style) => changeStyle(DEMO_BOOK, change);
  const opened = (style: Style): Style => setEnds(style, 'front-side', 'openAtHem', space);

  it('shows the place of an open dart on both its legs, from its row and from the drawing', async () => {
    const { user, container } = onTable(<FitStep />, bookOf(opened));
    await user.click(row('Dart in Front 2'));
    expect(pointedOut(container)).toBe(2);
    await user.click(row('Dart in Front 2'));
    const legs = container.querySelectorAll('[data-piece="front-2"] .edge-reach');
    expect(legs).toHaveLength(4);
    fireEvent.pointerUp(legs[1] as Element);
    expect(row('Dart in Front 2')).toHaveAttribute('aria-pressed', 'true');
  });

  it('says how the hem runs across an open dart', () => {
    onTable(<FitStep />, bookOf(opened));
    const run = within(screen.getByRole('region', { name: 'Edge run' }));
    const dart = run.getByRole('rowheader', { name: 'Dart in Front 2' }).parentElement as HTMLElement;
    expect(
      within(dart)
        .getAllByRole('button')
        .map(({ textContent }) => textContent),
    ).toEqual([expect.stringMatching(/^(180|179\.[5-9])/)]);
  });

  it('tells two darts in one panel by their names', () => {
    onTable(
      <FitStep />,
      bookOf((style) => setEnds(opened(style), 'front-bust', 'openAtHem', space)),
    );
    expect(row('Bust dart in Front 1')).toBeVisible();
    expect(row('Side-front dart in Front 1')).toBeVisible();
  });

  it('draws a closed dart within its panel, with its drill marks', () => {
    const { container } = onTable(
      <FitStep />,
      bookOf((style) => setEnds(style, 'front-side', 'closed', space)),
    );
    expect(container.querySelectorAll('[data-piece="front-2"] .dart')).toHaveLength(1);
    expect(container.querySelectorAll('[data-piece="front-2"] .drill-mark')).toHaveLength(2);
  });

  it('walks the legs of a closed dart, and shows it from its row and from the drawing', async () => {
    const { user, container } = onTable(
      <FitStep />,
      bookOf((style) => setEnds(opened(style), 'front-bust', 'closed', space)),
    );
    expect(screen.getByText(/; in a dart, leg against leg\./)).toBeVisible();
    const closed = row('Bust dart in Front 1');
    const cells = [...(closed.closest('tr')?.querySelectorAll('td') ?? [])].map(
      ({ textContent }) => textContent,
    );
    expect(cells.slice(0, 2).every((cell) => /^\d+(\S*)$/.test(cell ?? ''))).toBe(true);
    expect(cells.slice(2)).toEqual(['under ¹⁄₆₄', '']);
    const legs = () => container.querySelectorAll('[data-piece="front-1"] .edge.pointed-out').length;
    await user.hover(closed);
    expect(legs()).toBe(2);
    await user.unhover(closed);
    expect(legs()).toBe(0);
    act(() => closed.focus());
    expect(legs()).toBe(2);
    await user.click(row('Side-front dart in Front 1'));
    expect(legs()).toBe(2);
    fireEvent.pointerUp(container.querySelector('[data-wedge="front-bust"]') as Element);
    expect(closed).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getAllByRole('button', { pressed: true })).toHaveLength(1);
  });

  it('closes up a side panel in one between front and back', () => {
    const { container } = onTable(
      <FitStep />,
      bookOf((style) => setJoinedSide(style, true)),
    );
    expect(
      [...container.querySelectorAll('[data-piece]')].map((each) => each.getAttribute('data-piece')),
    ).toEqual(['front-1', 'front-2', 'side', 'back-2', 'back-1']);
    expect(row('Front 2 + Side panel')).toBeVisible();
  });

  it('walks both halves of a shoulder seam, and shows each', async () => {
    // Two darts behind lie at the same heights, and are none the less two.
    const complaint = vi.spyOn(console, 'error');
    const style = NAMED_STYLES.get('princess-bodice')?.style;
    const { user, container } = onTable(
      <FitStep />,
      changeStyle(DEMO_BOOK, (before) => style ?? before),
    );
    for (const half of ['Shoulder seam, neck', 'Shoulder seam, tip']) {
      await user.click(row(half));
      expect(pointedOut(container)).toBe(2);
      expect(container.querySelectorAll('.edge-shoulder.pointed-out')).toHaveLength(2);
    }
    expect(complaint).not.toHaveBeenCalled();
    complaint.mockRestore();
  });
});

describe('Fit across the shoulder seam', () => {
  const run = () => within(screen.getByRole('region', { name: 'Edge run' }));
  const princess = NAMED_STYLES.get('princess-bodice')?.style as Style;
  const shouldered = changeStyle(DEMO_BOOK, () => princess);

  it('says how neckline and armhole run across it, and shows where', async () => {
    const { user, container } = onTable(<FitStep />, shouldered);
    for (const edge of ['neckline', 'armhole']) {
      const angle = run().getByRole('button', {
        name: new RegExp(`^Shoulder seam, ${edge}, top edge: (180\\.[0-4]|179\\.[6-9])°$`),
      });
      await user.click(angle);
      expect(container.querySelectorAll('.crossing')).toHaveLength(1);
    }
  });

  it('says and shows it on either half where the two differ', async () => {
    const { user, container } = onTable(
      <FitStep />,
      changeClient(shouldered, (client) => setSide(client, 'rightLower', 'bust', 6)),
    );
    for (const crossing of [
      'Left shoulder seam, neckline',
      'Right shoulder seam, armhole',
      'Right side seam',
    ]) {
      await user.click(run().getByRole('button', { name: new RegExp(`^${crossing}, top edge`) }));
      expect(container.querySelectorAll('.crossing')).toHaveLength(1);
    }
  });
});

describe('Fit closed up over open darts', () => {
  const space = { top: 240, bust: 270, waist: 400, hem: 510 };
  const opened = changeStyle(DEMO_BOOK, (style) => setEnds(style, 'front-side', 'openAtHem', space));
  const parts = (container: HTMLElement) => container.querySelectorAll('[data-piece="front-2"]');

  it('shuts a dart open at the hem where the hem is held, the panel slashed from its point, and says so', async () => {
    const { user, container } = onTable(<FitStep />, opened);
    expect(parts(container)).toHaveLength(1);
    expect(container.querySelector('.slash')).toBeNull();
    expect(
      screen.getByText(/^Darts open at the hem stay open here; hold the seams at the hem/),
    ).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'at the hem' }));
    expect(parts(container)).toHaveLength(2);
    expect(container.querySelectorAll('[data-piece="front-2"] .slash')).toHaveLength(2);
    expect(screen.getByText(/^Open darts are shut here.*slashed from there/)).toBeVisible();
    expect(screen.queryByText(/stay open here/)).toBeNull();
    expect(container.querySelectorAll('[data-piece="front-2"] .panel-name.in-a-line')).toHaveLength(1);
  });

  it('shows its row on both legs when it is shut, and a level across both parts', async () => {
    const { user, container } = onTable(<FitStep />, opened);
    await user.click(screen.getByRole('radio', { name: 'at the hem' }));
    await user.click(row('Dart in Front 2'));
    expect([...parts(container)].map((part) => part.querySelectorAll('.edge.pointed-out').length)).toEqual([
      1, 1,
    ]);
    for (const level of ['waist', 'bust']) {
      await user.click(row(level));
      expect(container.querySelectorAll('[data-piece="front-2"] .level-across')).toHaveLength(2);
    }
  });

  it('says nothing of darts where none is open', () => {
    onTable(<FitStep />);
    expect(screen.queryByText(/stay open here/)).toBeNull();
    expect(screen.queryByRole('button', { name: /^Dart in/ })).toBeNull();
  });
});
