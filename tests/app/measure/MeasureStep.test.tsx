// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { MeasureStep } from '../../../src/app/measure/MeasureStep';
import { addClient, DEMO_BOOK, MEASUREMENT_WORDS } from '../../../src/document';
import { inches, MEASUREMENTS } from '../../../src/engine';
import { onTable } from '../onTable';

/** A field by its label; behind an optional one stands “if known”. */
const box = (name: string) => screen.getByRole('textbox', { name: new RegExp(`^${name}( if known)?$`) });

describe('Measure', () => {
  it('has a field for each measurement, with how to take it', () => {
    onTable(<MeasureStep />);
    for (const { name } of MEASUREMENTS) {
      const field = box(MEASUREMENT_WORDS[name].label);
      expect(field).toHaveAccessibleDescription(expect.stringContaining(MEASUREMENT_WORDS[name].how));
    }
  });

  it('keeps a number under its name, as one change', async () => {
    const { user, client, changes } = onTable(<MeasureStep />);
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), '28 1/4');
    expect(changes()).toEqual([]);
    await user.tab();
    expect(client().measurements.waist).toBe(inches(28.25));
    expect(changes()).toEqual(['waist girth']);
  });

  it('leaves what was kept alone under a text that is no length', async () => {
    const { user, client, changes } = onTable(<MeasureStep />);
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), 'small');
    await user.tab();
    expect(client().measurements.waist).toBe(inches(29.5));
    expect(changes()).toEqual([]);
    expect(box('Waist girth')).toBeInvalid();
  });

  it('says which needed numbers are missing for a client who was just added', () => {
    onTable(<MeasureStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    const needed = MEASUREMENTS.filter((each) => each.needed);
    expect(screen.getAllByText(/is not filled in, and the draft needs it/)).toHaveLength(needed.length);
  });

  it('says when a number cannot be, without taking it away', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await user.clear(box('Bust girth'));
    await user.type(box('Bust girth'), '370');
    await user.tab();
    expect(screen.getByText(/Bust girth must be between/)).toBeVisible();
    expect(client().measurements.bust).toBe(inches(370));
  });
});
