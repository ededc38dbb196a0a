// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { GarmentCard } from '../../../src/app/draft/GarmentCard';
import { changeStyle, DEMO_BOOK } from '../../../src/document';
import { onTable } from '../onTable';

const switched = () => screen.getByRole('checkbox', { name: 'Side panel cut in one' });

describe('the side panel', () => {
  it('is cut in one and gets its seam back, each as a step', async () => {
    const { user, client, changes } = onTable(<GarmentCard />);
    await user.click(switched());
    expect(client().sheets[0]?.style.joinedSide).toBe(true);
    expect(switched()).toBeChecked();
    await user.click(switched());
    expect(client().sheets[0]?.style.joinedSide).toBeUndefined();
    expect(changes()).toEqual(['side panel cut in one', 'side seam']);
  });

  it('says why it cannot be, at the switch', async () => {
    const bare = changeStyle(DEMO_BOOK, (style) => ({
      ...style,
      wedges: style.wedges.filter(({ block }) => block === 'front'),
    }));
    const { user } = onTable(<GarmentCard />, bare);
    await user.click(switched());
    expect(switched()).toHaveAccessibleDescription(/cannot be cut in one at the side/);
  });
});
