import { act, screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import Fittings from '../../../../src/app/fit/fittings/Fittings';
import { pulledAlteration } from '../../../../src/app/fit/fittings/pressedSeam';
import { addDraft, changeClient, DEMO_BOOK, DEMO_CLIENT, NAMED_STYLES } from '../../../../src/document';
import { DEFAULT_STYLE, draftWhole, inches, levelsReached, type Style } from '../../../../src/engine';
import { onTable } from '../../withStore';

const press = (name: string) => screen.getByRole('button', { name });
const field = (name: RegExp) => screen.getByRole('textbox', { name });

const unseen = () => undefined;

describe('Fittings', () => {
  it('make an alteration by typing, show it in passing, and are switched, changed and undone', async () => {
    const { user, client, changes, store } = onTable(
      <Fittings pressed={null} onSeam={unseen} onMade={unseen} />,
    );
    const fittings = () => client().drafts[0]?.fittings ?? [];
    await user.click(press('Seam or dart'));
    expect(screen.getByRole('heading', { name: 'New alteration' })).toHaveFocus();
    await user.click(press('Make it'));
    expect(screen.getByRole('alert')).toHaveTextContent('Type an amount that is not 0.');
    await user.selectOptions(screen.getByLabelText('Seam or dart'), 'Front 2 / Front 3');
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    expect(screen.getByText('Both edges together: ½ in taken in.')).toBeVisible();
    expect(screen.getByText('Round the whole garment: waist −1 in.')).toBeVisible();
    // Shown, and not kept yet.
    expect(store.getState().preview).not.toBeNull();
    expect(fittings()).toEqual([]);
    await user.click(press('Make it'));
    const line = 'Front 2 / Front 3, waist: taken in ¼ in on each edge, both sides';
    const tick = () => screen.getByRole('checkbox', { name: line });
    expect(tick()).toBeChecked();
    expect(screen.getByRole('status')).toHaveTextContent(
      'One alteration is made. Round the whole garment: waist −1 in.',
    );
    expect(screen.getByRole('heading', { name: 'Add an alteration' })).toHaveFocus();
    expect(store.getState().preview).toBeNull();
    await user.click(tick());
    expect(fittings()[0]?.alterations[0]?.on).toBe(false);
    expect(screen.getByRole('status')).toHaveTextContent(/^No alteration is made\.$/);
    await user.click(press(`Change: ${line}`));
    await user.selectOptions(screen.getByLabelText('On'), 'the left only');
    await user.click(press('Keep it'));
    expect(
      screen.getByRole('checkbox', { name: /taken in ¼ in on each edge, left only$/ }),
    ).not.toBeChecked();
    expect(changes()).toEqual([
      'alteration of a seam',
      'switched an alteration of a seam off',
      'changed an alteration of a seam',
    ]);
    store.getState().undo();
    store.getState().undo();
    expect(fittings()[0]?.alterations[0]?.on).toBe(true);
  });

  it('call the end of a seam by its edge', async () => {
    const { user } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Seam or dart'));
    await user.selectOptions(screen.getByLabelText('Seam or dart'), 'Front 2 / Front 3');
    await user.selectOptions(screen.getByLabelText('Height'), 'top edge');
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    await user.click(press('Make it'));
    expect(
      screen.getByRole('checkbox', {
        name: 'Front 2 / Front 3, top edge: taken in ¼ in on each edge, both sides',
      }),
    ).toBeChecked();
  });

  it('keep what was typed when another step is gone on to', async () => {
    const { user, client, changes, store } = onTable(
      <Fittings pressed={null} onSeam={unseen} onMade={unseen} />,
    );
    await user.click(press('Seam or dart'));
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    act(() => {
      window.dispatchEvent(new HashChangeEvent('hashchange'));
    });
    expect(client().drafts[0]?.fittings[0]?.alterations).toHaveLength(1);
    expect(changes()).toEqual(['alteration of a seam']);
    expect(store.getState().preview).toBeNull();
    // A form in which nothing was typed leaves nothing.
    await user.click(press('Seam or dart'));
    act(() => {
      window.dispatchEvent(new HashChangeEvent('hashchange'));
    });
    expect(changes()).toHaveLength(1);
  });

  it('say at its place what cannot be read, and make nothing of it', async () => {
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Bust point'));
    await user.clear(field(/^Farther out/));
    await user.type(field(/^Farther out/), 'half');
    await user.click(press('Make it'));
    expect(screen.getByRole('alert')).toHaveTextContent('wanting or cannot be read');
    expect(field(/^Farther out/)).toHaveAttribute('aria-invalid', 'true');
    expect(client().drafts[0]?.fittings).toEqual([]);
  });

  it('say before it is made why it cannot be', async () => {
    const { user } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Seam or dart'));
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '5');
    expect(await screen.findByText(/edges of a panel would meet|panel/, { selector: '.off' })).toBeVisible();
    await user.keyboard('{Escape}');
    screen.getByRole('heading', { name: 'New alteration' }).focus();
    await user.keyboard('{Escape}');
    expect(screen.queryByRole('heading', { name: 'New alteration' })).toBeNull();
  });

  it('begin with the seam that was pressed, at its height', async () => {
    const seam = { kind: 'dart', wedge: DEFAULT_STYLE.wedges[0]?.id ?? '' } as const;
    const { user } = onTable(
      <Fittings
        pressed={{ seam, height: { kind: 'belowWaist', mm: inches(1.5) }, side: 'both' }}
        onSeam={unseen}
        onMade={unseen}
      />,
    );
    expect(screen.getByText(/, 1½ in below the waist$/)).toBeVisible();
    await user.click(press('Alter here'));
    expect(field(/^Below the waist/)).toHaveValue('1 1/2');
    // This style has the wedge as a seam, and no dart of it.
    expect(screen.getByRole('option', { name: /not in this style/, selected: true })).toBeInTheDocument();
  });

  it('say what gaps read at the ends of the lacing come to along top edge and hem', async () => {
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Gaps of the lacing'));
    await user.type(field(/^Gap at the waist/), '2');
    await user.type(field(/^Gap at the hem/), '4');
    await user.click(press('Share over the seams'));
    expect(screen.getByRole('status')).toHaveTextContent(/Round the whole garment: hem \+(2|1¹⁵⁄₁₆) in\./);
    expect(client().drafts[0]?.fittings[0]?.alterations[0]).toMatchObject({
      at: [{ height: { kind: 'level', level: 'waist' } }, { height: { kind: 'end', end: 'hem' } }],
    });
  });

  it('alter the half that was pressed, and are done with the press then', async () => {
    const seam = {
      kind: 'seam',
      pieces: [
        { kind: 'panel', block: 'front', number: 1 },
        { kind: 'panel', block: 'front', number: 2 },
      ],
    } as const;
    let made = 0;
    const { user, client } = onTable(
      <Fittings
        pressed={{ seam, height: { kind: 'level', level: 'waist' }, side: 'right' }}
        onSeam={unseen}
        onMade={() => {
          made += 1;
        }}
      />,
    );
    expect(screen.getByText('Front 1 / Front 2, waist, right')).toBeVisible();
    await user.click(press('Alter here'));
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    expect(made).toBe(0);
    await user.click(press('Make it'));
    expect(made).toBe(1);
    expect(client().drafts[0]?.fittings[0]?.alterations[0]).toMatchObject({ side: 'right' });
  });

  it('share gaps of the lacing over the seams in one step', async () => {
    const { user, client, changes } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Gaps of the lacing'));
    await user.click(press('Share over the seams'));
    expect(screen.getByRole('alert')).toBeVisible();
    await user.type(field(/^Gap at the waist/), '3');
    await user.click(press('Share over the seams'));
    const alterations = client().drafts[0]?.fittings[0]?.alterations ?? [];
    expect(alterations.length).toBeGreaterThan(2);
    expect(changes()).toEqual(['alteration of a seam']);
    const draft = draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE, null, alterations);
    const waist = draft.proof.ledger.find(({ level }) => level === 'waist');
    // Read an inch wider than asked, which is let out.
    expect(waist?.alteredBy).toBeCloseTo(inches(1), 6);
  });

  it('take what is pinned at the top edge of one seam there, and name no level that the garment does not reach', async () => {
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Seam or dart'));
    await user.selectOptions(screen.getByLabelText('Seam or dart'), 'Centre back');
    const height = screen.getByLabelText('Height');
    const offered = within(height)
      .getAllByRole('option')
      .map(({ textContent }) => textContent);
    const plain = draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE);
    const reached = levelsReached(plain);
    expect(offered).toHaveLength(reached.length + 3);
    expect(offered.at(0)).toBe('top edge');
    expect(offered.at(-2)).toBe('hem');
    await user.selectOptions(height, 'top edge');
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    await user.click(press('Make it'));
    const made = draftWhole(
      DEMO_CLIENT.measurements,
      DEFAULT_STYLE,
      null,
      client().drafts[0]?.fittings[0]?.alterations ?? [],
    );
    const topOf = (draft: typeof made): number => {
      const points = draft.pieces
        .find(({ id }) => id === 'back-1')
        ?.edges.find(({ at }) => at === 'inner')?.points;
      return points?.reduce((top, point) => (point.y < top.y ? point : top)).x ?? Number.NaN;
    };
    expect(topOf(made) - topOf(plain)).toBeCloseTo(inches(1 / 4), 1);
  });

  it('share gaps over the seams where one side is altered already, read at the top edge too', async () => {
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Seam or dart'));
    await user.selectOptions(screen.getByLabelText('Seam or dart'), 'Side seam');
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '3/8');
    await user.selectOptions(screen.getByLabelText('On'), 'the right only');
    await user.click(press('Make it'));
    await user.click(press('Gaps of the lacing'));
    await user.type(field(/^Gap at the top edge/), '1');
    await user.type(field(/^Gap at the waist/), '3');
    await user.click(press('Share over the seams'));
    const [, ...shared] = client().drafts[0]?.fittings[0]?.alterations ?? [];
    const draft = draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE, null, shared);
    expect(draft.alterations.every((each) => each?.applied)).toBe(true);
    expect(draft.proof.ledger.find(({ level }) => level === 'waist')?.alteredBy).toBeCloseTo(inches(1), 6);
    // An inch too little is read at the top edge: half of it on either half, a half of that on each edge of a seam.
    const atTop = shared.reduce(
      (sum, each) =>
        each.kind === 'seam'
          ? sum + each.at.reduce((own, { height, a, b }) => own + (height.kind === 'level' ? 0 : a + b), 0)
          : sum,
      0,
    );
    expect(atTop).toBeCloseTo(inches(1 / 2), 6);
  });

  it('take a length that is the same all round in one field', async () => {
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Length'));
    const [place] = screen.getAllByLabelText('Place');
    await user.selectOptions(place as HTMLElement, 'all round');
    await user.clear(field(/^By/));
    await user.type(field(/^By/), '-3/4');
    await user.click(press('Make it'));
    const [made] = client().drafts[0]?.fittings[0]?.alterations ?? [];
    expect(made?.kind === 'length' && made.at.map(({ by }) => by)).toEqual([
      expect.closeTo(inches(-3 / 4), 9),
      expect.closeTo(inches(-3 / 4), 9),
    ]);
    expect(await screen.findByText(/longer by ¾ in all round/)).toBeVisible();
  });

  it('lead from what is seen to what is altered, amounts filled in', async () => {
    const { user } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('What do you see?'));
    await user.selectOptions(
      screen.getByLabelText('Seen on the client'),
      'Folds lie across the back at the waist',
    );
    await user.clear(field(/^Taken up by the fold/));
    await user.type(field(/^Taken up by the fold/), '1/2');
    await user.click(press('Fill in the alteration'));
    await user.click(press('Make it'));
    expect(
      screen.getByRole('checkbox', {
        name: 'Under-bust to waist: shorter by ½ in at centre back, nothing at the side, both sides',
      }),
    ).toBeChecked();
  });

  it.each([
    ['The top edge lies too high', 'Lower by', 'Top edge: lowered ½ in at Front 1 / Front 2, both sides'],
    ['The bust of the mock-up sits too low', 'Too low by', 'Bust point: ½ in higher, both sides'],
    ['The bust of the mock-up sits too high', 'Too high by', 'Bust point: ½ in lower, both sides'],
  ])('alter for “%s”', async (what, amount, line) => {
    const { user } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('What do you see?'));
    await user.selectOptions(screen.getByLabelText('Seen on the client'), what);
    await user.clear(field(new RegExp(`^${amount}`)));
    await user.type(field(new RegExp(`^${amount}`)), '1/2');
    await user.click(press('Fill in the alteration'));
    await user.click(press('Make it'));
    expect(screen.getByRole('checkbox', { name: line })).toBeChecked();
  });

  it('lead from an uneven gap to the gaps level by level', async () => {
    const { user } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('What do you see?'));
    await user.selectOptions(
      screen.getByLabelText('Seen on the client'),
      'The lacing gap is uneven: ( ), ) (, V or A',
    );
    await user.click(press('Gaps of the lacing'));
    expect(field(/^Gap at the waist/)).toBeVisible();
  });

  it('say and keep what the style no longer has', async () => {
    const { user, store, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(press('Seam or dart'));
    await user.selectOptions(screen.getByLabelText('Seam or dart'), 'Front 2 / Front 3');
    await user.clear(field(/^On each edge/));
    await user.type(field(/^On each edge/), '1/4');
    await user.click(press('Make it'));
    const style: Style = {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.filter(({ block }) => block === 'back'),
    };
    store.getState().change({ code: 'styleLaid', title: 'Plain front' }, (book) =>
      changeClient(book, (open) => ({
        ...open,
        drafts: open.drafts.map((draft) => ({ ...draft, style })),
      })),
    );
    expect(await screen.findByText(/no such seam or dart\. It is kept/)).toBeVisible();
    expect(client().drafts[0]?.fittings[0]?.alterations).toHaveLength(1);
  });

  it('carry over into the client’s next draft, each seam by where it stands', async () => {
    const long = NAMED_STYLES.get('long-line-side-panels')?.style as Style;
    const seam = {
      kind: 'seam',
      pieces: [
        { kind: 'panel', block: 'front', number: 2 },
        { kind: 'panel', block: 'front', number: 3 },
      ],
    } as const;
    const at = [{ height: { kind: 'level', level: 'waist' }, a: 5, b: 5 }] as const;
    const fitting = {
      date: '2026-11-26',
      note: '',
      on: true,
      alterations: [{ kind: 'seam', seam, side: 'both', at, on: true }],
    } as const;
    const book = changeClient(DEMO_BOOK, (client) => {
      const [first] = client.drafts;
      const drafts = first ? [{ ...first, fittings: [fitting] }] : [];
      const next = addDraft({ ...client, drafts }, 'next', 'default');
      return {
        ...next,
        drafts: next.drafts.map((draft) => (draft.id === 'next' ? { ...draft, style: long } : draft)),
      };
    });
    const { user, client } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />, book);
    await user.click(screen.getByText('Carry over'));
    await user.click(press('Carry over into this draft'));
    const carried = client().drafts[1]?.fittings[0]?.alterations[0];
    // The side front seam of a style with side panels in one joins the front to the side panel.
    expect(carried).toMatchObject({
      kind: 'seam',
      seam: { pieces: [{ kind: 'panel', block: 'front' }, { kind: 'sidePanel' }] },
    });
    expect(within(screen.getByRole('list')).getByRole('checkbox')).toBeChecked();
  });

  it('keep notes of the draft', async () => {
    const { user, client, changes } = onTable(<Fittings pressed={null} onSeam={unseen} onMade={unseen} />);
    await user.click(screen.getByText('Notes of this draft'));
    await user.type(screen.getByLabelText('Cloth'), 'coutil');
    await user.tab();
    expect(client().drafts[0]?.notes.cloth).toBe('coutil');
    expect(changes()).toEqual(['note of the cloth']);
  });
});

