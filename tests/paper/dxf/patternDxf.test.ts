// The DXF pattern, read back by two independent readers: dxf-parser of npm and, where it is installed, Debian's python3-ezdxf.

import DxfParser, { type IBlock, type IEntity, type IPoint } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../../src/engine';
import { type PlanInput, patternDxf } from '../../../src/paper';
import { auditDxf, PYTHON_WITH_EZDXF } from '../../support/judges/auditDxf';
import { DEMO_SHEET, demoPattern } from '../demoPattern';
import { NAMES } from '../glyphs/names';

const style = DEMO_SHEET.style;
const onFold = {
  ...style,
  closure: { ...style.closure, front: 'fold' as const },
  wedges: style.wedges.filter(({ station }) => station > -1),
};
const INPUTS: readonly (readonly [string, PlanInput])[] = [
  ['the demo client', demoPattern()],
  ['a front on the fold', demoPattern('A4', onFold)],
];

function read(text: string) {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not read');
  return dxf;
}

const onLayer = (block: IBlock | undefined, layer: string, type: string): IEntity[] =>
  (block?.entities ?? []).filter((each) => each.layer === layer && each.type === type);
const ringOf = (entity: IEntity | undefined): IPoint[] =>
  (entity as unknown as { vertices: IPoint[] }).vertices;
const textsOf = (entities: readonly IEntity[]): string[] =>
  entities.flatMap((each) => ('text' in each ? [String(each.text)] : []));

