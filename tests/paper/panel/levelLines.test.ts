// Lines right across the panels for a fitting: each runs through the balance marks of its level.

import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { type Alteration, type AlteredSide, draftWhole, type Piece, type Point } from '../../../src/engine';
import { levelLines } from '../../../src/paper/panel/levelLines';

/** Distance of a point from a line of chords, by its own reckoning, mm. */
const away = ({ x, y }: Point, line: readonly Point[]): number =>
  Math.min(
    ...line.slice(1).map((b, i) => {
      const a = line[i] as Point;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const t = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
    }),
  );

/** A fold of 12 mm at the centre back that runs out to nothing at the centre front, between under-bust and waist. */
const folded = (side: AlteredSide): Alteration => ({
  kind: 'length',
  side,
  between: ['underBust', 'waist'],
  at: [
    { place: { kind: 'landmark', name: 'centreFront' }, by: 0 },
    { place: { kind: 'landmark', name: 'centreBack' }, by: 12 },
  ],
});

const waistMarks = ({ marks }: Piece): Point[] =>
  marks.filter(({ kind, level }) => kind === 'balance' && level === 'waist').map(({ at }) => at);

const drafted = (name: string, alterations: readonly Alteration[]) => {
  const named = NAMED_STYLES.get(name);
  if (!named) throw new Error(`there is no style ${name}`);
  return draftWhole(DEMO_CLIENT.measurements, named.style, null, alterations);
};

describe('the waist line across the panels', () => {
  it.each([
    ['as drafted', []],
    ['after a fold on both sides', [folded('both')]],
    ['after a fold on the right', [folded('right')]],
  ] as const)('runs through the waist marks of each panel %s', (_, alterations) => {
    const draft = drafted('default', alterations);
    let marked = 0;
    let most = 0;
    for (const piece of draft.pieces) {
      const level = draft.halves?.[piece.side ?? 'left'].levels ?? draft.levels;
      const waist = level.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
      const lines = levelLines(draft, piece, 'waistAndBust').lines.filter(({ kind }) => kind === 'level');
      const marks = waistMarks(piece);
      marked += marks.length;
      for (const mark of marks) {
        most = Math.max(most, Math.abs(mark.y - waist));
        expect(Math.min(...lines.map(({ points }) => away(mark, points))), piece.id).toBeLessThan(0.8);
      }
    }
    expect(marked).toBeGreaterThan(9);
    // The marks themselves moved where there is a fold.
    if (alterations.length > 0) expect(most).toBeGreaterThan(9);
  });

  it('runs across a side panel in one piece too', () => {
    const draft = drafted('long-line-side-panels', []);
    const side = draft.pieces.find(({ kind }) => kind === 'sidePanel') as Piece;
    expect(levelLines(draft, side, 'all').lines.length).toBeGreaterThan(2);
  });
});
