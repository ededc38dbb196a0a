// The texts of the lay plan in the Cut step.

import { catalogue, plural } from '../../catalogue';

export const LAY = catalogue({
  title: 'Lay plan',
  hint: 'How much cloth to buy and how to lay it: every panel on the cloth of one layer, closer and closer while it works.',
  layer: 'Layer',
  layers: { fashion: 'Fashion', strength: 'Strength', lining: 'Lining' },
  layersCut: 'Layers of it',
  width: 'Usable width',
  fold: { label: 'The cloth lies', open: 'open', folded: 'folded lengthwise' },
  nap: 'With a nap or a one-way print',
  gap: 'Between cut lines',
  grain: {
    label: 'Grain',
    strict: 'strictly along the cloth',
    within: ({ degrees }: { degrees: number }) => `within ${degrees}°`,
  },
  bias: {
    summary: ({ pieces }: { pieces: number }) =>
      pieces === 0
        ? 'On the bias (45°): no piece'
        : plural(pieces, {
            one: 'On the bias (45°): 1 piece',
            other: `On the bias (45°): ${pieces} pieces`,
          }),
    hint: 'Each piece marked here lies at 45° to the length of the cloth.',
  },
  others: {
    title: 'Also on this cloth',
    add: 'Add a draft',
    none: 'No other',
    name: ({ client, draft }: { client: string; draft: string }) => `${client}, ${draft}`,
    pieceOf: ({ draft, piece }: { draft: string; piece: string }) => `${draft}: ${piece}`,
    remove: ({ name }: { name: string }) => `Take ${name} off this cloth`,
    reading: ({ name }: { name: string }) => `${name} is being opened.`,
    gone: 'A draft that lay on this cloth is not in the book any more: take it off.',
    goneName: 'A draft no longer in the book',
    refused: ({ name }: { name: string }) =>
      `${name} cannot be cut yet: open it and mend its draft, or read its cautions.`,
    unreadable: ({ name }: { name: string }) =>
      `${name} could not be opened. Nothing in the book has changed.`,
  },
  more: 'Shrinkage and price',
  shrinkAlong: 'Shrinks along by, %',
  shrinkAcross: 'Shrinks across by, %',
  price: { in: 'Price of a yard', cm: 'Price of a metre' },
  start: 'Lay the panels',
  again: 'Lay them again',
  stop: 'Stop',
  working: ({ seconds, most }: { seconds: number; most: number }) =>
    `Looking for a shorter lay, ${seconds} of ${most} s`,
  progress: 'Time used',
  failed: 'The plan could not be made. Nothing in the book has changed; try again, or reload the page.',
  old: 'This plan is old: the draft or the cloth has changed since it was made.',
  notDrawn: 'It is drawn again when the panels are laid anew, or when the draft is as it was.',
  anew: 'Lay them anew',
  found: ({ length, density }: { length: string; density: number }) => `Length ${length}, ${density} % used`,
  cost: ({ cost }: { cost: string }) => `Cost ${cost}`,
  shrunk: 'Panels are drawn larger, for cloth that is laid before it is washed.',
  drawing: ({ panels }: { panels: number }) => `${panels} outlines on the cloth`,
  pdf: 'Plan with measurements (PDF)',
  roll: ({ paper }: { paper: string }) => `Full size, ${paper} (PDF)`,
  projector: 'Full size for a projector (PDF)',
  svg: 'Full size (SVG)',
  tooLarge:
    'The cloth is longer than one page of a PDF may be (508 cm, 200 in): lay it in two parts, or take the SVG.',
  outside: {
    width: 'The cloth must be from 10 cm (4 in) to 400 cm (157 in) wide.',
    gap: 'The gap must be from 0 to 5 cm (2 in).',
    shrinkage: 'Cloth shrinks by 0 to 20 %.',
    layers: 'From 1 to 6 layers are cut from one cloth.',
  },
});
