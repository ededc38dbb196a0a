import { describe, expect, it } from 'vitest';
import {
  type DartSpace,
  DEMO_CLIENT,
  NAMED_STYLES,
  setDartPoint,
  setEnds,
  setIntake,
} from '../../../src/document';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  inches,
  reaches,
  type Style,
  withPoints,
  xAt,
} from '../../../src/engine';
import { snapPointsOf } from '../../../src/table/gestures/snap';
import { askedExtent } from '../../../src/table/handles/dartExtent';
import type { Handle } from '../../../src/table/handles/handle';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { panelsBeside } from '../../../src/table/handles/panelsBeside';
import { type CanvasLayout, layOut } from '../../../src/table/layout/layOut';

const draftOf = (style: Style): Draft => draft(DEMO_CLIENT.measurements, style);
const LEVELS = draftOf(DEFAULT_STYLE).levels;
const y = (name: string): number => LEVELS.find((level) => level.name === name)?.y ?? Number.NaN;
const SPACE: DartSpace = { top: 200, bust: y('bust'), waist: y('waist'), hem: y('waist') + 101 };

const ID = 'front-side';
const CLOSED = setEnds(DEFAULT_STYLE, ID, 'closed', SPACE);

const handlesFor = (style: Style): Handle[] => {
  const made = draftOf(style);
  return handlesOf(made, style, layOut(made) as CanvasLayout).filter(({ wedge }) => wedge === ID);
};
const handleFor = (style: Style, id: string): Handle =>
  handlesFor(style).find((each) => each.id === id) as Handle;

describe('the handles of a dart', () => {
  it('are its axis, its points, and its legs at the levels it crosses', () => {
    expect(handlesFor(CLOSED).map(({ id }) => id)).toEqual([
      'axis:front-side',
      'point:front-side:upper',
      'point:front-side:lower',
      'leg:front-side:underBust:inner',
      'leg:front-side:underBust:outer',
      'leg:front-side:waist:inner',
      'leg:front-side:waist:outer',
    ]);
    expect(handlesFor(DEFAULT_STYLE).some(({ kind }) => kind === 'point')).toBe(false);
  });

  it('stand on its points, with their number below the level', () => {
    const [upper, lower] = [
      handleFor(CLOSED, 'point:front-side:upper'),
      handleFor(CLOSED, 'point:front-side:lower'),
    ];
    expect(upper).toMatchObject({ level: 'bust', value: inches(1), gain: { x: 0, y: 1 } });
    expect(upper.at.y).toBeCloseTo(y('bust') + inches(1), 9);
    expect(lower.at.y).toBeCloseTo(y('waist') + lower.value, 9);
    expect(upper.tip).toBeUndefined();
  });

  it('move a point to where they are pulled, and not past the other one', () => {
    const upper = handleFor(CLOSED, 'point:front-side:upper');
    const pulled = upper.set(CLOSED, 40);
    expect(handleFor(pulled, 'point:front-side:upper').at.y).toBeCloseTo(y('bust') + 40, 9);
    const lower = handleFor(CLOSED, 'point:front-side:lower');
    expect(upper.at.y + (upper.most - upper.value)).toBeLessThan(lower.at.y - 30);
    const [least] = draftOf(upper.set(CLOSED, upper.most)).issues.filter(
      ({ code }) => code === 'dartTooShort',
    );
    expect(least).toBeUndefined();
  });

  it('show where it is shut sooner, and let it be opened there', () => {
    const high = setDartPoint(CLOSED, ID, 'upper', { from: 'bust', below: -30 });
    // A balanced wedge takes nothing at the bust.
    const upper = handleFor(high, 'point:front-side:upper');
    expect(upper.at.y).toBeCloseTo(y('bust') - 30, 9);
    expect(upper.tip?.y).toBeCloseTo(y('bust'), 9);
    const leg = handleFor(high, 'leg:front-side:bust:outer');
    const opened = handleFor(leg.set(high, 12), 'point:front-side:upper');
    expect(opened.tip).toBeUndefined();
  });

  it('neither add cloth nor bring it to the centre line', () => {
    expect(handleFor(CLOSED, 'leg:front-side:waist:outer').least).toBe(0);
    const axis = handleFor(CLOSED, 'axis:front-side');
    expect(axis.least).toBeGreaterThan(0);
    const moved = axis.set(CLOSED, axis.least).wedges.find(({ id }) => id === ID);
    expect(moved?.station).toBeGreaterThan(-1);
  });

  it('keep a bent axis as it is when the whole of it is pulled', () => {
    const bent: Style = {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === ID ? { ...wedge, stationAt: { waist: 0.6 } } : wedge,
      ),
    };
    const axis = handleFor(bent, 'axis:front-side');
    expect(axis.set(bent, axis.value)).toEqual(bent);
  });

  it('are drawn to level lines and to the height of other darts', () => {
    const two = setEnds(CLOSED, 'back-side', 'closed', { ...SPACE, hem: SPACE.hem - 20 });
    const marks = snapPointsOf(handleFor(two, 'point:front-side:lower'), draftOf(two));
    expect(marks.filter(({ place }) => place === 'level').map(({ value }) => value)).toContain(0);
    const [even] = marks.filter(({ place }) => place === 'even');
    expect(even?.value).toBeCloseTo(SPACE.hem - 20 - inches(1) - SPACE.waist, 9);
  });
});

