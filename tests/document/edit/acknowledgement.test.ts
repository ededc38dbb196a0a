import { describe, expect, it } from 'vitest';
import {
  acknowledge,
  DEMO_BOOK,
  isRead,
  openClient,
  openDraftOf,
  type SavedDraft,
  wantsReading,
} from '../../../src/document';
import { draft, inches } from '../../../src/engine';

const CLIENT = openClient(DEMO_BOOK);
const SHEET = openDraftOf(CLIENT);

/** The demo draft, drawn in so far at waist and under-bust. */
const drawnIn = (waist: number, ribs: number, from: SavedDraft = SHEET): SavedDraft => ({
  ...from,
  style: { ...from.style, ease: { ...from.style.ease, waist: -waist, underBust: -ribs } },
});

/** The codes that ask for the cautions to be read, and have not been answered. */
const asked = (savedDraft: SavedDraft): string[] =>
  draft(CLIENT.measurements, savedDraft.style)
    .issues.filter((issue) => wantsReading(issue) && !isRead(issue, savedDraft))
    .map(({ code }) => code);

describe('the acknowledgement of the cautions', () => {
  it('is wanted of a tight waist and of tight ribs, of nothing else', () => {
    expect(asked(drawnIn(inches(2), 0))).toEqual([]);
    expect(asked(drawnIn(inches(4.5), 0))).toEqual(['waistReductionHigh']);
    expect(asked(drawnIn(inches(2), inches(6)))).toEqual(['ribReductionHigh']);
    expect(
      asked({ ...SHEET, style: { ...SHEET.style, ease: { ...SHEET.style.ease, hip: -inches(6) } } }),
    ).toEqual([]);
  });

  it('answers for both at once, and can be taken back', () => {
    const tight = drawnIn(inches(4.5), inches(6));
    const read = acknowledge(tight, true);
    expect(read).toMatchObject({ acknowledgedReduction: inches(4.5), acknowledgedRibs: inches(6) });
    expect(asked(read)).toEqual([]);
    expect(acknowledge(read, false)).toEqual(tight);
  });

  it.each([
    ['the waist', inches(4.6), inches(6)],
    ['the under-bust', inches(4.5), inches(6.1)],
  ])('falls away when %s is drawn in further, and not when it is let out', (_, waist, ribs) => {
    const read = acknowledge(drawnIn(inches(4.5), inches(6)), true);
    expect(asked(drawnIn(waist, ribs, read)).sort()).toEqual(['ribReductionHigh', 'waistReductionHigh']);
    expect(asked(drawnIn(inches(4.4), inches(5.9), read))).toEqual([]);
  });

  it('falls away also when what grows is still below the ceiling', () => {
    const read = acknowledge(drawnIn(inches(4.5), inches(1)), true);
    expect(asked(drawnIn(inches(4.5), inches(2), read))).toEqual(['waistReductionHigh']);
  });

  it('of a book from before the ribs were spoken of holds for the waist alone', () => {
    const old = { ...SHEET, acknowledgedReduction: inches(4.5) };
    expect(asked(drawnIn(inches(4.5), inches(2), old))).toEqual([]);
    expect(asked(drawnIn(inches(4.5), inches(6), old))).toEqual(['ribReductionHigh']);
    expect(asked(drawnIn(inches(4.6), inches(2), old))).toEqual(['waistReductionHigh']);
  });

  it('counts room at the waist as no reduction', () => {
    const read = acknowledge(drawnIn(-inches(1), inches(6)), true);
    expect(read.acknowledgedReduction).toBe(0);
    expect(asked(read)).toEqual([]);
    expect(asked(drawnIn(inches(1), inches(6), read))).toEqual(['ribReductionHigh']);
  });
});
