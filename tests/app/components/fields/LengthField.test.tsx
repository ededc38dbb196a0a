import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it, vi } from 'vitest';
import { LengthField, type LengthFieldProps } from '../../../../src/app/components/fields/LengthField';
import { inches } from '../../../../src/engine';
import '../../withStore';

interface Given extends Partial<LengthFieldProps> {
  readonly start: number | null;
  /** How late the value comes back that it shows, ms. */
  readonly lag?: number;
}

/** A field with a maker behind it who takes what it shows; `told` is everything it said to him. */
function Holder({ start, tell, lag, ...given }: Given & { tell: (said: string, mm: number | null) => void }) {
  const [value, setValue] = useState(start);
  return (
    <LengthField
      label="Waist"
      unit="in"
      value={value}
      onShow={(mm) => {
        tell(`show ${mm === null ? 'nothing' : mm.toFixed(2)}`, mm);
        if (lag === undefined) setValue(mm);
        else setTimeout(() => setValue(mm), lag);
      }}
      onKeep={() => tell('keep', value)}
      onDrop={() => {
        tell('drop', start);
        setValue(start);
      }}
      {...given}
    />
  );
}

function field(given: Given) {
  const told: string[] = [];
  let shown = given.start;
  const tell = (said: string, mm: number | null): void => {
    told.push(said);
    shown = mm;
  };
  render(<Holder {...given} tell={tell} />);
  return { box: screen.getByRole('textbox'), user: userEvent.setup(), told, kept: () => shown };
}