describe('an edge pulled in the drawing', () => {
  const draft = draftWhole(DEMO_CLIENT.measurements, DEFAULT_STYLE);
  const waist = draft.levels.find(({ name }) => name === 'waist')?.y ?? 0;
  const edge = draft.proof.seams.find(({ seam }) => seam.kind === 'sideSeam');

  it('alters that edge alone, in lines of the tape, at the level where it was taken hold of', () => {
    const [a, b] = [edge?.a, edge?.b];
    expect(
      pulledAlteration(draft, { piece: a?.piece.id ?? '', edge: a?.edge ?? 0, y: waist + 4 }, 6, 'in'),
    ).toMatchObject({
      kind: 'seam',
      side: 'both',
      at: [{ height: { kind: 'level', level: 'waist' }, a: inches(0.25), b: 0 }],
    });
    expect(
      pulledAlteration(draft, { piece: b?.piece.id ?? '', edge: b?.edge ?? 0, y: waist + 40 }, -3.2, 'cm'),
    ).toMatchObject({ at: [{ height: { kind: 'belowWaist', mm: 40 }, a: 0, b: -3 }] });
  });

  it('of less than a line alters nothing', () => {
    const { piece, edge: index } = edge?.a ?? { piece: { id: '' }, edge: 0 };
    expect(pulledAlteration(draft, { piece: piece.id, edge: index, y: waist }, 0.4, 'in')).toBeNull();
  });
});
