import { describe, expect, it } from 'vitest';
import { begunFrom, READY_MADE, recogniser } from '../../../../src/app/draft/styles/knownStyle';
import { sameStyle } from '../../../../src/app/draft/styles/sameStyle';
import {
  addClient,
  type Book,
  changeStyle,
  DEMO_BOOK,
  type History,
  NAMED_STYLES,
  openClient,
  openClientOf,
  openDraftOf,
  readBook,
  record,
  setIntake,
  setRightWedges,
  setSizing,
  setStation,
  startHistory,
} from '../../../../src/document';
import { DEFAULT_STYLE, type Style } from '../../../../src/engine';

const named = (name: string): Style => NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE;

/** Every object's parts in the other order. */
function turnedRound(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turnedRound);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, part]) => [key, turnedRound(part)]),
  );
}

describe('the same style', () => {
  it.each([...NAMED_STYLES.keys()])('is told from every other, read back or turned round: %s', (name) => {
    const style = named(name);
    const read = readBook(JSON.stringify(changeStyle(DEMO_BOOK, () => style)));
    if (read.kind !== 'book') throw new Error('not read');
    expect(sameStyle(style, openDraftOf(openClient(read.book)).style)).toBe(true);
    expect(sameStyle(turnedRound(style) as Style, style)).toBe(true);
    const like = [...NAMED_STYLES.keys()].filter((other) => sameStyle(named(other), style));
    expect(like).toEqual([name]);
  });

  it.each<[string, Style]>([
    [
      'a wedge moved away and back',
      setStation(setStation(DEFAULT_STYLE, 'front-side', 0.3), 'front-side', 0.5),
    ],
    ['a number a rounding off', { ...DEFAULT_STYLE, topAbove: DEFAULT_STYLE.topAbove + 1e-9 }],
    ['what is not asked for left out', { ...DEFAULT_STYLE, joinedSide: false, turnedHem: false }],
    [
      'an intake that balancing does not read',
      setSizing(setSizing(DEFAULT_STYLE, 'front-side', 'manual', { waist: 9 }), 'front-side', 'balanced', {}),
    ],
  ])('is the same with %s', (_, style) => {
    expect(sameStyle(style, DEFAULT_STYLE)).toBe(true);
    expect(sameStyle(DEFAULT_STYLE, style)).toBe(true);
  });

  it.each<[string, Style]>([
    ['a wedge moved', setStation(DEFAULT_STYLE, 'front-side', 0.51)],
    ['a wedge sized by hand', setIntake(DEFAULT_STYLE, 'front-side', 'waist', 9, {})],
    ['wedges in another order', { ...DEFAULT_STYLE, wedges: [...DEFAULT_STYLE.wedges].reverse() }],
    ['a wedge fewer', { ...DEFAULT_STYLE, wedges: DEFAULT_STYLE.wedges.slice(1) }],
    ['a switch put on', { ...DEFAULT_STYLE, turnedHem: true }],
    ['a piece more', { ...DEFAULT_STYLE, extras: { facing: { width: 30 } } }],
    ['wedges of the right’s own', setRightWedges(DEFAULT_STYLE, true)],
  ])('is another with %s', (_, style) => {
    expect(sameStyle(style, DEFAULT_STYLE)).toBe(false);
    expect(sameStyle(DEFAULT_STYLE, style)).toBe(false);
  });
});

describe('the style a draft began from', () => {
  const recognise = recogniser(READY_MADE);
  const begun = (history: History<Book>): string | undefined => begunFrom(history, recognise)?.title;
  const lay = (history: History<Book>, style: Style, name: string): History<Book> =>
    record(
      history,
      changeStyle(history.present, () => style),
      { code: 'styleLaid', title: name },
    );
  const hem = (history: History<Book>, mm: number): History<Book> =>
    record(
      history,
      changeStyle(history.present, (style) => ({ ...style, hemBelow: mm })),
      { code: 'hemMoved' },
    );
  const cincher = hem(lay(startHistory(DEMO_BOOK), named('cincher'), 'Waist cincher'), 90);

  it('is the last one it was', () => {
    expect(begun(hem(startHistory(DEMO_BOOK), 90))).toBe('Over-bust corset');
    expect(begun(hem(cincher, 95))).toBe('Waist cincher');
  });

  it('is not known behind one that is not known, nor behind a backup', () => {
    expect(begun(lay(cincher, { ...DEFAULT_STYLE, hemBelow: 12 }, 'Harbour'))).toBeUndefined();
    const other = changeStyle(cincher.present, (style) => ({ ...style, topAbove: 12 }));
    expect(begun(record(cincher, other, { code: 'backupRestored' }))).toBeUndefined();
  });

  it('is not known where the history does not go so far back', () => {
    expect(begun(startHistory(cincher.present))).toBeUndefined();
  });

  it('is each draft’s own', () => {
    const bea = hem(record(cincher, addClient(cincher.present, 'bea', 'Bea'), { code: 'clientAdded' }), 80);
    expect(begun(bea)).toBe('Over-bust corset');
    const laid = lay(bea, { ...DEFAULT_STYLE, hemBelow: 12 }, 'Harbour');
    const back = openClientOf(laid.present, 'demo', '2026-11-25T10:00:00.000Z');
    expect(begun(record(laid, back, { code: 'clientOpened', name: 'Wren' }))).toBe('Waist cincher');
  });
});
