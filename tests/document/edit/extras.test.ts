import { describe, expect, it } from 'vitest';
import { readStyle, setExtra, writeStyle } from '../../../src/document';
import { DEFAULT_STYLE, inches, USUAL_EXTRAS } from '../../../src/engine';

const ALL = {
  ...DEFAULT_STYLE,
  extras: { modesty: { overlap: 50 }, facing: { width: 45 }, straps: { length: 400, width: 25 } },
};

describe('pieces beside the panels', () => {
  it('are asked for one by one; without any the style is as it was', () => {
    const one = setExtra(DEFAULT_STYLE, 'modesty', { overlap: 40 });
    expect(one.extras).toEqual({ modesty: { overlap: 40 } });
    const two = setExtra(one, 'straps', { length: 300, width: 20 });
    expect(two.extras).toEqual({ modesty: { overlap: 40 }, straps: { length: 300, width: 20 } });
    expect(setExtra(setExtra(two, 'modesty', null), 'straps', null)).toEqual(DEFAULT_STYLE);
  });

  it('come back from a style file as they were written', () => {
    expect(readStyle(JSON.parse(writeStyle('Ferry', ALL)), 'file')).toEqual({
      ok: true,
      value: { title: 'Ferry', style: ALL },
    });
  });

  it('take what a file leaves open from the usual', () => {
    const read = readStyle({ unit: 'in', extras: { modesty: {}, straps: { width: '3/4' } } }, 'file');
    expect(read.ok && read.value.style.extras).toEqual({
      modesty: USUAL_EXTRAS.modesty,
      straps: { length: USUAL_EXTRAS.straps.length, width: inches(0.75) },
    });
  });

  it.each([
    [{ extras: 3 }, 'extras'],
    [{ extras: { strap: {} } }, 'extras.strap'],
    [{ extras: { facing: { wide: 3 } } }, 'extras.facing.wide'],
    [{ extras: { facing: { width: 'broad' } } }, 'extras.facing.width'],
    [{ extras: { facing: { width: 5 } } }, 'extras.facing.width'],
  ])('of a file that says %j are a fault at the field', (data, path) => {
    const read = readStyle(data, 'file');
    expect(read.ok ? [] : read.faults.map((fault) => fault.path)).toContain(path);
  });
});
