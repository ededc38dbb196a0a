// A draft that balancing would block is balanced again: wedges that are in each other's way give room, and darts that shut at an
// edge are closed before it or left out.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import {
  balancedWedge,
  DEFAULT_STYLE,
  draft,
  type IssueCode,
  type Measurements,
  type Style,
  withPoints,
} from '../../../src/engine';
import { drawBodies, MEAN_BODY } from '../../support/bodies/drawBodies';
import { broken, judge } from '../../support/judges/judge';
import { lengthOf } from '../../support/judges/outline';

const ready = (name: string): Style => NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE;

const codes = (body: Measurements, style: Style): IssueCode[] =>
  draft(body, style).issues.map(({ code }) => code);

const blocking = (body: Measurements, style: Style): IssueCode[] =>
  draft(body, style)
    .issues.filter(({ severity }) => severity === 'error')
    .map(({ code }) => code);

/** Bust points far apart over a slim waist: beyond the bust-point line there is no room for two panels. */
const SLIM: Measurements = {
  ...MEAN_BODY,
  bust: 850,
  overBust: 770,
  underBust: 690,
  waist: 600,
  hip: 890,
  bustPointWidth: 224,
};

const withSideFrontMidway = (name: string): Style => ({
  ...ready(name),
  wedges: ready(name).wedges.map((wedge) => (wedge.id === 'front-side' ? { ...wedge, station: 0.5 } : wedge)),
});

describe('wedges without room between them', () => {
  it.each(['under-bust', 'cincher'])('stand nearer the centre of a slim %s', (name) => {
    const style = withSideFrontMidway(name);
    const made = draft(SLIM, style);
    expect(blocking(SLIM, style)).toEqual([]);
    expect(made.issues).toContainEqual(
      expect.objectContaining({
        code: 'wedgesMovedIn',
        severity: 'note',
        at: { block: 'front', level: 'waist' },
      }),
    );
    expect(broken(judge(SLIM, style, made))).toEqual([]);
    // Moved, they take what they are asked for: nothing is left to a side seam that would lean for it.
    expect(codes(SLIM, style)).not.toContain('seamLeansFar');
  });

  it('stay where they were put by hand, and the panel is refused', () => {
    const style = ready('cincher');
    const put: Style = {
      ...style,
      wedges: style.wedges.map((wedge) =>
        wedge.id === 'front-side' ? { ...wedge, stationAt: { waist: 0.5 } } : wedge,
      ),
    };
    expect(blocking(SLIM, put)).toContain('panelTooNarrow');
  });

  it('take less where one beside them is sized by hand, and most such drafts can then be cut', () => {
    const style: Style = {
      ...DEFAULT_STYLE,
      balance: { sideShare: 0, cap: 150 },
      wedges: [
        ...DEFAULT_STYLE.wedges,
        {
          ...balancedWedge('outer', 'front', 0.75, 1),
          sizing: 'manual',
          intake: { waist: 30, underBust: 15 },
        },
      ],
    };
    const less = drawBodies(40, 1212).filter((body) => codes(body, style).includes('wedgesTakeLess'));
    expect(less.length).toBeGreaterThan(0);
    for (const body of less) {
      expect(blocking(body, style)).toEqual([]);
      expect(broken(judge(body, style, draft(body, style)))).toEqual([]);
    }
  });
});

describe('a dart that takes next to nothing', () => {
  const darted = (below: number): Style => ({ ...ready('darted-bodice'), hemBelow: below });
  const body: Measurements = { ...MEAN_BODY, backNeckToWaist: 380, acrossShoulder: 370 };
  const hip = (body.neckToHip ?? 0) - (body.neckToWaist ?? 0);

  it('at the hem is closed before it, and its legs are of one length', () => {
    const style = darted(hip - 9);
    const made = draft(body, style);
    expect(blocking(body, style)).toEqual([]);
    const said = made.issues.filter(({ code }) => code === 'dartClosedEarly').map(({ at }) => at.wedge);
    expect(said.length).toBeGreaterThan(0);
    for (const wedge of said) {
      const dart = made.pieces.flatMap(({ darts }) => darts).find((each) => each.wedge === wedge);
      expect(dart?.open).toBe(false);
      expect(lengthOf(dart?.inner ?? [])).toBeCloseTo(lengthOf(dart?.outer ?? [{ x: 0, y: 0 }]), 1);
      const lowest = Math.max(...(dart?.inner ?? []).map(({ y }) => y));
      expect(lowest).toBeLessThan((made.span?.hem ?? 0) - 8);
    }
    expect(broken(judge(body, style, made))).toEqual([]);
  });

  it('anywhere is left out, and that is said', () => {
    const straight: Measurements = {
      ...body,
      bust: 760,
      overBust: 760,
      underBust: 760,
      waist: 760,
      hip: 760,
    };
    const style: Style = {
      ...DEFAULT_STYLE,
      ease: { ...DEFAULT_STYLE.ease, waist: 0 },
      wedges: [
        ...DEFAULT_STYLE.wedges,
        withPoints(balancedWedge('eye', 'back', 0.75, 0.2), {
          upper: { from: 'bust', below: 40 },
          lower: { from: 'waist', below: 60 },
        }),
      ],
    };
    const made = draft(straight, style);
    expect(made.issues).toContainEqual(
      expect.objectContaining({ code: 'dartLeftOut', at: { block: 'back', wedge: 'eye' } }),
    );
    expect(made.pieces.flatMap(({ darts }) => darts)).toEqual([]);
  });
});
