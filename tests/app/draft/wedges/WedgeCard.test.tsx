import { screen, within } from '@testing-library/react';
import { useState } from 'react';
import { describe, expect, it } from 'vitest';
import { WedgeCard } from '../../../../src/app/draft/wedges/WedgeCard';
import { changeStyle, DEMO_BOOK, NAMED_STYLES, wedgeShortNameOf } from '../../../../src/document';
import { inches, type Style } from '../../../../src/engine';
import { onTable } from '../../withStore';

function Card() {
  const [selected, setSelected] = useState<string | null>(null);
  return <WedgeCard selected={selected} onSelect={setSelected} level="waist" onLevel={() => undefined} />;
}

const choose = (name: string) => screen.getByRole('button', { name });

describe('the wedge card', () => {
  it('lists the wedges of both blocks and shows the numbers of the one chosen', async () => {
    const { user } = onTable(<Card />);
    expect(screen.queryByRole('textbox')).toBeNull();
    await user.click(choose('Bust'));
    expect(choose('Bust')).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByRole('heading', { name: 'Bust wedge' })).toBeVisible();
    expect(screen.getByRole('textbox', { name: 'Intake at the waist' })).not.toHaveValue('');
  });

  it('locks a wedge at the number typed, and only at that level’s', async () => {
    const { user, client } = onTable(<Card />);
    await user.click(choose('Bust'));
    const at = (level: string) => screen.getByRole('textbox', { name: `Intake at the ${level}` });
    const hipBefore = at('hip').getAttribute('value');
    await user.clear(at('waist'));
    await user.type(at('waist'), '1 1/2{Enter}');
    const wedge = client().drafts[0]?.style.wedges.find(({ station }) => station === 0);
    expect(wedge).toMatchObject({ sizing: 'manual', block: 'front' });
    expect(wedge?.intake.waist).toBeCloseTo(inches(1.5), 9);
    expect(at('hip')).toHaveValue(hipBefore);
  });

  it('tells the meaning of the scales and the padlock beside the choice of sizing', async () => {
    const { user } = onTable(<Card />);
    await user.click(choose('Bust'));
    for (const [name, sign, title] of [
      ['Balanced', 'balanced', /scales under a wedge/],
      ['By hand', 'manual', /padlock under a wedge/],
    ] as const) {
      const label = screen.getByRole('radio', { name }).closest('label') as HTMLElement;
      expect(label.querySelector('[data-sign]')).toHaveAttribute('data-sign', sign);
      expect(label.title).toMatch(title);
    }
  });

  it('adds a wedge, takes one off, and undo brings each back', async () => {
    const { user, client, store } = onTable(<Card />);
    const count = (): number => client().drafts[0]?.style.wedges.length ?? 0;
    const before = count();
    await user.click(screen.getByRole('button', { name: 'Add a front wedge' }));
    expect(count()).toBe(before + 1);
    await user.click(screen.getByRole('button', { name: /^Take off the / }));
    expect(count()).toBe(before);
    store.getState().undo();
    store.getState().undo();
    expect(count()).toBe(before);
  });

  it('offers no more wedges than a block may have', async () => {
    const { user } = onTable(<Card />);
    for (let i = 0; i < 6; i += 1) {
      const add = screen.queryByRole('button', { name: 'Add a front wedge' });
      if (add) await user.click(add);
    }
    expect(screen.queryByRole('button', { name: 'Add a front wedge' })).toBeNull();
    const front = screen.getByRole('heading', { name: 'Front wedges' }).parentElement as HTMLElement;
    expect(within(front).getAllByRole('button')).toHaveLength(6);
  });

  it('says where a bust dart opens above, and turns it to another edge', async () => {
    const style = NAMED_STYLES.get('darted-bodice')?.style as Style;
    const { user, client } = onTable(
      <Card />,
      changeStyle(DEMO_BOOK, () => style),
    );
    const [dart] = style.wedges;
    const names = screen.getAllByRole('button', { pressed: false });
    await user.click(
      names.find(({ textContent }) => textContent === wedgeShortNameOf(dart?.id ?? '', style)) as HTMLElement,
    );
    expect(screen.getByRole('radio', { name: 'Armhole' })).toBeChecked();
    await user.click(screen.getByRole('radio', { name: 'Shoulder' }));
    expect(client().drafts[0]?.style.wedges[0]?.endsAt?.edge).toBe('shoulder');
  });
});
