import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { ShouldersCard } from '../../../src/app/draft/ShouldersCard';
import { MendList } from '../../../src/app/draft/strip/MendList';
import {
  type Book,
  changeClient,
  changeStyle,
  DEMO_BOOK,
  DEMO_CLIENT,
  setShoulderKind,
  setShoulderNumber,
} from '../../../src/document';
import { DEFAULT_STYLE, draft, inches } from '../../../src/engine';
import { onTable } from '../withStore';

/** The card, and the list that tells what stands against it. */
const WithFaults = () => (
  <>
    <ShouldersCard />
    <MendList onShow={() => undefined} />
  </>
);

const kind = (name: string) => screen.getByRole('radio', { name });
const field = (name: string) => screen.getByRole('textbox', { name });
const shouldered = changeStyle(DEMO_BOOK, (style) => setShoulderKind(style, 'shoulders'));

describe('the card of the shoulders', () => {
  it('offers darts in one press where wedges would run into the armhole, and one undo brings them back', async () => {
    const { user, client, store, changes } = onTable(<WithFaults />);
    const style = () => client().drafts[0]?.style;
    expect(kind('Strapless')).toBeChecked();
    expect(screen.queryByRole('textbox')).toBeNull();
    await user.click(kind('Shoulders'));
    expect(screen.getByText(/The side-front wedge has no place to end on a shouldered front/)).toBeVisible();
    expect(screen.getByText(/The side-back wedge has no place to end on a shouldered back/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Make them darts' }));
    expect(
      style()
        ?.wedges.filter(({ upper, lower }) => upper && lower)
        .map(({ id }) => id),
    ).toEqual(['front-side', 'back-side']);
    expect(screen.queryByText(/has no place to end/)).toBeNull();
    expect(changes()).toEqual(['shoulders', 'darts below the shoulders']);
    store.getState().undo();
    expect(style()?.wedges.some(({ upper }) => upper)).toBe(false);
    expect(style()?.shoulders).toBeDefined();
  });

  it('takes each number; those of wedges that end below are not asked for', async () => {
    const { user, client, changes } = onTable(<ShouldersCard />, shouldered);
    const shoulders = () => client().drafts[0]?.style.shoulders;
    for (const [name, typed] of [
      ['Shoulder drop', '1 1/2'],
      ['Armhole inwards', '3/4'],
      ['Front wedge at its upper end', '1/4'],
      ['Back wedge at its upper end', '3/8'],
    ] as const) {
      await user.clear(field(name));
      await user.type(field(name), `${typed}{Enter}`);
    }
    expect(shoulders()).toEqual({
      drop: inches(1.5),
      armholeIn: inches(0.75),
      intake: { front: inches(0.25), back: inches(0.375) },
    });
    await user.click(kind('Off-shoulder band'));
    expect(screen.queryByRole('textbox', { name: /wedge/ })).toBeNull();
    await user.clear(field('Band height'));
    await user.type(field('Band height'), '2{Enter}');
    expect(shoulders()?.bandAbove).toBeCloseTo(inches(2), 9);
    expect(changes()).toEqual([
      'shoulder drop',
      'armhole inwards',
      'front wedge at mid-shoulder',
      'back wedge at mid-shoulder',
      'off-shoulder band',
      'band height',
    ]);
  });

  it('leads to the tape where the width across the shoulders is missing', () => {
    const unmeasured: Book = changeClient(shouldered, (client) => ({
      ...client,
      measurements: { ...client.measurements, acrossShoulder: null },
    }));
    onTable(<WithFaults />, unmeasured);
    expect(screen.getByText(/The draft needs across back shoulder/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Go to the measurements' })).toHaveAttribute('href', '#measure');
  });

  it.each([
    ['Keep the side seam', { joinedSide: true }, 'side seam'],
    ['Measure it from the over-bust line', { topFrom: 'waist', topAbove: 80 }, 'top edge’s line'],
  ] as const)('offers “%s”', async (name, given, undo) => {
    const book = changeStyle(shouldered, (style) => ({ ...style, ...given }));
    const { user, changes } = onTable(<WithFaults />, book);
    await user.click(screen.getByRole('button', { name }));
    expect(screen.queryByRole('button', { name })).toBeNull();
    expect(changes()).toEqual([undo]);
  });

  it('marks the number that is too much, and the list says why', () => {
    const high = changeStyle(shouldered, (style) => ({
      ...style,
      topShape: { ...style.topShape, underarm: { beyond: inches(7), kind: 'smooth' } },
    }));
    onTable(<WithFaults />, high);
    expect(field('Shoulder drop')).toBeInvalid();
    expect(screen.getByText(/armhole comes out too small/)).toBeVisible();
  });

  // The card says itself what is out of a span; the engine's own must be the same.
  it.each([
    ['Shoulder drop', 'drop', [0, 80]],
    ['Armhole inwards', 'armholeIn', [0, 40]],
    ['Front wedge at its upper end', 'intake.front', [0, 160]],
    ['Band height', 'bandAbove', [10, 150]],
  ] as const)('takes for “%s” what the draft takes', async (label, name, [least, most]) => {
    const refused = (mm: number): boolean => {
      const style = setShoulderNumber(setShoulderKind(DEFAULT_STYLE, 'band'), name, mm);
      return draft(DEMO_CLIENT.measurements, style).issues.some(
        ({ code, at }) => code === 'styleOutOfRange' && at.field === `shoulders.${name}`,
      );
    };
    expect([least - 1, least, most, most + 1].map(refused)).toEqual([true, false, false, true]);
    const band =
      name === 'bandAbove' ? changeStyle(DEMO_BOOK, (style) => setShoulderKind(style, 'band')) : shouldered;
    const { user } = onTable(
      <ShouldersCard />,
      changeClient(band, (client) => ({ ...client, unit: 'cm' })),
    );
    await user.clear(field(label));
    await user.type(field(label), `${(most + 3) / 10}{Enter}`);
    expect(field(label)).toBeInvalid();
    await user.clear(field(label));
    await user.type(field(label), `${most / 10}{Enter}`);
    expect(field(label)).toBeValid();
  });
});
