import { describe, expect, it } from 'vitest';
import {
  type DartSpace,
  DEMO_CLIENT,
  dartSpace,
  NAMED_STYLES,
  setDartPoint,
  setEnds,
  setIntake,
  setJoinedSide,
  WEDGE_KINDS,
} from '../../../../src/document';
import { DEFAULT_STYLE, draft, inches, type Style, type Wedge, withPoints } from '../../../../src/engine';

/** Heights of a bodice over the bust, mm. */
const BODICE: DartSpace = { top: 220, bust: 270, waist: 400, hem: 520 };

const ID = 'front-side';
const wedgeIn = (style: Style): Wedge => style.wedges.find(({ id }) => id === ID) as Wedge;

const draftOf = (style: Style) => draft(DEMO_CLIENT.measurements, style);

describe('how a wedge ends', () => {
  it('is told by the points it has', () => {
    for (const kind of WEDGE_KINDS) expect(wedgeIn(setEnds(DEFAULT_STYLE, ID, kind, BODICE)).kind).toBe(kind);
    const point = { from: 'waist', below: 0 } as const;
    const centred = withPoints({ ...wedgeIn(DEFAULT_STYLE), station: -1 }, { upper: point, lower: point });
    expect(centred).toEqual({ ...wedgeIn(DEFAULT_STYLE), station: -1 });
  });

  it('is changed without touching intakes, other wedges, or points that stay', () => {
    const closed = setEnds(DEFAULT_STYLE, ID, 'closed', BODICE);
    const moved = setDartPoint(closed, ID, 'upper', { from: 'bust', below: 40 });
    const open = setEnds(moved, ID, 'openAtHem', BODICE);
    expect(wedgeIn(open)).toEqual({
      ...wedgeIn(DEFAULT_STYLE),
      kind: 'openAtHem',
      upper: { from: 'bust', below: 40 },
    });
    expect(setEnds(open, ID, 'through', BODICE)).toEqual(DEFAULT_STYLE);
  });

  it('lets go of what a gore adds, which no dart can', () => {
    const gore = setIntake(DEFAULT_STYLE, ID, 'hip', -30, { waist: 20 });
    expect(wedgeIn(setEnds(gore, ID, 'openAtHem', BODICE)).intake).toEqual({ waist: 20, hip: 0 });
    expect(wedgeIn(setEnds(gore, ID, 'through', BODICE)).intake).toEqual({ waist: 20, hip: -30 });
  });

  it('is given points below the bust and the waist, but inside the edges', () => {
    expect(wedgeIn(setEnds(DEFAULT_STYLE, ID, 'closed', BODICE))).toMatchObject({
      upper: { from: 'bust', below: inches(1) },
      lower: { from: 'waist', below: inches(3) },
    });
    const short = { ...BODICE, top: 290, hem: 450 };
    expect(wedgeIn(setEnds(DEFAULT_STYLE, ID, 'closed', short))).toMatchObject({
      upper: { from: 'waist', below: 290 + inches(1) - 400 },
      lower: { from: 'waist', below: 450 - inches(1) - 400 },
    });
  });

  it('is given a point short of the bust where it opens at a top edge well above it', () => {
    const lowerOf = (space: DartSpace) => wedgeIn(setEnds(DEFAULT_STYLE, ID, 'openAtTop', space)).lower;
    expect(lowerOf(BODICE)).toEqual({ from: 'bust', below: -inches(0.5) });
    expect(lowerOf({ ...BODICE, top: 240 })).toEqual({ from: 'waist', below: inches(3) });
  });

  it('lets a lower point go that would lie above the upper one', () => {
    const opened = setEnds(DEFAULT_STYLE, ID, 'openAtTop', BODICE);
    expect(setEnds(opened, ID, 'closed', BODICE)).toEqual(setEnds(DEFAULT_STYLE, ID, 'closed', BODICE));
    const low = setDartPoint(opened, ID, 'lower', { from: 'hip', below: -60 });
    expect(wedgeIn(setEnds(low, ID, 'closed', BODICE)).lower).toEqual({ from: 'hip', below: -60 });
  });

  it('asked for once more leaves the maker’s own points where they are, however high', () => {
    const high = { from: 'bust', below: -20 } as const;
    const opened = setDartPoint(setEnds(DEFAULT_STYLE, ID, 'openAtTop', BODICE), ID, 'lower', high);
    expect(setEnds(opened, ID, 'openAtTop', BODICE)).toEqual(opened);
    // A short eye above the bust, both points higher than the upper one would be proposed.
    const closed = setEnds(DEFAULT_STYLE, ID, 'closed', BODICE);
    const upper = { from: 'bust', below: -45 } as const;
    const eye = setDartPoint(setDartPoint(closed, ID, 'upper', upper), ID, 'lower', high);
    expect(setEnds(eye, ID, 'closed', BODICE)).toEqual(eye);
  });

  it('is open at once when it is opened at the top edge above the bust', () => {
    for (const name of ['default', 'ball-bodice', 'stage-bodice', 'long-line-side-panels']) {
      const style = NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE;
      const space = dartSpace(draftOf(style), 'front', ID);
      const made = draftOf(space ? setEnds(style, ID, 'openAtTop', space) : style);
      const lines = made.pieces.flatMap(({ darts }) => darts).find(({ wedge }) => wedge === ID);
      expect([name, lines?.open]).toEqual([name, true]);
    }
  });

  it.each([...NAMED_STYLES.keys()])(
    'can become a dart in the style “%s”, from the hem or closed, and be cut',
    (name) => {
      const style = NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE;
      for (const ends of ['openAtHem', 'closed'] as const)
        for (const block of ['front', 'back'] as const) {
          const id = `${block}-side`;
          const space = dartSpace(draftOf(style), block, id);
          expect(space).not.toBeNull();
          const changed = space ? setEnds(style, id, ends, space) : style;
          const issues = draftOf(changed).issues.filter(
            ({ severity, at }) => severity === 'error' && (at.wedge === id || at.field?.includes(id)),
          );
          expect(issues.map(({ code }) => `${id} ${ends} ${code}`)).toEqual([]);
        }
    },
  );
});

describe('the side panel', () => {
  it('is cut in one and parted again', () => {
    const joined = setJoinedSide(DEFAULT_STYLE, true);
    expect(draftOf(joined).pieces.map(({ id }) => id)).toContain('side');
    expect(setJoinedSide(joined, false)).toEqual(DEFAULT_STYLE);
  });
});
