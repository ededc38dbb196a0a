import { screen, within } from '@testing-library/react';
import type { UserEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { MeasureStep } from '../../../src/app/measure/MeasureStep';
import { addClient, changeClient, DEMO_BOOK, MEASUREMENT_WORDS, setMeasurement } from '../../../src/document';
import { inches, MEASUREMENTS } from '../../../src/engine';
import { onTable } from '../withStore';

/** A field by its label; behind it may stand “if known” or “needed”. */
const box = (name: string) =>
  screen.getByRole('textbox', { name: new RegExp(`^${name}( if known| needed)?$`) });

/** The row of a measurement. */
const row = (name: string): HTMLElement =>
  document.querySelector<HTMLElement>(`[data-field="${name}"]`) ?? document.body;

/** What stands beside the figure. */
const panel = () => within(screen.getByRole('complementary', { name: 'The field in hand' }));

/** Chooses something in the menu of a row. */
async function choose(user: UserEvent, measurement: string, item: string): Promise<void> {
  await user.click(screen.getByRole('button', { name: `More for ${measurement}` }));
  await user.click(screen.getByRole('menuitem', { name: item }));
}

describe('Measure', () => {
  it('has a field for each measurement, with how to take it', async () => {
    const { user } = onTable(<MeasureStep />);
    await user.click(screen.getByRole('checkbox', { name: 'Front arcs' }));
    await user.click(screen.getByRole('checkbox', { name: 'Shoulders and arms' }));
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

  it('says before the way on that a number cannot be read, once it is typed, and leads back to it', async () => {
    const { user } = onTable(<MeasureStep />);
    const next = screen.getByRole('button', { name: /Next: Draft/ });
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), '38 3/434');
    expect(next).not.toHaveAccessibleDescription();
    await user.tab();
    expect(next).toHaveAccessibleDescription(
      'Look at waist girth first: What is typed there cannot be read; the draft goes on with 29½ in.',
    );
    await user.click(next);
    expect(box('Waist girth')).toHaveFocus();
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), '28');
    await user.tab();
    expect(next).not.toHaveAccessibleDescription();
  });

  it('says which numbers are needed of a client who was just added, and calls none of them wrong', async () => {
    const { user } = onTable(<MeasureStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    await user.click(screen.getByRole('checkbox', { name: 'Front arcs' }));
    await user.click(screen.getByRole('checkbox', { name: 'Shoulders and arms' }));
    for (const { name, needed } of MEASUREMENTS) {
      const field = screen.getByRole('textbox', {
        name: `${MEASUREMENT_WORDS[name].label} ${needed ? 'needed' : 'if known'}`,
      });
      expect(field).toBeValid();
      expect(field.closest('.remarked')).toBeNull();
    }
  });

  it('says when a number cannot be, without taking it away', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await user.clear(box('Bust girth'));
    await user.type(box('Bust girth'), '370');
    await user.tab();
    expect(screen.getByText(/Bust girth must be between/)).toBeVisible();
    expect(client().measurements.bust).toBe(inches(370));
  });

  it('calls a number unusual while it is typed, and blocks nothing', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), '39');
    expect(screen.getByText(/^unusual; \S+ to \S+ in would be usual$/)).toBeVisible();
    expect(screen.getByText(/^Unusual for her other measurements: .+ would be usual/)).toBeVisible();
    await user.tab();
    expect(client().measurements.waist).toBe(inches(39));
    expect(box('Waist girth')).toBeValid();
  });

  it('asks for a third reading where two differ by more than a centimetre, and takes the middle one', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await choose(user, 'waist girth', 'Second reading');
    await user.type(box('Second reading of waist girth'), '29 3/4');
    await user.tab();
    expect(client().measurements.waist).toBeCloseTo(inches(29.625), 9);
    expect(screen.getByText('read twice: 29½, 29¾')).toBeVisible();
    expect(screen.queryByRole('textbox', { name: /^Third reading/ })).toBeNull();
    await user.clear(box('Second reading of waist girth'));
    await user.type(box('Second reading of waist girth'), '30 1/2');
    await user.tab();
    expect(screen.getByText(/Lay the tape a third time/)).toBeVisible();
    await user.type(box('Third reading of waist girth'), '30 1/4');
    await user.tab();
    expect(client().measurements.waist).toBe(inches(30.25));
    expect(client().readings.waist).toEqual([29.5, 30.5, 30.25].map(inches));
    expect(screen.getByText('read three times: 29½, 30½, 30¼')).toBeVisible();
  });

  it('asks which reading is meant where they are over 2 in apart, and goes on with the first meanwhile', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await choose(user, 'waist girth', 'Second reading');
    await user.type(box('Second reading of waist girth'), '36{Enter}');
    expect(client().measurements.waist).toBe(inches(29.5));
    const [question] = screen.getAllByText(
      '29½ in first and 36 in now cannot both be right. Which is meant?',
    );
    expect(question).toBeVisible();
    const [meant] = screen.getAllByRole('button', { name: '36 in is meant' });
    await user.click(meant as HTMLElement);
    expect(client().measurements.waist).toBe(inches(36));
    expect(client().readings).toEqual({});
    expect(box('Waist girth')).toHaveFocus();
    expect(screen.queryByText(/Which is meant/)).toBeNull();
  });

  it('offers an estimate for a missing length with how sure it is, and marks it', async () => {
    const { user, client } = onTable(
      <MeasureStep />,
      changeClient(DEMO_BOOK, (open) => setMeasurement(open, 'neckToWaist', null)),
    );
    expect(within(row('neckToWaist')).getByText(/^\S+ in ± \S+ in would be usual$/)).toBeVisible();
    await user.click(box('Neck to waist, front'));
    expect(screen.getByText(/^Usual for her other measurements: \S+ in ± \S+ in/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Use the estimate for neck to waist, front' }));
    expect(client().estimated).toEqual(['neckToWaist']);
    expect(client().measurements.neckToWaist).toBeGreaterThan(350);
    expect(box('Neck to waist, front')).toHaveFocus();
    expect(within(row('neckToWaist')).getByText(/^estimated: \S+ in ± /)).toBeVisible();
    expect(screen.getByText(/^Estimated from her other measurements, ± /)).toBeVisible();
    await user.clear(box('Neck to waist, front'));
    await user.type(box('Neck to waist, front'), '16{Enter}');
    expect(client().estimated).toEqual([]);
  });

  it('offers one for the length to the under-bust by its rule, and marks it', async () => {
    const book = changeClient(DEMO_BOOK, (client) => setMeasurement(client, 'neckToUnderBust', null));
    const { user, client } = onTable(<MeasureStep />, book);
    await user.click(box('Neck to under-bust'));
    expect(screen.getByText('3 in below the bust point: 13¾ in ± ¾ in.')).toBeVisible();
    await choose(user, 'neck to under-bust', 'Use the estimate, 13¾ in');
    expect(client().estimated).toEqual(['neckToUnderBust']);
    const { neckToBust, neckToUnderBust } = client().measurements;
    // To the eighth of an inch in which it was offered.
    expect(Math.abs((neckToUnderBust ?? 0) - (neckToBust ?? 0) - 75)).toBeLessThanOrEqual(inches(1 / 16));
    expect(neckToUnderBust).toBeCloseTo(inches(13.75), 9);
    expect(
      screen.getByText(/^Estimated 3 in below the bust point, .+ Measure it before you cut/),
    ).toBeVisible();
  });

  it('shows one estimate of the over-bust: the one that the draft goes by, with how sure it is', async () => {
    const { user } = onTable(
      <MeasureStep />,
      changeClient(DEMO_BOOK, (open) => setMeasurement(open, 'overBust', null)),
    );
    expect(within(row('overBust')).getByText(/^\S+ in is taken$/)).toBeVisible();
    await user.click(box('Over-bust girth'));
    expect(
      screen.getByText(/^The over-bust girth was not measured; it is taken as \S+ in ± \S+ in/),
    ).toBeVisible();
    expect(screen.queryByText(/^Usual for her other measurements/)).toBeNull();
    expect(screen.queryByRole('button', { name: /^Use the estimate for over-bust/ })).toBeNull();
  });

  it('shows the body from behind for what is measured there', async () => {
    const { user } = onTable(<MeasureStep />);
    await user.click(box('Back neck to waist'));
    expect(screen.getByText('Seen from behind')).toBeVisible();
    expect(panel().getByText(/^From the bone at the nape/)).toBeVisible();
    await user.click(box('Waist girth'));
    expect(screen.queryByText('Seen from behind')).toBeNull();
  });

  it('offers no estimate before the bust is known', async () => {
    const { user } = onTable(<MeasureStep />, addClient(DEMO_BOOK, 'new', 'Client 2'));
    await user.click(box('Neck to waist, front'));
    expect(screen.queryByRole('button', { name: /^More for/ })).toBeNull();
    expect(screen.queryByRole('button', { name: /^Use the estimate/ })).toBeNull();
  });

  it('shows what changed since the set before', async () => {
    const dated = changeClient(DEMO_BOOK, (open) => ({ ...open, takenOn: '2026-03-02' }));
    const { user, client } = onTable(<MeasureStep />, dated);
    await user.click(screen.getByRole('button', { name: 'Measure her again' }));
    expect(client().earlier).toHaveLength(1);
    expect(client().takenOn).toMatch(/^\d{4}-\d\d-\d\d$/);
    await user.clear(box('Waist girth'));
    await user.type(box('Waist girth'), '29{Enter}');
    expect(screen.getAllByText(/^29½ in on .*2026, now −½ in$/)).not.toEqual([]);
    expect(screen.getAllByText(/^as on .*2026$/).length).toBeGreaterThan(10);
  });

  it.each(['999', '0', '3'])(
    'marks a girth of %s in as refused, and its sentence describes the field',
    async (text) => {
      const { user } = onTable(<MeasureStep />);
      const bust = screen.getByRole('textbox', { name: 'Bust girth' });
      expect(bust).toBeValid();
      await user.clear(bust);
      await user.type(bust, text);
      await user.tab();
      expect(bust).toBeInvalid();
      expect(bust).toHaveAttribute('aria-invalid', 'true');
      expect(bust).toHaveAccessibleDescription(/between/);
      await user.clear(bust);
      await user.type(bust, '37');
      await user.tab();
      expect(bust).toHaveAttribute('aria-invalid', 'false');
    },
  );

  it('goes on to the field of the second reading, and to the name of a client begun', async () => {
    const { user, client } = onTable(<MeasureStep />);
    await choose(user, 'waist girth', 'Second reading');
    expect(box('Second reading of waist girth')).toHaveFocus();
    await user.click(screen.getByRole('button', { name: 'Begin with your own client' }));
    expect(screen.getByRole('textbox', { name: 'Client' })).toHaveFocus();
    await user.keyboard('Maud{Enter}');
    expect(client().name).toBe('Maud');
    expect(box('Over-bust girth')).toHaveFocus();
  });

  it.each([
    ['Left half at the waist', /tape round her at the waist, the half on her left only/, '.tape.round'],
    ['Right hip line lower by', /How much lower the hip line lies on her right/, '.tape.round'],
  ])('shows the tape of the level for “%s”, and says what is asked', async (name, how, lengths) => {
    const { user, container } = onTable(<MeasureStep />);
    await user.click(screen.getByRole('checkbox', { name: 'Her two sides differ' }));
    await user.click(box(name));
    expect(panel().getByText(how)).toBeVisible();
    expect(container.querySelector(lengths)).not.toBeNull();
    await user.click(box('Waist girth'));
    expect(panel().queryByText(how)).toBeNull();
  });

  it('puts in the estimate that it offers, in the same eighths', async () => {
    const body = {
      bust: 38.75,
      underBust: 33.5,
      waist: 31.25,
      hip: 42.375,
    } as const;
    const book = (Object.keys(body) as (keyof typeof body)[]).reduce(
      (before, name) => changeClient(before, (open) => setMeasurement(open, name, inches(body[name]))),
      addClient(DEMO_BOOK, 'new', 'Client 2'),
    );
    const { user } = onTable(<MeasureStep />, book);
    await user.click(box('Bust point to bust point'));
    expect(screen.getByText(/^Usual for her other measurements: 7¾ in/)).toBeVisible();
    await choose(user, 'bust point to bust point', 'Use the estimate, 7¾ in');
    expect(box('Bust point to bust point')).toHaveValue('7 3/4');
  });
});
