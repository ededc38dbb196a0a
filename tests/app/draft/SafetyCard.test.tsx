import { screen, within } from '@testing-library/react';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { SafetyCard } from '../../../src/app/draft/SafetyCard';
import { MendList } from '../../../src/app/draft/strip/MendList';
import {
  addAlterations,
  addFitting,
  changeFittings,
  changeStyle,
  DEMO_BOOK,
  openDraftOf,
} from '../../../src/document';
import { inches, type Style } from '../../../src/engine';
import { at, seamOf, taken } from '../../support/styles/alterations';
import { onTable } from '../withStore';

// The page of these tests has no height to be scrolled.
beforeAll(() => {
  Element.prototype.scrollIntoView = vi.fn();
});

const eased = (ease: Partial<Style['ease']>) =>
  changeStyle(DEMO_BOOK, (style) => ({ ...style, ease: { ...style.ease, ...ease } }));

function Both() {
  return (
    <>
      <MendList onShow={() => undefined} />
      <SafetyCard />
    </>
  );
}

const read = () => screen.queryByRole('checkbox', { name: /I have read the cautions/ });

describe('the safety of the wearer', () => {
  it('asks nothing of a usual reduction, and speaks of ribs that are taken in', () => {
    onTable(<Both />, eased({ underBust: -inches(1) }));
    // 1 / 31.75 = 3.1 %
    expect(screen.getByText(/^The ribs at the under-bust are taken in by/)).toHaveTextContent(
      'taken in by 1 in, 3.1 % of the girth there.',
    );
    expect(read()).toBeNull();
    expect(screen.queryByRole('link', { name: 'Read the cautions' })).toBeNull();
  });

  it('tells beside what is asked of the waist what the fittings make of it', () => {
    // The demo's waist is 29½ in and taken in by 2 in. Two mates of a seam on both sides: 4 × ⅛ in less.
    const seam = taken(seamOf('front-2', 'front-3'), [at('waist', inches(1 / 8))]);
    const fitted = changeFittings(DEMO_BOOK, (all) =>
      addAlterations(addFitting(all, '2026-11-26'), 0, [seam]),
    );
    onTable(<Both />, fitted);
    expect(screen.getByText(/^Waist taken in/)).toHaveTextContent(
      'Waist taken in 6.8 %, with the fittings 8.5 %',
    );
    expect(screen.getByText(/^The waist is taken in by/)).toHaveTextContent('by 2 in, 6.8 %');
    expect(screen.getByText(/^With the fittings it is/)).toHaveTextContent('is 2½ in, 8.5 %');
  });

  it('asks of a hip drawn in far to be looked at, not to be acknowledged', () => {
    onTable(<Both />, eased({ hip: -inches(6) }));
    expect(screen.getByText(/^The hip is drawn in by 6 in/)).toBeVisible();
    expect(read()).toBeNull();
  });

  it('leads from the caution to the card by the keyboard, and tells only the fact once it is read', async () => {
    const { user, client } = onTable(<Both />, eased({ underBust: -inches(6) }));
    const cautions = screen.getByRole('region', { name: 'Cautions' });
    within(cautions).getByRole('link', { name: 'Read the cautions' }).focus();
    await user.keyboard('{Enter}');
    expect(screen.getByRole('heading', { name: 'The wearer’s safety' })).toHaveFocus();
    await user.tab();
    expect(read()).toHaveFocus();
    await user.keyboard(' ');
    expect(read()).toBeChecked();
    expect(cautions).toHaveTextContent(/ribs at the under-bust are drawn in by 6 in/);
    expect(cautions).not.toHaveTextContent(/Read the cautions|as read/);
    expect(openDraftOf(client())).toMatchObject({
      acknowledgedReduction: inches(2),
      acknowledgedRibs: inches(6),
    });
  });
});
