import { describe, expect, it } from 'vitest';
import {
  DEMO_CLIENT,
  dartsBelowShoulders,
  endsOf,
  issueSentence,
  NAMED_STYLES,
  SHOULDER_KINDS,
  type ShoulderNumber,
  setDartPoint,
  setEnds,
  setShoulderKind,
  setShoulderNumber,
  shoulderKind,
  shoulderNumber,
  topFromOverBust,
  wedgeRunsUp,
} from '../../../src/document';
import {
  type DartPoint,
  DEFAULT_STYLE,
  draft,
  inches,
  type Shoulders,
  type Style,
  USUAL_BAND_ABOVE,
  USUAL_SHOULDERS,
} from '../../../src/engine';

const draftOf = (style: Style) => draft(DEMO_CLIENT.measurements, style);

const blocking = (style: Style): string[] =>
  draftOf(style)
    .issues.filter(({ severity }) => severity === 'error')
    .map(({ code }) => code);

const cured = (style: Style): Style => dartsBelowShoulders(style, draftOf(style));

const ends = (style: Style): Record<string, string> =>
  Object.fromEntries(style.wedges.map((wedge) => [wedge.id, endsOf(wedge)]));

describe('shoulders', () => {
  it('are asked for with the usual numbers, and keep their own between panels and band', () => {
    for (const kind of SHOULDER_KINDS) expect(shoulderKind(setShoulderKind(DEFAULT_STYLE, kind))).toBe(kind);
    const shouldered = setShoulderKind(DEFAULT_STYLE, 'shoulders');
    expect(shouldered.shoulders).toEqual(USUAL_SHOULDERS);
    const dropped = setShoulderNumber(shouldered, 'drop', 30);
    const band = setShoulderKind(dropped, 'band');
    expect(band.shoulders).toEqual({ ...USUAL_SHOULDERS, drop: 30, bandAbove: USUAL_BAND_ABOVE });
    expect(setShoulderKind(band, 'shoulders')).toEqual(dropped);
    expect(setShoulderKind(band, 'strapless')).toEqual(DEFAULT_STYLE);
  });

  it('take each number by its path, and only that one', () => {
    const band = setShoulderKind(DEFAULT_STYLE, 'band');
    const numbers = ['drop', 'armholeIn', 'intake.front', 'intake.back', 'bandAbove'] as const;
    const told = (style: Style, name: ShoulderNumber) => shoulderNumber(style.shoulders as Shoulders, name);
    for (const name of numbers) {
      const set = setShoulderNumber(band, name, 17);
      for (const other of numbers) expect(told(set, other)).toBe(other === name ? 17 : told(band, other));
    }
    expect(setShoulderNumber(DEFAULT_STYLE, 'drop', 17)).toBe(DEFAULT_STYLE);
    expect(told(setShoulderKind(DEFAULT_STYLE, 'shoulders'), 'bandAbove')).toBeNull();
  });
});

describe('wedges that would run into the armhole', () => {
  const shouldered = setShoulderKind(DEFAULT_STYLE, 'shoulders');

  it('become darts between bust and hem, and the draft can be cut', () => {
    expect(blocking(shouldered)).toEqual(['shoulderWedges', 'shoulderWedges']);
    const style = cured(shouldered);
    expect(blocking(style)).toEqual([]);
    expect(ends(style)).toEqual({
      'front-centre': 'through',
      'front-bust': 'through',
      'front-side': 'closed',
      'back-centre': 'through',
      'back-side': 'closed',
    });
    expect(wedgeRunsUp(style, 'left', 'front') && wedgeRunsUp(style, 'left', 'back')).toBe(true);
    // Nothing is left to cure.
    expect(cured(style)).toEqual(style);
  });

  it('open at the hem where the garment ends near the waist', () => {
    const style = cured({ ...shouldered, hemBelow: inches(0.5) });
    expect(ends(style)).toMatchObject({ 'front-side': 'openAtHem', 'back-side': 'openAtHem' });
    expect(blocking(style)).toEqual([]);
  });

  it('keep the lower point they have', () => {
    const space = { top: 220, bust: 270, waist: 400, hem: 520 };
    const opened = setEnds(shouldered, 'front-bust', 'openAtTop', space);
    const low: DartPoint = { from: 'waist', below: inches(2) };
    const style = cured(setDartPoint(opened, 'front-bust', 'lower', low));
    const lower = style.wedges.find(({ id }) => id === 'front-bust')?.lower;
    expect(ends(style)).toMatchObject({ 'front-bust': 'closed', 'front-side': 'through' });
    expect(lower).toEqual(low);
    expect(blocking(cured(opened))).toEqual([]);
  });

  it.each([...NAMED_STYLES])('are cured by it in the style “%s”', (_, { style }) => {
    const asked = topFromOverBust(setShoulderKind({ ...style, joinedSide: false }, 'shoulders'));
    expect(blocking(cured(asked))).not.toContain('shoulderWedges');
  });
});

describe('what stands against shoulders', () => {
  it('is called by the name of its field', () => {
    const high = setEdge(inches(9));
    const sentences = draftOf(high)
      .issues.filter(({ code }) => code === 'shoulderOffBlock')
      .map((issue) => issueSentence(issue, { unit: 'in', style: high }));
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toContain('Look at the top edge at centre front.');
  });

  it('is taken away where the top edge was measured from a lower line', () => {
    const lower = setShoulderKind({ ...DEFAULT_STYLE, topFrom: 'waist', topAbove: inches(3) }, 'shoulders');
    expect(blocking(lower)).toContain('shoulderNeedsTop');
    expect(blocking(cured(topFromOverBust(lower)))).toEqual([]);
  });
});

const setEdge = (beyond: number): Style => {
  const style = setShoulderKind(DEFAULT_STYLE, 'shoulders');
  return {
    ...style,
    topShape: { ...style.topShape, centreFront: { beyond, kind: 'smooth' } },
  };
};
