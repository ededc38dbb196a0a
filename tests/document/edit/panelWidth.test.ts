import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES, setPanelWidth } from '../../../src/document';
import { DEFAULT_STYLE, type Draft, draft, type LevelName, type Style } from '../../../src/engine';

const redraft = (style: Style): Draft => draft(DEMO_CLIENT.measurements, style);
const widthsAt = (style: Style, level: LevelName): Readonly<Record<string, number>> =>
  redraft(style).proof.ledger.find((row) => row.level === level)?.widths ?? {};

describe('a panel width that is given as a number', () => {
  it.each([
    ['front-1', 'waist', 6],
    ['front-2', 'underBust', -5],
    ['front-3', 'waist', 4],
    ['back-1', 'bust', -4],
    ['back-3', 'waist', 5],
  ] as const)('is what %s measures at the %s', (piece, level, more) => {
    const before = widthsAt(DEFAULT_STYLE, level);
    const width = (before[piece] ?? Number.NaN) + more;
    const after = widthsAt(setPanelWidth(DEFAULT_STYLE, { piece, level, width }, redraft), level);
    expect(Math.abs((after[piece] ?? Number.NaN) - width)).toBeLessThan(0.05);
    // Panels of the other block stay as they are.
    const other = piece.startsWith('front') ? 'back-2' : 'front-2';
    expect(after[other]).toBeCloseTo(before[other] ?? Number.NaN, 6);
  });

  it('leaves intakes to the wedges and takes no other wedge along', () => {
    const set = setPanelWidth(DEFAULT_STYLE, { piece: 'front-1', level: 'waist', width: 75 }, redraft);
    const moved = set.wedges.filter((wedge, i) => wedge !== DEFAULT_STYLE.wedges[i]);
    expect(moved.map(({ id, sizing }) => [id, sizing])).toEqual([['front-bust', 'balanced']]);
  });

  it('of a side panel cut in one moves the wedge before it', () => {
    const style = NAMED_STYLES.get('long-line-side-panels')?.style ?? DEFAULT_STYLE;
    const before = widthsAt(style, 'waist').side ?? Number.NaN;
    const after = widthsAt(
      setPanelWidth(style, { piece: 'side', level: 'waist', width: before + 5 }, redraft),
      'waist',
    );
    expect(after.side).toBeCloseTo(before + 5, 1);
  });

  it('that no panel has changes nothing', () => {
    expect(setPanelWidth(DEFAULT_STYLE, { piece: 'front-9', level: 'waist', width: 50 }, redraft)).toBe(
      DEFAULT_STYLE,
    );
    expect(setPanelWidth(DEFAULT_STYLE, { piece: 'front-1', level: 'hip', width: 50 }, redraft)).toBe(
      DEFAULT_STYLE,
    );
  });
});
