// A text that cannot be read, or a length beyond what the field can take: said, never used, and still there on return.

import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it, vi } from 'vitest';
import { LengthField } from '../../../../src/app/components/fields/LengthField';
import { inches } from '../../../../src/engine';

type Props = Parameters<typeof LengthField>[0];

/** The field as a step has it: what it shows comes back to it. */
function Held({ onShow, ...props }: Omit<Props, 'value'>) {
  const [value, setValue] = useState<number | null>(inches(40));
  const show = (mm: number | null): void => {
    onShow(mm);
    setValue(mm);
  };
  return <LengthField {...props} value={value} onShow={show} />;
}

function field(more: Partial<Props> = {}) {
  const [onShow, onKeep, onDrop] = [vi.fn(), vi.fn(), vi.fn()];
  const shown = render(
    <Held label="Hip girth" unit="in" onShow={onShow} onKeep={onKeep} onDrop={onDrop} {...more} />,
  );
  return {
    ...shown,
    onShow,
    onDrop,
    input: screen.getByRole<HTMLInputElement>('textbox', { name: /Hip girth/ }),
  };
}

describe('a text that cannot be read', () => {
  it('is in its field again after another step was in view, until it is mended', async () => {
    const user = userEvent.setup();
    const first = field({ remember: 'wren hip' });
    await user.clear(first.input);
    await user.type(first.input, '4O 1/2');
    await user.tab();
    first.unmount();
    const again = field({ remember: 'wren hip' });
    expect(again.input.value).toBe('4O 1/2');
    expect(again.input.getAttribute('aria-invalid')).toBe('true');
    await user.clear(again.input);
    await user.type(again.input, '40 1/2');
    expect(again.onShow).toHaveBeenLastCalledWith(inches(40.5));
    again.unmount();
    expect(field({ remember: 'wren hip' }).input.value).toBe('40');
  });

  it('has no reading in the other unit beside it', async () => {
    const user = userEvent.setup();
    const { input } = field();
    const other = screen.getByRole('status');
    expect(other.textContent).toBe('101.6 cm');
    await user.clear(input);
    await user.type(input, 'banana');
    await user.tab();
    expect(other.textContent).toBe('');
    await user.clear(input);
    await user.type(input, '41');
    expect(other.textContent).toBe('104.1 cm');
  });

  it('of another field is not mixed up with it', async () => {
    const user = userEvent.setup();
    const first = field({ remember: 'wren bust' });
    await user.clear(first.input);
    await user.type(first.input, 'x');
    first.unmount();
    expect(field({ remember: 'wren waist' }).input.value).toBe('40');
  });
});

describe('a length beyond the span', () => {
  it('is said with ends that can themselves be typed, and not shown', async () => {
    const user = userEvent.setup();
    const { input, onShow, onDrop } = field({ signed: true, span: [-600, 600] });
    await user.clear(input);
    onShow.mockClear();
    await user.type(input, '-25');
    expect(onShow).not.toHaveBeenCalledWith(inches(-25));
    expect(onDrop).toHaveBeenCalled();
    await user.tab();
    expect(screen.getByText(/This must be from −23 to 23 in\./)).toBeDefined();
    await user.clear(input);
    await user.type(input, '23');
    expect(onShow).toHaveBeenLastCalledWith(inches(23));
  });
});
