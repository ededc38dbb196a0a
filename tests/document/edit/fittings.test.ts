import { describe, expect, it } from 'vitest';
import {
  addAlterations,
  addFitting,
  alterationsOf,
  alterationWords,
  changeClient,
  changeFittings,
  DEMO_BOOK,
  type Fitting,
  inForce,
  keepPrint,
  nextMockup,
  openClient,
  openDraftOf,
  printOf,
  record,
  redo,
  removeAlteration,
  removeFitting,
  setAlteration,
  setFitting,
  setNote,
  startHistory,
  switchAlteration,
  undo,
  withPrint,
} from '../../../src/document';
import { type Alteration, DEFAULT_STYLE, inches } from '../../../src/engine';
import { at, landmark, seamOf, taken } from '../../support/styles/alterations';

const WAIST = taken(seamOf('front-2', 'front-3'), [at('waist', inches(0.25))]);
const TOP: Alteration = {
  kind: 'edge',
  edge: 'top',
  side: 'left',
  at: [{ place: seamOf('front-1', 'front-2'), by: -3 }],
};

const made = (): readonly Fitting[] => addAlterations(addFitting([], '2026-11-26'), 0, [WAIST, TOP]);

describe('fittings of a draft', () => {
  it('are added, changed, switched and taken off one by one', () => {
    expect(made()).toEqual([
      {
        date: '2026-11-26',
        note: '',
        on: true,
        alterations: [
          { ...WAIST, on: true },
          { ...TOP, on: true },
        ],
      },
    ]);
    const off = switchAlteration(made(), 0, 0, false);
    expect(alterationsOf(off)).toEqual([{ ...TOP, on: true }]);
    // What is changed stays switched as it was.
    expect(setAlteration(off, 0, 0, TOP)[0]?.alterations[0]).toEqual({ ...TOP, on: false });
    expect(removeAlteration(off, 0, 0)[0]?.alterations).toEqual([{ ...TOP, on: true }]);
    expect(alterationsOf(setFitting(made(), 0, { on: false }))).toEqual([]);
    expect(setFitting(made(), 0, { note: 'hollow', date: '2026-11-27' })[0]).toMatchObject({
      note: 'hollow',
      date: '2026-11-27',
    });
    expect(removeFitting(made(), 0)).toEqual([]);
  });

  it('in force are those that are on, with the alterations that are', () => {
    const fittings = [...switchAlteration(made(), 0, 1, false), ...addFitting([], '2026-12-01')];
    expect(inForce(fittings)).toEqual([{ ...fittings[0], alterations: [{ ...WAIST, on: true }] }]);
  });

  it('change the open draft of the book, and nothing where nothing changes', () => {
    const book = changeFittings(DEMO_BOOK, made);
    expect(openDraftOf(openClient(book)).fittings).toEqual(made());
    expect(changeFittings(book, (fittings) => fittings)).toBe(book);
  });

  it('stand beside what is noted of the garment', () => {
    const noted = setNote(openDraftOf(openClient(DEMO_BOOK)), 'heel', '2 in');
    expect(noted.notes).toEqual({ cloth: '', event: '', heel: '2 in', bra: '' });
  });
});

