import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { GarmentCard } from '../../../src/app/draft/GarmentCard';
import { MendList } from '../../../src/app/draft/strip/MendList';
import { changeStyle, DEMO_BOOK } from '../../../src/document';
import { onTable } from '../withStore';

/** The card, and the list that tells what is wrong with what is set on it. */
const WithFaults = () => (
  <>
    <GarmentCard />
    <MendList onShow={() => undefined} />
  </>
);

const switched = () => screen.getByRole('checkbox', { name: 'Side panel cut in one' });

describe('the top edge', () => {
  const field = () => screen.getByRole('textbox', { name: /^Top edge/ });

  it('is measured from where 0 lies: under an over-bust line at the measured armpit, else at the line', () => {
    const { unmount } = onTable(<GarmentCard />);
    expect(field()).toHaveValue('0');
    expect(field()).toHaveAccessibleDescription(/above its usual place, ½ in under the over-bust line/);
    unmount();
    onTable(<GarmentCard />, {
      ...DEMO_BOOK,
      clients: DEMO_BOOK.clients.map((client) => ({
        ...client,
        measurements: { ...client.measurements, underarmToWaist: null },
      })),
    });
    expect(field()).toHaveAccessibleDescription(/above the over-bust line/);
  });
});

describe('the side panel', () => {
  it('is cut in one and gets its seam back, each as a step', async () => {
    const { user, client, changes } = onTable(<GarmentCard />);
    await user.click(switched());
    expect(client().drafts[0]?.style.joinedSide).toBe(true);
    expect(switched()).toBeChecked();
    await user.click(switched());
    expect(client().drafts[0]?.style.joinedSide).toBeUndefined();
    expect(changes()).toEqual(['side panel cut in one', 'side seam']);
  });

  it('says why it cannot be, at the switch', async () => {
    const bare = changeStyle(DEMO_BOOK, (style) => ({
      ...style,
      wedges: style.wedges.filter(({ block }) => block === 'front'),
    }));
    const { user } = onTable(<WithFaults />, bare);
    await user.click(switched());
    expect(switched()).toHaveAccessibleDescription(/cannot be cut in one at the side/);
  });
});

describe('the side zip', () => {
  const zip = () => screen.getByRole('checkbox', { name: 'Zip in the side seam' });

  it('is put in and taken out, each as a step', async () => {
    const { user, client, changes } = onTable(<GarmentCard />);
    const before = client().drafts[0]?.style;
    await user.click(zip());
    expect(client().drafts[0]?.style.closure.sideZip).toBe(true);
    expect(zip()).toBeChecked();
    await user.click(zip());
    expect(client().drafts[0]?.style).toEqual(before);
    expect(changes()).toEqual(['zip in the side seam', 'side seam without a zip']);
  });

  it('opens a garment whose centres are closed', async () => {
    const closed = changeStyle(DEMO_BOOK, (style) => ({
      ...style,
      closure: { front: 'seam', back: 'seam', lacingGap: 0 },
    }));
    const { user } = onTable(<WithFaults />, closed);
    expect(screen.getByText(/opens nowhere.*or a zip in the side seam/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Put a zip in the side seam' }));
    expect(zip()).toBeChecked();
    expect(screen.queryByText(/opens nowhere/)).toBeNull();
  });

  it('says at the switch that a side panel cut in one excludes it, until one of the two is off', async () => {
    const { user } = onTable(<WithFaults />);
    await user.click(zip());
    expect(zip()).not.toHaveAccessibleDescription(/needs a side seam/);
    await user.click(switched());
    expect(zip()).toHaveAccessibleDescription(/A side zip needs a side seam/);
    expect(switched()).not.toHaveAccessibleDescription(/A side zip needs/);
    await user.click(switched());
    expect(zip()).not.toHaveAccessibleDescription(/needs a side seam/);
  });
});