describe('the cloth beside a dart', () => {
  it('is what lies between its legs and the edges of its panel at that height', () => {
    const made = draftOf(CLOSED);
    const leg = handleFor(CLOSED, 'leg:front-side:waist:outer');
    const [left, right] = panelsBeside(leg, made);
    expect(left).toMatchObject({ part: true, piece: { id: 'front-2' } });
    expect(right).toMatchObject({ part: true, piece: { id: 'front-2' } });
    const waist = made.proof.ledger.find(({ level }) => level === 'waist');
    expect((left?.width ?? 0) + (right?.width ?? 0)).toBeCloseTo(waist?.widths['front-2'] ?? Number.NaN, 6);
  });

  it('reaches to the next dart in the same panel', () => {
    const two = setEnds(
      setEnds(setIntake(CLOSED, ID, 'waist', 10, {}), 'front-bust', 'closed', SPACE),
      ID,
      'openAtHem',
      SPACE,
    );
    const made = draftOf(two);
    const [left] = panelsBeside(handleFor(two, 'leg:front-side:waist:outer'), made);
    const block = made.blocks?.front;
    const [bust, own] = ['front-bust', ID].map((id) => block?.wedges.find((wedge) => wedge.id === id));
    const knot = (line: { ys: readonly number[]; xs: readonly number[] } | undefined): number =>
      line?.xs[line.ys.indexOf(y('waist'))] ?? Number.NaN;
    expect(left?.width).toBeCloseTo(knot(own?.innerLeg) - knot(bust?.outerLeg), 6);
  });
});

