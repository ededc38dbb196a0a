import { describe, expect, it } from 'vitest';
import { allowanceEdges, NAMED_STYLES, readStyle, setAllowance, writeStyle } from '../../../src/document';
import { checkStyle, DEFAULT_STYLE, type Style } from '../../../src/engine';

const shouldered = NAMED_STYLES.get('princess-bodice')?.style as Style;

describe('an allowance', () => {
  it('of armhole or neckline can be set and left open again', () => {
    const bound = setAllowance(shouldered, 'armhole', 0);
    expect(bound.allowances.armhole).toBe(0);
    expect(checkStyle(bound)).toEqual([]);
    expect(setAllowance(bound, 'armhole', null)).toEqual(shouldered);
    expect(setAllowance(bound, 'armhole', null).allowances).not.toHaveProperty('armhole');
  });

  it('of any other edge is 0 where nothing is given', () => {
    expect(setAllowance(shouldered, 'hem', null).allowances.hem).toBe(0);
  });

  it('is asked for armhole and neckline only where there are shoulders', () => {
    expect(allowanceEdges(DEFAULT_STYLE)).toEqual(['seam', 'side', 'top', 'centre', 'hem']);
    expect(allowanceEdges(shouldered)).toEqual([
      'seam',
      'side',
      'top',
      'armhole',
      'neckline',
      'centre',
      'hem',
    ]);
  });

  it('is refused beyond its span', () => {
    expect(checkStyle(setAllowance(shouldered, 'neckline', 101)).map(({ at }) => at.field)).toEqual([
      'allowances.neckline',
    ]);
  });

  it('of its own goes through a style file, in inches as well', () => {
    const style = setAllowance(setAllowance(shouldered, 'armhole', 0), 'neckline', 12.7);
    const read = readStyle(JSON.parse(writeStyle('Own', style)), 'own');
    expect(read.ok && read.value.style.allowances).toEqual(style.allowances);
    const inInches = readStyle({ unit: 'in', allowances: { armhole: 0, neckline: '1/2' } }, 'own');
    expect(inInches.ok && inInches.value.style.allowances).toMatchObject({ armhole: 0, neckline: 12.7 });
  });
});
