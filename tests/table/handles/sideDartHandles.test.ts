import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, setUpperEdge } from '../../../src/document';
import { draft, type Point, type Style } from '../../../src/engine';
import type { Handle } from '../../../src/table/handles/handle';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { type CanvasLayout, layOut, onCanvas } from '../../../src/table/layout/layOut';
import { BUST_DART, DARTED, inSideSeam } from '../../support/styles/sideDart';

const handlesFor = (style: Style): Handle[] => {
  const made = draft(DEMO_CLIENT.measurements, style);
  return handlesOf(made, style, layOut(made) as CanvasLayout).filter(({ wedge }) => wedge === BUST_DART);
};

const dartOf = (style: Style): { readonly [end in 'point' | 'lower' | 'upper']: Point } => {
  const turned = draft(DEMO_CLIENT.measurements, style).turnedDart;
  if (!turned) throw new Error('no dart was turned');
  return turned;
};

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('handles of a bust dart in the side seam', () => {
  it('are where it opens and where its point is, and none else', () => {
    const style = inSideSeam(50);
    const made = draft(DEMO_CLIENT.measurements, style);
    const [opening, short, ...others] = handlesFor(style);
    expect(others).toEqual([]);
    expect(opening).toMatchObject({ kind: 'opening', value: 50 });
    expect(short?.kind).toBe('short');
    expect(short?.value).toBeCloseTo(25.4, 6);
    expect(
      apart(short?.at as Point, onCanvas(layOut(made) as CanvasLayout, 'front', dartOf(style).point)),
    ).toBeLessThan(1e-9);
  });

  it('move it along the side seam and towards the bust point', () => {
    const style = inSideSeam(50);
    const [opening, short] = handlesFor(style) as [Handle, Handle];
    const lower = dartOf(opening.set(style, 60));
    expect(lower.lower.y - dartOf(style).lower.y).toBeGreaterThan(9);
    expect(dartOf(short.set(style, 40)).point.x - dartOf(style).point.x).toBeCloseTo(40 - 25.4, 0);
  });

  it('keep their place along the seam where another edge is tried between', () => {
    const style = inSideSeam(60);
    const back = setUpperEdge(setUpperEdge(style, BUST_DART, 'armhole'), BUST_DART, 'side');
    expect(dartOf(back)).toMatchObject({ below: 60 });
    expect(handlesFor(DARTED).some(({ kind }) => kind === 'opening')).toBe(false);
  });
});
