// The pattern as a DXF file of release 12, which the trade's cutters and plotters read.

import type { Point } from '../../engine';
import type { PlanInput } from '../layout/planInput';
import { planPanels } from '../layout/planPanels';
import { eyeletsFor } from '../making/eyelets';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedLines } from '../remarks/estimates';
import { ascii } from '../text/ascii';
import { LAYERS } from './layers';
import { pieceBlock } from './pieceBlock';
import { pointTags, section, type Tags, tag, textEntity } from './tags';

/** Width of the plan: the narrowest usual cloth, 36 in. mm */
const MOST_WIDTH_MM = 914.4;
const TEXT_MM = 6;

/**
 * The text of a DXF file, 7-bit ASCII with CR LF. It has a block for each piece on the layers of {@link LAYERS}, in the piece's
 * own coordinates (x from the centre line, y up to the shoulder level), with eyelets as drill holes where the input has making
 * settings, and an insert of each block, laid out side by side. The unit is mm, as the header and each block state. Names are
 * transliterated. Same input, same text.
 */
export function patternDxf(input: PlanInput): string {
  // A block is in its piece's own coordinates and inserted without rotation.
  const { panels, widthMm, heightMm } = planPanels({ ...input, nap: true }, MOST_WIDTH_MM);
  const faulty = hasErrors(input);
  const rows = input.making ? eyeletsFor(input.draft, input.making) : [];
  const holesIn = (piece: string): readonly Point[] =>
    rows.filter((row) => row.piece.id === piece).flatMap(({ points }) => points);
  const names = blockNames(panels.map(({ piece }) => piece.id));
  const headings = [
    `Style Name: ${ascii(input.savedDraft.name)}`,
    `Client: ${ascii(input.client.name)}`,
    `Creation Date: ${ascii(input.date)}`,
    'Units: METRIC (1 unit = 1 mm)',
    ...estimatedLines(input.client).map(ascii),
    ...(faulty ? [DO_NOT_CUT] : []),
  ];
  const heads = headings.flatMap((content, i) =>
    textEntity('1', { x: 0, y: heightMm + (2 * i + 2) * TEXT_MM }, TEXT_MM, content),
  );
  const lowest = heightMm + (2 * headings.length + 1) * TEXT_MM;
  const lines = [
    ...section('HEADER', header(widthMm, lowest)),
    ...section('TABLES', [...lineTypes(), ...layerTable(), ...styleTable()]),
    ...section(
      'BLOCKS',
      panels.flatMap(({ piece }, i) =>
        pieceBlock(piece, names[i] ?? '', holesIn(piece.id), faulty ? [DO_NOT_CUT] : []),
      ),
    ),
    ...section('ENTITIES', [...panels.flatMap(({ offset }, i) => insert(names[i] ?? '', offset)), ...heads]),
    ...tag(0, 'EOF'),
  ];
  return `${lines.join('\r\n')}\r\n`;
}

/** Unique names that R12 allows: at most 31 of A–Z, 0–9, $, - and _. */
function blockNames(ids: readonly string[]): string[] {
  const taken = new Set<string>();
  return ids.map((id) => {
    const plain = ascii(id)
      .toUpperCase()
      .replace(/[^A-Z0-9$_-]/g, '_')
      .slice(0, 28);
    let name = plain === '' ? 'PIECE' : plain;
    for (let count = 2; taken.has(name); count += 1) name = `${plain}_${count}`;
    taken.add(name);
    return name;
  });
}

const header = (widthMm: number, heightMm: number): Tags => [
  ...tag(9, '$ACADVER'),
  ...tag(1, 'AC1009'),
  ...tag(9, '$INSUNITS'),
  ...tag(70, 4),
  ...tag(9, '$MEASUREMENT'),
  ...tag(70, 1),
  ...tag(9, '$EXTMIN'),
  ...pointTags({ x: 0, y: heightMm }),
  ...tag(9, '$EXTMAX'),
  ...pointTags({ x: widthMm, y: 0 }),
];

const table = (name: string, entries: readonly Tags[]): Tags => [
  ...tag(0, 'TABLE'),
  ...tag(2, name),
  ...tag(70, entries.length),
  ...entries.flat(),
  ...tag(0, 'ENDTAB'),
];

const lineTypes = (): Tags =>
  table('LTYPE', [
    [
      ...tag(0, 'LTYPE'),
      ...tag(2, 'CONTINUOUS'),
      ...tag(70, 0),
      ...tag(3, 'Solid line'),
      ...tag(72, 65),
      ...tag(73, 0),
      ...tag(40, 0),
    ],
  ]);

const layerTable = (): Tags =>
  table(
    'LAYER',
    [{ name: '0', colour: 7 }, ...Object.values(LAYERS)].map(({ name, colour }) => [
      ...tag(0, 'LAYER'),
      ...tag(2, name),
      ...tag(70, 0),
      ...tag(62, colour),
      ...tag(6, 'CONTINUOUS'),
    ]),
  );

const styleTable = (): Tags =>
  table('STYLE', [
    [
      ...tag(0, 'STYLE'),
      ...tag(2, 'STANDARD'),
      ...tag(70, 0),
      ...tag(40, 0),
      ...tag(41, 1),
      ...tag(50, 0),
      ...tag(71, 0),
      ...tag(42, TEXT_MM),
      ...tag(3, 'txt'),
      ...tag(4, ''),
    ],
  ]);

const insert = (block: string, at: Point): Tags => [
  ...tag(0, 'INSERT'),
  ...tag(8, LAYERS.cut.name),
  ...tag(2, block),
  ...pointTags(at),
];