describe('a length field', () => {
  it('shows what is kept as a tape is read, and the other unit beside it', () => {
    const { box } = field({ start: inches(34.5) });
    expect(box).toHaveValue('34 1/2');
    expect(screen.getByRole('status')).toHaveTextContent('87.6 cm');
    expect(box).toHaveAccessibleName('Waist');
  });

  it.each([
    ['34 1/2', 'in', '876.30'],
    ['34½', 'in', '876.30'],
    ['34.5', 'in', '876.30'],
    ['34-1/2"', 'in', '876.30'],
    ['87,6', 'cm', '876.00'],
    ['34.5 in', 'cm', '876.30'],
  ] as const)('reads %s in %s and leaves it as it was typed', async (text, unit, mm) => {
    const { box, user, told } = field({ start: null, unit });
    await user.type(box, text);
    await user.tab();
    expect(told.at(-2)).toBe(`show ${mm}`);
    expect(told.at(-1)).toBe('keep');
    expect(box).toHaveValue(text);
    expect(box).toBeValid();
  });

  it.each([
    ['', 'Nothing is written here yet.'],
    [
      'wide',
      'Write digits, with in, ft, cm or mm behind them if you like; other letters are not understood.',
    ],
    ['34 5', 'These numbers do not make one length. Write it like 34 1/2 or 34.5.'],
    ['34..5', 'This is not a length. Write it like 34 1/2 or 34.5.'],
    ['34 1/0', 'A fraction cannot have 0 below its line.'],
    ['34 3/2', 'The fraction after a whole number must be less than 1, as in 34 1/2.'],
    ["2' 14", 'After feet the inches must be fewer than 12.'],
    ['-3', 'This length cannot be less than nothing.'],
  ])('says what is wrong with “%s” once it is left, and keeps what was there', async (text, sentence) => {
    const { box, user, kept } = field({ start: inches(30) });
    await user.clear(box);
    if (text !== '') await user.type(box, text);
    expect(screen.queryByText(sentence)).toBeNull();
    await user.tab();
    expect(screen.getByText(sentence)).toBeVisible();
    expect(box).toHaveValue(text);
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription(expect.stringContaining(sentence));
    expect(kept()).toBe(inches(30));
  });

  it('takes less than nothing where that makes sense, and nothing where it may be left out', async () => {
    const signed = field({ start: 0, signed: true });
    await signed.user.clear(signed.box);
    await signed.user.type(signed.box, '−2');
    expect(signed.kept()).toBe(inches(-2));
  });

  it('may be emptied where it may be left out', async () => {
    const { box, user, kept } = field({ start: inches(30), optional: true });
    await user.clear(box);
    await user.tab();
    expect(kept()).toBeNull();
    expect(box).toBeValid();
  });

  it('says how to take it and what the draft makes of it to a screen reader as well', () => {
    const { box } = field({ start: 900, hint: 'The tape level.', remarks: ['Look for a slip.'] });
    expect(box).toHaveAccessibleDescription('The tape level. Look for a slip.');
  });

  it('takes what is typed after the press that brings one to it in its number’s place, and not after a second one', async () => {
    const { box, user, kept } = field({ start: inches(34.5) });
    await user.click(box);
    await user.keyboard('1 3/8');
    expect(box).toHaveValue('1 3/8');
    expect(kept()).toBeCloseTo(inches(1.375), 6);
    await user.click(box);
    await user.keyboard('{End}8');
    expect(box).toHaveValue('1 3/88');
  });

  it('is selected by the press that brings one into it, and by no later one, which sets the caret', async () => {
    const { box, user } = field({ start: inches(34.5) });
    const selected = () => [(box as HTMLInputElement).selectionStart, (box as HTMLInputElement).selectionEnd];
    await user.click(box);
    expect(selected()).toEqual([0, 6]);
    await user.pointer({ target: box, offset: 2, keys: '[MouseLeft]' });
    expect(selected()).toEqual([2, 2]);
  });

  it('keeps on Enter, and Escape puts back what was kept', async () => {
    const { box, user, told, kept } = field({ start: inches(30) });
    await user.clear(box);
    await user.type(box, '31{Escape}');
    expect(kept()).toBe(inches(30));
    expect(box).toHaveValue('30');
    await user.clear(box);
    await user.type(box, '31{Enter}');
    expect(kept()).toBe(inches(31));
    expect(told.at(-1)).toBe('keep');
    expect(box).toHaveFocus();
    await user.keyboard('32{Enter}');
    expect(box).toHaveValue('32');
    expect(kept()).toBe(inches(32));
  });

  it('loses no key while the value it was read as is still on its way back', async () => {
    const { box, user, kept } = field({ start: 0, signed: true, lag: 5 });
    await user.click(box);
    await user.clear(box);
    await user.keyboard('1 3/8');
    expect(box).toHaveValue('1 3/8');
    expect(kept()).toBeCloseTo(inches(1.375), 9);
    await user.tab();
    await vi.waitFor(() => expect(box).toHaveValue('1 3/8'));
  });

  it('asks which is meant where a fraction may have lost the blank in front of it', async () => {
    const { box, user, kept } = field({ start: inches(30) });
    await user.clear(box);
    await user.type(box, '31/2{Enter}');
    expect(screen.getByText('This may mean 3 1/2 or 15 1/2. Write the one you mean.')).toBeVisible();
    expect(kept()).toBe(inches(30));
  });

  it('turns its sign over by a key, which leaves the focus in it and takes no turn of Tab', async () => {
    const { box, user, kept } = field({ start: 15, unit: 'cm', signed: true });
    const sign = screen.getByRole('button', { name: 'Turn the sign over: Waist' });
    expect(box).toHaveAttribute('inputmode', 'decimal');
    await user.clear(box);
    await user.type(box, '2,5');
    await user.click(sign);
    expect(box).toHaveValue('-2,5');
    expect(box).toHaveFocus();
    await user.click(sign);
    await user.click(sign);
    await user.keyboard('{Enter}');
    expect(kept()).toBe(-25);
    await user.tab();
    expect(sign).not.toHaveFocus();
  });

  it('has no such key where less than nothing makes no sense', () => {
    field({ start: 15, unit: 'cm' });
    expect(screen.queryByRole('button')).toBeNull();
  });

  it('rewrites its number when the unit changes', async () => {
    const field = { label: 'Waist', value: inches(30), onShow: () => {}, onKeep: () => {}, onDrop: () => {} };
    const { rerender } = render(<LengthField {...field} unit="in" />);
    await userEvent.type(screen.getByRole('textbox'), 'x');
    rerender(<LengthField {...field} unit="cm" />);
    expect(screen.getByRole('textbox')).toHaveValue('76.2');
    expect(screen.getByRole('textbox')).toBeValid();
  });
});
