// The texts of the lay plan in the Cut step.

import { catalogue } from '../../catalogue';

export const LAY = catalogue({
  title: 'Lay plan',
  hint: 'How much cloth to buy and how to lay it: every panel on the cloth of one layer, closer and closer while it works.',
  layer: 'Layer',
  layers: { fashion: 'Fashion', strength: 'Strength', lining: 'Lining' },
  width: 'Usable width',
  fold: { label: 'The cloth lies', open: 'open', folded: 'folded lengthwise' },
  nap: 'With a nap or a one-way print',
  gap: 'Between cut lines',
  grain: {
    label: 'Grain',
    strict: 'strictly along the cloth',
    within: ({ degrees }: { degrees: number }) => `within ${degrees}°`,
  },
  bias: 'Straps on the bias (45°)',
  more: 'Shrinkage and price',
  shrinkAlong: 'Shrinks along by, %',
  shrinkAcross: 'Shrinks across by, %',
  price: { in: 'Price of a yard', cm: 'Price of a metre' },
  start: 'Lay the panels',
  again: 'Lay them again',
  stop: 'Stop',
  working: ({ seconds, most }: { seconds: number; most: number }) =>
    `Looking for a shorter lay, ${seconds} of ${most} s`,
  failed: 'The plan could not be made. Nothing in the book has changed; try again.',
  old: 'The draft or the cloth has changed since this plan was made.',
  found: ({ length, density }: { length: string; density: number }) => `Length ${length}, ${density} % used`,
  cost: ({ cost }: { cost: string }) => `Cost ${cost}`,
  shrunk: 'Panels are drawn larger, for cloth that is laid before it is washed.',
  drawing: ({ panels }: { panels: number }) => `${panels} outlines on the cloth`,
  pdf: 'Download the plan',
  svg: 'Download at full size (SVG)',
  outside: {
    width: 'The cloth must be from 10 cm (4 in) to 400 cm (157 in) wide.',
    gap: 'The gap must be from 0 to 5 cm (2 in).',
    shrinkage: 'Cloth shrinks by 0 to 20 %.',
  },
});
