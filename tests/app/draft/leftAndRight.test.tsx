import { screen } from '@testing-library/react';
import { useState } from 'react';
import { describe, expect, it } from 'vitest';
import { SideChoice } from '../../../src/app/draft/SideChoice';
import { SidesCard } from '../../../src/app/draft/SidesCard';
import { StyleChoice } from '../../../src/app/draft/styles/StyleChoice';
import { WedgeCard } from '../../../src/app/draft/wedges/WedgeCard';
import { FitStep } from '../../../src/app/fit/FitStep';
import { SideContext } from '../../../src/app/store/sideContext';
import { useDraft } from '../../../src/app/store/storeContext';
import { changeClient, changeStyle, DEMO_BOOK, setRightWedges } from '../../../src/document';
import { inches, type Side } from '../../../src/engine';
import { onTable } from '../withStore';

function PiecesSeen() {
  return (
    <output aria-label="Pieces">
      {useDraft()
        .pieces.map(({ id }) => id)
        .join(' ')}
    </output>
  );
}

function Bench() {
  const [side, setSide] = useState<Side>('left');
  const [selected, setSelected] = useState<string | null>(null);
  return (
    <SideContext value={side}>
      <SideChoice side={side} onSide={setSide} />
      <WedgeCard selected={selected} onSelect={setSelected} level="waist" onLevel={() => undefined} />
      <SidesCard />
      <PiecesSeen />
    </SideContext>
  );
}

const half = (name: 'Left' | 'Right') => screen.queryByRole('radio', { name });
const OWN = 'The right half has wedges of its own';

describe('left and right on the Draft step', () => {
  it('are not spoken of until they differ', async () => {
    const { user } = onTable(<Bench />);
    expect(half('Left')).toBeNull();
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    expect(half('Left')).toBeChecked();
    expect(screen.getByRole('group', { name: 'Side shown' })).toBeVisible();
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    expect(half('Left')).toBeNull();
  });

  it('take changes to the half that lies on the table', async () => {
    const { user, client, changes, store } = onTable(<Bench />);
    const style = () => client().drafts[0]?.style;
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    await user.click(half('Right') as HTMLElement);
    await user.click(screen.getByRole('button', { name: 'Bust' }));
    const waist = screen.getByRole('textbox', { name: 'Intake at the waist' });
    await user.clear(waist);
    await user.type(waist, '1 1/2{Enter}');
    const left = style()?.wedges.find(({ id }) => id === 'front-bust');
    const right = style()?.rightWedges?.find(({ id }) => id === 'right-front-bust');
    expect(left?.sizing).toBe('balanced');
    expect(right).toMatchObject({ sizing: 'manual' });
    expect(right?.intake.waist).toBeCloseTo(inches(1.5), 9);
    expect(changes()).toEqual(['wedges of the right’s own', 'intake at the waist']);
    await user.click(screen.getByRole('button', { name: /^Take off the / }));
    expect(style()?.wedges).toHaveLength(5);
    expect(style()?.rightWedges).toHaveLength(4);
    store.getState().undo();
    expect(style()?.rightWedges).toHaveLength(5);
  });

  it('add wedges and turn intake on the half that lies on the table', async () => {
    const { user, client, store } = onTable(<Bench />);
    const style = () => client().drafts[0]?.style;
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    const left = style()?.wedges;
    await user.click(half('Right') as HTMLElement);
    await user.click(screen.getByRole('button', { name: 'Add a back wedge' }));
    expect(style()?.rightWedges?.at(-1)).toMatchObject({ id: 'back-added-1', block: 'back' });
    expect(screen.getByRole('button', { name: /^Take off the / })).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Bust' }));
    await user.click(screen.getByRole('button', { name: 'Turn' }));
    const front = style()?.rightWedges?.filter(({ block }) => block === 'front');
    expect(front?.every(({ sizing }) => sizing === 'manual')).toBe(true);
    expect(style()?.wedges).toBe(left);
    store.getState().undo();
    store.getState().undo();
    expect(style()?.rightWedges).toHaveLength(5);
  });

  it('show the left’s wedges on both halves when the right’s own are taken off', async () => {
    const { user, client } = onTable(<Bench />);
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    const left = client().drafts[0]?.style.wedges;
    await user.click(half('Right') as HTMLElement);
    await user.click(screen.getByRole('button', { name: 'Bust' }));
    await user.click(screen.getByRole('button', { name: /^Take off the / }));
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    expect(client().drafts[0]?.style.wedges).toBe(left);
    expect(client().drafts[0]?.style.rightWedges).toBeUndefined();
    expect(screen.getByRole('button', { name: 'Bust' })).toBeVisible();
  });

  it('keep a style as it is, whichever half lies on the table', async () => {
    const kept = changeStyle(DEMO_BOOK, (style) => setRightWedges(style, true));
    const { user, store } = onTable(
      <SideContext value="right">
        <StyleChoice />
      </SideContext>,
      kept,
    );
    await user.click(screen.getByRole('button', { name: /^Style book/ }));
    await user.type(
      await screen.findByRole('textbox', { name: 'Name of the style', hidden: true }, { timeout: 15_000 }),
      'Two sides{Enter}',
    );
    const [own] = store.getState().history.present.styles;
    expect(own?.style.wedges.map(({ id }) => id)).toContain('front-bust');
    expect(own?.style.rightWedges?.map(({ id }) => id)).toContain('right-front-bust');
  });

  it('show one half as drafted by itself', async () => {
    const { user } = onTable(<Bench />);
    await user.click(screen.getByRole('checkbox', { name: OWN }));
    expect(screen.getByLabelText('Pieces')).toHaveTextContent('front-1 front-2 front-3 back-1 back-2 back-3');
    await user.click(half('Right') as HTMLElement);
    await user.click(screen.getByRole('button', { name: 'Bust' }));
    await user.click(screen.getByRole('button', { name: /^Take off the / }));
    expect(screen.getByLabelText('Pieces')).toHaveTextContent('front-1 front-2 back-1 back-2 back-3');
    await user.click(half('Left') as HTMLElement);
    expect(screen.getByLabelText('Pieces')).toHaveTextContent('front-1 front-2 front-3 back-1 back-2 back-3');
  });
});

describe('left and right on the Fit step', () => {
  const sides = { leftShare: { waist: 0.52 }, rightLower: { waist: 6, hip: 8 } };
  const book = changeClient(
    changeStyle(DEMO_BOOK, (style) => setRightWedges(style, true)),
    (client) => ({ ...client, sides }),
  );

  it('are closed up together and proved as one', () => {
    onTable(<FitStep />, book);
    const drawing = screen.getByRole('img', { name: /centre front in the middle/ });
    for (const name of ['Left front 1', 'Right front 1', 'Left back 3', 'Right back 3'])
      expect(drawing).toHaveTextContent(name);
    for (const proof of ['Seam walk', 'Edge run', 'Girths'])
      expect(screen.getByRole('region', { name: proof })).toHaveTextContent('holds');
    expect(screen.getByRole('region', { name: 'Seam walk' })).toHaveTextContent('Left side seam');
  });
});
