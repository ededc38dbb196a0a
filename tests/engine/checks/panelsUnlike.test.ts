// A panel far wider than the one beside it is warned of, and one that is not is not.

import { describe, expect, it } from 'vitest';
import { balancedWedge, DEFAULT_STYLE, draft, type Style, withPoints } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { sewnAcross } from '../../support/judges/outline';

const withSideAt = (station: number, joinedSide = false): Style => ({
  ...DEFAULT_STYLE,
  ...(joinedSide ? { joinedSide } : {}),
  wedges: DEFAULT_STYLE.wedges.map((wedge) => (wedge.id === 'front-side' ? { ...wedge, station } : wedge)),
});

const unlike = (style: Style) => draft(MEAN_BODY, style).issues.filter(({ code }) => code === 'panelsUnlike');

describe('panels beside each other', () => {
  it('are left alone where they share the width', () => {
    expect(unlike(DEFAULT_STYLE)).toEqual([]);
  });

  it.each([0.36, 0.72])('are warned of where a wedge at station %s leaves one much wider', (station) => {
    const style = withSideAt(station);
    const { pieces, levels } = draft(MEAN_BODY, style);
    const said = unlike(style);
    expect(said.length).toBeGreaterThan(0);
    expect(new Set(said.map(({ at }) => at.piece?.id)).size).toBe(said.length);
    for (const { at, values } of said) {
      const y = levels.find(({ name }) => name === at.level)?.y ?? 0;
      const widths = pieces
        .filter(({ block }) => block === at.block)
        .map((piece) => ({ id: piece.id, width: sewnAcross(piece, y) ?? 0 }));
      const wider = widths.findIndex(({ id }) => id === at.piece?.id);
      const beside = [widths[wider - 1]?.width, widths[wider + 1]?.width];
      const own = widths[wider]?.width ?? 0;
      expect(values.width).toBeCloseTo(own, 6);
      expect(beside.some((width) => width && Math.abs(width - (values.beside ?? 0)) < 1e-6)).toBe(true);
      expect(own / (values.beside ?? 0)).toBeGreaterThan(2.2);
    }
  });

  it('are warned of once where a wide one stands between two narrow ones', () => {
    const stations: Readonly<Record<string, number>> = { 'front-bust': -0.55, 'front-side': 0.6 };
    const said = unlike({
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) => ({
        ...wedge,
        station: stations[wedge.id] ?? wedge.station,
      })),
    });
    expect(said.filter(({ at }) => at.piece?.id === 'front-2')).toHaveLength(1);
  });

  it('are compared part by part where a dart parts the wider one', () => {
    const seamed = withSideAt(0.5).wedges.filter(({ id }) => id !== 'front-side');
    const dart = withPoints(balancedWedge('front-side', 'front', 0.5, 3), {
      upper: { from: 'bust', below: 25 },
      lower: { from: 'waist', below: 75 },
    });
    const narrow = (wedges: Style['wedges']) =>
      draft({ ...MEAN_BODY, bustPointWidth: 160 }, { ...DEFAULT_STYLE, wedges }).issues.filter(
        ({ code }) => code === 'panelsUnlike',
      );
    expect(narrow(seamed).map(({ at }) => at.piece?.id)).toEqual(['front-2']);
    expect(narrow([...seamed, dart])).toEqual([]);
  });

  it('are compared behind a side panel cut in one as well', () => {
    const said = unlike(withSideAt(0.2, true)).map(({ at }) => at.piece?.kind);
    expect(said).toContain('sidePanel');
  });
});
