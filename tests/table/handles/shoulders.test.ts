import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { draft, type Piece, type Point, type Style } from '../../../src/engine';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { BAND_LIFT_MM, bandsOf, type CanvasLayout, layOut, onCanvas } from '../../../src/table/layout/layOut';
import { SIZED_BODIES } from '../../support/bodies/sizedBodies';

const styleOf = (name: string): Style => {
  const style = NAMED_STYLES.get(name)?.style;
  if (!style) throw new Error(`no style ${name}`);
  return style;
};

const pointsOf = (pieces: readonly Piece[], layout: CanvasLayout, lift = 0): Point[] =>
  pieces.flatMap((piece) =>
    piece.edges.flatMap(({ points }) =>
      points.map(({ x, y }) => onCanvas(layout, piece.block, { x, y: y - lift })),
    ),
  );

describe.each([...NAMED_STYLES.keys()])('the table for the style “%s”', (name) => {
  it.each([...SIZED_BODIES, ['demo client’s', DEMO_CLIENT.measurements]] as const)(
    'has room for all of it on the %s body',
    (_, body) => {
      const made = draft(body, styleOf(name));
      const layout = layOut(made);
      if (!layout) throw new Error('nothing to lay out');
      const whole = [...pointsOf(made.pieces, layout), ...pointsOf(bandsOf(made), layout, BAND_LIFT_MM)];
      const outside = whole.filter(
        ({ x, y }) =>
          x < layout.left ||
          x > layout.left + layout.width ||
          y < layout.top ||
          y > layout.top + layout.height,
      );
      expect(outside).toEqual([]);
      const reach = (block: 'front' | 'back'): number =>
        Math.max(
          ...made.pieces
            .filter((piece) => piece.block === block && piece.id !== 'side')
            .flatMap(({ edges }) => edges.flatMap(({ points }) => points.map(({ x }) => x))),
        );
      expect(reach('front') + reach('back')).toBeLessThan(layout.centreX.back);
    },
  );
});

describe('handles of the top edge', () => {
  const nodes = (name: string): (string | null)[] => {
    const style = styleOf(name);
    const made = draft(DEMO_CLIENT.measurements, style);
    const layout = layOut(made);
    return layout
      ? handlesOf(made, style, layout)
          .filter(({ kind, which }) => kind === 'node' && which === 'top')
          .map(({ node }) => node)
      : [];
  };

  it('are those of neckline and armhole on a shouldered block', () => {
    for (const name of ['princess-bodice', 'darted-bodice', 'basque-bodice'])
      expect(nodes(name)).toEqual(['centreFront', 'underarm']);
  });

  it('are all of them below an off-shoulder band', () => {
    expect(nodes('off-shoulder-bridal')).toEqual(nodes('ball-bodice'));
    expect(nodes('off-shoulder-bridal').length).toBeGreaterThan(4);
  });
});
