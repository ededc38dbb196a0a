// Measuring the screen, so that it can show a draft in real size.

import { catalogue } from '../catalogue';

interface Ruler {
  /** Length of the ruler in its unit. */
  readonly parts: number;
  readonly unit: string;
}

export const REAL_SIZE = catalogue({
  title: 'Real size on this screen',
  how: 'Hold a bank card or a ruler to the top left corner and move the slider until the drawing is as large. This is kept for this screen, never for printing.',
  drawing: ({ parts, unit }: Ruler) => `A bank card with a ruler of ${parts} ${unit} along its edge`,
  card: 'bank card',
  size: 'Size',
  sizeNow: ({ px, parts, unit }: Ruler & { px: string }) => `${px} px for ${parts} ${unit}`,
  fits: 'It fits: show real size',
});
