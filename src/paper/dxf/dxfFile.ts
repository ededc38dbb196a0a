// The parts that every DXF file of a pattern has: header, tables, names and inserts of blocks.

import type { Point } from '../../engine';
import { ascii } from '../text/ascii';
import { LAYERS } from './layers';
import { pointTags, section, type Tags, tag, textEntity } from './tags';

const TEXT_MM = 6;

/** A block to insert, and where. */
interface Insert {
  readonly name: string;
  readonly at: Point;
}

/**
 * The text of a file from its blocks: release 12, 7-bit ASCII with CR LF, 1 unit = 1 mm. Headings, which are ASCII already, stand
 * below the plan, whose size is given in mm.
 */
export function dxfFile(
  blocks: Tags,
  inserts: readonly Insert[],
  headings: readonly string[],
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): string {
  const heads = headings.flatMap((content, i) =>
    textEntity('1', { x: 0, y: heightMm + (2 * i + 2) * TEXT_MM }, TEXT_MM, content),
  );
  const lowest = heightMm + (2 * headings.length + 1) * TEXT_MM;
  const lines = [
    ...section('HEADER', header(widthMm, lowest)),
    ...section('TABLES', [...lineTypes(), ...layerTable(), ...styleTable()]),
    ...section('BLOCKS', blocks),
    ...section('ENTITIES', [...inserts.flatMap(({ name, at }) => insert(name, at)), ...heads]),
    ...tag(0, 'EOF'),
  ];
  return `${lines.join('\r\n')}\r\n`;
}

/** Unique names that R12 allows: at most 31 of A–Z, 0–9, $, - and _. */
export function blockNames(ids: readonly string[]): string[] {
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