describe('the run of a wedge as asked', () => {
  it('has a point only where the wedge has one', () => {
    const upper = { from: 'waist', below: -20 } as const;
    expect(askedExtent({ upper }, LEVELS)).toEqual({ upper: y('waist') - 20, lower: null });
    expect(askedExtent(undefined, LEVELS)).toEqual({ upper: null, lower: null });
  });

  it('crosses what lies clear of its points', () => {
    const extent = { upper: 100, lower: 200 };
    expect([100, 104, 106, 194, 196, 300].map((at) => reaches(extent, at))).toEqual([
      false,
      false,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('the legs of a dart that has shut', () => {
  it('are caught on its axis at the levels it was to reach', () => {
    const opened = setEnds(DEFAULT_STYLE, ID, 'openAtTop', SPACE);
    const slanted: Style = {
      ...opened,
      wedges: opened.wedges.map((wedge) =>
        wedge.id === ID
          ? withPoints({ ...wedge, stationAt: { waist: 0.3 } }, { lower: { from: 'waist', below: 60 } })
          : wedge,
      ),
    };
    const made = draftOf(slanted);
    const dart = made.blocks?.front.wedges.find(({ id }) => id === ID);
    const beyond = handlesFor(slanted).filter(
      ({ kind, at }) => kind === 'leg' && at.y > (dart?.extent.lower ?? Number.POSITIVE_INFINITY) + 1,
    );
    expect(beyond.length).toBeGreaterThan(0);
    const shift = (layOut(made) as CanvasLayout).centreX.front;
    for (const { at } of beyond) expect(at.x - shift).toBeCloseTo(xAt(dart?.axis as never, at.y), 6);
  });
});

describe('bending an axis', () => {
  const bendsOf = (style: Style, id = ID): Handle[] => {
    const made = draftOf(style);
    return handlesOf(made, style, layOut(made) as CanvasLayout, draftOf).filter(
      ({ kind, wedge }) => kind === 'bend' && wedge === id,
    );
  };
  const bend = (style: Style, id: string): Handle => bendsOf(style).find((each) => each.id === id) as Handle;

  it('is done at the levels from top edge to hem, in the place of legs and points', () => {
    // The over-bust line lies above its level top edge, and the hip below its hem.
    expect(bendsOf(DEFAULT_STYLE).map(({ level }) => level)).toEqual(['bust', 'underBust', 'waist']);
    const toWaist = { ...DEFAULT_STYLE, topAbove: -20, hemBelow: 0 };
    expect(bendsOf(toWaist).map(({ level }) => level)).toEqual(['bust', 'underBust', 'waist']);
    expect(bendsOf(DEFAULT_STYLE, 'front-centre')).toEqual([]);
    expect(bendsOf(CLOSED).map(({ which }) => which)).toEqual(['upper', 'lower']);
  });

  it('moves the axis at that level only, by as much as it is pulled', () => {
    const waist = bend(DEFAULT_STYLE, 'bend:front-side:waist');
    const under = bend(DEFAULT_STYLE, 'bend:front-side:underBust');
    const bent = waist.set(DEFAULT_STYLE, waist.value + 10);
    expect(bend(bent, 'bend:front-side:waist').at.x).toBeCloseTo(waist.at.x + 10 * waist.gain.x, 0);
    expect(bend(bent, 'bend:front-side:underBust').at.x).toBeCloseTo(under.at.x, 0);
  });

  it('is drawn to where the axis is straight, and leaves no bend there', () => {
    const waist = bend(DEFAULT_STYLE, 'bend:front-side:waist');
    const bent = waist.set(DEFAULT_STYLE, waist.value + 10);
    const again = bend(bent, 'bend:front-side:waist');
    const straight = snapPointsOf(again, draftOf(bent)).find(({ place }) => place === 'straight');
    expect(again.set(bent, straight?.value ?? Number.NaN)).toEqual(DEFAULT_STYLE);
  });

  it('is drawn to the smooth way to a shoulder above the bust', () => {
    const princess = { ...DEFAULT_STYLE, ...NAMED_STYLES.get('princess-bodice')?.style };
    const id = princess.wedges.find(({ block, station }) => block === 'front' && station === 0)?.id ?? '';
    const handleAbove = (style: Style): Handle =>
      bendsOf(style, id).find(({ level }) => level === 'overBust') as Handle;
    const above = handleAbove(princess);
    const straightFor = (style: Style): number =>
      snapPointsOf(handleAbove(style), draftOf(style)).find(({ place }) => place === 'straight')?.value ??
      Number.NaN;
    expect(straightFor(princess)).toBeCloseTo(above.value, 9);
    const bent = above.set(princess, above.value + 6);
    expect(handleAbove(bent).value).toBeCloseTo(above.value + 6, 6);
    expect(straightFor(bent)).toBeCloseTo(above.value, 9);
    expect(handleAbove(bent).set(bent, straightFor(bent))).toEqual(princess);
  });

  it('slants a closed dart by its points', () => {
    const lower = bend(CLOSED, 'bend:front-side:lower');
    const slanted = lower.set(CLOSED, lower.value - 8);
    expect(bend(slanted, 'bend:front-side:lower').at.x).toBeCloseTo(lower.at.x - 8, 1);
  });
});
