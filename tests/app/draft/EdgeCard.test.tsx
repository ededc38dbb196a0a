import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { EdgeCard } from '../../../src/app/draft/EdgeCard';
import { changeStyle, DEMO_BOOK, NAMED_STYLES } from '../../../src/document';
import { inches } from '../../../src/engine';
import { onTable } from '../withStore';

const wearing = (name: string) => changeStyle(DEMO_BOOK, (style) => NAMED_STYLES.get(name)?.style ?? style);

const places = (): (string | undefined)[] =>
  screen
    .getAllByRole('textbox', { name: /^Top edge at/ })
    .map((box) => document.querySelector(`label[for="${box.id}"]`)?.textContent?.trim());

describe('the card of top edge and hem', () => {
  it('asks for every place of a strapless top edge', () => {
    onTable(<EdgeCard />, wearing('off-shoulder-bridal'));
    expect(places()).toHaveLength(6);
    expect(screen.getByRole('combobox', { name: 'Shape of the top edge' })).toHaveValue('sweetheart');
  });

  it('asks on a shouldered block for the ends of neckline and armhole alone', async () => {
    const { user, client } = onTable(<EdgeCard />, wearing('princess-bodice'));
    expect(places()).toEqual(['Top edge at centre front', 'Top edge at the underarm']);
    expect(screen.queryByRole('combobox', { name: 'Shape of the top edge' })).toBeNull();
    expect(screen.getAllByRole('textbox', { name: /^Hem at/ })).toHaveLength(6);
    const neckline = screen.getByRole('textbox', { name: 'Top edge at centre front' });
    await user.clear(neckline);
    await user.type(neckline, '3{Enter}');
    expect(client().drafts[0]?.style.topShape.centreFront.beyond).toBeCloseTo(inches(3), 9);
  });
});
