import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { MeasureStep } from '../../../src/app/measure/MeasureStep';
import { inches } from '../../../src/engine';
import { onTable } from '../withStore';

const field = (name: string) => screen.getByRole('textbox', { name: new RegExp(`^${name}`) });

describe('how the two sides differ', () => {
  it('is asked only of a body whose sides do', async () => {
    const { user, client } = onTable(<MeasureStep />);
    expect(screen.queryByRole('textbox', { name: /^Left half/ })).toBeNull();
    const differ = screen.getByRole('checkbox', { name: 'Her two sides differ' });
    await user.click(differ);
    // The demo client's waist is 29 1/2 in; 15 in of it on her left.
    await user.type(field('Left half at the waist'), '15{Enter}');
    await user.type(field('Right hip line lower by'), '-1/4{Enter}');
    expect(client().sides?.leftShare.waist).toBeCloseTo(15 / 29.5, 12);
    expect(client().sides?.rightLower.hip).toBeCloseTo(-inches(0.25), 12);
    await user.clear(field('Left half at the waist'));
    await user.tab();
    expect(client().sides?.leftShare).toEqual({});
    await user.click(differ);
    expect(client()).not.toHaveProperty('sides');
  });

  it('does not take what no draft could', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await user.click(screen.getByRole('checkbox', { name: 'Her two sides differ' }));
    await user.type(field('Left half at the waist'), '25{Enter}');
    expect(client().sides?.leftShare).toEqual({});
  });
});
