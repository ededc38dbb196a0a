import { act, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { AllowanceCard } from '../../../src/app/cut/AllowanceCard';
import { changeStyle, DEMO_BOOK, NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE } from '../../../src/engine';
import { onTable } from '../withStore';

describe('the card of seam allowances', () => {
  it('turns the hem up by a tick, and undo takes it back', async () => {
    const { user, client, changes, store } = onTable(<AllowanceCard />);
    const style = () => client().drafts[0]?.style;
    const tick = screen.getByRole('checkbox', { name: 'Turn the hem up' });
    expect(tick).not.toBeChecked();
    expect(tick).toHaveAccessibleDescription(/mirror image of the seam allowances/);
    await user.click(tick);
    expect(style()?.turnedHem).toBe(true);
    expect(tick).toBeChecked();
    act(() => store.getState().undo());
    expect(style()).not.toHaveProperty('turnedHem');
    expect(tick).not.toBeChecked();
    await user.click(tick);
    await user.click(tick);
    expect(changes()).toEqual(['hem turned up', 'hem not turned up']);
  });

  it('has fields of their own for armhole and neckline of a shouldered style, which may be left empty', async () => {
    const princess = NAMED_STYLES.get('princess-bodice')?.style ?? DEFAULT_STYLE;
    const book = changeStyle(DEMO_BOOK, () => princess);
    const { user, client, changes } = onTable(<AllowanceCard />, book);
    const armhole = screen.getByRole('textbox', { name: /^Armhole/ });
    expect(armhole).toHaveValue('');
    expect(screen.getByRole('textbox', { name: /^Neckline/ })).toHaveValue('');
    await user.type(armhole, '0{Enter}');
    expect(client().drafts[0]?.style.allowances.armhole).toBe(0);
    await user.clear(armhole);
    await user.type(armhole, '{Enter}');
    expect(client().drafts[0]?.style.allowances).not.toHaveProperty('armhole');
    expect(changes()).toContain('allowance, armhole');
  });

  it('says at the hem that an allowance is wanting', async () => {
    const { user } = onTable(<AllowanceCard />);
    await user.click(screen.getByRole('checkbox', { name: 'Turn the hem up' }));
    const hem = screen.getByRole('textbox', { name: /^Hem/ });
    await user.clear(hem);
    await user.type(hem, '0{Enter}');
    expect(screen.getByText(/has no allowance to turn/)).toBeVisible();
  });
});
