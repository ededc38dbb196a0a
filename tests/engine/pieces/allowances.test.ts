// Armhole and neckline can have allowances of their own; without them they have the top edge's.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draft, inches, type Piece, type Style } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { alongTo } from '../../support/judges/outline';

const styleNamed = (name: string): Style => NAMED_STYLES.get(name)?.style as Style;

const drawn = (style: Style): readonly Piece[] => {
  const { pieces, extras, issues } = draft(withShoulders(MEAN_BODY), style);
  expect(issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  return [...pieces, ...extras];
};

const asked = (style: Style, own: Partial<Style['allowances']>): Style => ({
  ...style,
  allowances: { ...style.allowances, top: 9, ...own },
});

/** The allowances of all edges of a role. */
const ofRole = (pieces: readonly Piece[], role: 'top' | 'armhole'): number[] =>
  pieces.flatMap(({ edges }) => edges.filter((edge) => edge.role === role).map(({ allowance }) => allowance));

describe('armhole and neckline of a shouldered block', () => {
  const princess = styleNamed('princess-bodice');

  it('have the allowance of the top edge where they are given none', () => {
    const pieces = drawn(asked(princess, {}));
    expect(new Set([...ofRole(pieces, 'top'), ...ofRole(pieces, 'armhole')])).toEqual(new Set([9]));
  });

  it('have their own, on the edges and between sew line and cut line: a bound armhole none', () => {
    const pieces = drawn(asked(princess, { armhole: 0, neckline: inches(0.5) }));
    expect(new Set(ofRole(pieces, 'armhole'))).toEqual(new Set([0]));
    expect(new Set(ofRole(pieces, 'top'))).toEqual(new Set([inches(0.5)]));
    for (const { cutLine, edges } of pieces)
      for (const { role, points, allowance } of edges) {
        if (role !== 'armhole' && role !== 'top') continue;
        const middle = points[Math.floor(points.length / 2)] ?? { x: Number.NaN, y: 0 };
        expect(alongTo([...cutLine, ...cutLine.slice(0, 1)], middle).off).toBeCloseTo(allowance, 1);
      }
  });

  it('go on to the facing and the modesty panel behind a lacing', () => {
    const laced: Style = {
      ...princess,
      closure: { ...princess.closure, back: 'lacing', lacingGap: 30 },
      extras: { modesty: { overlap: 30 }, facing: { width: 30 } },
    };
    const pieces = drawn(asked(laced, { neckline: 3 })).filter(({ kind }) => kind !== 'panel');
    expect(pieces.map(({ kind }) => kind).sort()).toEqual(['facing', 'modesty']);
    expect(new Set(ofRole(pieces, 'top'))).toEqual(new Set([3]));
  });
});

describe('an off-shoulder band', () => {
  it('has them too, and the panels below keep the top edge’s', () => {
    const pieces = drawn(asked(styleNamed('off-shoulder-bridal'), { armhole: 0, neckline: 5 }));
    const [bands, panels] = [
      pieces.filter(({ kind }) => kind === 'band'),
      pieces.filter(({ kind }) => kind === 'panel'),
    ];
    expect(new Set(ofRole(bands, 'armhole'))).toEqual(new Set([0]));
    expect(new Set(ofRole(bands, 'top'))).toEqual(new Set([5]));
    expect(new Set(ofRole(panels, 'top'))).toEqual(new Set([9]));
  });
});
