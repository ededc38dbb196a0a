import { describe, expect, it } from 'vitest';
import { inches } from '../../../src/engine';
import { draftingSheetHtml, type PlanInput } from '../../../src/paper';
import { tightLacingLines } from '../../../src/paper/remarks/tightLacing';
import { demoPattern } from '../demoPattern';

const { style } = demoPattern().savedDraft;

const drawnIn = (waist: number, ribs: number, read: Partial<PlanInput['savedDraft']> = {}): PlanInput => {
  const asked = demoPattern('A4', { ...style, ease: { ...style.ease, waist: -waist, underBust: -ribs } });
  return { ...asked, savedDraft: { ...asked.savedDraft, ...read } };
};

describe('what is printed of a draft that is drawn in', () => {
  it('is nothing up to the usual, and who read the cautions all the same is told so', () => {
    expect(tightLacingLines(drawnIn(inches(2), 0))).toEqual([]);
    expect(tightLacingLines(drawnIn(inches(2), 0, { acknowledgedReduction: inches(4.5) }))).toEqual([
      'The cautions for a waist reduction of 4½ in were read and acknowledged.',
    ]);
  });

  it('asks for the cautions to be read on the drafting sheet too, and once they were tells the fact', () => {
    const open = draftingSheetHtml(drawnIn(inches(2), inches(6)));
    expect(open).toContain('The ribs at the under-bust are drawn in by 6 in');
    expect(open).toContain('mark them as read');
    expect(open).toContain('have not been acknowledged');
    const read = draftingSheetHtml(
      drawnIn(inches(2), inches(6), { acknowledgedReduction: inches(2), acknowledgedRibs: inches(6) }),
    );
    expect(read).toContain('The ribs at the under-bust are drawn in by 6 in');
    expect(read).toContain('waist reduction of 2 in and an under-bust reduction of 6 in were read');
    expect(read).not.toMatch(/mark them as read|have not been acknowledged/);
  });

  it('speaks of the ribs alone where the waist has room', () => {
    const roomy = drawnIn(-inches(1), inches(6), { acknowledgedReduction: 0, acknowledgedRibs: inches(6) });
    expect(tightLacingLines(roomy).at(-1)).toBe(
      'The cautions for an under-bust reduction of 6 in were read and acknowledged.',
    );
  });
});
