// Styles drafted as before two rules of the draft, to see what the rules bring to the garment as worn: the bust belongs to the
// front, and the spring below the waist goes round the body as the body grows.

import { draft, type LevelName, type Measurements, type Style } from '../../src/engine';

/** Of the bust the front had so much, whatever the body. */
const FRONT_OF_BUST = 0.53;

/** The side seam let out so much of the spring; the wedges shared the rest by their weights. */
const SIDE_SHARE = 0.43;

export const bustByShare = (style: Style): Style => ({
  ...style,
  frontShare: { ...style.frontShare, bust: FRONT_OF_BUST },
});

/** Wedges hold what balancing gave them down to the waist, and below it share the half body's growth by weight. */
export function springByWeight(style: Style, measurements: Measurements): Style {
  const { blocks, levels } = draft(measurements, style);
  if (!blocks) return style;
  const waist = levels.findIndex(({ name }) => name === 'waist');
  const girth = (name: LevelName): number => measurements[name] ?? 0;
  return {
    ...style,
    wedges: style.wedges.map((wedge) => {
      const { width, wedges } = blocks[wedge.block];
      const drafted = wedges.find(({ id }) => id === wedge.id);
      if (wedge.kind !== 'through' || !drafted || width.size === 0) return wedge;
      const own = style.wedges.filter(({ block, kind }) => block === wedge.block && kind === 'through');
      const share = wedge.weight / own.reduce((sum, { weight }) => sum + weight, 0);
      const intake = Object.fromEntries(
        levels.map(({ name }, i) => {
          const taken = drafted.intake.get(name) ?? 0;
          if (i <= waist) return [name, taken];
          // Half of the half body's growth is each block's.
          const growth = (girth(name) - girth('waist')) / 4;
          const atWaist = drafted.intake.get('waist') ?? 0;
          return [name, atWaist - share * (1 - SIDE_SHARE) * growth];
        }),
      );
      return { ...wedge, sizing: 'manual', intake };
    }),
  };
}
