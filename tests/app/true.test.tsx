// @vitest-environment jsdom
import { fireEvent, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { TrueStep } from '../../src/app/true/TrueStep';
import { addClient, DEMO_BOOK } from '../../src/document';
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

  it('says that there is nothing to close up yet for a client who was just added', () => {
    onTable(<TrueStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    expect(screen.getByText('There are no panels to close up yet.')).toBeVisible();
    expect(screen.getByText('Not yet measured')).toBeVisible();
  });
});