describe('the record of a print', () => {
  const client = openClient(
    changeFittings(DEMO_BOOK, (fittings) => switchAlteration(made(), fittings.length, 1, false)),
  );
  const print = printOf(client, { on: '2026-11-26', form: 'sheets', mockup: { number: 1, allowance: 38 } });

  it('keeps what it was drafted from, and what of the fittings was made', () => {
    expect(print).toMatchObject({
      draftName: openDraftOf(client).name,
      measurements: client.measurements,
      mockup: 1,
      // The allowance that the mock-up was printed with, not that of the pattern.
      style: {
        ...openDraftOf(client).style,
        allowances: { seam: 38, side: 38, top: 38, hem: 38, centre: 38 },
      },
    });
    const pattern = printOf(client, { on: '2026-11-26', form: 'sheets', mockup: null });
    expect(pattern).toMatchObject({ mockup: null, style: openDraftOf(client).style });
    expect(print.fittings[0]?.alterations).toEqual([{ ...WAIST, on: true }]);
  });

  it('is not kept twice for the same print on the same day', () => {
    const kept = withPrint(client, print);
    expect(kept.prints).toEqual([print]);
    expect(withPrint(kept, { ...print })).toBe(kept);
    expect(withPrint(kept, { ...print, on: '2026-11-27' }).prints).toHaveLength(2);
  });

  it('stays whatever is undone', () => {
    const before = startHistory({ ...DEMO_BOOK, clients: [client] });
    const changed = record(
      before,
      changeClient(before.present, (each) => ({ ...each, name: 'Wren A.' })),
      { code: 'clientRenamed' },
    );
    const kept = keepPrint(changed, client.id, print, '2026-11-26T10:00:00Z');
    expect(openClient(kept.present).prints).toEqual([print]);
    const undone = undo(kept);
    expect(openClient(undone.present)).toMatchObject({ name: client.name, prints: [print] });
    expect(openClient(redo(undone).present)).toMatchObject({ name: 'Wren A.', prints: [print] });
  });

  it('counts the mock-ups of a draft: another one after a change or on another day', () => {
    expect(nextMockup(client, '2026-11-26')).toBe(1);
    const kept = withPrint(client, print);
    expect(nextMockup(kept, '2026-11-26')).toBe(1);
    expect(nextMockup(kept, '2026-11-27')).toBe(2);
    const { clients } = changeClient({ ...DEMO_BOOK, clients: [kept] }, (each) => ({
      ...each,
      measurements: { ...each.measurements, waist: 700 },
    }));
    expect(clients[0] && nextMockup(clients[0], '2026-11-26')).toBe(2);
  });
});

describe('an alteration in words', () => {
  const words = (alteration: Alteration, unit: 'in' | 'cm' = 'in'): string =>
    alterationWords(alteration, { unit, style: DEFAULT_STYLE });

  it('says seam, height, amounts and side', () => {
    expect(words(WAIST)).toBe('Front 2 / Front 3, waist: taken in ¼ in on each edge, both sides');
    expect(
      words(taken(seamOf('front-3', 'back-2'), [at('bust', 10, -5), at('hip', 0, 10)], 'left'), 'cm'),
    ).toBe(
      'Side seam, bust: taken in 1 cm on Front 3, let out 0.5 cm on Back 2; hip: taken in 1 cm on Back 2 alone, left only',
    );
    expect(
      words({
        ...WAIST,
        seam: { kind: 'dart', wedge: DEFAULT_STYLE.wedges[0]?.id ?? '' },
        at: [{ height: { kind: 'belowWaist', mm: inches(1.5) }, a: 0, b: 0 }],
      }),
    ).toContain('1½ in below the waist: unchanged');
  });

  it('never says nothing of what is something: a share of a gap in thirty-seconds', () => {
    const shared = (mm: number, unit: 'in' | 'cm'): string =>
      words(taken(seamOf('front-3', 'back-2'), [at('waist', mm, mm)]), unit);
    expect(shared(-0.64, 'in')).toContain('let out ¹⁄₃₂ in on each edge');
    expect(shared(-0.3, 'in')).toContain('let out under ¹⁄₃₂ in on each edge');
    expect(shared(0.3, 'cm')).toContain('taken in under 0.1 cm on each edge');
  });

  it('says lengths, edges and the bust point', () => {
    const folds: Alteration = {
      kind: 'length',
      between: ['underBust', 'waist'],
      side: 'both',
      at: [
        { place: landmark('centreBack'), by: inches(0.5) },
        { place: landmark('side'), by: 0 },
      ],
    };
    expect(words(folds)).toBe(
      'Under-bust to waist: shorter by ½ in at centre back, nothing at the side, both sides',
    );
    expect(words(TOP, 'cm')).toBe('Top edge: lowered 0.3 cm at Front 1 / Front 2, left only');
    expect(words({ kind: 'bustPoint', side: 'right', out: inches(0.5), down: inches(-0.25) })).toBe(
      'Bust point: ½ in farther out, ¼ in higher, right only',
    );
  });
});
