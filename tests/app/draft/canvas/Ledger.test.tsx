import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { finishedGirth } from '../../../../src/app/components/girthWords';
import { Ledger } from '../../../../src/app/draft/canvas/Ledger';
import { changeStyle, DEMO_BOOK, formatLength, openClient, openDraftOf } from '../../../../src/document';
import { type Draft, draft, type LedgerRow, type LevelName, type Style } from '../../../../src/engine';
import { onTable } from '../../withStore';

/** The demo's draft in its style, changed, with a level in hand. */
function ledgerOf(change: (style: Style) => Style, level: LevelName = 'waist', asChips = false): Draft {
  const book = changeStyle(DEMO_BOOK, change);
  const client = openClient(book);
  const { style } = openDraftOf(client);
  const made = draft(client.measurements, style);
  onTable(
    <Ledger
      layout={{ centreX: { front: 0, back: 500 }, left: 0, top: 0, width: 500, height: 600, beyond: {} }}
      view={{ left: 0, top: 0, pxPerMm: 1 }}
      heightPx={600}
      asChips={asChips}
      coarse={false}
      level={level}
      onLevel={() => undefined}
    />,
    book,
  );
  return made;
}

const rowOf = (name: string): string =>
  screen.getByRole('heading', { name }).parentElement?.querySelector('.sewn')?.textContent ?? '';

describe('the girth ledger', () => {
  it('proves a waist at the hem along the finished edge', () => {
    ledgerOf((style) => ({ ...style, hemBelow: 0 }));
    // the demo's waist of 29 1/2 in with 2 in less of ease, the lacing gap counted in
    expect(rowOf('waist')).toBe('27½ along the edge ✓ as asked');
  });

  it('proves it across the panels where the hem lies lower', () => {
    ledgerOf((style) => style);
    expect(rowOf('waist')).toBe('laced 27½ ✓ as asked');
  });

  it('says where a level lies that a shaped edge cuts', () => {
    ledgerOf((style) => ({
      ...style,
      hemBelow: 0,
      hemShape: { ...style.hemShape, centreFront: { beyond: 40, kind: 'smooth' } },
    }));
    expect(rowOf('waist')).toBe('at the edge');
  });
});

describe('a girth on the table itself', () => {
  const chip = (level: string) => screen.getByRole('button', { name: new RegExp(`^${level} .*ease`) });

  it('is its figure and a sign; its words are in its name, and in its row once it is open', async () => {
    ledgerOf((style) => ({ ...style, hemBelow: 0 }), 'waist', true);
    expect(chip('waist')).toHaveTextContent(/^27½ ✓$/);
    expect(chip('waist')).toHaveAccessibleName(
      'waist 27½, along the edge, as asked: ease and what is taken in',
    );
    await userEvent.setup().click(chip('waist'));
    expect(screen.getByText('along the edge')).toBeVisible();
    expect(screen.getByText('as asked')).toBeVisible();
  });
});

describe('what was taken in', () => {
  const takenAt = (name: string): string =>
    screen.getByRole('heading', { name }).parentElement?.querySelector('.taken-by')?.textContent ?? '';

  it('is told at the level in hand, as the sum of what the wedges’ own numbers read', () => {
    let uneven = 0;
    for (const hip of [900, 931, 967, 1004, 1043]) {
      for (const [level, name] of [
        ['waist', 'waist'],
        ['underBust', 'under-bust'],
      ] as const) {
        const made = ledgerOf(
          (style) => ({ ...style, ease: { ...style.ease, waist: -40 - hip / 100, underBust: -hip / 90 } }),
          level,
        );
        const intakes = [made.blocks?.front, made.blocks?.back].flatMap(
          (block) => block?.wedges.map(({ intake }) => intake.get(level) ?? 0) ?? [],
        );
        // Sixteenths of an inch, as the fields of the wedges are written.
        const read = intakes.reduce((sum, mm) => sum + Math.round((mm / 25.4) * 16), 0);
        if (read !== Math.round((intakes.reduce((sum, mm) => sum + mm, 0) / 25.4) * 16)) uneven += 1;
        expect(takenAt(name)).toContain(`wedges take ${formatLength((read * 25.4) / 16, 'in')}side seams`);
        cleanup();
      }
    }
    expect(uneven).toBeGreaterThan(0);
  });
});

describe('a finished girth', () => {
  const row = (sewnGirth: number | null, alongEdge: number | null): LedgerRow => ({
    level: 'waist',
    y: 0,
    bodyGirth: 700,
    ease: 0,
    targetGirth: 700,
    alteredBy: 0,
    sewnGirth,
    alongEdge,
    widths: {},
    taken: { wedges: {}, sideSeam: { front: 0, back: 0 } },
  });
  const closure = { front: 'fold', back: 'hooks', lacingGap: 0 } as const;

  it.each([
    ['across the panels, to a tenth of a mm', 700.2, null, { girth: 700.2, along: false, misses: true }],
    ['across the panels before along the edge', 700.05, 705, { girth: 700.05, along: false, misses: false }],
    ['along the edge within 1/16 in', null, 698.5, { girth: 698.5, along: true, misses: false }],
    ['along the edge beyond it', null, 701.6, { girth: 701.6, along: true, misses: true }],
  ])('%s', (_, sewn, along, expected) => {
    const finished = finishedGirth(row(sewn, along), closure);
    expect(finished && { girth: finished.girth, along: finished.along, misses: finished.off !== 0 }).toEqual(
      expected,
    );
  });

  it('is none where neither was measured', () => {
    expect(finishedGirth(row(null, null), closure)).toBeNull();
  });
});

describe('the ease', () => {
  it('is typed in per cent of the body too, and stays so in its field', async () => {
    ledgerOf((style) => style);
    const user = userEvent.setup();
    const ease = screen.getByRole('textbox', { name: 'Ease at the waist' });
    expect(screen.getByText('less 6.8 %')).toBeVisible();
    await user.clear(ease);
    await user.type(ease, '-10 %{Enter}');
    expect(ease).toHaveValue('-10 %');
    expect(screen.getByText('less 10.0 %')).toBeVisible();
    expect(ease).not.toBeInvalid();
    await user.clear(ease);
    await user.type(ease, '-90 %{Enter}');
    expect(ease).toBeInvalid();
    expect(screen.getByText('less 10.0 %')).toBeVisible();
  });
});
