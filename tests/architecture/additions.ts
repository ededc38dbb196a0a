// What DEVELOPERS.md lists for adding a measurement and a field of the style, as edits of the source.

/** A text put into a file where another one stands, once. */
export interface Edit {
  readonly file: string;
  readonly before: string;
  readonly put: string;
  /** In place of `before`; else in front of it. */
  readonly replaces?: true;
  /** The file in which the compiler names the edit where it is forgotten; null where a test names it. */
  readonly namedIn: string | null;
}

/** An optional girth round the thigh. */
export const ADD_MEASUREMENT: readonly Edit[] = [
  {
    file: 'src/engine/body/measurements.ts',
    namedIn: 'src/app/measure/figure/tapePaths.ts',
    before: "  length('neckToBust',",
    put: "  girth('thigh', false),\n",
  },
  {
    file: 'src/document/messages/words/measurements.ts',
    namedIn: 'src/document/messages/words/measurements.ts',
    before: '  neckToBust: {',
    put: "  thigh: { label: 'Thigh girth', name: 'thigh girth', how: 'Round the thigh.' },\n",
  },
  {
    file: 'src/app/measure/figure/tapePaths.ts',
    namedIn: 'src/app/measure/figure/tapePaths.ts',
    before: '  neckToBust: fromNeck(',
    put: '  thigh: round(350, 20),\n',
  },
];

/** The width of a waist stay, which may be left out. The draft does nothing with it. */
export const ADD_STYLE_FIELD: readonly Edit[] = [
  {
    file: 'src/engine/style/style.ts',
    namedIn: 'src/app/draft/GarmentCard.tsx',
    before: '  topShape: edgeShape,',
    put: '  waistStay: optional(length([5, 100], inches(1))),\n',
  },
  {
    file: 'src/document/messages/remarks/styleFields.ts',
    namedIn: null,
    before: "  'closure.front':",
    put: "  waistStay: 'The waist stay',\n",
  },
  {
    file: 'src/document/model/change.ts',
    namedIn: 'src/app/draft/GarmentCard.tsx',
    before: "'topAbove' | 'hemBelow'",
    put: "'waistStay' | 'topAbove' | 'hemBelow'",
    replaces: true,
  },
  {
    file: 'src/document/messages/book/changes.ts',
    namedIn: 'src/document/messages/book/changes.ts',
    before: "topAbove: 'top edge',",
    put: "waistStay: 'waist stay', topAbove: 'top edge',",
    replaces: true,
  },
  {
    file: 'src/document/messages/screens/draft/draft.ts',
    namedIn: 'src/app/draft/GarmentCard.tsx',
    before: "    lacingGap: 'Lacing gap',",
    put: "    waistStay: 'Waist stay',\n    waistStayHint: 'sewn in at the waist',\n",
  },
  {
    file: 'src/app/draft/GarmentCard.tsx',
    namedIn: 'src/app/draft/GarmentCard.tsx',
    before: "  'closure.lacingGap': {",
    put: `  waistStay: {
    label: TEXTS.waistStay,
    hint: () => TEXTS.waistStayHint,
    value: ({ waistStay }) => waistStay ?? 0,
    set: (style, mm) => ({ ...style, waistStay: mm }),
  },
`,
  },
];

/**
 * The text of a file with an edit made.
 *
 * @throws Error where the place is not there, or is there more than once
 */
export function edited(text: string, { file, before, put, replaces }: Edit): string {
  const places = text.split(before).length - 1;
  if (places !== 1) throw new Error(`${file}: ${places} places for an edit in front of ${before}`);
  return text.replace(before, () => (replaces ? put : put + before));
}
