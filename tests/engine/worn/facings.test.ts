// A facing is sewn as a second layer behind its panel; what cannot be sewn on is told.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draftWhole, type Piece, type Style, sewGarment } from '../../../src/engine';
import { facingsBehind } from '../../../src/engine/worn/construction';
import { meshGarment } from '../../../src/engine/worn/mesh/garmentMesh';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

const styleNamed = (name: string): Style => {
  const style = NAMED_STYLES.get(name)?.style;
  if (!style) throw new Error(`no style ${name}`);
  return style;
};

const areaOf = ({ edges }: Piece): number => {
  const ring = edges.flatMap(({ points }) => points.slice(0, -1));
  const twice = ring.reduce((sum, { x, y }, i) => {
    const next = ring[(i + 1) % ring.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
};

describe('a facing as worn', () => {
  const style: Style = { ...styleNamed('under-bust'), extras: { facing: { width: 40 } } };
  const drafted = draftWhole(MEAN_BODY, style);

  it('is a second layer of its own area behind the first panel of its block', () => {
    const mesh = meshGarment(drafted.pieces, 12, facingsBehind(style, drafted.pieces));
    const { flat, triangles, layers } = mesh;
    let second = 0;
    for (const [t, layer] of layers.entries()) {
      const [ax, ay, bx, by, cx, cy] = [0, 1, 2].flatMap((k) => {
        const i = triangles[3 * t + k] ?? 0;
        return [flat[2 * i], flat[2 * i + 1]];
      }) as [number, number, number, number, number, number];
      second += (layer - 1) * (Math.abs((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2);
      if (layer > 1) expect(mesh.panels[mesh.panelOfTriangle[t] ?? 0]?.piece.id).toBe('back-1');
    }
    const [facing] = drafted.extras.filter(({ kind }) => kind === 'facing');
    expect(Math.abs(second / (facing ? areaOf(facing) : 0) - 1)).toBeLessThan(0.03);
  });

  it('is not named among what is not sewn on, with sides alike and unlike', () => {
    const withModesty: Style = {
      ...style,
      extras: { ...style.extras, modesty: { overlap: 30 } },
    };
    for (const sides of [null, { leftShare: { waist: 0.52 }, rightLower: {} }]) {
      const whole = draftWhole(MEAN_BODY, withModesty, sides);
      expect(whole.extras.map(({ kind }) => kind)).toContain('facing');
      const worn = sewGarment(whole, MEAN_BODY, withModesty, sides, { width: 24 });
      expect(worn.leftOut.map(({ kind }) => kind)).toEqual(['modesty']);
      for (const { draped } of worn.halves) expect(Math.max(...draped.mesh.layers)).toBe(2);
    }
  });

  it('is not there where the style asks for none', () => {
    const plain = styleNamed('under-bust');
    expect(facingsBehind(plain, draftWhole(MEAN_BODY, plain).pieces)).toEqual([]);
  });
});
