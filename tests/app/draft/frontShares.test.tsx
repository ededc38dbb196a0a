// The front's parts of the girths, and where a wedge ends above, in the form.

import { fireEvent, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { FrontShares } from '../../../src/app/draft/FrontShares';
import { UpperEndFields } from '../../../src/app/draft/wedges/UpperEndFields';
import { DEMO_BOOK } from '../../../src/document';
import { onTable } from '../withStore';

const style = DEMO_BOOK.clients[0]?.drafts[0]?.style;

describe('the front’s part of a girth', () => {
  it('is typed as a length across the front, and emptied again', async () => {
    const { user, client, changes } = onTable(<FrontShares />);
    const field = screen.getByLabelText('Front at the waist');
    await user.type(field, '14 1/2{Enter}');
    const waist = client().measurements.waist ?? 0;
    expect(client().drafts[0]?.style.frontShare.waist).toBeCloseTo((14.5 * 25.4) / waist, 9);
    await user.clear(field);
    await user.tab();
    expect(client().drafts[0]?.style.frontShare).toEqual(style?.frontShare);
    expect(changes()).toEqual(['front’s part of the waist', 'front’s part of the waist']);
  });
});

describe('the upper end of a wedge', () => {
  it('is chosen, and moved along its edge', async () => {
    const wedge = style?.wedges.find(({ id }) => id === 'front-bust');
    if (!wedge) throw new Error('the demo has no bust wedge');
    const { user, client, changes } = onTable(
      <UpperEndFields wedge={{ ...wedge, endsAt: { edge: 'armhole', part: 0.45 } }} />,
    );
    expect(screen.getByRole('slider')).toHaveAttribute('aria-valuetext', '45 %');
    await user.click(screen.getByRole('radio', { name: 'Neckline' }));
    const endsAt = () => client().drafts[0]?.style.wedges.find(({ id }) => id === wedge.id)?.endsAt;
    expect(endsAt()).toEqual({ edge: 'neckline', part: 0.5 });
    const slider = screen.getByRole('slider');
    fireEvent.change(slider, { target: { value: '30' } });
    fireEvent.pointerUp(slider);
    expect(endsAt()).toEqual({ edge: 'neckline', part: 0.3 });
    expect(changes()).toEqual(['bust wedge: where it ends above', 'bust wedge: where it ends above']);
  });
});
