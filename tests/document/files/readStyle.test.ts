import { describe, expect, it, vi } from 'vitest';
import { readStyle, setStation, wedgeNameOf, wedgeRunsUp, writeStyle } from '../../../src/document';
import { DEFAULT_STYLE, draft, type Style, withPoints } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

// A style is read without a body to draft it for.
vi.mock('../../../src/engine/draft/draftWhole', () => ({
  draftWhole: () => {
    throw new Error('A style file was drafted');
  },
}));

const POINT = { from: 'bust', below: 20 } as const;

function styleOf(file: unknown): Style {
  const read = readStyle(file, 'file');
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value.style;
}

const faultsOf = (file: unknown): [path: string, message: string][] => {
  const read = readStyle(file, 'file');
  return read.ok ? [] : read.faults.map(({ path, message }) => [path, message]);
};

describe('the check of a style file', () => {
  it('names each number out of its span, on either half', () => {
    expect(faultsOf({ unit: 'in', hemBelow: 40, topAbove: 20 })).toEqual([
      ['topAbove', expect.stringContaining('The top edge above its line must be')],
      ['hemBelow', expect.stringContaining('The hem below the waist line must be')],
    ]);
    const right = { id: 'r', block: 'front', station: 0.5, weight: 500 };
    expect(faultsOf({ rightWedges: [right] }).map(([path]) => path)).toEqual(['wedges.r.weight']);
  });

  it('counts the wedges of each half', () => {
    const seven = (of: string) =>
      Array.from({ length: 7 }, (_, i) => ({ id: `${of}${i}`, block: 'back', station: i / 7 }));
    expect(faultsOf({ wedges: seven('l'), rightWedges: seven('r') })).toEqual([
      ['wedges', expect.stringContaining('The left back has 7 wedges')],
      ['wedges', expect.stringContaining('The right back has 7 wedges')],
    ]);
  });
});

describe('a wedge of a style file', () => {
  const wedge = { id: 'w', block: 'front', station: 0.4 };

  it('is of the kind of its points, which is not written', () => {
    const style = styleOf({
      wedges: [
        wedge,
        { ...wedge, id: 'hem', upper: POINT },
        { ...wedge, id: 'top', lower: POINT },
        { ...wedge, id: 'eye', upper: POINT, lower: { below: 60 } },
      ],
    });
    expect(style.wedges.map(({ kind }) => kind)).toEqual(['through', 'openAtHem', 'openAtTop', 'closed']);
    expect(style.wedges[3]?.lower).toEqual({ from: 'waist', below: 60 });
    const both = { ...style, rightWedges: style.wedges.map((each) => ({ ...each, id: `right-${each.id}` })) };
    const file = writeStyle('Mine', both);
    expect(file).not.toContain('"through"');
    expect(styleOf(JSON.parse(file))).toEqual(both);
  });

  // The draft let such a wedge run through, the check held it to a dart's intakes, and others went by its points alone.
  it('runs through on the centre line, for the check, the draft and its name alike', () => {
    const style = styleOf({
      wedges: [
        { ...wedge, station: -1, upper: POINT, lower: { below: 60 }, intake: { hip: -10, waist: 20 } },
      ],
    });
    const [centre] = style.wedges;
    expect(centre).toMatchObject({ kind: 'through', intake: { hip: -10, waist: 20 } });
    expect(centre).not.toHaveProperty('upper');
    expect(wedgeNameOf(centre?.id ?? '', style)).toBe('Centre-front wedge');
    const drafted = draft(MEAN_BODY, style).blocks?.front.wedges[0];
    expect(drafted).toMatchObject({ onCentre: true, extent: { upper: null, lower: null } });
  });

  it('has no points once it is moved to the centre line, and is no dart when it is moved off it', () => {
    const dart = withPoints({ ...(DEFAULT_STYLE.wedges[2] as Style['wedges'][number]) }, { upper: POINT });
    const style: Style = { ...DEFAULT_STYLE, wedges: [dart] };
    expect(wedgeRunsUp(style, 'left', 'front')).toBe(false);
    const moved = setStation(setStation(style, dart.id, -1), dart.id, 0.3);
    expect(moved.wedges).toEqual([{ ...DEFAULT_STYLE.wedges[2], station: 0.3 }]);
    expect(wedgeRunsUp(moved, 'left', 'front')).toBe(true);
  });
});
