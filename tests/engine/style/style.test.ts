import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { styleField } from '../../../src/document/messages/remarks/styleFields';
import {
  balancedWedge,
  checkStyle,
  DEFAULT_STYLE,
  type Field,
  STYLE,
  type Style,
  styleSchema,
  styleSpan,
  WEDGE_FIELDS,
  type Wedge,
  wedgeSpan,
  withPoints,
} from '../../../src/engine';

const POINT = { from: 'waist', below: 20 } as const;

/** A style in which nothing is left out. */
const FULL: Style = {
  ...DEFAULT_STYLE,
  joinedSide: true,
  turnedHem: true,
  closure: { ...DEFAULT_STYLE.closure, sideZip: true },
  shoulders: {
    drop: 20,
    armholeIn: 10,
    ease: 4,
    rise: 15,
    intake: { front: 10, back: 5 },
    bandAbove: 30,
  },
  extras: {
    modesty: { overlap: 50 },
    facing: { width: 50 },
    straps: { length: 400, width: 25 },
    sleeve: { depth: 80, ease: 36, gathered: 40, joined: 45 },
  },
  wedges: [
    ...DEFAULT_STYLE.wedges,
    withPoints(
      {
        ...balancedWedge('eye', 'front', 0.7, 1),
        cup: { below: 25, intake: 5 },
        endsAt: { edge: 'armhole', part: 0.4 },
      },
      { upper: { from: 'bust', below: 20 }, lower: POINT },
    ),
  ],
};

/** The numbers of a field, each with the path to its value and the one an issue names. */
function numbersOf(
  field: Field,
  path: string[] = [],
  named = path,
): { path: string[]; named: string; field: Field }[] {
  if (field.kind === 'number')
    return [{ path, named: (field.isMain ? named.slice(0, -1) : named).join('.'), field }];
  if (field.kind === 'levels')
    return [{ path: [...path, 'waist'], named: [...named, 'waist'].join('.'), field }];
  if (field.kind !== 'group') return [];
  return Object.entries(field.fields).flatMap(([name, part]) =>
    numbersOf(part, [...path, name], [...named, name]),
  );
}

function withValue(data: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  const copy: Record<string, unknown> = Array.isArray(data)
    ? ([...data] as unknown as Record<string, unknown>)
    : { ...(data as object) };
  copy[key] = withValue(copy[key], rest, value);
  return copy;
}

const EYE = FULL.wedges.length - 1;
const NUMBERS = [
  ...numbersOf(STYLE),
  ...numbersOf(WEDGE_FIELDS.closed, ['wedges', String(EYE)], ['wedges', 'eye']),
];

describe('the fields of a style', () => {
  it.each([...NAMED_STYLES, ['full', { style: FULL }] as const])('are those of “%s”', (_, { style }) => {
    expect(styleSchema.parse(structuredClone(style))).toEqual(style);
    expect(checkStyle(style)).toEqual([]);
  });

  it.each(NUMBERS)('hold $named to its span', ({ path, named, field }) => {
    const [least, most] = 'span' in field ? field.span : [Number.NaN, Number.NaN];
    const set = (value: unknown): Style => withValue(FULL, path, value) as Style;
    // On the centre line there are no darts, and the wedge at hand is one.
    const ends = named === 'wedges.eye.station' ? [-0.99, most] : [least, most];
    for (const value of ends) expect(checkStyle(set(value))).toEqual([]);
    for (const value of [least - 0.01, most + 0.01, Number.NaN, '5'])
      expect(checkStyle(set(value))).toEqual([
        { code: 'styleOutOfRange', severity: 'error', at: { field: named }, values: { least, most } },
      ]);
  });

  it.each(NUMBERS)('have a name to be spoken of by, and a unit: $named', ({ named, field }) => {
    const spoken = styleField(named, FULL);
    expect(spoken.name).not.toBe(named);
    expect(spoken.kind).toBe('unit' in field ? field.unit : null);
  });

  it('are told by level, level by level, as the tape runs', () => {
    const every = (value: number) =>
      Object.fromEntries(Object.keys(FULL.ease).map((level) => [level, value]));
    const off = { ...FULL, ease: every(900), frontShare: every(2) } as unknown as Style;
    expect(
      checkStyle(off)
        .map(({ at }) => at.field)
        .slice(0, 4),
    ).toEqual(['ease.overBust', 'frontShare.overBust', 'ease.bust', 'frontShare.bust']);
  });

  it('have spans by path', () => {
    expect(styleSpan('hemBelow')).toEqual([-400, 800]);
    expect(styleSpan('extras.straps.width')).toEqual([5, 150]);
    expect(styleSpan('topShape.underarm.beyond')).toEqual([-400, 400]);
    expect(wedgeSpan('closed', 'upper.below')).toEqual([-400, 400]);
    // A dart is sewn shut, a wedge that parts two panels may add cloth.
    expect([wedgeSpan('openAtTop', 'intake'), wedgeSpan('through', 'intake')]).toEqual([
      [0, 300],
      [-200, 300],
    ]);
  });
});

describe('the kind of a wedge', () => {
  const wedge = balancedWedge('w', 'front', 0.4, 1);

  it('follows from its points, and on the centre line is that of one without', () => {
    expect(withPoints(wedge, {}).kind).toBe('through');
    expect(withPoints(wedge, { upper: POINT })).toEqual({ ...wedge, kind: 'openAtHem', upper: POINT });
    expect(withPoints(wedge, { lower: POINT })).toEqual({ ...wedge, kind: 'openAtTop', lower: POINT });
    const closed = withPoints(wedge, { upper: POINT, lower: POINT });
    expect(closed).toEqual({ ...wedge, kind: 'closed', upper: POINT, lower: POINT });
    expect(withPoints(closed, {})).toEqual(wedge);
    expect(withPoints({ ...closed, station: -1 }, closed)).toEqual({ ...wedge, station: -1 });
  });

  it.each([
    ['a kind that there is not', { ...wedge, kind: 'open' }, ['wedges.w.kind']],
    [
      'a dart without its point',
      { ...wedge, kind: 'openAtHem' },
      ['wedges.w.upper.below', 'wedges.w.upper.from'],
    ],
    ['a point that its kind has not', { ...wedge, upper: POINT }, ['wedges.w.upper']],
    [
      'a dart on the centre line',
      { ...wedge, kind: 'openAtHem', upper: POINT, station: -1 },
      ['wedges.w.kind'],
    ],
  ])('is refused in %s', (_, given, fields) => {
    const issues = checkStyle({ ...DEFAULT_STYLE, wedges: [given as Wedge] });
    expect(issues.map(({ at }) => at.field)).toEqual(fields);
  });
});