/** By the shoelace formula, of its own reckoning; y up, so a ring that runs counter-clockwise has more than nothing. */
const area = (ring: readonly { x: number; y: number }[]): number =>
  ring.reduce((sum, { x, y }, i) => {
    const next = ring[(i + 1) % ring.length] as { x: number; y: number };
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);

const sewnRing = ({ edges }: Piece) => edges.flatMap(({ points }) => points.slice(0, -1));

describe.each(INPUTS)('the DXF pattern of %s', (_, input) => {
  const dxf = read(patternDxf(input));
  const blockOf = ({ id }: Piece): IBlock | undefined => dxf.blocks[id.toUpperCase()];

  it('has a block and an insert for each piece, on layers that its table names, in mm', () => {
    const names = input.draft.pieces.map(({ id }) => id.toUpperCase());
    expect(Object.keys(dxf.blocks)).toEqual(names);
    const inserts = dxf.entities.filter(({ type }) => type === 'INSERT');
    expect(inserts.map((each) => ('name' in each ? each.name : ''))).toEqual(names);
    const layers = Object.keys(dxf.tables.layer.layers);
    const used = Object.values(dxf.blocks).flatMap(({ entities }) => entities.map(({ layer }) => layer));
    // ASTM D6673 (ANSI/AAMA-292): 1 cut boundary, 2 turn and 3 curve points, 4 notches, 7 grain, 8 internal, 14 sew line.
    expect([...new Set(used)].sort()).toEqual(
      expect.arrayContaining(['1', '14', '2', '3', '4', '7', '8'].sort()),
    );
    for (const layer of used) expect(layers).toContain(layer);
    expect(dxf.header.$ACADVER).toBe('AC1009');
    // 4 is millimetres: DXF reference, $INSUNITS.
    expect(dxf.header.$INSUNITS).toBe(4);
    for (const piece of input.draft.pieces)
      expect(textsOf(blockOf(piece)?.entities ?? [])).toContain('Units: METRIC (1 unit = 1 mm)');
  });

  it('has closed boundaries whose areas are the engine’s to 0.01 %', () => {
    for (const piece of input.draft.pieces)
      for (const [layer, wanted] of [
        ['1', area(piece.cutLine)],
        ['14', area(sewnRing(piece))],
      ] as const) {
        const rings = onLayer(blockOf(piece), layer, 'POLYLINE');
        expect(rings).toHaveLength(1);
        expect((rings[0] as unknown as { shape: boolean }).shape).toBe(true);
        expect(Math.abs(Math.abs(area(ringOf(rings[0]))) / Math.abs(wanted) - 1)).toBeLessThan(1e-4);
        // the way round as seen is kept: y is turned, nothing is mirrored
        expect(Math.sign(area(ringOf(rings[0])))).toBe(-Math.sign(area(sewnRing(piece))));
      }
  });

  it('has each point of the outline as a turn or a curve point, and its corners as turn points', () => {
    for (const piece of input.draft.pieces) {
      const at = (layer: string): IPoint[] =>
        onLayer(blockOf(piece), layer, 'POINT').map(
          (each) => (each as unknown as { position: IPoint }).position,
        );
      expect(at('2').length + at('3').length).toBe(piece.cutLine.length);
      expect(at('2').length).toBeGreaterThanOrEqual(4);
      expect(at('2').length).toBeLessThanOrEqual(8);
    }
  });

  it('has a notch on the cut line for each balance mark, and the grain line', () => {
    for (const piece of input.draft.pieces) {
      const block = blockOf(piece);
      const notches = onLayer(block, '4', 'POINT');
      expect(notches).toHaveLength(piece.marks.length);
      for (const [i, notch] of notches.entries()) {
        const { x, y } = (notch as unknown as { position: IPoint }).position;
        const mark = piece.marks[i]?.at ?? { x: 0, y: 0 };
        const edge = piece.edges[piece.marks[i]?.edge ?? -1];
        expect(Math.hypot(x - mark.x, -y - mark.y)).toBeCloseTo(edge?.allowance ?? -1, 1);
      }
      const [grain] = onLayer(block, '7', 'LINE').map(ringOf);
      const wanted = piece.grain.map((point) => [point.x, -point.y]);
      for (const [i, [x, y]] of wanted.entries()) {
        expect(grain?.[i]?.x).toBeCloseTo(x ?? Number.NaN, 5);
        expect(grain?.[i]?.y).toBeCloseTo(y ?? Number.NaN, 5);
      }
      expect(onLayer(block, '6', 'LINE')).toHaveLength(piece.cut.onFold ? 1 : 0);
    }
  });
});

describe('the DXF pattern', () => {
  it('is 7-bit ASCII, its names spelled with their marks, whatever they are', () => {
    const [, input] = INPUTS[0] as (typeof INPUTS)[number];
    const name = 'Ольга Щукина, Łęcka Ẹ̀rọ́, Αθηνά 王芳\u0000\r\n  0\r\nENDSEC';
    const text = patternDxf({ ...input, client: { ...input.client, name } });
    expect(text).toMatch(/^[\r\n -~]*$/);
    const client = textsOf(read(text).entities).find((each) => each.startsWith('Client: '));
    expect(client).toBe(
      'Client: Olga Shchukina, \\U+0141\\U+0119cka \\U+1EB8\\U+0300r\\U+1ECD\\U+0301, Athina \\U+738B\\U+82B3 0 ENDSEC',
    );
    expect(text.split('\r\n').every((line) => line.length <= 255)).toBe(true);
  });

  it('tells every name in 14 scripts again, Cyrillic and Greek in Latin letters', () => {
    const [, input] = INPUTS[0] as (typeof INPUTS)[number];
    const written = NAMES.map((name) => {
      const texts = textsOf(read(patternDxf({ ...input, client: { ...input.client, name } })).entities);
      const client = texts.find((each) => each.startsWith('Client: ')) ?? '';
      return client
        .replace('Client: ', '')
        .replace(/\\U\+([0-9A-F]{4})/g, (_, number: string) =>
          String.fromCharCode(Number.parseInt(number, 16)),
        );
    });
    const spelled = /^\p{Script=Cyrillic}|^\p{Script=Greek}/u;
    expect(written.filter((_, i) => spelled.test(NAMES[i] ?? ''))).toEqual([
      'Athina Psarrou',
      'Eleni Zachariou',
      'Olga Shchukina',
      'Izhakevich Galina',
      'Djurdja Dzamic',
    ]);
    for (const [i, name] of NAMES.entries())
      if (!spelled.test(name)) expect(written[i]).toBe(name.normalize('NFC'));
  });

  it('carries drill marks on layer 13', () => {
    const input = demoPattern();
    const [first, ...others] = input.draft.pieces;
    if (!first) throw new Error('the demo draft has pieces');
    const drill = { kind: 'drill', level: 'waist', at: { x: 40, y: 400 }, edge: 0 } as const;
    const pieces = [{ ...first, marks: [drill] }, ...others];
    const { blocks } = read(patternDxf({ ...input, draft: { ...input.draft, pieces } }));
    const [hole] = onLayer(blocks['FRONT-1'], '13', 'POINT');
    expect((hole as unknown as { position: IPoint }).position).toMatchObject({ x: 40, y: -400 });
  });

  it('says in each block and on the plan what must not be cut', () => {
    const input = demoPattern();
    const fault = {
      code: 'panelTooNarrow',
      severity: 'error',
      at: {},
      values: { width: 12, least: 20 },
    } as const;
    const dxf = read(patternDxf({ ...input, draft: { ...input.draft, issues: [fault] } }));
    for (const entities of [dxf.entities, ...Object.values(dxf.blocks).map((block) => block.entities)])
      expect(textsOf(entities).join('\n')).toContain('do not cut');
  });

  it('is a whole file without a piece', () => {
    const dxf = read(patternDxf(demoPattern('A4', { ...style, hemBelow: -5000 })));
    expect(Object.keys(dxf.blocks)).toEqual([]);
  });

  it('is the same to the letter each time', () => {
    expect(patternDxf(demoPattern())).toBe(patternDxf(demoPattern()));
  });
});

describe('python3-ezdxf, where it is installed', () => {
  it.runIf(PYTHON_WITH_EZDXF)('audits every pattern without an error', () => {
    for (const [, input] of INPUTS) expect(auditDxf(patternDxf(input))).toEqual({ found: '[]', stderr: '' });
  });
});
