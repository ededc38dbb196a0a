import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { ExtrasCard } from '../../../src/app/draft/ExtrasCard';
import { MendList } from '../../../src/app/draft/strip/MendList';
import { changeStyle, DEMO_BOOK } from '../../../src/document';
import { inches } from '../../../src/engine';
import { onTable } from '../withStore';

describe('the card of pieces beside the panels', () => {
  it('asks for a piece by a tick, takes its measure, and leaves it out again', async () => {
    const { user, client, changes } = onTable(<ExtrasCard />);
    const extras = () => client().drafts[0]?.style.extras;
    await user.click(screen.getByRole('checkbox', { name: 'Modesty panel' }));
    expect(extras()).toEqual({ modesty: { overlap: inches(2) } });
    const overlap = screen.getByRole('textbox', { name: /^Overlap/ });
    await user.clear(overlap);
    await user.type(overlap, '1 1/2{Enter}');
    expect(extras()?.modesty?.overlap).toBeCloseTo(inches(1.5), 9);
    await user.click(screen.getByRole('checkbox', { name: 'Straps' }));
    await user.click(screen.getByRole('checkbox', { name: 'Modesty panel' }));
    expect(Object.keys(extras() ?? {})).toEqual(['straps']);
    expect(changes()).toEqual(['modesty panel', 'overlap', 'straps', 'modesty panel']);
  });

  it('marks the width of a facing that there is no room for, and the list says so', () => {
    // A deep point at centre back, from which the hem rises so fast that it would meet the top edge.
    const steep = changeStyle(DEMO_BOOK, (style) => ({
      ...style,
      hemShape: {
        ...style.hemShape,
        centreBack: { beyond: 150, kind: 'corner' },
        sideBack: { beyond: -120, kind: 'corner' },
      },
      extras: { facing: { width: 200 } },
    }));
    onTable(
      <>
        <ExtrasCard />
        <MendList onShow={() => undefined} />
      </>,
      steep,
    );
    expect(screen.getByRole('textbox', { name: /^Facing width/ })).toBeInvalid();
    expect(screen.getByText(/width of the facing is more than .* has room for/)).toBeVisible();
  });
});
