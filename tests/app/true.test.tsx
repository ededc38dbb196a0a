// @vitest-environment jsdom
import { fireEvent, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { TrueStep } from '../../src/app/true/TrueStep';
import { addClient, changeClient, changeStyle, DEMO_BOOK } from '../../src/document';
import { inches } from '../../src/engine';
import { onTable } from './onTable';

const row = (name: string) => screen.getByRole('button', { name });
const pointedOut = (container: HTMLElement): number => container.querySelectorAll('.edge.pointed-out').length;

describe('True', () => {
  it('shows the place of a row on both mates, and lets go of it', async () => {
    const { user, container } = onTable(<TrueStep />);
    await user.click(row('Front 1 + 2'));
    expect(row('Front 1 + 2')).toHaveAttribute('aria-pressed', 'true');
    expect(pointedOut(container)).toBe(2);
    await user.click(row('Front 1 + 2'));
    await user.tab();
    await user.unhover(row('Front 1 + 2'));
    expect(row('Front 1 + 2')).toHaveAttribute('aria-pressed', 'false');
  });

  it('shows the row of a seam that is pressed on the drawing', () => {
    const { container } = onTable(<TrueStep />);
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
    onTable(<TrueStep />);
    expect(screen.getByRole('columnheader', { name: 'Laced' })).toBeVisible();
    expect(screen.getByText(/with the lacing gap of 2 in counted in/)).toBeVisible();
    // the demo's waist of 29 1/2 in with 2 in less of ease
    expect(cells('waist')).toEqual(['27½', '27½', '0.000 in']);
    expect(cells('over-bust')).toEqual(['35½', 'at the edge', '']);
    expect(cells('hip')).toEqual(['40', 'below the hem', '']);
  });

  it('leaves the gap out where nothing is laced', () => {
    onTable(
      <TrueStep />,
      changeStyle(DEMO_BOOK, (style) => ({ ...style, closure: { ...style.closure, back: 'hooks' } })),
    );
    expect(screen.getByRole('columnheader', { name: 'Sewn' })).toBeVisible();
    expect(cells('waist').slice(0, 2)).toEqual(['27½', '27½']);
  });

  it('writes differences in the unit of the client', () => {
    const metric = changeClient(DEMO_BOOK, (client) => ({ ...client, unit: 'cm' }));
    onTable(<TrueStep />, metric);
    expect(cells('waist')).toEqual(['69.9', '69.9', '0.00 mm']);
    expect(cells('Front 1 + 2').at(-1)).toMatch(/^\d\.\d\d mm$/);
  });

  it('says again what was measured oddly', () => {
    const wide = changeClient(DEMO_BOOK, (client) => ({
      ...client,
      measurements: { ...client.measurements, waist: inches(40) },
    }));
    onTable(<TrueStep />, wide);
    expect(screen.getByText(/draft follows it: waist girth 40 in/)).toBeVisible();
    expect(
      screen.getByText(/^At the waist the cloth is wider than at the bust/, { exact: false }),
    ).toBeVisible();
  });

  it('says that there is nothing to close up yet for a client who was just added', () => {
    onTable(<TrueStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    expect(screen.getByText('There are no panels to close up yet.')).toBeVisible();
    expect(screen.getByText('Not yet measured')).toBeVisible();
  });
});
