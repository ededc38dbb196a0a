// The strip below the table: the widths of the panels at a level, and what there is to mend.

import type { LevelName } from '../../../../engine';
import { catalogue, plural } from '../../catalogue';
import { LEVEL_WORDS } from '../../words/levels';

interface AtLevel {
  readonly level: LevelName;
}

interface Counted {
  readonly count: number;
}

export const MEND = catalogue({
  toMend: ({ count }: Counted) =>
    plural(count, { one: 'One thing to mend', other: `${count} things to mend` }),
  nothing: 'Nothing to mend',
  holds: ({ seams, girths }: { seams: number; girths: number }) =>
    `${plural(seams, { one: 'One seam', other: `${seams} seams` })} and ${plural(girths, { one: 'one girth', other: `${girths} girths` })} hold.`,
  /** Opens the tab on which it is set. */
  show: 'Show where it is set',
  cures: {
    measureFromOverBust: 'Measure it from the over-bust line',
    keepSideSeam: 'Keep the side seam',
    makeDarts: ({ count }: Counted) => plural(count, { one: 'Make it a dart', other: 'Make them darts' }),
    openSide: 'Put a zip in the side seam',
  },
  /** `altered` is what the fittings make of it, null where they leave it. */
  waistIn: ({ percent, altered }: { percent: string; altered: string | null }) =>
    altered === null
      ? `Waist taken in ${percent} %`
      : `Waist taken in ${percent} %, with the fittings ${altered} %`,
  cautions: 'Cautions',
});

export const WIDTHS = catalogue({
  title: 'Panel widths',
  at: ({ level, half }: AtLevel & { half: string }) => `at the ${LEVEL_WORDS[level]}, half ${half}`,
  levels: 'Level of the widths',
  levelChip: ({ level }: AtLevel) => `Widths at the ${LEVEL_WORDS[level]}`,
  panels: 'Panels from centre front to centre back',
  panel: ({ piece, level, width }: AtLevel & { piece: string; width: string }) =>
    `${piece}, ${width} wide at the ${LEVEL_WORDS[level]}`,
  field: ({ piece, level }: AtLevel & { piece: string }) => `Width of ${piece} at the ${LEVEL_WORDS[level]}`,
  hint: 'Press a width to type it; the wedge beside it gives way.',
  outside: ({ level }: AtLevel) => `No panel reaches the ${LEVEL_WORDS[level]} line.`,
});
