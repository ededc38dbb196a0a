import { describe, expect, it } from 'vitest';
import { widestGap } from '../../../../src/app/draft/wedges/widestGap';
import { addWedge, DEMO_CLIENT } from '../../../../src/document';
import {
  type BlockName,
  DEFAULT_STYLE,
  draft,
  MOST_WEDGES,
  type Style,
  type Wedge,
} from '../../../../src/engine';

const body = DEMO_CLIENT.measurements;
const draftOf = (style: Style) => draft(body, style);

/** Widths of a block's panels at the waist from the centre on, mm. */
function widths(style: Style, block: BlockName): number[] {
  const { proof, pieces } = draftOf(style);
  const row = proof.ledger.find(({ level }) => level === 'waist');
  return pieces.filter((piece) => piece.block === block).map(({ id }) => row?.widths[id] ?? Number.NaN);
}

const adding = (style: Style, block: BlockName): Style =>
  addWedge(style, 'left', block, widestGap(style, 'left', block, draftOf(style)));

describe('where a new wedge goes', () => {
  it.each(['front', 'back'] as const)(
    'parts the widest %s panel near its middle, and what comes of it can be cut',
    (block) => {
      let style: Style = DEFAULT_STYLE;
      for (;;) {
        const before = widths(style, block);
        // At the front a sixth wedge is on the centre line; a sixth at the back leaves no panel wide enough to sew.
        if (before.length >= MOST_WEDGES) break;
        const parted = before.indexOf(Math.max(...before));
        style = adding(style, block);
        const ids = draftOf(style).blocks?.[block].wedges.filter(({ onCentre }) => !onCentre) ?? [];
        expect(ids[parted]?.id).toBe(style.wedges.at(-1)?.id);
        const [inner = 0, outer = 0] = widths(style, block).slice(parted, parted + 2);
        expect(Math.abs(inner - outer)).toBeLessThan(0.1 * (inner + outer));
        expect(draftOf(style).issues.filter(({ severity }) => severity === 'error')).toEqual([]);
      }
    },
  );

  it('keeps clear of a dart, which parts no panel', () => {
    const [bust] = DEFAULT_STYLE.wedges.filter(({ block, station }) => block === 'front' && station === 0);
    const wedges = [{ ...bust, upper: { from: 'bust', below: 40 } } as Wedge];
    const station = widestGap(
      { ...DEFAULT_STYLE, wedges },
      'left',
      'front',
      draftOf({ ...DEFAULT_STYLE, wedges }),
    );
    expect(Math.abs(station)).toBeGreaterThan(0.3);
  });

  it('goes by the stations where there is nothing drafted', () => {
    const style = { ...DEFAULT_STYLE, wedges: DEFAULT_STYLE.wedges.filter(({ station }) => station >= 0) };
    const none = draft({ ...body, bust: null }, style);
    expect(none.blocks).toBeNull();
    expect(widestGap(style, 'left', 'front', none)).toBe(-0.5);
    const [bust] = style.wedges.filter(({ block, station }) => block === 'front' && station === 0);
    const own = { ...style, rightWedges: [{ ...bust, station: -0.5 } as Wedge] };
    expect(widestGap(own, 'right', 'front', none)).toBe(0.25);
    expect(widestGap(own, 'left', 'front', none)).toBe(-0.5);
  });
});
